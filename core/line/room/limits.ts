/** Every limit of a room, which one governs, and how a charge compares. */
import { isFault } from "../../kernel/values/fault";
import { NO_VALUE } from "../../kernel/define/result";
import type { Trace } from "../../kernel/define/steps";
import { CONCENTRATION_LIMITS } from "../data/concentrationLimits";
import { concentrationLimit, halfFlammable, leastCirculation, roomLimitByArea, roomLimitByVolume } from "./equations";
import { leastRoomArea, roomRules, type RoomOptions, type RoomRules } from "./room";

export const ROOM_STANDARD = "IEC 60335-2-40:2018";

interface RoomInput extends RoomOptions {
  readonly refrigerant: string;
  readonly floorArea: number;
  readonly releaseHeight: number;
  readonly charge: number | undefined;
}

/** kg */
interface Clauses {
  readonly byArea: number;
  readonly byVolume: number;
  readonly withCirculation: number;
}

interface Governing {
  readonly chargeLimit: number;
  readonly governs: string;
  readonly why: string;
}

const NO_AREA = "6 LFL: no floor area is asked";
const LEAST = "least of the unventilated clauses";

function unventilated({ m1, m2 }: RoomRules, { byArea, byVolume }: Clauses): Governing {
  const byRoom = Math.min(byArea, byVolume, m2);
  if (byRoom <= m1) return { chargeLimit: m1, governs: NO_AREA, why: "the room gives less" };
  if (byRoom === m2) return { chargeLimit: m2, governs: "52 LFL: ceiling without ventilation", why: LEAST };
  return { chargeLimit: byRoom, governs: byRoom === byArea ? "2.5 LFL^1.25 h0 √A" : "0.75 LFL h0 A", why: LEAST };
}

function governing(rules: RoomRules, clauses: Clauses): Governing {
  const { method, m1, m2, m3 } = rules;
  if (method === "unventilated") return unventilated(rules, clauses);
  if (method === "unventilated as printed")
    return clauses.byArea > m2
      ? { chargeLimit: m2, governs: "52 LFL: ceiling without ventilation", why: "the room gives more" }
      : { chargeLimit: clauses.byArea, governs: "2.5 LFL^1.25 h0 √A", why: "the formula alone" };
  const limit = Math.min(clauses.withCirculation, m3);
  if (limit <= m1) return { chargeLimit: m1, governs: NO_AREA, why: "the room gives less" };
  return limit === m3
    ? { chargeLimit: m3, governs: "260 LFL: end of the standard", why: "the room gives more" }
    : { chargeLimit: limit, governs: "0.5 LFL h A, with circulation", why: "the fan runs on a leak" };
}

function findingOf(charge: number | undefined, { chargeLimit, governs }: Governing, m3: number): string {
  if (charge === undefined) return "no charge given";
  if (charge > m3) return "above 260 LFL: outside the standard";
  return charge > chargeLimit
    ? `above the limit of ${governs}`
    : `within the limit of ${governs}: listing and manual decide`;
}

/** A charge beyond the method's band fails its own row only. */
function areaOrFault(rules: RoomRules, charge: number, trace: Trace) {
  try {
    return leastRoomArea(rules, charge, trace);
  } catch (fault) {
    if (isFault(fault)) return fault;
    throw fault;
  }
}

export function roomLimits(input: RoomInput, trace: Trace) {
  const { refrigerant, floorArea: A, releaseHeight, charge, ceilingHeight } = input;
  const rules = roomRules(refrigerant, releaseHeight, input, trace);
  const { LFL, h0, H, m1, m2, m3 } = rules;
  const clauses: Clauses = {
    byArea: trace.step(roomLimitByArea, { LFL, h0, A }),
    byVolume: trace.step(roomLimitByVolume, { LFL, h0, A }),
    withCirculation: trace.step(halfFlammable, { LFL, H, A }, "circulation"),
  };
  const governs = governing(rules, clauses);
  const RCL = CONCENTRATION_LIMITS[refrigerant];
  return {
    chargeWithoutLimit: m1,
    flammabilityLimit: LFL,
    ...governs,
    chargeCeiling: m2,
    chargeOfScope: m3,
    limitByArea: clauses.byArea,
    limitByVolume: clauses.byVolume,
    limitWithCirculation: clauses.withCirculation,
    leastArea: charge === undefined ? NO_VALUE : areaOrFault(rules, charge, trace),
    leastCirculation: charge === undefined ? NO_VALUE : trace.step(leastCirculation, { m: charge, LFL }),
    dispersalLimit: trace.step(halfFlammable, { LFL, H: ceilingHeight, A }, "dispersal volume"),
    concentrationLimit: RCL === undefined ? NO_VALUE : trace.step(concentrationLimit, { RCL, H: ceilingHeight, A }),
    finding: findingOf(charge, governs, m3),
    standard: `${ROOM_STANDARD}; dispersal ASHRAE 15-2022`,
  };
}
