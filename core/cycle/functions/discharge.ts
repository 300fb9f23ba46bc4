import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { coldCondensing, hotDischarge } from "../cautions";
import { cycleOf, factsOf } from "../working";

export const cycleDischarge = cellFunction({
  id: "CYCLE.DISCHARGE",
  topic: "cycle",
  summary: "Temperature of the compressor's discharge gas.",
  keywords: ["hot gas"],
  details: ["Adiabatic shell: a real discharge is cooler by the shell's loss."],
  memoised: true,
  args: CYCLE_ARGS,
  returns: quantityResult("temperature", "discharge temperature"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, raisedBy: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: {
        refrigerant: "R-22",
        evaporating: -5,
        condensing: 35,
        superheat: 0,
        subcooling: 0,
        efficiency: 1,
        units: "SI",
      },
      expected: 53.81,
      tolerance: 0.1,
      source: "coolprop8",
    },
  ],
  compute(args, { trace, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    return solved.discharge.temperature;
  },
});
