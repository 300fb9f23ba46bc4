/** The smallest pipe within a velocity limit. */
import { silent, type Trace } from "../../kernel/define/steps";
import { PVC_PIPE } from "../data/pvcPipe";
import { meanVelocity } from "../equations";
import { boreOf, type BoreRule, type Schedule } from "./bore";

export interface FoundSize {
  readonly size: string;
  /** m/s */
  readonly velocity: number;
}

/** Undefined if even the largest size is faster than `limit` (m/s). */
export const smallestSize = (
  flow: number,
  limit: number,
  schedule: Schedule,
  rule: BoreRule,
  trace: Trace = silent,
): FoundSize | undefined => {
  const sizes = PVC_PIPE.filter((each) => each.schedule === schedule);
  const fit = sizes.find(({ size }) => meanVelocity.code({ Q: flow, D: boreOf(size, schedule, rule) }) <= limit);
  if (!fit) return undefined;
  const smaller = sizes[sizes.indexOf(fit) - 1];
  if (smaller && trace.on)
    trace.within(`${smaller.size} is too small`, () =>
      trace.step(meanVelocity, { Q: flow, D: boreOf(smaller.size, schedule, rule, trace) }),
    );
  const D = boreOf(fit.size, schedule, rule, trace);
  return { size: fit.size, velocity: trace.step(meanVelocity, { Q: flow, D }) };
};
