import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, hotDischarge } from "../cautions";
import { factorOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const cycleFactor = cellFunction({
  id: "CYCLE.FACTOR",
  topic: "cycle",
  summary: "Heat rejected over cooling of the refrigeration cycle.",
  keywords: ["heat rejection factor", "THR"],
  details: [
    "Printed tables of the R-12 and R-22 era for suction-cooled hermetic compressors read 1.20 at 7.2/40 °C; compressor data override both.",
  ],
  memoised: true,
  args: CYCLE_ARGS,
  returns: quantityResult("number", "heat rejected per cooling"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, raisedBy: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: adiabaticShell, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", evaporating: 45, condensing: 105 },
      expected: 1.211,
      tolerance: 0.001,
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-134a", evaporating: 45, condensing: 105 },
      expected: 1.208,
      tolerance: 0.001,
      source: "coolprop8",
    },
  ],
  compute(args, { trace, step, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    return step(factorOf, { qc: solved.rejected, q: solved.cooling });
  },
});
