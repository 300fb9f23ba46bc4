import { cellFunction } from "../../kernel/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/glossary";
import { of } from "../../kernel/result";
import { COEFFICIENT, SURFACE, WATER } from "../args";
import { spaLimit, warmPool } from "../cautions";
import { estimate, ruleHoldsAll } from "../losses/cautions";
import { surfaceRule } from "../equations";

export const surfaceLoss = cellFunction({
  id: "POOL.SURFACELOSS",
  topic: "pool",
  summary: "Heat lost from a pool's surface by the handbook rule of one coefficient.",
  finds: ["heat loss", "heater size", "surface coefficient", "10.5", "heat loss rule"],
  remarks: [
    "The rule holds evaporation, convection and radiation together; negative where the air is warmer than the water. 10.5 stands for wind of 3 to 5 mph; 12 is the rule of US DOE for heater output, 15 a textbook's for heater input.",
  ],
  args: { area: SURFACE, water: WATER, air: AIR_TEMPERATURE, coefficient: COEFFICIENT },
  gives: of("heat rate", "heat lost"),
  facts: { poolTemperature: "temperature", surfaceRuleBy: "film coefficient", lossEstimated: "yes/no" },
  cautions: [
    { rule: ruleHoldsAll, fires: { area: 450, water: 80, air: 60 } },
    { rule: estimate, fires: { area: 450, water: 80, air: 60 } },
    { rule: spaLimit, fires: { area: 450, water: 106, air: 60 } },
    { rule: warmPool, fires: { area: 450, water: 95, air: 60 } },
  ],
  checks: [
    { at: { area: 450, water: 80, air: 60, coefficient: 12 }, gives: 108_000, within: 1, from: "doePoolHeaters" },
    { at: { area: 100, water: 27, air: 17, units: "SI" }, gives: 59.6, within: 0.1, from: "ashraePools1999" },
  ],
  work({ area, water, air, coefficient }, { step, note }) {
    note({ poolTemperature: water, surfaceRuleBy: coefficient, lossEstimated: true });
    return step(surfaceRule, { U: coefficient, A: area, Tw: water, Ta: air });
  },
});
