/** Heat available from a refrigeration rack, and the cost of holding its head pressure up. */
import { valueError } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import type { Compressor } from "./data/rejectionFactors";
import { compressorHeat, heatRejected, penaltyByRule, shareOfHeat } from "./equations";
import { rejectionFactor } from "./rejection";

export const RECLAIMS = ["desuperheating", "full condensing"] as const;

export interface RackInputs {
  readonly compressor: Compressor;
  /** W */
  readonly mediumLoad: number;
  /** K */
  readonly mediumEvaporating: number;
  readonly lowLoad: number;
  readonly lowEvaporating: number;
  readonly condensing: number;
  readonly reclaim: (typeof RECLAIMS)[number];
  readonly desuperheatingShare: number;
  /** K; undefined where the head pressure is not held up. */
  readonly heldCondensing: number | undefined;
}

export interface RackHeat {
  readonly mediumFactor: number | undefined;
  readonly lowFactor: number | undefined;
  /** W */
  readonly heatRejected: number;
  readonly desuperheating: number;
  readonly condensing: number;
  readonly heatToBeHad: number;
  readonly compressorPower: number;
}

export interface HeldHeadPressure {
  /** W */
  readonly extraHeat: number;
  readonly extraPower: number;
  readonly extraPowerLeast: number;
  readonly extraPowerMost: number;
}

/** Rules of the trade for the extra power, per °F: disputed. */
const LEAST_RULE = 0.005;
const MOST_RULE = 0.02;

const heatAt = (x: RackInputs, condensing: number, trace: Trace): RackHeat => {
  const factorOf = (load: number, evaporating: number, label: string): number | undefined =>
    load > 0 ? rejectionFactor(x.compressor, evaporating, condensing, label, trace) : undefined;
  const mediumFactor = factorOf(x.mediumLoad, x.mediumEvaporating, "medium evaporating");
  const lowFactor = factorOf(x.lowLoad, x.lowEvaporating, "low evaporating");
  const loads = { qm: x.mediumLoad, fm: mediumFactor ?? 1, ql: x.lowLoad, fl: lowFactor ?? 1 };
  const rejected = trace.step(heatRejected, loads);
  const desuperheating = trace.step(shareOfHeat, { s: x.desuperheatingShare, Q: rejected });
  return {
    mediumFactor,
    lowFactor,
    heatRejected: rejected,
    desuperheating,
    condensing: rejected - desuperheating,
    heatToBeHad: x.reclaim === "desuperheating" ? desuperheating : rejected,
    compressorPower: trace.step(compressorHeat, loads),
  };
};

const heldUp = (x: RackInputs, held: number, base: RackHeat, trace: Trace): HeldHeadPressure => {
  if (!(held >= x.condensing))
    throw valueError(
      `inputs: held condensing: must be at least the condensing temperature of ${quantityMark("temperature", x.condensing)}, got ${quantityMark("temperature", held)}`,
    );
  const high = heatAt(x, held, trace);
  const rule = { P: base.compressorPower, dT: held - x.condensing };
  return {
    extraHeat: high.heatToBeHad - base.heatToBeHad,
    extraPower: high.compressorPower - base.compressorPower,
    extraPowerLeast: trace.step(penaltyByRule, { ...rule, r: LEAST_RULE }),
    extraPowerMost: trace.step(penaltyByRule, { ...rule, r: MOST_RULE }),
  };
};

/** Heat at the condensing temperature, and the cost of a higher one if given. */
export const rackHeat = (
  x: RackInputs,
  trace: Trace = silent,
): { readonly heat: RackHeat; readonly held: HeldHeadPressure | undefined } => {
  if (!(x.mediumLoad + x.lowLoad > 0))
    throw valueError("inputs: medium load: no load; give the medium or the low temperature load");
  const heat = heatAt(x, x.condensing, trace);
  const { heldCondensing } = x;
  if (heldCondensing === undefined) return { heat, held: undefined };
  return { heat, held: trace.within("Head pressure held up", () => heldUp(x, heldCondensing, heat, trace)) };
};
