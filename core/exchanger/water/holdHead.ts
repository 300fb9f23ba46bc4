/** Reduced water flow through a condenser that keeps the condensing temperature from falling below a limit. */
import { notAvailable } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import {
  bypassShare,
  capacityRateOfWater,
  condensingForDuty,
  conductanceAtFlow,
  heldCondenser,
  leavingWater,
  unitsOfCondenser,
} from "./equations";

export interface HeldHead {
  /** W */
  readonly heat: number;
  /** At full flow, W/K. */
  readonly ua: number;
  /** Entering water, K. */
  readonly water: number;
  /** K */
  readonly leastCondensing: number;
  /** Full flow, m³/s. */
  readonly flow: number;
  /** Share of the water's film in the resistance at full flow. */
  readonly waterFilmShare: number;
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

/** Widens the bracket beyond rounding: with many transfer units the root is at its lower end. */
const MARGIN = 1e-9;

/** Flow, m³/s, that gives exactly the least condensing temperature; `perFlow` is J/(m³·K). */
function heldFlow(held: HeldHead, perFlow: number, trace: Trace): number {
  const { heat: Q, ua: U0, water: Tw, leastCondensing: Tl, flow: Vf, waterFilmShare: s } = held;
  const unitsAt = (V: number): number => conductanceAtFlow.code({ U0, s, Vf, V }) / (perFlow * V);
  const surplus = (V: number): number => Q - perFlow * V * -Math.expm1(-unitsAt(V)) * (Tl - Tw);
  const low = (Q / (perFlow * (Tl - Tw))) * (1 - MARGIN);
  const root = bracketedRoot(surplus, low, Vf * (1 + MARGIN), { tolerance: 1e-13 * Vf });
  if (!root.found) throw notAvailable(`no water flow holds ${quantityMark("temperature", Tl)}`);
  trace.solution({
    unknown: "flow through the exchanger",
    kind: "water flow",
    solves: heldCondenser.name,
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  const UA = trace.step(conductanceAtFlow, { U0, s, Vf, V: root.x });
  trace.relation(heldCondenser, { N: UA / (perFlow * root.x), Q, UA, Tl, Tw });
  return root.x;
}

export const holdHeadOf = (held: HeldHead, trace: Trace = silent): HeldHeadAnswer => {
  const { heat: Q, ua: UA, water: Tw, flow } = held;
  const rho = trace.step(densityOfWater, { T: Tw });
  const cp = trace.step(heatCapacityOfWater, { T: Tw });
  const C = trace.step(capacityRateOfWater, { V: flow, rho, cp });
  const N = trace.step(unitsOfCondenser, { UA, C });
  const condensingAtFullFlow = trace.step(condensingForDuty, { Tw, Q, C, N });
  if (condensingAtFullFlow > HOTTEST)
    throw notAvailable(
      `ua: too small: the refrigerant would condense at ${quantityMark("temperature", condensingAtFullFlow)}, above every refrigerant's critical temperature; check UA, heat and their units`,
    );
  if (condensingAtFullFlow >= held.leastCondensing) {
    const leaving = trace.step(leavingWater, { Tw, Q, C });
    return { condensingAtFullFlow, holds: false, flowThrough: flow, bypass: 0, leavingWater: leaving };
  }
  const V = Math.min(flow, heldFlow(held, rho * cp, trace));
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
