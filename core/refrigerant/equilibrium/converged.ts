import { sum } from "../../numeric/series";
import type { BlendData, FluidData, PairData } from "../data/fluidData";
import type { BlendParts } from "../helmholtz/blendParts";
import { blendParts } from "../helmholtz/blendParts";
import type { Mixture } from "../helmholtz/mixture";
import { compileBlend, compileMixture, compilePure } from "../helmholtz/mixture";
import type { Substance } from "../helmholtz/substance";
import { phaseState } from "../helmholtz/substance";
import type { EnvelopeCurve } from "./blend";
import { blendEquilibrium } from "./blend";
import { firstGuess, pureEquilibrium } from "./pure";
import type { PointSolver, SaturationPoint } from "./trace";
import { interpolateEnvelope, followEnvelope } from "./trace";

/** A saturation curve converged on the equation of state: solves any temperature of its range. */
export interface ConvergedLine {
  readonly at: (temperature: number) => SaturationPoint;
  readonly range: readonly [number, number];
}

/** Everything that a fit needs of one refrigerant. */
export interface ConvergedRefrigerant {
  readonly critical: { readonly temperature: number; readonly pressure: number };
  readonly bubble: ConvergedLine;
  readonly dew?: ConvergedLine;
  readonly zero: { readonly enthalpy: number; readonly entropy: number };
}

const NO_ZERO = { enthalpy: 0, entropy: 0 };
/** The lowest temperature of the fits, K: -83 degC. R-744 begins at its triple point. */
const COLDEST = 190;
/** How near the critical temperature the fits end. */
const PURE_END = 0.9999;
const BLEND_END = 0.999;
/** Where a walk starts, as a share of the critical temperature. */
const START = 0.72;

/** Solves points of a pure fluid's saturation line. */
export const purePoints =
  (s: Substance): PointSolver =>
  (temperature, start) => {
    const found = pureEquilibrium(s, temperature, start);
    return found && { ...found, temperature, incipient: [] };
  };

/** Solves points of a blend's bubble or dew curve. */
export const blendPoints =
  (m: Mixture, curve: EnvelopeCurve): PointSolver =>
  (temperature, start) => {
    const found = blendEquilibrium(m, curve, temperature, start);
    return found && { ...found, temperature };
  };

/** h0 / R and s0 / R that make the saturated liquid at 273.15 K read 200 kJ/kg and 1 kJ/(kg K) (the IIR's zero). */
function iirZero(s: Substance, liquid: number): { enthalpy: number; entropy: number } {
  const { enthalpy, entropy } = phaseState(s, { phase: "liquid", temperature: 273.15, density: liquid });
  const R = s.gasConstant / s.molarMass;
  return { enthalpy: (enthalpy - 200e3) / R, entropy: (entropy - 1e3) / R };
}

/** The converged saturation line of a pure fluid. */
export function convergedPure(fluid: FluidData): ConvergedRefrigerant {
  const s = compilePure(fluid, NO_ZERO);
  const { temperature: critical, pressure } = fluid.critical;
  const solve = purePoints(s);
  const from = Math.max(COLDEST, fluid.range.triple);
  const first = solve(START * critical, {
    ...firstGuess(s, fluid.critical, fluid.acentric, START * critical),
    incipient: [],
  });
  if (!first) throw new Error(`${fluid.name}: no first equilibrium`);
  const points = [
    ...followEnvelope(solve, first, from).reverse(),
    first,
    ...followEnvelope(solve, first, PURE_END * critical),
  ];
  const at = interpolateEnvelope(solve, points, critical);
  return {
    critical: { temperature: critical, pressure },
    bubble: { at, range: [from, PURE_END * critical] },
    zero: iirZero(s, at(273.15).liquid),
  };
}

/** The converged bubble and dew curves of a blend. */
export function convergedBlend(
  blend: BlendData,
  fluids: readonly FluidData[],
  pairs: readonly PairData[],
): ConvergedRefrigerant {
  const parts = blendParts(blend, fluids, pairs);
  const s = compileBlend(parts, NO_ZERO);
  const m = compileMixture(parts, NO_ZERO);
  const curves = (["bubble", "dew"] as const).map((curve) => {
    const solve = blendPoints(m, curve);
    const first = firstBlendPoint(parts, s, curve, solve);
    return { solve, first, up: followEnvelope(solve, first, s.reducing.temperature + 20) };
  });
  // Both curves end where their phases become one; the critical point is between the ends, within a few mK.
  const bubbleEnd = curves[0]!.up[curves[0]!.up.length - 1]!;
  const critical = { temperature: bubbleEnd.temperature, pressure: bubbleEnd.pressure };
  const to = BLEND_END * critical.temperature;
  const [bubble, dew] = curves.map(({ solve, first, up }) => {
    const points = [...followEnvelope(solve, first, COLDEST).reverse(), first, ...up];
    return { at: interpolateEnvelope(solve, points, critical.temperature), range: [COLDEST, to] as const };
  });
  return { critical, bubble: bubble!, dew: dew!, zero: iirZero(s, bubble!.at(273.15).liquid) };
}

function firstBlendPoint(parts: BlendParts, s: Substance, curve: EnvelopeCurve, solve: PointSolver): SaturationPoint {
  const z = parts.moleFractions;
  const T = START * s.reducing.temperature;
  const mean = (value: (fluid: FluidData) => number) =>
    parts.components.reduce((sum, fluid, i) => sum + z[i]! * value(fluid), 0);
  // As if the blend were one fluid, then Raoult's law for the incipient composition.
  const critical = { ...s.reducing, pressure: mean((fluid) => fluid.critical.pressure) };
  const guess = pureEquilibrium(
    s,
    T,
    firstGuess(
      s,
      critical,
      mean((fluid) => fluid.acentric),
      T,
    ),
  );
  const raw = parts.components.map(({ critical: c, acentric }, i) => {
    const pressure = c.pressure * 10 ** ((-7 / 3) * (1 + acentric) * (c.temperature / T - 1));
    return curve === "bubble" ? z[i]! * pressure : z[i]! / pressure;
  });
  const total = sum(raw);
  const found = guess && solve(T, { ...guess, incipient: raw.map((part) => part / total) });
  if (!found) throw new Error("no first equilibrium of a blend");
  return found;
}
