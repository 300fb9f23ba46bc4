/** Effectiveness and number of transfer units of an arrangement. */
import { valueError, notAvailable } from "../../kernel/values/fault";
import { showNumber } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import type { Arrangement } from "../args";
import {
  condensingEffectiveness,
  condensingUnits,
  counterflowEffectiveness,
  counterflowUnits,
  largerMixedEffectiveness,
  largerMixedUnits,
  parallelEffectiveness,
  parallelUnits,
  shellEffectiveness,
  shellUnits,
  smallerMixedEffectiveness,
  smallerMixedUnits,
} from "./equations";
import { decayShare } from "../surface/equations";
import { unmixedEffectiveness } from "./crossflow";

/** Most transfer units: no exchanger has more, and the search ends here. */
export const MOST_UNITS = 1000;

const checkRatio = (arrangement: Arrangement, C: number): void => {
  if (arrangement === "condensing" && C !== 0)
    throw valueError(
      `capacityRatio: must be 0 with arrangement "condensing" (the hot stream stays at one temperature), got ${showNumber(C)}`,
    );
};

/** Effectiveness, 0 to 1. @param N transfer units @param C capacity ratio, 0 to 1 */
export const effectivenessOf = (arrangement: Arrangement, N: number, C: number, trace: Trace = silent): number => {
  checkRatio(arrangement, C);
  switch (arrangement) {
    case "counterflow":
      return trace.step(counterflowEffectiveness, { N, C });
    case "parallel":
      return trace.step(parallelEffectiveness, { N, C });
    case "shell and tube":
      return trace.step(shellEffectiveness, { N, C });
    case "crossflow mixed hot":
      return trace.step(smallerMixedEffectiveness, { N, C });
    case "crossflow mixed cold":
      return trace.step(largerMixedEffectiveness, { N, C });
    case "condensing":
      return trace.step(condensingEffectiveness, { N });
    case "crossflow unmixed":
      trace.remark("Mason's series (1955) over Poisson shares of N and of C·N, both streams unmixed.");
      return unmixedEffectiveness(N, C);
  }
};

/** The effectiveness limit of an infinitely large exchanger of the arrangement. */
export const mostEffectiveness = (arrangement: Arrangement, C: number): number => {
  switch (arrangement) {
    case "parallel":
      return 1 / (1 + C);
    case "shell and tube":
      return 2 / (1 + C + Math.sqrt(1 + C * C));
    case "crossflow mixed hot":
      return C === 0 ? 1 : -Math.expm1(-1 / C);
    case "crossflow mixed cold":
      return decayShare(C);
    default:
      return 1;
  }
};

const beyond = (arrangement: Arrangement, e: number, C: number, limit: number): Error =>
  notAvailable(
    `effectiveness: must be below ${showNumber(limit)} in ${arrangement} at capacity ratio ${showNumber(C)}, got ${showNumber(e)}`,
  );

const unmixedUnits = (e: number, C: number, trace: Trace): number => {
  const most = unmixedEffectiveness(MOST_UNITS, C);
  if (e > most) throw beyond("crossflow unmixed", e, C, most);
  const root = bracketedRoot((N) => unmixedEffectiveness(N, C) - e, 0, MOST_UNITS, { tolerance: 1e-14 });
  trace.solution({
    unknown: "number of transfer units",
    kind: "number",
    solves: "Mason's series (1955) for crossflow, both streams unmixed",
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  return root.x;
};

/** Number of transfer units. @param e effectiveness @param C capacity ratio. Refuses an e that the arrangement can't reach. */
export const unitsOf = (arrangement: Arrangement, e: number, C: number, trace: Trace = silent): number => {
  checkRatio(arrangement, C);
  const limit = mostEffectiveness(arrangement, C);
  if (e >= limit) throw beyond(arrangement, e, C, limit);
  const N = openUnits(arrangement, e, C, trace);
  if (!(N <= MOST_UNITS)) throw beyond(arrangement, e, C, limit);
  return N;
};

const openUnits = (arrangement: Arrangement, e: number, C: number, trace: Trace): number => {
  switch (arrangement) {
    case "counterflow":
      return trace.step(counterflowUnits, { e, C });
    case "parallel":
      return trace.step(parallelUnits, { e, C });
    case "shell and tube":
      return trace.step(shellUnits, { e, C });
    case "crossflow mixed hot":
      return trace.step(smallerMixedUnits, { e, C });
    case "crossflow mixed cold":
      return trace.step(largerMixedUnits, { e, C });
    case "condensing":
      return trace.step(condensingUnits, { e });
    case "crossflow unmixed":
      return unmixedUnits(e, C, trace);
  }
};
