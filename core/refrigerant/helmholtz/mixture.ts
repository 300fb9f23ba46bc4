import type { FluidData } from "../data/fluidData";
import type { BlendParts, ReducingValue } from "./blendParts";
import { evaluateReducing } from "./blendParts";
import type { Ideal } from "./ideal";
import { compileIdeal, idealAt } from "./ideal";
import type { Residual } from "./residualArrays";
import { residualOnIsotherm, compileResidual, residualAt, setIsotherm } from "./residual";
import type { EvaluatedPoint, PhaseState, Substance } from "./substance";
import { stateFrom } from "./substance";

/** CODATA 2018 molar gas constant, J/(mol K); blends use it for all components. */
export const GAS_CONSTANT = 8.31446261815324;

/** Zero points: h0 in K (h0 / R), s0 dimensionless (s0 / R). */
export interface Zero {
  readonly enthalpy: number;
  readonly entropy: number;
}

/** A pure fluid compiled for evaluation. */
export function compilePure(fluid: FluidData, zero: Zero): Substance {
  return {
    molarMass: fluid.molarMass,
    gasConstant: fluid.gasConstant,
    reducing: fluid.reducing,
    residual: compileResidual({
      powers: fluid.powers,
      gaussians: fluid.gaussians ?? [],
      nonAnalytic: fluid.nonAnalytic ?? [],
    }),
    ideal: compileIdeal([{ ideal: fluid.ideal, reducing: fluid.reducing, share: 1, mixing: 0 }], zero),
  };
}

/** The blend at its standard composition, collapsed to one list of terms: it evaluates like a pure fluid. */
export function compileBlend(parts: BlendParts, zero: Zero): Substance {
  const x = parts.moleFractions;
  const n = parts.components.length;
  const T: ReducingValue = { value: 0, slopes: new Float64Array(n) };
  const v: ReducingValue = { value: 0, slopes: new Float64Array(n) };
  evaluateReducing(parts, x, false, T);
  evaluateReducing(parts, x, true, v);
  const powers = parts.components.flatMap((c, i) => c.powers.map(([k, ...rest]) => [k * x[i]!, ...rest] as const));
  const departures = parts.pairs.flatMap(({ i, j, data }) =>
    data.departure.map(([k, ...rest]) => [k * x[i]! * x[j]! * data.factor, ...rest] as const),
  );
  const gaussians = parts.components.flatMap((c, i) =>
    (c.gaussians ?? []).map(([k, ...rest]) => [k * x[i]!, ...rest] as const),
  );
  return {
    molarMass: parts.components.reduce((sum, c, i) => sum + x[i]! * c.molarMass, 0),
    gasConstant: GAS_CONSTANT,
    reducing: { temperature: T.value, density: 1 / v.value },
    residual: compileResidual({ powers: [...powers, ...departures], gaussians, nonAnalytic: [] }),
    ideal: compileIdeal(
      parts.components.map((c, i) => ({
        ideal: c.ideal,
        reducing: c.reducing,
        share: x[i]!,
        mixing: Math.log(x[i]!),
      })),
      zero,
    ),
  };
}

/** A blend evaluated at any composition: for phase equilibria. It owns the arrays and overwrites them at each evaluation. */
export interface Mixture {
  readonly parts: BlendParts;
  readonly residuals: readonly Residual[];
  readonly departures: readonly Residual[];
  readonly ideals: readonly Ideal[];
  readonly zero: Zero;
  readonly T: ReducingValue;
  readonly v: ReducingValue;
  /** Residual derivatives of the mixture, as in `Residual.out`. */
  readonly out: Float64Array;
  /** d alpha / d x_i of the residual part. */
  readonly byFraction: Float64Array;
}

/** Lays out a blend for evaluation at any composition. */
export function compileMixture(parts: BlendParts, zero: Zero): Mixture {
  const n = parts.components.length;
  const none = { gaussians: [], nonAnalytic: [] };
  return {
    parts,
    residuals: parts.components.map((c) =>
      compileResidual({ powers: c.powers, gaussians: c.gaussians ?? [], nonAnalytic: [] }),
    ),
    departures: parts.pairs.map(({ data }) => compileResidual({ powers: data.departure, ...none })),
    ideals: parts.components.map((c) =>
      compileIdeal([{ ideal: c.ideal, reducing: c.reducing, share: 1, mixing: 0 }], { enthalpy: 0, entropy: 0 }),
    ),
    zero,
    T: { value: 0, slopes: new Float64Array(n) },
    v: { value: 0, slopes: new Float64Array(n) },
    out: new Float64Array(6),
    byFraction: new Float64Array(n),
  };
}

/** Fills the reducing values of a composition (mole), which `mixtureAlong` then uses. */
export function setComposition(m: Mixture, x: ArrayLike<number>): void {
  evaluateReducing(m.parts, x, false, m.T);
  evaluateReducing(m.parts, x, true, m.v);
}

/**
 * Alpha and its first two density derivatives of the mixture, into out[0..2], at a temperature (K) and a molar density
 * (mol/m3): for a density search at the composition that was given to `atComposition`.
 */
export function mixtureOnIsotherm(m: Mixture, x: ArrayLike<number>, temperature: number, density: number): void {
  const { parts, residuals, departures, out } = m;
  const tau = m.T.value / temperature;
  const delta = density * m.v.value;
  out.fill(0);
  for (let i = 0; i < residuals.length; i++) {
    const r = residuals[i]!;
    setIsotherm(r, tau);
    residualOnIsotherm(r, delta);
    for (let k = 0; k < 3; k++) out[k]! += x[i]! * r.out[k]!;
  }
  for (let k = 0; k < departures.length; k++) {
    const { i, j, data } = parts.pairs[k]!;
    const r = departures[k]!;
    setIsotherm(r, tau);
    residualOnIsotherm(r, delta);
    for (let q = 0; q < 3; q++) out[q]! += x[i]! * x[j]! * data.factor * r.out[q]!;
  }
}

/** Fills the mixture's residual derivatives at composition x (mole), temperature (K) and molar density (mol/m3). */
export function mixtureAt(m: Mixture, x: ArrayLike<number>, temperature: number, density: number): void {
  setComposition(m, x);
  mixtureAtComposition(m, x, temperature, density);
}

/** As `mixtureAt`, at the composition that was given to `atComposition`. */
export function mixtureAtComposition(m: Mixture, x: ArrayLike<number>, temperature: number, density: number): void {
  const { parts, residuals, departures, out, byFraction } = m;
  const tau = m.T.value / temperature;
  const delta = density * m.v.value;
  out.fill(0);
  for (let i = 0; i < residuals.length; i++) {
    const r = residuals[i]!;
    setIsotherm(r, tau);
    residualAt(r, delta);
    byFraction[i] = r.out[0]!;
    for (let k = 0; k < 6; k++) out[k]! += x[i]! * r.out[k]!;
  }
  for (let k = 0; k < departures.length; k++) {
    const { i, j, data } = parts.pairs[k]!;
    const r = departures[k]!;
    setIsotherm(r, tau);
    residualAt(r, delta);
    byFraction[i]! += x[j]! * data.factor * r.out[0]!;
    byFraction[j]! += x[i]! * data.factor * r.out[0]!;
    for (let q = 0; q < 6; q++) out[q]! += x[i]! * x[j]! * data.factor * r.out[q]!;
  }
}

/**
 * ln(fugacity / (R T)) of each component, into `into`, at the point of the last `mixtureAt`.
 * n d(alpha)/dn_i after O. Kunz, W. Wagner (2012) J. Chem. Eng. Data 57:3032-3091, Table B4.
 */
export function logFugacities(m: Mixture, x: ArrayLike<number>, density: number, into: Float64Array): void {
  const { out, byFraction, T, v } = m;
  const n = byFraction.length;
  let meanT = 0;
  let meanV = 0;
  let meanA = 0;
  for (let i = 0; i < n; i++) {
    meanT += x[i]! * T.slopes[i]!;
    meanV += x[i]! * v.slopes[i]!;
    meanA += x[i]! * byFraction[i]!;
  }
  for (let i = 0; i < n; i++) {
    const volume = 1 + (v.slopes[i]! - meanV) / v.value;
    const heat = (T.slopes[i]! - meanT) / T.value;
    into[i] = Math.log(x[i]! * density) + out[0]! + out[1]! * volume + out[3]! * heat + byFraction[i]! - meanA;
  }
}

/** Properties of one phase of the blend at any composition (mole fractions). */
export function mixtureState(m: Mixture, x: ArrayLike<number>, point: EvaluatedPoint): PhaseState {
  const { temperature } = point;
  mixtureAt(m, x, temperature, point.density);
  const ideal = new Float64Array(3);
  ideal[0] = m.zero.entropy - m.zero.enthalpy / temperature;
  ideal[1] = -m.zero.enthalpy / temperature;
  let molarMass = 0;
  for (let i = 0; i < m.ideals.length; i++) {
    const part = m.ideals[i]!;
    idealAt(part, temperature);
    ideal[0] += x[i]! * (part.out[0]! + Math.log(x[i]!));
    ideal[1] += x[i]! * part.out[1]!;
    ideal[2]! += x[i]! * part.out[2]!;
    molarMass += x[i]! * m.parts.components[i]!.molarMass;
  }
  return stateFrom({ gasConstant: GAS_CONSTANT, molarMass }, m.out, ideal, point);
}
