import { cellFunction } from "../../kernel/define/cellFunction";
import { gaugeReading, STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { REFRIGERANT, SATURATION_TEMPERATURE } from "../../refrigerant/args";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { trappedBursts } from "../cautions";
import { trappedPressure } from "../trapped";

const warmed = (refrigerant: string) => ({ refrigerant, filledAt: 80, warmedTo: 100 }) as const;

export const pressureTrapped = cellFunction({
  id: "PRESSURE.TRAPPED",
  topic: "pressure",
  summary: "Pressure of liquid refrigerant shut in between valves and warmed.",
  keywords: ["hydraulic lock", "liquid full", "expansion", "idle pool coil", "check valve", "burst"],
  details: [
    "A rigid section full of saturated liquid at the first temperature, warmed at constant density: 35 to 58 psi for each °F (430 to 720 kPa/K). Tube that stretches and a bubble that is left delay it, and don't prevent it.",
    "Up to the end of the equation of state; above that #N/A: long beyond any part's strength.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    filledAt: SATURATION_TEMPERATURE.describedAs("temperature at which liquid filled the section"),
    warmedTo: SATURATION_TEMPERATURE.describedAs("temperature that it warms to"),
  },
  returns: quantityResult("pressure", "pressure in the section, gauge", { reading: true }),
  example: warmed("R-410A"),
  cautions: [{ rule: trappedBursts, raisedBy: warmed("R-410A") }],
  sources: EQUATION_SOURCES,
  checks: [
    ...(
      [
        ["R-22", 1186],
        ["R-134a", 1104],
        ["R-32", 1316],
        ["R-290", 954],
      ] as const
    ).map(([refrigerant, expected]) => ({
      inputs: warmed(refrigerant),
      expected,
      tolerance: 0.6,
      source: "coolprop8" as const,
    })),
    {
      inputs: warmed("R-410A"),
      expected: 1102,
      tolerance: "0.3 %",
      source: "coolprop8",
      remark: "liquid density of the blend is known to 0.1 %, which is worth 25 psi here",
    },
  ],
  compute({ refrigerant, filledAt, warmedTo }, { trace }) {
    const p = trappedPressure(refrigerant, filledAt, warmedTo, trace);
    if (trace.on) trace.step(gaugeReading, { p, p0: STANDARD_PRESSURE });
    return p;
  },
});
