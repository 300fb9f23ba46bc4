import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { hotWaterInPlastic } from "../water/cautions";
import { capacityRateOfWater, riseOfWater } from "../water/equations";
import { warmLeavingWater } from "../zones/cautions";

export const exchangerWaterRise = cellFunction({
  id: "EXCHANGER.WATERRISE",
  topic: "exchanger",
  summary: "Temperature rise of the water from a duty.",
  keywords: ["delta T", "500 rule", "temperature rise"],
  details: ["Density and heat capacity of fresh water at waterTemperature."],
  args: {
    duty: HEAT_RATE.describedAs("heat given to the water"),
    flow: WATER_FLOW,
    waterTemperature: WATER_TEMPERATURE.default(us("temperature", 80)),
  },
  returns: quantityResult("temperature difference", "rise of the water"),
  facts: { leavingWater: "temperature" },
  cautions: [
    { rule: warmLeavingWater, raisedBy: { duty: 100000, flow: 5, waterTemperature: 80 } },
    { rule: hotWaterInPlastic, raisedBy: { duty: 100000, flow: 3, waterTemperature: 80 } },
  ],
  checks: [
    {
      inputs: { duty: 100000, flow: 20, waterTemperature: 60 },
      expected: 10,
      tolerance: "0.2 %",
      source: "waterRuleOf500",
    },
  ],
  compute({ duty, flow, waterTemperature: T }, { step, recordFacts }) {
    const C = step(capacityRateOfWater, {
      V: flow,
      rho: step(densityOfWater, { T }),
      cp: step(heatCapacityOfWater, { T }),
    });
    const rise = step(riseOfWater, { Q: duty, C });
    recordFacts({ leavingWater: T + rise });
    return rise;
  },
});
