import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { REFRIGERANT } from "../../refrigerant/args";
import { flammabilityOf, limitRow } from "../../refrigerant/facts";
import { contestedFlammability, roomIsACheckOnly } from "../cautions";
import { chargeCeiling, chargeWithoutArea, roomLimitByArea, roomLimitByVolume } from "../equations";

const WHERE: Readonly<Record<string, string>> = {
  A1: "not flammable: see concentration limits in ASHRAE 15 or EN 378",
  A3: "highly flammable: see the class 3 clauses of IEC 60335-2-40 annex GG and the local code",
};

interface Clauses {
  /** kg */
  readonly byArea: number;
  readonly byVolume: number;
  readonly ceiling: number;
  readonly chargeWithoutLimit: number;
}

function governing({ byArea, byVolume, ceiling, chargeWithoutLimit }: Clauses): string {
  const byRoom = Math.min(byArea, byVolume, ceiling);
  if (byRoom <= chargeWithoutLimit) return "6 LFL: no floor area is asked";
  if (byRoom === ceiling) return "52 LFL: ceiling without ventilation";
  return byRoom === byArea ? "2.5 LFL^1.25 h0 √A" : "0.75 LFL h0 A";
}

export const lineRoomLimit = cellFunction({
  id: "LINE.ROOMLIMIT",
  topic: "line",
  summary: "Charge limit of a mildly flammable refrigerant in a room.",
  keywords: ["A2L", "2L", "flammable", "room size", "floor area"],
  details: [
    "IEC 60335-2-40:2018, GG.2. Release heights: floor 0.6 m, window 1.0 m, wall 1.8 m, ceiling 2.2 m. Uses the lower published flammability limit.",
    "The limit applies to the whole system's charge, pool exchanger and added lines included.",
    "The limit is the least of the two formulas and of the ceiling m2 = 52 m³ · LFL, and never below m1 = 6 m³ · LFL, up to which no floor area is required. Tables in manuals print the first formula alone.",
    "Above the ceiling no unventilated room is large enough: use detection with circulation or ventilation, by the equipment's listing.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    floorArea: quantity("area", "floor area of the room", { above: 0, usual: [us("area", 20), us("area", 5000)] }),
    releaseHeight: quantity("length", "height at which a leak is released", { from: 0.6, to: 3, usual: [0.6, 2.2] }),
  },
  returns: listResult("charge limits", {
    chargeLimit: quantityResult("mass", "most charge allowed by the room"),
    chargeWithoutLimit: quantityResult("mass", "charge up to which no floor area is required"),
    flammabilityLimit: quantityResult("concentration", "lower flammability limit used"),
    governs: wordResult("which clause governs"),
    chargeCeiling: quantityResult("mass", "most charge without ventilation"),
  }),
  cautions: [
    { rule: roomIsACheckOnly, raisedBy: { refrigerant: "R-32", floorArea: 300, releaseHeight: 6 } },
    { rule: contestedFlammability, raisedBy: { refrigerant: "R-454B", floorArea: 300, releaseHeight: 6 } },
  ],
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
    { inputs: { refrigerant: "R-410A", floorArea: 300, releaseHeight: 6 }, expected: "#N/A", source: "ashrae34" },
  ],
  compute({ refrigerant, floorArea: A, releaseHeight: h0 }, { step, trace }) {
    const { safetyClass, lower: LFL } = flammabilityOf(refrigerant);
    if (safetyClass !== "A2L" || LFL === undefined)
      throw notAvailable(
        `refrigerant: ${refrigerant} is class ${safetyClass}, this limit is for class 2L; ${WHERE[safetyClass] ?? ""}`,
      );
    trace.lookup({
      table: "Lower flammability limit, the lower one published",
      row: limitRow(refrigerant),
      result: { value: LFL, kind: "concentration" },
      source: "iec60335",
    });
    const byArea = step(roomLimitByArea, { LFL, h0, A });
    const byVolume = step(roomLimitByVolume, { LFL, h0, A });
    const chargeWithoutLimit = step(chargeWithoutArea, { LFL });
    const ceiling = step(chargeCeiling, { LFL });
    const byRoom = Math.min(byArea, byVolume, ceiling);
    return {
      chargeLimit: Math.max(chargeWithoutLimit, byRoom),
      chargeWithoutLimit,
      flammabilityLimit: LFL,
      governs: governing({ byArea, byVolume, ceiling, chargeWithoutLimit }),
      chargeCeiling: ceiling,
    };
  },
});
