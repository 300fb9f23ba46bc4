import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, HUMIDITY } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { SITE_ALTITUDE } from "../args";
import { humidityOverIce } from "../cautions";
import { humidityRatioOfAir } from "../moistAir";

export const humidityRatio = cellFunction({
  id: "AIR.HUMIDITYRATIO",
  topic: "air",
  summary: "Mass of water vapour on the mass of dry air.",
  finds: ["moisture content", "mixing ratio", "grains", "psychrometric"],
  remarks: ["Ideal gases: real moist air holds 0.35 to 0.7 % more near sea level."],
  args: { air: AIR_TEMPERATURE, humidity: HUMIDITY, altitude: SITE_ALTITUDE },
  gives: of("humidity ratio", "humidity ratio"),
  cautions: [{ rule: humidityOverIce, fires: { air: 20, humidity: 0.5 } }],
  checks: [
    { at: { air: 30, humidity: 0.7, units: "SI" }, gives: 0.018884033, within: "0.7 %", from: "moistAirRp1485" },
    { at: { air: 50, humidity: 0.4, units: "SI" }, gives: 0.0320587, within: "0.7 %", from: "moistAirRp1485" },
  ],
  work: ({ air, humidity, altitude }, { trace }) => humidityRatioOfAir(air, humidity, altitude, trace),
});
