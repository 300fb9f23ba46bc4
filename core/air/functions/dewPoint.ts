import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { frostPoint, humidityOverIce } from "../cautions";
import { dewPointOfAir } from "../moistAir";

export const airDewPoint = cellFunction({
  id: "AIR.DEWPOINT",
  topic: "air",
  summary: "Dew point of air from its temperature and relative humidity.",
  keywords: ["condensation", "sweating", "frost point", "moisture"],
  details: ["Below 32 °F the frost point (saturation over ice). Perfectly dry air has no dew point."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY },
  returns: quantityResult("temperature", "dew point"),
  cautions: [
    { rule: humidityOverIce, raisedBy: { air: 20, humidity: 0.5 } },
    { rule: frostPoint, raisedBy: { air: 40, humidity: 0.4 } },
  ],
  checks: [
    {
      inputs: { air: 25, humidity: 0.8, units: "SI" },
      expected: 21.3094,
      tolerance: 0.01,
      source: "ashraePsychrometrics",
    },
    { inputs: { air: 30, humidity: 0.7, units: "SI" }, expected: 23.9305, tolerance: 0.1, source: "moistAirRp1485" },
    { inputs: { air: 80, humidity: 0 }, expected: "#N/A", source: "identity", remark: "dry air never condenses" },
  ],
  compute: ({ air, humidity }, { trace }) => dewPointOfAir(air, humidity, trace),
});
