import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CYCLE_ARGS } from "../args";
import { adiabaticShell, coldCondensing, hotDischarge } from "../cautions";
import { afterExpansion } from "../cycle";
import { cycleOf, factsOf } from "../working";
import type { RefrigerantState } from "../../refrigerant/state/state";

/** Vapour's share; empty for a superheated or subcooled state. */
const qualityOf = (state: RefrigerantState, saturated?: number): number | typeof NO_VALUE =>
  state.phase === "two-phase" ? state.quality : (saturated ?? NO_VALUE);

export const cycleStates = cellFunction({
  id: "CYCLE.STATES",
  topic: "cycle",
  summary: "State points of the refrigeration cycle; pressures are absolute.",
  keywords: ["pressure enthalpy", "log p h", "points"],
  details: ["Pressures are absolute. Enthalpy zero: 200 kJ/kg and 1 kJ/(kg·K) for saturated liquid at 0 °C (IIR)."],
  memoised: true,
  args: CYCLE_ARGS,
  returns: tableResult("state points", {
    point: wordResult("where in the cycle"),
    pressure: quantityResult("pressure", "pressure, absolute"),
    temperature: quantityResult("temperature", "temperature"),
    enthalpy: quantityResult("enthalpy", "enthalpy, IIR zero"),
    entropy: quantityResult("entropy", "entropy, IIR zero"),
    density: quantityResult("density", "density"),
    quality: quantityResult("fraction", "vapour's share by mass"),
  }),
  facts: { dischargeTemperature: "temperature", pressureRatio: "number" },
  cautions: [
    { rule: hotDischarge, raisedBy: { refrigerant: "R-32", evaporating: 20, condensing: 130 } },
    { rule: coldCondensing, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 75 } },
    { rule: adiabaticShell, raisedBy: { refrigerant: "R-410A", evaporating: 45, condensing: 105 } },
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
      expected: { row: "discharge", column: "enthalpy", value: 432.229 },
      tolerance: 0.05,
      source: "coolprop8",
    },
  ],
  compute(args, { trace, recordFacts }) {
    const solved = cycleOf(args, trace);
    recordFacts(factsOf(solved));
    const line = (point: string, state: RefrigerantState, saturated?: number) => ({
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
