import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/define/glossary";
import { notAvailable } from "../../kernel/values/fault";
import { show, us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { COEFFICIENT, SURFACE } from "../args";
import { spaLimitPassed, warmPool } from "../cautions";
import { poolEstimate, ruleHoldsAll } from "../losses/cautions";
import { settlingTemperature } from "../equations";

/** K */
const BOILING = 373.15;

export const poolSettles = cellFunction({
  id: "POOL.SETTLES",
  topic: "pool",
  summary: "Temperature at which a steadily heated pool settles by the surface rule.",
  keywords: ["equilibrium", "steady state", "final temperature"],
  details: [
    "Steady weather and heat; after days to weeks. The surface rule holds evaporation, convection and radiation: add none of them.",
  ],
  args: {
    area: SURFACE,
    air: AIR_TEMPERATURE,
    heat: quantity("heat rate", "heat into the water, mean of day and night", { from: 0, to: us("heat rate", 1e10) }),
    coefficient: COEFFICIENT,
    sunAbsorbed: quantity("heat rate", "sun absorbed by the water, mean of day and night", {
      from: 0,
      to: us("heat rate", 1e10),
    }).default(0),
  },
  returns: quantityResult("temperature", "temperature at which the pool settles"),
  facts: { poolTemperature: "temperature", surfaceRuleBy: "film coefficient", lossEstimated: "yes/no" },
  cautions: [
    { rule: ruleHoldsAll, raisedBy: { area: 800, air: 70, heat: 80_000 } },
    { rule: poolEstimate, raisedBy: { area: 800, air: 70, heat: 80_000 } },
    { rule: spaLimitPassed, raisedBy: { area: 800, air: 90, heat: 180_000 } },
    { rule: warmPool, raisedBy: { area: 800, air: 85, heat: 80_000 } },
  ],
  checks: [
    {
      inputs: { area: 450, air: 60, heat: 108_000, coefficient: 12 },
      expected: 80,
      tolerance: 0.001,
      source: "doePoolHeaters",
      remark: "450 ft² × 20 °F × 12 = 108,000 BTU/h, turned round.",
    },
    {
      inputs: { area: 800, air: 70, heat: 50_400, sunAbsorbed: 33_600 },
      expected: 80,
      tolerance: 0.001,
      source: "identity",
    },
  ],
  compute({ area, air, heat, coefficient, sunAbsorbed }, { step, recordFacts, system }) {
    const T = step(settlingTemperature, { Ta: air, q: heat + sunAbsorbed, U: coefficient, A: area });
    if (T >= BOILING)
      throw notAvailable(
        `heat: the surface rule would settle at ${show(T, "temperature", system)}, where water boils: check heat, area and their units`,
      );
    recordFacts({ poolTemperature: T, surfaceRuleBy: coefficient, lossEstimated: true });
    return T;
  },
});
