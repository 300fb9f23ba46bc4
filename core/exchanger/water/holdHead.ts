/** A condenser's water flow cut so that the condensing temperature does not fall below a least one. */
import { notAvailable } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { decayShare } from "../surface/equations";
import {
  bypassShare,
  capacityRateOfWater,
  condensingForDuty,
  flowOfUnits,
  heldCondenser,
  leavingWater,
  unitsOfCondenser,
} from "./equations";

export interface HeldHead {
  /** W */
  readonly heat: number;
  /** W/K, taken as constant. */
  readonly ua: number;
  /** Entering water, K. */
  readonly water: number;
  /** K */
  readonly leastCondensing: number;
  /** Full flow, m³/s. */
  readonly flow: number;
}

export interface HeldHeadAnswer {
  /** K */
  readonly condensingAtFullFlow: number;
  readonly holds: boolean;
  /** m³/s */
  readonly flowThrough: number;
  readonly bypass: number;
  /** K */
  readonly leavingWater: number;
}

/** Above the critical temperature of every refrigerant here, K. */
const HOTTEST = 410;

/** Widens the bracket beyond rounding: with many transfer units the root lies at its upper end. */
const MARGIN = 1e-9;

/** Transfer units at which the condenser takes `heat` at just the least condensing temperature. */
const heldUnits = ({ heat, ua, water, leastCondensing }: HeldHead, fullUnits: number, trace: Trace): number => {
  const wanted = heat / (ua * (leastCondensing - water));
  const [low, high] = [fullUnits * (1 - MARGIN), (1 + MARGIN) / wanted];
  const root = bracketedRoot((N) => decayShare(N) - wanted, low, high, { tolerance: 1e-13 });
  if (!root.found) throw notAvailable(`no water flow holds ${quantityMark("temperature", leastCondensing)}`);
  trace.solution({
    unknown: "transfer units at the cut flow",
    kind: "number",
    solves: heldCondenser.name,
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  trace.relation(heldCondenser, { N: root.x, Q: heat, UA: ua, Tl: leastCondensing, Tw: water });
  return root.x;
};

export const holdHeadOf = (held: HeldHead, trace: Trace = silent): HeldHeadAnswer => {
  const { heat: Q, ua: UA, water: Tw, flow } = held;
  const rho = trace.step(densityOfWater, { T: Tw });
  const cp = trace.step(heatCapacityOfWater, { T: Tw });
  const C = trace.step(capacityRateOfWater, { V: flow, rho, cp });
  const N = trace.step(unitsOfCondenser, { UA, C });
  const condensingAtFullFlow = trace.step(condensingForDuty, { Tw, Q, C, N });
  if (condensingAtFullFlow > HOTTEST)
    throw notAvailable(
      `ua: too small: the refrigerant would condense at ${quantityMark("temperature", condensingAtFullFlow)}, where none condenses any more; check UA, heat and their units`,
    );
  if (condensingAtFullFlow >= held.leastCondensing) {
    const leaving = trace.step(leavingWater, { Tw, Q, C });
    return { condensingAtFullFlow, holds: false, flowThrough: flow, bypass: 0, leavingWater: leaving };
  }
  const V = Math.min(flow, trace.step(flowOfUnits, { UA, N: heldUnits(held, N, trace), rho, cp }));
  const bypass = trace.step(bypassShare, { V, Vf: flow });
  const cut = trace.step(capacityRateOfWater, { V, rho, cp });
  return {
    condensingAtFullFlow,
    holds: true,
    flowThrough: V,
    bypass,
    leavingWater: trace.step(leavingWater, { Tw, Q, C: cut }),
  };
};
