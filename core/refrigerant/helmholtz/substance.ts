import type { Ideal } from "./ideal";
import { idealAt } from "./ideal";
import type { Residual } from "./residualArrays";
import { residualOnIsotherm, residualAt, setIsotherm } from "./residual";

/** A pure fluid, or a blend at one composition, ready to evaluate. Molar mass kg/mol, gas constant J/(mol K), reducing K and mol/m3. */
export interface Substance {
  readonly molarMass: number;
  readonly gasConstant: number;
  readonly reducing: { readonly temperature: number; readonly density: number };
  readonly residual: Residual;
  readonly ideal: Ideal;
}

/** "supercritical": above both the critical temperature and the critical pressure. */
export type Phase = "liquid" | "vapour" | "supercritical";

/** Properties of one homogeneous phase, all SI by mass. */
export interface PhaseState {
  readonly phase: Phase;
  /** K */
  readonly temperature: number;
  /** Pa */
  readonly pressure: number;
  /** kg/m3 */
  readonly density: number;
  /** J/kg */
  readonly enthalpy: number;
  /** J/(kg K) */
  readonly entropy: number;
  /** Isobaric heat capacity, J/(kg K) */
  readonly cp: number;
  /** Isochoric heat capacity, J/(kg K) */
  readonly cv: number;
  /** m/s */
  readonly speedOfSound: number;
}

/** Pressure (Pa) and its slopes by molar density at one temperature: written by `pressureAt`. */
export interface PressureSlot {
  pressure: number;
  byDensity: number;
}

/** Pressure and its density slope, at a temperature (K) and a molar density (mol/m3). */
export function pressureAt(s: Substance, temperature: number, density: number, into: PressureSlot): void {
  setIsotherm(s.residual, s.reducing.temperature / temperature);
  residualOnIsotherm(s.residual, density / s.reducing.density);
  const { out } = s.residual;
  const RT = s.gasConstant * temperature;
  into.pressure = density * RT * (1 + out[1]!);
  into.byDensity = RT * (1 + 2 * out[1]! + out[2]!);
}

/** Fills the residual and ideal parts' derivatives at a temperature (K) and a molar density (mol/m3). */
export function evaluateHelmholtz(s: Substance, temperature: number, density: number): void {
  setIsotherm(s.residual, s.reducing.temperature / temperature);
  residualAt(s.residual, density / s.reducing.density);
  idealAt(s.ideal, temperature);
}

/** A point whose derivatives have been evaluated: K, mol/m3; a pressure (Pa) that is known better than from the density. */
export interface EvaluatedPoint {
  readonly phase: Phase;
  readonly temperature: number;
  readonly density: number;
  readonly pressure?: number;
}

/** Every property of one phase at a point. */
export function phaseState(s: Substance, point: EvaluatedPoint): PhaseState {
  evaluateHelmholtz(s, point.temperature, point.density);
  return stateFrom(s, s.residual.out, s.ideal.out, point);
}

/** Properties from the derivatives of a Helmholtz energy; `ideal` without its ln(rho). */
export function stateFrom(
  s: { readonly gasConstant: number; readonly molarMass: number },
  residual: Float64Array,
  ideal: Float64Array,
  point: EvaluatedPoint,
): PhaseState {
  const { temperature, density } = point;
  const R = s.gasConstant / s.molarMass;
  const energy = ideal[1]! + residual[3]!;
  const compress = 1 + residual[1]!;
  const byDensity = 1 + 2 * residual[1]! + residual[2]!;
  const byTemperature = compress - residual[4]!;
  const cv = -R * (ideal[2]! + residual[5]!);
  const cp = cv + (R * byTemperature * byTemperature) / byDensity;
  return {
    phase: point.phase,
    temperature,
    pressure: point.pressure ?? density * s.gasConstant * temperature * compress,
    density: density * s.molarMass,
    enthalpy: R * temperature * (energy + compress),
    entropy: R * (energy - ideal[0]! - Math.log(density) - residual[0]!),
    cp,
    cv,
    speedOfSound: Math.sqrt((R * temperature * byDensity * cp) / cv),
  };
}

/** Gibbs energy over RT of one phase of a pure fluid, less what depends on temperature only. */
export function gibbs(s: Substance, temperature: number, density: number): number {
  setIsotherm(s.residual, s.reducing.temperature / temperature);
  residualOnIsotherm(s.residual, density / s.reducing.density);
  return s.residual.out[0]! + s.residual.out[1]! + Math.log(density);
}
