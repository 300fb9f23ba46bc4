import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { hotDischarge } from "../cautions";
import { massFlowOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const cycleMassFlow = cellFunction({
  id: "CYCLE.MASSFLOW",
  topic: "cycle",
  summary: "Refrigerant mass flow for a cooling capacity.",
  keywords: ["refrigerant flow"],
  memoised: true,
  args: { cooling: HEAT_RATE.describedAs("cooling at the evaporator"), ...CYCLE_ARGS },
  returns: quantityResult("mass flow", "refrigerant mass flow"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, raisedBy: { cooling: 90000, refrigerant: "R-32", evaporating: 20, condensing: 130 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: {
        cooling: 10,
        refrigerant: "R-22",
        evaporating: -5,
        condensing: 35,
        superheat: 0,
        subcooling: 0,
        efficiency: 1,
        units: "SI",
      },
      expected: 224.874,
      tolerance: "0.1 %",
      source: "coolprop8",
    },
  ],
  compute({ cooling, ...args }, { trace, step, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    return step(massFlowOf, { Q: cooling, q: solved.cooling });
  },
});
