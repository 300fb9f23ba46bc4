import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { frostPoint, humidityOverIce } from "../cautions";
import { dewPointOfAir } from "../moistAir";

export const dewPoint = cellFunction({
  id: "AIR.DEWPOINT",
  topic: "air",
  summary: "Dew point of air by its temperature and relative humidity.",
  finds: ["condensation", "sweating", "frost point", "moisture"],
  remarks: ["Below 32 °F the frost point (saturation over ice). Perfectly dry air has no dew point."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY },
  gives: of("temperature", "dew point"),
  cautions: [
    { rule: humidityOverIce, fires: { air: 20, humidity: 0.5 } },
    { rule: frostPoint, fires: { air: 40, humidity: 0.4 } },
  ],
  checks: [
    { at: { air: 25, humidity: 0.8, units: "SI" }, gives: 21.3094, within: 0.01, from: "ashraePsychrometrics" },
    { at: { air: 30, humidity: 0.7, units: "SI" }, gives: 23.9305, within: 0.1, from: "moistAirRp1485" },
    { at: { air: 80, humidity: 0 }, gives: "#N/A", from: "identity", remark: "dry air never condenses" },
  ],
  work: ({ air, humidity }, { trace }) => dewPointOfAir(air, humidity, trace),
});
