/** Heat available from a refrigeration rack, and the cost of holding its head pressure up. */
import { valueError } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import type { Compressor } from "./data/rejectionFactors";
import { compressorHeat, heatRejected, penaltyByRule, shareOfHeat } from "./equations";
import { rejectionFactor } from "./rejection";
import { loadRefrigerant } from "../refrigerant/refrigerant";
import { equationSource } from "../refrigerant/sources";
import { solveCycle } from "../cycle/cycle";

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
  /** The cycle of this refrigerant instead of the table's factors and the share of desuperheating. */
  readonly refrigerant: string | undefined;
  readonly efficiency: number;
}

/** Share of desuperheating where no refrigerant is given: common practice. */
export const USUAL_SHARE = 0.15;
/** Useful superheat and subcooling of a rack's cycle, K: common practice. */
const SUPERHEAT = 10;
const SUBCOOLING = 3;

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

/** Heat rejected per refrigeration of one load, and the share of it above condensing. */
const loadFactor = (x: RackInputs, evaporating: number, condensing: number, label: string, trace: Trace) => {
  if (x.refrigerant === undefined)
    return {
      factor: rejectionFactor(x.compressor, evaporating, condensing, label, trace),
      share: x.desuperheatingShare,
    };
  const input = { evaporating, condensing, superheat: SUPERHEAT, subcooling: SUBCOOLING, efficiency: x.efficiency };
  const refrigerant = loadRefrigerant(x.refrigerant);
  const { rejectionFactor: factor, shares } = solveCycle({ refrigerant, ...input });
  trace.property({
    substance: x.refrigerant,
    property: "heat rejected per refrigeration of the cycle",
    inputs: {
      evaporating: { value: evaporating, kind: "temperature" },
      condensing: { value: condensing, kind: "temperature" },
    },
    result: { value: factor, kind: "number" },
    source: equationSource(refrigerant),
  });
  return { factor, share: shares.desuperheating };
};

const heatAt = (x: RackInputs, condensing: number, trace: Trace): RackHeat => {
  const factorOf = (load: number, evaporating: number, label: string) =>
    load > 0 ? loadFactor(x, evaporating, condensing, label, trace) : undefined;
  const medium = factorOf(x.mediumLoad, x.mediumEvaporating, "medium evaporating");
  const low = factorOf(x.lowLoad, x.lowEvaporating, "low evaporating");
  const [mediumFactor, lowFactor] = [medium?.factor, low?.factor];
  const loads = { qm: x.mediumLoad, fm: mediumFactor ?? 1, ql: x.lowLoad, fl: lowFactor ?? 1 };
  const rejected = trace.step(heatRejected, loads);
  const ofMedium = x.mediumLoad * loads.fm;
  const s = ((medium?.share ?? 0) * ofMedium + (low?.share ?? 0) * (rejected - ofMedium)) / rejected;
  const desuperheating = trace.step(shareOfHeat, { s, Q: rejected });
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
  if (x.refrigerant !== undefined && x.desuperheatingShare !== USUAL_SHARE)
    throw valueError(
      `inputs: desuperheating share: leave it out with a refrigerant, whose cycle gives it, got ${x.desuperheatingShare}`,
    );
  const heat = heatAt(x, x.condensing, trace);
  const { heldCondensing } = x;
  if (heldCondensing === undefined) return { heat, held: undefined };
  return { heat, held: trace.within("Head pressure held up", () => heldUp(x, heldCondensing, heat, trace)) };
};
