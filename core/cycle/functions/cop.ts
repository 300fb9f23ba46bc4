import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, coldCondensing, hotDischarge } from "../cautions";
import { copOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const cop = cellFunction({
  id: "CYCLE.COP",
  topic: "cycle",
  summary: "Cooling per compressor power of the refrigeration cycle, without fans.",
  finds: ["coefficient of performance", "efficiency", "EER"],
  remarks: ["Single stage, no pressure drops, adiabatic shell; all superheat counts as useful cooling."],
  heavy: true,
  args: CYCLE_ARGS,
  gives: of("COP", "COP of the compressor"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, fires: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
    { rule: adiabaticShell, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", evaporating: 45, condensing: 105 }, gives: 4.74, within: 0.01, from: "coolprop8" },
    { at: { refrigerant: "R-134a", evaporating: 45, condensing: 120 }, gives: 3.64, within: 0.01, from: "coolprop8" },
    { at: { refrigerant: "R-32", evaporating: 45, condensing: 90 }, gives: 6.37, within: 0.01, from: "coolprop8" },
  ],
  work(args, { trace, step, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    return step(copOf, { q: solved.cooling, w: solved.work });
  },
});
