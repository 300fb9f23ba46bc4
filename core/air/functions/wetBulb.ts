import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { SITE_ALTITUDE } from "../args";
import { humidityOverIce, icedWick } from "../cautions";
import { wetBulbOfAir } from "../moistAir";

export const wetBulb = cellFunction({
  id: "AIR.WETBULB",
  topic: "air",
  summary: "Wet-bulb temperature of air by its temperature, relative humidity and altitude.",
  finds: ["evaporative", "psychrometric", "coil entering air"],
  remarks: [
    "Thermodynamic wet bulb, within 0.1 K near sea level; below 32 °F that of an iced wick. In a narrow band above 32 °F both a wet and an iced wick satisfy the balance: the wet one is given.",
  ],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY, altitude: SITE_ALTITUDE },
  gives: of("temperature", "wet bulb"),
  cautions: [
    { rule: humidityOverIce, fires: { air: 20, humidity: 0.5 } },
    { rule: icedWick, fires: { air: 36, humidity: 0.4 } },
  ],
  checks: [
    { at: { air: 30, humidity: 0.7, units: "SI" }, gives: 25.5024, within: 0.1, from: "moistAirRp1485" },
    {
      at: { air: 80, humidity: 0.511 },
      gives: 67,
      within: 0.3,
      from: "commonPractice",
      remark:
        "80 °F dry bulb with 67 °F wet bulb, the rating condition of air conditioners, reads about 51 % on a chart; from memory.",
    },
  ],
  work: ({ air, humidity, altitude }, { trace }) => wetBulbOfAir(air, humidity, altitude, trace),
});
