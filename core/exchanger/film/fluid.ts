/** Properties and tubes for the film models. Strict SI. */
import { silent, type Trace } from "../../kernel/define/steps";
import { prandtl } from "./equations";

/** One phase: kg/m³, Pa·s, W/(m·K), J/(kg·K). */
export interface PhaseProperties {
  readonly rho: number;
  readonly mu: number;
  readonly k: number;
  readonly cp: number;
}

/** A saturated liquid and its vapour. */
export interface TwoPhaseProperties {
  readonly liquid: PhaseProperties;
  readonly vapour: PhaseProperties;
  /** Pressure over the critical pressure. */
  readonly reducedPressure: number;
}

/** A tube, straight without `coilDiameter`. All in m. */
export interface Tube {
  readonly bore: number;
  readonly length: number;
  /** Mean diameter of the coil, from centre to centre of the tube. */
  readonly coilDiameter?: number;
}

export const prandtlOf = ({ mu, cp, k }: PhaseProperties, trace: Trace = silent): number =>
  trace.step(prandtl, { mu, cp, k });
