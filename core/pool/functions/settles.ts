import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/glossary";
import { outside } from "../../kernel/fault";
import { show, us } from "../../kernel/quantity";
import { of } from "../../kernel/result";
import { COEFFICIENT, SURFACE } from "../args";
import { spaLimit, warmPool } from "../cautions";
import { estimate, ruleHoldsAll } from "../losses/cautions";
import { settlingTemperature } from "../equations";

/** K */
const BOILING = 373.15;

export const settles = cellFunction({
  id: "POOL.SETTLES",
  topic: "pool",
  summary: "Temperature at which a steadily heated pool settles by the surface rule.",
  finds: ["equilibrium", "steady state", "final temperature"],
  remarks: [
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
    }).otherwise(0),
  },
  gives: of("temperature", "temperature at which the pool settles"),
  facts: { poolTemperature: "temperature", surfaceRuleBy: "film coefficient", lossEstimated: "yes/no" },
  cautions: [
    { rule: ruleHoldsAll, fires: { area: 800, air: 70, heat: 80_000 } },
    { rule: estimate, fires: { area: 800, air: 70, heat: 80_000 } },
    { rule: spaLimit, fires: { area: 800, air: 90, heat: 180_000 } },
    { rule: warmPool, fires: { area: 800, air: 85, heat: 80_000 } },
  ],
  checks: [
    {
      at: { area: 450, air: 60, heat: 108_000, coefficient: 12 },
      gives: 80,
      within: 0.001,
      from: "doePoolHeaters",
      remark: "450 ft² × 20 °F × 12 = 108,000 BTU/h, turned round.",
    },
    { at: { area: 800, air: 70, heat: 50_400, sunAbsorbed: 33_600 }, gives: 80, within: 0.001, from: "identity" },
  ],
  work({ area, air, heat, coefficient, sunAbsorbed }, { step, note, system }) {
    const T = step(settlingTemperature, { Ta: air, q: heat + sunAbsorbed, U: coefficient, A: area });
    if (T >= BOILING)
      throw outside(
        `heat: the surface rule would settle at ${show(T, "temperature", system)}, where water boils: check heat, area and their units`,
      );
    note({ poolTemperature: T, surfaceRuleBy: coefficient, lossEstimated: true });
    return T;
  },
});
