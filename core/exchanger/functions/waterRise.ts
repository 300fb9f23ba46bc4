import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { hotWaterBesidePlastic } from "../water/cautions";
import { capacityRateOfWater, riseOfWater } from "../water/equations";
import { warmLeavingWater } from "../zones/cautions";

export const waterRise = cellFunction({
  id: "EXCHANGER.WATERRISE",
  topic: "exchanger",
  summary: "Rise of the water's temperature by a duty.",
  finds: ["delta T", "500 rule", "temperature rise"],
  remarks: ["Density and heat capacity of fresh water at waterTemperature."],
  args: {
    duty: HEAT_RATE.saying("heat given to the water"),
    flow: WATER_FLOW,
    waterTemperature: WATER_TEMPERATURE.otherwise(us("temperature", 80)),
  },
  gives: of("temperature difference", "rise of the water"),
  facts: { leavingWater: "temperature" },
  cautions: [
    { rule: warmLeavingWater, fires: { duty: 100000, flow: 5, waterTemperature: 80 } },
    { rule: hotWaterBesidePlastic, fires: { duty: 100000, flow: 3, waterTemperature: 80 } },
  ],
  checks: [
    {
      at: { duty: 100000, flow: 20, waterTemperature: 60 },
      gives: 10,
      within: "0.2 %",
      from: "waterRuleOf500",
    },
  ],
  work({ duty, flow, waterTemperature: T }, { step, note }) {
    const C = step(capacityRateOfWater, {
      V: flow,
      rho: step(densityOfWater, { T }),
      cp: step(heatCapacityOfWater, { T }),
    });
    const rise = step(riseOfWater, { Q: duty, C });
    note({ leavingWater: T + rise });
    return rise;
  },
});
