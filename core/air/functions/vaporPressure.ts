import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { humidityOverIce } from "../cautions";
import { vapourPressureOfAir } from "../moistAir";

export const airVaporPressure = cellFunction({
  id: "AIR.VAPORPRESSURE",
  topic: "air",
  summary: "Partial pressure of the water vapour in air.",
  keywords: ["vapour pressure", "evaporation", "humidity"],
  details: ["Absolute pressure. Saturation over ice below 32 °F."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY },
  returns: quantityResult("pressure", "vapour pressure, absolute"),
  cautions: [{ rule: humidityOverIce, raisedBy: { air: 20, humidity: 0.5 } }],
  checks: [
    { inputs: { air: 25, humidity: 1, units: "SI" }, expected: 3.169929, tolerance: "0.1 %", source: "iapws95" },
    { inputs: { air: 40, humidity: 0.5, units: "SI" }, expected: 3.692469, tolerance: "0.1 %", source: "iapws95" },
  ],
  compute: ({ air, humidity }, { trace }) => vapourPressureOfAir(air, humidity, trace),
});
