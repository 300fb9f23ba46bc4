import { cellFunction } from "../../kernel/cellFunction";
import { NO_VALUE, list, of, word } from "../../kernel/result";
import { REFRIGERANT } from "../args";
import { flammable, rulesInMotion } from "../cautions";
import { boilingAtSeaLevel, compositionOf, flammabilityOf, limitRow, retrofitNote, warmingOf } from "../models/facts";
import { refrigerant as named } from "../models/refrigerant";
import { EQUATION_SOURCES } from "../sources";

export const facts = cellFunction({
  id: "REFRIG.FACTS",
  topic: "refrigerant",
  summary: "Composition, safety class, flammability, warming potential, boiling and critical point of a refrigerant.",
  finds: ["GWP", "A2L", "flammable", "ASHRAE 34", "retrofit", "drop-in", "critical temperature", "glide"],
  remarks: [
    "Warming potentials are for 100 years; a blend's follows from its components by mass and is rounded to a whole number, as lists print it. Other assessment reports give other figures: rules name the report they count by.",
    "The lower flammability limit is the lowest one published. Boiling point and glide are those at 1 atm, the boiling point on the bubble line. A blend's critical point is that of the mixture model.",
  ],
  args: { refrigerant: REFRIGERANT },
  gives: list("facts", {
    composition: word("composition by mass"),
    safetyClass: word("safety class"),
    lowerFlammabilityLimit: of("concentration", "lower flammability limit, the lowest published"),
    warmingPotential: of("number", "100-year warming potential"),
    assessmentReport: word("where the warming potential is from"),
    normalBoilingPoint: of("temperature", "bubble temperature at 1 atm"),
    criticalTemperature: of("temperature", "critical temperature"),
    criticalPressure: of("pressure", "critical pressure, absolute"),
    glide: of("temperature difference", "dew less bubble temperature at 1 atm"),
    retrofitNote: word("what to know before using it in an existing machine"),
  }),
  cautions: [
    { rule: flammable, fires: { refrigerant: "R-454B" } },
    { rule: rulesInMotion, fires: { refrigerant: "R-410A" } },
  ],
  sources: ["iec60335", ...EQUATION_SOURCES],
  checks: [
    {
      at: { refrigerant: "R-410A" },
      gives: { composition: "R-32 50 %, R-125 50 %", safetyClass: "A1", warmingPotential: 2088 },
      within: 0,
      from: "ashrae34",
      remark: "printed warming potential 2,088 (AR4)",
    },
    {
      at: { refrigerant: "R-454B" },
      gives: { warmingPotential: 466 },
      within: 0,
      from: "ipccAr4",
      remark: "printed 465 and 466",
    },
    { at: { refrigerant: "R-454B" }, gives: { safetyClass: "A2L" }, from: "ashrae34" },
    { at: { refrigerant: "R-407C" }, gives: { warmingPotential: 1774 }, within: 0.5, from: "ipccAr4" },
    { at: { refrigerant: "R-404A" }, gives: { warmingPotential: 3922 }, within: 0.5, from: "ipccAr4" },
    { at: { refrigerant: "R-507A" }, gives: { warmingPotential: 3985 }, within: 0.5, from: "ipccAr4" },
    { at: { refrigerant: "R-513A" }, gives: { warmingPotential: 631 }, within: 0.5, from: "ipccAr4" },
    { at: { refrigerant: "R-452B" }, gives: { warmingPotential: 698 }, within: 0.5, from: "ipccAr4" },
    {
      at: { refrigerant: "R-134a", units: "SI" },
      gives: { normalBoilingPoint: -26.1, criticalTemperature: 101.06, criticalPressure: 4059.28 },
      within: 0.1,
      from: "tillnerRothBaehr1994",
      remark: "boiling point from memory",
    },
    {
      at: { refrigerant: "R-407C", units: "SI" },
      gives: { normalBoilingPoint: -43.6, glide: 7 },
      within: 0.3,
      from: "ashrae34",
      remark: "from memory: bubble -43.6 °C, dew -36.6 °C",
    },
    {
      at: { refrigerant: "R-32", units: "SI" },
      gives: { lowerFlammabilityLimit: 0.306 },
      within: 0.001,
      from: "iec60335",
    },
  ],
  work({ refrigerant }, { trace }) {
    const fluid = named(refrigerant);
    const { safetyClass, lower } = flammabilityOf(refrigerant);
    if (lower !== undefined)
      trace.lookup({
        table: "Lower flammability limit, the lowest published",
        row: limitRow(refrigerant),
        gives: { value: lower, kind: "concentration" },
        source: "iec60335",
      });
    const { potential, reports } = warmingOf(fluid, trace);
    return {
      composition: compositionOf(fluid),
      safetyClass,
      lowerFlammabilityLimit: lower ?? NO_VALUE,
      // Lists print whole numbers; limits count by the unrounded sum.
      warmingPotential: Math.round(potential),
      assessmentReport: `${reports}, 100 years`,
      ...boilingAtSeaLevel(refrigerant, trace),
      criticalTemperature: fluid.critical.temperature,
      criticalPressure: fluid.critical.pressure,
      retrofitNote: retrofitNote(refrigerant, potential),
    };
  },
});
