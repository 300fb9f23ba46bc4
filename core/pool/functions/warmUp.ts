import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { COEFFICIENT, NET_HEAT, SURFACE, WATER, WATER_VOLUME } from "../args";
import { lossLeftOut, spaLimitPassed, warmPool } from "../cautions";
import { poolEstimate } from "../losses/cautions";
import { warmUpTime } from "../warmUp";

const LAP = { volume: 40_000, from: 70, to: 82, heat: 120_000 } as const;

export const poolWarmUp = cellFunction({
  id: "POOL.WARMUP",
  topic: "pool",
  summary: "Hours to warm a pool, with the heat alone or against the loss of its surface.",
  keywords: ["heat-up time", "how long", "hours to heat"],
  details: [
    "Without area and air the whole heat stays in the water. With both, the surface rule takes its part and the temperature nears that at which the pool settles; where that is too low, the answer is #N/A and says it.",
    "heat runs all the time: an air conditioner that runs a third of the day counts a third of its heat.",
  ],
  args: {
    volume: WATER_VOLUME,
    from: WATER.describedAs("water temperature at the start"),
    to: WATER.describedAs("water temperature to reach"),
    heat: NET_HEAT,
    area: SURFACE.describedAs("area of the water surface, with air").optional(),
    air: AIR_TEMPERATURE.describedAs("mean air temperature, with area").optional(),
    coefficient: COEFFICIENT,
  },
  returns: quantityResult("time", "time to warm up"),
  facts: { poolTemperature: "temperature", lossEstimated: "yes/no", lossLeftOut: "yes/no" },
  cautions: [
    { rule: lossLeftOut, raisedBy: LAP },
    { rule: poolEstimate, raisedBy: { ...LAP, area: 800, air: 75 } },
    { rule: spaLimitPassed, raisedBy: { ...LAP, to: 106 } },
    { rule: warmPool, raisedBy: { ...LAP, to: 95 } },
  ],
  checks: [
    {
      inputs: { volume: 1100, from: 72, to: 80, heat: 73_304 },
      expected: 1,
      tolerance: 0.001,
      source: "poolTextbook",
      remark: "73,304 BTU for 1,100 gal and 8 °F.",
    },
    {
      inputs: { volume: 1100, from: 70, to: 80, heat: 21_000, area: 100, air: 70 },
      expected: 6.049,
      tolerance: 0.01,
      source: "identity",
      remark: "Half the way to where it settles (90 °F): ln 2 × 9,163 ÷ 1,050 h.",
    },
    {
      inputs: { ...LAP, heat: 50_000, area: 800, air: 70 },
      expected: "#N/A",
      source: "identity",
      remark: "settles below 82 °F",
    },
    { inputs: { ...LAP, area: 800 }, expected: "#VALUE!", source: "identity" },
    { inputs: { ...LAP, air: 70 }, expected: "#VALUE!", source: "identity" },
  ],
  compute(args, { trace, recordFacts }) {
    const against = args.area !== undefined;
    recordFacts({ poolTemperature: args.to, lossEstimated: against, lossLeftOut: !against });
    return warmUpTime(args, trace);
  },
});
