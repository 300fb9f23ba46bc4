import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { REFRIGERANT } from "../args";
import { flammable, rulesInMotion } from "../cautions";
import {
  boilingAtSeaLevel,
  compositionOf,
  flammabilityOf,
  laterWarmingOf,
  limitRow,
  printedPotential,
  retrofitNote,
  warmingOf,
} from "../facts";
import type { LaterReport } from "../data/warming";
import { loadRefrigerant as named } from "../refrigerant";
import { EQUATION_SOURCES } from "../sources";

export const refrigFacts = cellFunction({
  id: "REFRIG.FACTS",
  topic: "refrigerant",
  summary: "Composition, safety class, flammability, warming potential, boiling and critical point of a refrigerant.",
  keywords: ["GWP", "A2L", "flammable", "ASHRAE 34", "retrofit", "drop-in", "critical temperature", "glide"],
  details: [
    "Warming potentials are for 100 years. A blend's is the mean of its components by mass, rounded to a whole number as lists print it. Other assessment reports give other figures: a rule names the report that it uses.",
    "The lower flammability limit is the lowest published value. Boiling point (on the bubble line) and glide are at 1 atm. A blend's critical point is that of the mixture model.",
  ],
  args: { refrigerant: REFRIGERANT },
  returns: listResult("facts", {
    composition: wordResult("composition by mass"),
    safetyClass: wordResult("safety class"),
    lowerFlammabilityLimit: quantityResult("concentration", "lower flammability limit, the lowest published"),
    warmingPotential: quantityResult("number", "100-year warming potential"),
    assessmentReport: wordResult("where the warming potential is from"),
    normalBoilingPoint: quantityResult("temperature", "bubble temperature at 1 atm"),
    criticalTemperature: quantityResult("temperature", "critical temperature"),
    criticalPressure: quantityResult("pressure", "critical pressure, absolute"),
    glide: quantityResult("temperature difference", "dew less bubble temperature at 1 atm"),
    retrofitNote: wordResult("what to know before using it in an existing machine"),
    warmingPotentialEu2024: quantityResult("number", "by Regulation (EU) 2024/573"),
    warmingPotentialAr5: quantityResult("number", "by the IPCC's fifth report"),
    warmingPotentialAr6: quantityResult("number", "by the IPCC's sixth report"),
  }),
  cautions: [
    { rule: flammable, raisedBy: { refrigerant: "R-454B" } },
    { rule: rulesInMotion, raisedBy: { refrigerant: "R-410A" } },
  ],
  sources: ["iec60335", ...EQUATION_SOURCES],
  checks: [
    {
      inputs: { refrigerant: "R-410A" },
      expected: { composition: "R-32 50 %, R-125 50 %", safetyClass: "A1", warmingPotential: 2088 },
      tolerance: 0,
      source: "ashrae34",
      remark: "printed warming potential 2,088 (AR4)",
    },
    {
      inputs: { refrigerant: "R-454B" },
      expected: { warmingPotential: 466 },
      tolerance: 0,
      source: "ipccAr4",
      remark: "printed 465 and 466",
    },
    { inputs: { refrigerant: "R-454B" }, expected: { safetyClass: "A2L" }, source: "ashrae34" },
    { inputs: { refrigerant: "R-407C" }, expected: { warmingPotential: 1774 }, tolerance: 0.5, source: "ipccAr4" },
    { inputs: { refrigerant: "R-404A" }, expected: { warmingPotential: 3922 }, tolerance: 0.5, source: "ipccAr4" },
    { inputs: { refrigerant: "R-507A" }, expected: { warmingPotential: 3985 }, tolerance: 0.5, source: "ipccAr4" },
    { inputs: { refrigerant: "R-513A" }, expected: { warmingPotential: 631 }, tolerance: 0.5, source: "ipccAr4" },
    { inputs: { refrigerant: "R-407A" }, expected: { warmingPotential: 2107 }, tolerance: 0.5, source: "ipccAr4" },
    {
      inputs: { refrigerant: "R-454B" },
      expected: { warmingPotentialEu2024: 465, warmingPotentialAr6: 531 },
      tolerance: 0.5,
      source: "eu2024573",
      remark: "465 printed; AR6 from memory",
    },
    { inputs: { refrigerant: "R-452B" }, expected: { warmingPotential: 698 }, tolerance: 0.5, source: "ipccAr4" },
    {
      inputs: { refrigerant: "R-134a", units: "SI" },
      expected: { normalBoilingPoint: -26.1, criticalTemperature: 101.06, criticalPressure: 4059.28 },
      tolerance: 0.1,
      source: "tillnerRothBaehr1994",
      remark: "boiling point from memory",
    },
    {
      inputs: { refrigerant: "R-407C", units: "SI" },
      expected: { normalBoilingPoint: -43.6, glide: 7 },
      tolerance: 0.3,
      source: "ashrae34",
      remark: "from memory: bubble -43.6 °C, dew -36.6 °C",
    },
    {
      inputs: { refrigerant: "R-32", units: "SI" },
      expected: { lowerFlammabilityLimit: 0.306 },
      tolerance: 0.001,
      source: "iec60335",
    },
  ],
  compute({ refrigerant }, { trace }) {
    const fluid = named(refrigerant);
    const { safetyClass, lower } = flammabilityOf(refrigerant);
    if (lower !== undefined)
      trace.lookup({
        table: "Lower flammability limit, the lowest published",
        row: limitRow(refrigerant),
        result: { value: lower, kind: "concentration" },
        source: "iec60335",
      });
    const { potential, reports } = warmingOf(fluid, trace);
    const later = (report: LaterReport) => {
      const found = laterWarmingOf(fluid, report);
      return found === undefined ? NO_VALUE : printedPotential(found);
    };
    return {
      composition: compositionOf(fluid),
      safetyClass,
      lowerFlammabilityLimit: lower ?? NO_VALUE,
      warmingPotential: printedPotential(potential),
      assessmentReport: `${reports}, 100 years`,
      ...boilingAtSeaLevel(refrigerant, trace),
      criticalTemperature: fluid.critical.temperature,
      criticalPressure: fluid.critical.pressure,
      retrofitNote: retrofitNote(refrigerant, potential),
      warmingPotentialEu2024: later("EU 2024/573"),
      warmingPotentialAr5: later("AR5"),
      warmingPotentialAr6: later("AR6"),
    };
  },
});
