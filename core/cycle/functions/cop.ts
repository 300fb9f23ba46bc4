import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, coldCondensing, hotDischarge } from "../cautions";
import { copOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const cycleCop = cellFunction({
  id: "CYCLE.COP",
  topic: "cycle",
  summary: "Cooling over compressor power of the refrigeration cycle, without fans.",
  keywords: ["coefficient of performance", "efficiency", "EER"],
  details: ["Single stage, no pressure drops, adiabatic shell; all superheat counts as useful cooling."],
  memoised: true,
  args: CYCLE_ARGS,
  returns: quantityResult("COP", "COP of the compressor"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, raisedBy: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
    { rule: adiabaticShell, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", evaporating: 45, condensing: 105 },
      expected: 4.74,
      tolerance: 0.01,
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-134a", evaporating: 45, condensing: 120 },
      expected: 3.64,
      tolerance: 0.01,
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-32", evaporating: 45, condensing: 90 },
      expected: 6.37,
      tolerance: 0.01,
      source: "coolprop8",
    },
  ],
  compute(args, { trace, step, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    return step(copOf, { q: solved.cooling, w: solved.work });
  },
});
