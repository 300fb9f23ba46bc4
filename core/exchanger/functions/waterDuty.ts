import { cellFunction } from "../../kernel/define/cellFunction";
import { mend } from "../../kernel/values/fault";
import { WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { show } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { smallRise } from "../surface/cautions";
import { capacityRateOfWater, dutyOfWater } from "../water/equations";

export const waterDuty = cellFunction({
  id: "EXCHANGER.WATERDUTY",
  topic: "exchanger",
  summary: "Heat taken up by the water, by flow and temperatures in and out.",
  finds: ["measured duty", "heat meter", "500 rule"],
  remarks: ["Density and heat capacity of fresh water at the mean of in and out."],
  args: {
    flow: WATER_FLOW,
    in: WATER_TEMPERATURE.saying("entering water"),
    out: WATER_TEMPERATURE.saying("leaving water"),
  },
  gives: of("heat rate", "heat taken up by the water"),
  facts: { waterRise: "temperature difference" },
  cautions: [{ rule: smallRise, fires: { flow: 40, in: 80, out: 82 } }],
  checks: [{ at: { flow: 20, in: 55, out: 65 }, gives: 100000, within: "0.2 %", from: "waterRuleOf500" }],
  work({ flow, in: entering, out: leaving }, { step, note, system }) {
    if (leaving < entering)
      throw mend(
        `out: must be at least in (${show(entering, "temperature", system)}), got ${show(leaving, "temperature", system)}`,
      );
    note({ waterRise: leaving - entering });
    const T = (entering + leaving) / 2;
    const C = step(capacityRateOfWater, {
      V: flow,
      rho: step(densityOfWater, { T }),
      cp: step(heatCapacityOfWater, { T }),
    });
    return step(dutyOfWater, { C, dT: leaving - entering });
  },
});
