import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { REFRIGERANT } from "../../refrigerant/args";
import { RELEASE_HEIGHT, ROOM_OPTIONS, SYSTEM_CHARGE } from "../room/args";
import {
  chargeAboveLimit,
  circulationDuties,
  contestedFlammability,
  listedCoilOnly,
  roomIsACheckOnly,
} from "../room/cautions";
import { ROOM_STANDARD, roomLimits } from "../room/limits";

const room = { refrigerant: "R-32", floorArea: 300, releaseHeight: 6 } as const;
const fernhill = { refrigerant: "R-454B", floorArea: 900, releaseHeight: 7.2, charge: 9.4 } as const;

export const lineRoomLimit = cellFunction({
  id: "LINE.ROOMLIMIT",
  topic: "line",
  summary: "Charge limits of a mildly flammable refrigerant in a room, clause by clause.",
  keywords: ["A2L", "2L", "flammable", "room size", "floor area", "RCL", "EDVC", "dispersal volume"],
  details: [
    `${ROOM_STANDARD}, GG.2. Release heights: floor 0.6 m, window 1.0 m, wall 1.8 m, ceiling 2.2 m. Uses the lower published flammability limit unless one is given.`,
    "The limit applies to the whole system's charge, pool exchanger and added lines included: call it for the charge before and after (LINE.CHARGEBALANCE).",
    "Unventilated: the least of the two formulas and of the ceiling m2 = 52 m³ · LFL, and never below m1 = 6 m³ · LFL, up to which no floor area is required. Tables in manuals print the first formula alone: method as printed.",
    "With circulation by a leak detection system: half the flammability limit in the rooms that the duct serves, 2.2 m (7.2 ft) of height counted, up to m3 = 260 m³ · LFL.",
    "Dispersal volume and concentration limit are those of ASHRAE 15, over the full height of the ceiling, for occupancies other than institutional. #N/A above 2,000 ft (610 m), for which no factor is held.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    floorArea: quantity("area", "floor area of the room", { above: 0, usual: [us("area", 20), us("area", 5000)] }),
    releaseHeight: RELEASE_HEIGHT,
    charge: SYSTEM_CHARGE.optional(),
    ...ROOM_OPTIONS,
  },
  returns: listResult("charge limits", {
    chargeLimit: quantityResult("mass", "limit of the room by the method"),
    chargeWithoutLimit: quantityResult("mass", "m1: no floor area required up to it"),
    flammabilityLimit: quantityResult("concentration", "lower flammability limit used"),
    governs: wordResult("which clause governs"),
    chargeCeiling: quantityResult("mass", "m2: most without ventilation"),
    chargeOfScope: quantityResult("mass", "m3: most that the standard covers"),
    limitByArea: quantityResult("mass", "by the formula alone"),
    limitByVolume: quantityResult("mass", "by 0.75 LFL h0 A"),
    limitWithCirculation: quantityResult("mass", "with detection and circulation"),
    leastArea: quantityResult("area", "least floor area for the charge"),
    leastCirculation: quantityResult("air flow", "least circulation for the charge"),
    dispersalLimit: quantityResult("mass", "by the effective dispersal volume"),
    concentrationLimit: quantityResult("mass", "by the refrigerant concentration limit"),
    why: wordResult("why it governs"),
    finding: wordResult("charge against limit"),
    standard: wordResult("edition"),
  }),
  facts: { limitUsed: "concentration" },
  cautions: [
    { rule: roomIsACheckOnly, raisedBy: room },
    { rule: listedCoilOnly, raisedBy: room },
    { rule: contestedFlammability, raisedBy: { ...room, refrigerant: "R-454B" } },
    { rule: chargeAboveLimit, raisedBy: { ...room, charge: 30 } },
    { rule: circulationDuties, raisedBy: { ...fernhill, method: "circulation 0.5" } },
  ],
  sources: ["ashrae15Volume", "nycMechanical"],
  example: fernhill,
  checks: [
    {
      inputs: { refrigerant: "R-32", floorArea: 76.6, releaseHeight: 0.6, units: "SI" },
      expected: { chargeLimit: 3, governs: "2.5 LFL^1.25 h0 √A" },
      tolerance: "0.42 %",
      source: { key: "iec60335", where: "GG.2 as tabulated for R-32" },
      remark: "the table takes 0.307 kg/m³; this uses the lower 0.306",
    },
    {
      inputs: { refrigerant: "R-32", floorArea: 10, releaseHeight: 0.6, units: "SI" },
      expected: { chargeLimit: 1.842, governs: "6 LFL: no floor area is asked" },
      tolerance: "0.34 %",
      source: { key: "iec60335", where: "GG.2, m1 as tabulated for R-32" },
      remark: "the formula alone gives 1.084 kg, below the charge that needs no area",
    },
    {
      inputs: { refrigerant: "R-32", floorArea: 20000, releaseHeight: 7.2 },
      expected: { chargeLimit: 35.1, governs: "52 LFL: ceiling without ventilation", chargeCeiling: 35.1 },
      tolerance: 0.05,
      source: { key: "iec60335", where: "GG.2, m2 as printed for R-32" },
    },
    {
      inputs: { refrigerant: "R-32", floorArea: 45, releaseHeight: 0.6, units: "SI" },
      expected: { chargeLimit: 2.299 },
      tolerance: 0.011,
      source: { key: "iec60335", where: "GG.2 as tabulated for R-32" },
    },
    {
      inputs: { refrigerant: "R-32", floorArea: 10, releaseHeight: 0.6, flammabilityLimit: 0.307, units: "SI" },
      expected: { chargeWithoutLimit: 1.842, chargeOfScope: 79.8, limitByArea: 1.084 },
      tolerance: 0.03,
      source: "manualR32",
    },
    {
      inputs: { refrigerant: "R-32", floorArea: 168, releaseHeight: 6, ceilingHeight: 8 },
      expected: { concentrationLimit: 6.45 },
      tolerance: 0.02,
      source: "nycMechanical",
      remark: "4.8 lb per 1,000 ft³ of 12 × 14 × 8 ft",
    },
    { inputs: { refrigerant: "R-410A", floorArea: 300, releaseHeight: 6 }, expected: "#N/A", source: "ashrae34" },
  ],
  compute({ refrigerant, floorArea, releaseHeight, charge, ...options }, { trace, recordFacts }) {
    const limits = roomLimits({ refrigerant, floorArea, releaseHeight, charge, ...options }, trace);
    recordFacts({ limitUsed: limits.flammabilityLimit });
    return limits;
  },
});
