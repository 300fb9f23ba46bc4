import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { COEFFICIENT, SURFACE, WATER } from "../args";
import { spaLimitPassed, warmPool } from "../cautions";
import { poolEstimate, ruleHoldsAll } from "../losses/cautions";
import { surfaceRule } from "../equations";

export const poolSurfaceLoss = cellFunction({
  id: "POOL.SURFACELOSS",
  topic: "pool",
  summary: "Heat lost from a pool's surface by the handbook rule of one coefficient.",
  keywords: ["heat loss", "heater size", "surface coefficient", "10.5", "heat loss rule"],
  details: [
    "The rule holds evaporation, convection and radiation together; negative where the air is warmer than the water. 10.5 stands for wind of 3 to 5 mph; 12 is the rule of US DOE for heater output, 15 a textbook's for heater input.",
  ],
  args: { area: SURFACE, water: WATER, air: AIR_TEMPERATURE, coefficient: COEFFICIENT },
  returns: quantityResult("heat rate", "heat lost"),
  facts: { poolTemperature: "temperature", surfaceRuleBy: "film coefficient", lossEstimated: "yes/no" },
  cautions: [
    { rule: ruleHoldsAll, raisedBy: { area: 450, water: 80, air: 60 } },
    { rule: poolEstimate, raisedBy: { area: 450, water: 80, air: 60 } },
    { rule: spaLimitPassed, raisedBy: { area: 450, water: 106, air: 60 } },
    { rule: warmPool, raisedBy: { area: 450, water: 95, air: 60 } },
  ],
  checks: [
    {
      inputs: { area: 450, water: 80, air: 60, coefficient: 12 },
      expected: 108_000,
      tolerance: 1,
      source: "doePoolHeaters",
    },
    {
      inputs: { area: 100, water: 27, air: 17, units: "SI" },
      expected: 59.6,
      tolerance: 0.1,
      source: "ashraePools1999",
    },
  ],
  compute({ area, water, air, coefficient }, { step, recordFacts }) {
    recordFacts({ poolTemperature: water, surfaceRuleBy: coefficient, lossEstimated: true });
    return step(surfaceRule, { U: coefficient, A: area, Tw: water, Ta: air });
  },
});
