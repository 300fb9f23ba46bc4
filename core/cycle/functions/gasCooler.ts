import { choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { listResult, quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { beyondRelation, carbonDioxidePressure, hotDischarge } from "../cautions";
import { OPTIMUM_RELATIONS, RULES, bestPressure, checkTranscritical, gasCoolerCycle } from "../gasCooler";

const degF = (value: number): number => us("temperature", value);
/** K */
const ABOVE = [333.15, 323.15, 313.15] as const;
/** Pa */
const HELD_UP = 1e6;
/** K */
const SUPERHEAT = 5;
const share = (text: string) => quantityResult("fraction", text);

export const cycleGasCooler = cellFunction({
  id: "CYCLE.GASCOOLER",
  topic: "cycle",
  memoised: true,
  summary: "Optimum high pressure of a transcritical R-744 machine, and the heat and power there.",
  keywords: ["CO2", "carbon dioxide", "transcritical", "optimum pressure", "supermarket", "heat reclaim", "booster"],
  details: [
    "Gas cooler outlet: refrigerant leaving it, 2 to 5 °F above the air or water. Relations: Liao 2000 (default), Sawalha 2008, Chen and Gu 2005, Sarkar 2004, or cycle: greatest cooling for power by the equation of state.",
    "Heat, power and discharge are of a single-stage cycle with 9 °F (5 K) of useful superheat and an isentropic efficiency of 0.70; the optimum is that of saturated suction. Held up: 10 bar (145 psi) above the optimum; for heat reclaim keep the outlet as cold as the return water allows.",
  ],
  args: {
    gasCoolerOut: quantity("temperature", "refrigerant leaving the gas cooler", { from: degF(75), to: degF(150) }),
    evaporating: quantity("temperature", "evaporating temperature", { from: degF(-60), to: degF(70) }),
    relation: choice("GasCoolerRelation", OPTIMUM_RELATIONS, "relation for the optimum", {
      liao: "Liao 2000",
      sawalha: "Sawalha 2008",
      chen: "Chen and Gu 2005",
      sarkar: "Sarkar 2004",
      "equation of state": "cycle",
    }).default("Liao 2000"),
  },
  returns: listResult("gas cooler", {
    highPressure: quantityResult("pressure", "optimum, absolute"),
    gaugePressure: quantityResult("pressure", "the same on a gauge at sea level"),
    cop: quantityResult("COP", "cooling for power there"),
    heatRatio: quantityResult("number", "heat rejected per cooling"),
    dischargeTemperature: quantityResult("temperature", "gas leaving the compressor"),
    shareAbove60: share("of the heat above 140 °F (60 °C)"),
    shareAbove50: share("of the heat above 122 °F (50 °C)"),
    shareAbove40: share("of the heat above 104 °F (40 °C)"),
    bestOfCycle: quantityResult("pressure", "optimum of this cycle, absolute"),
    powerHeldUp: share("more power for the same cooling, held up"),
    heatHeldUp: share("more heat for the same cooling, held up"),
    shareHeldUp: share("of that heat above 122 °F (50 °C)"),
  }),
  facts: { beyond: "yes/no" },
  cautions: [
    { rule: carbonDioxidePressure, raisedBy: { gasCoolerOut: 95, evaporating: 20 } },
    { rule: beyondRelation, raisedBy: { gasCoolerOut: 95, evaporating: -20 } },
    { rule: hotDischarge, raisedBy: { gasCoolerOut: 120, evaporating: 10 } },
  ],
  sources: ["spanWagner1996"],
  checks: [
    {
      inputs: { gasCoolerOut: 35, evaporating: -10, units: "SI" },
      expected: { highPressure: 8958 },
      tolerance: 10,
      source: "liao2000",
      remark: "by hand from the printed form",
    },
    {
      inputs: { gasCoolerOut: 40, evaporating: 5, relation: "cycle", units: "SI" },
      expected: { highPressure: 10_100 },
      tolerance: "0.5 %",
      source: "spanWagner1996",
      remark: "by another program at efficiency 0.70",
    },
  ],
  compute({ gasCoolerOut, evaporating, relation }, { trace, recordFacts }) {
    const at = gasCoolerCycle(evaporating, gasCoolerOut, SUPERHEAT);
    const rule = relation === "cycle" ? undefined : RULES[relation];
    const best = bestPressure(gasCoolerCycle(evaporating, gasCoolerOut, 0), trace);
    const highPressure = rule?.(trace, { Te: evaporating, Tc: gasCoolerOut }) ?? best;
    checkTranscritical(highPressure);
    const there = at(highPressure);
    const held = at(highPressure + HELD_UP);
    const [above60, above50, above40] = ABOVE;
    // The spans that the relations state, or that their tables cover.
    const inside = evaporating >= 263.1 && evaporating <= 293.2 && gasCoolerOut >= 303.1 && highPressure <= 12e6;
    recordFacts({ beyond: rule !== undefined && !inside });
    return {
      highPressure,
      gaugePressure: highPressure - STANDARD_PRESSURE,
      cop: there.cop,
      heatRatio: there.heatRatio,
      dischargeTemperature: there.discharge,
      shareAbove60: there.shareAbove(above60),
      shareAbove50: there.shareAbove(above50),
      shareAbove40: there.shareAbove(above40),
      bestOfCycle: best,
      powerHeldUp: there.cop / held.cop - 1,
      heatHeldUp: held.heatRatio / there.heatRatio - 1,
      shareHeldUp: held.shareAbove(above50),
    };
  },
});
