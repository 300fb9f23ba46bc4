import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult, rowResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { hotDischarge } from "../cautions";
import { shareOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const cycleSplit = cellFunction({
  id: "CYCLE.SPLIT",
  topic: "cycle",
  summary: "Shares of the heat rejected: desuperheating, condensing, subcooling.",
  keywords: ["desuperheater", "zones"],
  memoised: true,
  args: CYCLE_ARGS,
  returns: rowResult("shares of the heat rejected", {
    desuperheating: quantityResult("fraction", "share that is desuperheating"),
    condensing: quantityResult("fraction", "share that is condensing"),
    subcooling: quantityResult("fraction", "share that is subcooling"),
  }),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [{ rule: hotDischarge, raisedBy: { refrigerant: "R-32", evaporating: 20, condensing: 130 } }],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", evaporating: 45, condensing: 105 },
      expected: { desuperheating: 0.153 },
      tolerance: 0.001,
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-32", evaporating: 45, condensing: 105 },
      expected: { desuperheating: 0.216 },
      tolerance: 0.001,
      source: "coolprop8",
    },
  ],
  compute(args, { trace, step, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    const { discharge, dew, bubble, liquid, rejected: qc } = solved;
    return {
      desuperheating: step(shareOf, { ha: discharge.enthalpy, hb: dew.enthalpy, qc }),
      condensing: step(shareOf, { ha: dew.enthalpy, hb: bubble.enthalpy, qc }),
      subcooling: step(shareOf, { ha: bubble.enthalpy, hb: liquid.enthalpy, qc }),
    };
  },
});
