import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, hotDischarge } from "../cautions";
import { factorOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const factor = cellFunction({
  id: "CYCLE.FACTOR",
  topic: "cycle",
  summary: "Heat rejected per cooling of the refrigeration cycle.",
  finds: ["heat rejection factor", "THR"],
  remarks: [
    "Printed tables of the R-12 and R-22 era for suction-cooled hermetic compressors read 1.20 at 7.2/40 °C; compressor data go before both.",
  ],
  heavy: true,
  args: CYCLE_ARGS,
  gives: of("number", "heat rejected per cooling"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, fires: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: adiabaticShell, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", evaporating: 45, condensing: 105 }, gives: 1.211, within: 0.001, from: "coolprop8" },
    { at: { refrigerant: "R-134a", evaporating: 45, condensing: 105 }, gives: 1.208, within: 0.001, from: "coolprop8" },
  ],
  work(args, { trace, step, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    return step(factorOf, { qc: solved.rejected, q: solved.cooling });
  },
});
