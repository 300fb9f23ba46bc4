/** Friction head of a straight run of PVC pipe. */
import { silent, type Trace } from "../../kernel/define/steps";
import { densityOfWater, viscosityOfWater } from "../../water/equations";
import { darcyWeisbach, hazenWilliams, meanVelocity, reynolds } from "../equations";
import { boreOf, type BoreRule, type Schedule } from "./bore";
import { PVC_ROUGHNESS, frictionFactor } from "./friction";

export interface StraightRun {
  /** m³/s */
  readonly flow: number;
  readonly size: string;
  /** m */
  readonly length: number;
  readonly schedule: Schedule;
  /** Water temperature, K. */
  readonly water: number;
  readonly method: "Darcy-Weisbach" | "Hazen-Williams";
  readonly bore: BoreRule;
}

export interface RunLoss {
  /** m of water */
  readonly head: number;
  /** m/s */
  readonly velocity: number;
  readonly reynolds: number;
}

/** Coefficient of new PVC pipe in the Hazen–Williams formula. */
export const PVC_COEFFICIENT = 150;

export const headLossOf = (run: StraightRun, trace: Trace = silent): RunLoss => {
  const D = boreOf(run.size, run.schedule, run.bore, trace);
  const v = trace.step(meanVelocity, { Q: run.flow, D });
  const rho = trace.step(densityOfWater, { T: run.water });
  const mu = trace.step(viscosityOfWater, { T: run.water });
  const re = trace.step(reynolds, { rho, v, D, mu });
  if (run.method === "Hazen-Williams") {
    const head = trace.step(hazenWilliams, { L: run.length, C: PVC_COEFFICIENT, Q: run.flow, D });
    return { head, velocity: v, reynolds: re };
  }
  const f = frictionFactor(re, PVC_ROUGHNESS, D, trace);
  return { head: trace.step(darcyWeisbach, { f, L: run.length, D, v }), velocity: v, reynolds: re };
};
