import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { humidityOverIce } from "../cautions";
import { vapourPressureOfAir } from "../moistAir";

export const vaporPressure = cellFunction({
  id: "AIR.VAPORPRESSURE",
  topic: "air",
  summary: "Partial pressure of the water vapour in air.",
  finds: ["vapour pressure", "evaporation", "humidity"],
  remarks: ["Absolute pressure. Saturation over ice below 32 °F."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY },
  gives: of("pressure", "vapour pressure, absolute"),
  cautions: [{ rule: humidityOverIce, fires: { air: 20, humidity: 0.5 } }],
  checks: [
    { at: { air: 25, humidity: 1, units: "SI" }, gives: 3.169929, within: "0.1 %", from: "iapws95" },
    { at: { air: 40, humidity: 0.5, units: "SI" }, gives: 3.692469, within: "0.1 %", from: "iapws95" },
  ],
  work: ({ air, humidity }, { trace }) => vapourPressureOfAir(air, humidity, trace),
});
