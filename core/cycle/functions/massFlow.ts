import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { hotDischarge } from "../cautions";
import { massFlowOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const massFlow = cellFunction({
  id: "CYCLE.MASSFLOW",
  topic: "cycle",
  summary: "Refrigerant mass flow that gives a cooling.",
  finds: ["refrigerant flow"],
  heavy: true,
  args: { cooling: HEAT_RATE.saying("cooling at the evaporator"), ...CYCLE_ARGS },
  gives: of("mass flow", "refrigerant mass flow"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [{ rule: hotDischarge, fires: { cooling: 90000, refrigerant: "R-32", evaporating: 20, condensing: 130 } }],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: {
        cooling: 10,
        refrigerant: "R-22",
        evaporating: -5,
        condensing: 35,
        superheat: 0,
        subcooling: 0,
        efficiency: 1,
        units: "SI",
      },
      gives: 224.874,
      within: "0.1 %",
      from: "coolprop8",
    },
  ],
  work({ cooling, ...args }, { trace, step, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    return step(massFlowOf, { Q: cooling, q: solved.cooling });
  },
});
