import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, of, table, word } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, coldCondensing, hotDischarge } from "../cautions";
import { afterExpansion } from "../cycle";
import { cycleOf, factsOf } from "../working";
import type { State } from "../../refrigerant/state/state";

/** Vapour's share; empty where the state is a single superheated or subcooled phase. */
const qualityOf = (state: State, saturated?: number): number | typeof NO_VALUE =>
  state.phase === "two-phase" ? state.quality : (saturated ?? NO_VALUE);

export const states = cellFunction({
  id: "CYCLE.STATES",
  topic: "cycle",
  summary: "State points of the refrigeration cycle; pressures are absolute.",
  finds: ["pressure enthalpy", "log p h", "points"],
  remarks: ["Pressures are absolute. Enthalpy zero: 200 kJ/kg and 1 kJ/(kg·K) for saturated liquid at 0 °C (IIR)."],
  heavy: true,
  args: CYCLE_ARGS,
  gives: table("state points", {
    point: word("where in the cycle"),
    pressure: of("pressure", "pressure, absolute"),
    temperature: of("temperature", "temperature"),
    enthalpy: of("enthalpy", "enthalpy, IIR zero"),
    entropy: of("entropy", "entropy, IIR zero"),
    density: of("density", "density"),
    quality: of("fraction", "vapour's share by mass"),
  }),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, fires: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
    { rule: adiabaticShell, fires: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
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
      gives: { row: "discharge", column: "enthalpy", is: 432.229 },
      within: 0.05,
      from: "coolprop8",
    },
  ],
  work(args, { trace, note }) {
    const solved = cycleOf(args, trace);
    note(factsOf(solved));
    const line = (point: string, state: State, saturated?: number) => ({
      point,
      pressure: state.pressure,
      temperature: state.temperature,
      enthalpy: state.enthalpy,
      entropy: state.entropy,
      density: state.density,
      quality: qualityOf(state, saturated),
    });
    return [
      line("suction", solved.suction),
      line("discharge, isentropic", solved.isentropicDischarge),
      line("discharge", solved.discharge),
      line("dew point", solved.dew, 1),
      line("bubble point", solved.bubble, 0),
      line("liquid", solved.liquid),
      line("after expansion", afterExpansion(solved)),
    ];
  },
});
