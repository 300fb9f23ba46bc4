import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { coldCondensing, hotDischarge } from "../cautions";
import { cycleOf, factsOf } from "../working";

export const discharge = cellFunction({
  id: "CYCLE.DISCHARGE",
  topic: "cycle",
  summary: "Temperature of the compressor's discharge gas.",
  finds: ["hot gas"],
  remarks: ["Adiabatic shell: a real discharge is cooler by the shell's loss."],
  heavy: true,
  args: CYCLE_ARGS,
  gives: of("temperature", "discharge temperature"),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, fires: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: {
        refrigerant: "R-22",
        evaporating: -5,
        condensing: 35,
        superheat: 0,
        subcooling: 0,
        efficiency: 1,
        units: "SI",
      },
      gives: 53.81,
      within: 0.1,
      from: "coolprop8",
    },
  ],
  work(args, { trace, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    return solved.discharge.temperature;
  },
});
