import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { flowForRise } from "../water/equations";

/** Temperature of the pool water for density and heat capacity, K. */
const POOL = us("temperature", 80);

export const exchangerWaterFlow = cellFunction({
  id: "EXCHANGER.WATERFLOW",
  topic: "exchanger",
  summary: "Water flow that takes up a duty at a wanted rise.",
  keywords: ["gpm", "delta T", "500 rule"],
  details: [
    "Density and heat capacity of fresh water at 80 °F (26.7 °C); between 40 and 110 °F the flow changes by less than 0.8 %.",
  ],
  args: {
    duty: HEAT_RATE.describedAs("heat given to the water"),
    rise: quantity("temperature difference", "wanted rise of the water", {
      above: 0,
      usual: [us("temperature difference", 1), us("temperature difference", 60)],
    }),
  },
  returns: quantityResult("water flow", "water flow"),
  cautions: [],
  checks: [{ inputs: { duty: 100000, rise: 10 }, expected: 20, tolerance: "0.5 %", source: "waterRuleOf500" }],
  compute({ duty, rise }, { step }) {
    const rho = step(densityOfWater, { T: POOL });
    return step(flowForRise, { Q: duty, rho, cp: step(heatCapacityOfWater, { T: POOL }), dT: rise });
  },
});
