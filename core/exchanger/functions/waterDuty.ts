import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { show } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { smallRise } from "../surface/cautions";
import { capacityRateOfWater, dutyOfWater } from "../water/equations";

export const exchangerWaterDuty = cellFunction({
  id: "EXCHANGER.WATERDUTY",
  topic: "exchanger",
  summary: "Heat that the water takes up, from flow and temperatures in and out.",
  keywords: ["measured duty", "heat meter", "500 rule"],
  details: ["Density and heat capacity of fresh water at the mean of in and out."],
  args: {
    flow: WATER_FLOW,
    in: WATER_TEMPERATURE.describedAs("entering water"),
    out: WATER_TEMPERATURE.describedAs("leaving water"),
  },
  returns: quantityResult("heat rate", "heat taken up by the water"),
  facts: { waterRise: "temperature difference" },
  cautions: [{ rule: smallRise, raisedBy: { flow: 40, in: 80, out: 82 } }],
  checks: [{ inputs: { flow: 20, in: 55, out: 65 }, expected: 100000, tolerance: "0.2 %", source: "waterRuleOf500" }],
  compute({ flow, in: entering, out: leaving }, { step, recordFacts, system }) {
    if (leaving < entering)
      throw valueError(
        `out: must be at least in (${show(entering, "temperature", system)}), got ${show(leaving, "temperature", system)}`,
      );
    recordFacts({ waterRise: leaving - entering });
    const T = (entering + leaving) / 2;
    const C = step(capacityRateOfWater, {
      V: flow,
      rho: step(densityOfWater, { T }),
      cp: step(heatCapacityOfWater, { T }),
    });
    return step(dutyOfWater, { C, dT: leaving - entering });
  },
});
