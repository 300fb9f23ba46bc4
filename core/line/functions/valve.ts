import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { CONDENSING_TEMPERATURE } from "../../cycle/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { trappedLiquid } from "../charge/cautions";
import { idleCoil, valveCosts, valveMustShift } from "../valve/cautions";
import { solveValve } from "../valve/valve";

const degrees = (value: number): number => us("temperature difference", value);
const fernhill = {
  refrigerant: "R-410A",
  flowCoefficient: 4.6244,
  massFlow: 480,
  condensing: 105,
  superheat: 50,
} as const;

export const lineValve = cellFunction({
  id: "LINE.VALVE",
  topic: "line",
  summary: "Pressure that hot gas loses in a diverting valve, and what it costs.",
  keywords: ["three-way valve", "heat reclaim valve", "diverting valve", "Cv", "Kv", "choked flow", "solenoid valve"],
  details: [
    "Sizing equations of control valves for gas (IEC 60534-2-1) without fittings, heat capacities of the ideal gas; flow coefficient Cv in US, Kv (m³/h at 1 bar) in SI units, Cv = 1.1561 Kv. Condensing is the dew temperature.",
    "The critical ratio xT of open ball and angle valves is 0.6 to 0.75 (common practice). A flow at or above choked flow is refused.",
    "Give the drop to LINE.DROP as valveDrop of the discharge line. A smaller valve costs capacity in every mode.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    flowCoefficient: quantity("gas flow coefficient", "flow coefficient of the valve, open", {
      above: 0,
      usual: [0.3, 40],
    }),
    massFlow: quantity("mass flow", "refrigerant mass flow", {
      above: 0,
      usual: [us("mass flow", 20), us("mass flow", 5000)],
    }),
    condensing: CONDENSING_TEMPERATURE,
    superheat: quantity("temperature difference", "superheat of the hot gas", {
      from: 0,
      to: degrees(250),
      usual: [degrees(10), degrees(120)],
    }).default(degrees(40)),
    criticalRatio: quantity("number", "critical pressure ratio xT of the valve", {
      from: 0.1,
      to: 0.95,
      usual: [0.4, 0.8],
    }).default(0.7),
  },
  returns: listResult("valve", {
    drop: quantityResult("pressure drop", "pressure drop"),
    saturationDrop: quantityResult("temperature difference", "the same as saturation temperature"),
    expansionFactor: quantityResult("number", "expansion factor, 2/3 where the flow is choked"),
    chokedFlow: quantityResult("mass flow", "greatest flow that the valve lets through"),
  }),
  memoised: true,
  cautions: [
    { rule: trappedLiquid, raisedBy: fernhill },
    { rule: valveMustShift, raisedBy: fernhill },
    { rule: idleCoil, raisedBy: fernhill },
    { rule: valveCosts, raisedBy: { ...fernhill, flowCoefficient: 0.9, massFlow: 480 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: fernhill,
      expected: { drop: 0.536, saturationDrop: 0.11 },
      tolerance: 0.006,
      source: "iec60534",
      remark: "worked apart with properties of CoolProp 8.0.0: Kv 4",
    },
    {
      inputs: { ...fernhill, refrigerant: "R-22", superheat: 45 },
      expected: { drop: 0.756, saturationDrop: 0.25 },
      tolerance: 0.006,
      source: "iec60534",
      remark: "worked apart with properties of CoolProp 8.0.0: Kv 4",
    },
  ],
  compute: (inputs, { trace }) => solveValve(inputs, trace),
});
