import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { SITE_ALTITUDE } from "../args";
import { humidityOverIce, icedWick } from "../cautions";
import { wetBulbOfAir } from "../moistAir";

export const airWetBulb = cellFunction({
  id: "AIR.WETBULB",
  topic: "air",
  summary: "Wet-bulb temperature of air from its temperature, relative humidity and altitude.",
  keywords: ["evaporative", "psychrometric", "coil entering air"],
  details: [
    "Thermodynamic wet bulb, within 0.1 K near sea level; below 32 °F that of an iced wick. In a narrow band above 32 °F both a wet and an iced wick satisfy the balance: the answer is for the wet one.",
  ],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY, altitude: SITE_ALTITUDE },
  returns: quantityResult("temperature", "wet bulb"),
  cautions: [
    { rule: humidityOverIce, raisedBy: { air: 20, humidity: 0.5 } },
    { rule: icedWick, raisedBy: { air: 36, humidity: 0.4 } },
  ],
  checks: [
    { inputs: { air: 30, humidity: 0.7, units: "SI" }, expected: 25.5024, tolerance: 0.1, source: "moistAirRp1485" },
    {
      inputs: { air: 80, humidity: 0.511 },
      expected: 67,
      tolerance: 0.3,
      source: "commonPractice",
      remark:
        "80 °F dry bulb with 67 °F wet bulb, the rating condition of air conditioners, reads about 51 % on a chart; from memory.",
    },
  ],
  compute: ({ air, humidity, altitude }, { trace }) => wetBulbOfAir(air, humidity, altitude, trace),
});
