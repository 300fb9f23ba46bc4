import { cellFunction } from "../../kernel/define/cellFunction";
import { of, row } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { hotDischarge } from "../cautions";
import { shareOf } from "../equations";
import { cycleOf, factsOf } from "../working";

export const split = cellFunction({
  id: "CYCLE.SPLIT",
  topic: "cycle",
  summary: "Shares of the heat rejected: desuperheating, condensing, subcooling.",
  finds: ["desuperheater", "zones"],
  heavy: true,
  args: CYCLE_ARGS,
  gives: row("shares of the heat rejected", {
    desuperheating: of("fraction", "share that is desuperheating"),
    condensing: of("fraction", "share that is condensing"),
    subcooling: of("fraction", "share that is subcooling"),
  }),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [{ rule: hotDischarge, fires: { refrigerant: "R-32", evaporating: 20, condensing: 130 } }],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { refrigerant: "R-22", evaporating: 45, condensing: 105 },
      gives: { desuperheating: 0.153 },
      within: 0.001,
      from: "coolprop8",
    },
    {
      at: { refrigerant: "R-32", evaporating: 45, condensing: 105 },
      gives: { desuperheating: 0.216 },
      within: 0.001,
      from: "coolprop8",
    },
  ],
  work(args, { trace, step, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    const { discharge, dew, bubble, liquid, rejected: qc } = solved;
    return {
      desuperheating: step(shareOf, { ha: discharge.enthalpy, hb: dew.enthalpy, qc }),
      condensing: step(shareOf, { ha: dew.enthalpy, hb: bubble.enthalpy, qc }),
      subcooling: step(shareOf, { ha: bubble.enthalpy, hb: liquid.enthalpy, qc }),
    };
  },
});
