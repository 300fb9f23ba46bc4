import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { SITE_ALTITUDE } from "../args";
import { humidityOverIce } from "../cautions";
import { humidityRatioOfAir } from "../moistAir";

export const airHumidityRatio = cellFunction({
  id: "AIR.HUMIDITYRATIO",
  topic: "air",
  summary: "Mass of water vapour per mass of dry air.",
  keywords: ["moisture content", "mixing ratio", "grains", "psychrometric"],
  details: ["Ideal gases: real moist air holds 0.35 to 0.7 % more near sea level."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY, altitude: SITE_ALTITUDE },
  returns: quantityResult("humidity ratio", "humidity ratio"),
  cautions: [{ rule: humidityOverIce, raisedBy: { air: 20, humidity: 0.5 } }],
  checks: [
    {
      inputs: { air: 30, humidity: 0.7, units: "SI" },
      expected: 0.018884033,
      tolerance: "0.7 %",
      source: "moistAirRp1485",
    },
    {
      inputs: { air: 50, humidity: 0.4, units: "SI" },
      expected: 0.0320587,
      tolerance: "0.7 %",
      source: "moistAirRp1485",
    },
  ],
  compute: ({ air, humidity, altitude }, { trace }) => humidityRatioOfAir(air, humidity, altitude, trace),
});
