import { cellFunction } from "../../kernel/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/glossary";
import { of } from "../../kernel/result";
import { COEFFICIENT, NET_HEAT, SURFACE, WATER, WATER_VOLUME } from "../args";
import { lossLeftOut, spaLimit, warmPool } from "../cautions";
import { estimate } from "../losses/cautions";
import { warmUpTime } from "../warmUp";

const LAP = { volume: 40_000, from: 70, to: 82, heat: 120_000 } as const;

export const warmUp = cellFunction({
  id: "POOL.WARMUP",
  topic: "pool",
  summary: "Hours to warm a pool, with the heat alone or against the loss of its surface.",
  finds: ["heat-up time", "how long", "hours to heat"],
  remarks: [
    "Without area and air the whole heat stays in the water. With both, the surface rule takes its part and the temperature nears that at which the pool settles; where that is too low, the answer is #N/A and says it.",
    "heat runs all the time: an air conditioner that runs a third of the day counts a third of its heat.",
  ],
  args: {
    volume: WATER_VOLUME,
    from: WATER.saying("water temperature at the start"),
    to: WATER.saying("water temperature to reach"),
    heat: NET_HEAT,
    area: SURFACE.saying("area of the water surface, with air").optionally(),
    air: AIR_TEMPERATURE.saying("mean air temperature, with area").optionally(),
    coefficient: COEFFICIENT,
  },
  gives: of("time", "time to warm up"),
  facts: { poolTemperature: "temperature", lossEstimated: "yes/no", lossLeftOut: "yes/no" },
  cautions: [
    { rule: lossLeftOut, fires: LAP },
    { rule: estimate, fires: { ...LAP, area: 800, air: 75 } },
    { rule: spaLimit, fires: { ...LAP, to: 106 } },
    { rule: warmPool, fires: { ...LAP, to: 95 } },
  ],
  checks: [
    {
      at: { volume: 1100, from: 72, to: 80, heat: 73_304 },
      gives: 1,
      within: 0.001,
      from: "poolTextbook",
      remark: "73,304 BTU for 1,100 gal and 8 °F.",
    },
    {
      at: { volume: 1100, from: 70, to: 80, heat: 21_000, area: 100, air: 70 },
      gives: 6.049,
      within: 0.01,
      from: "identity",
      remark: "Half the way to where it settles (90 °F): ln 2 × 9,163 ÷ 1,050 h.",
    },
    {
      at: { ...LAP, heat: 50_000, area: 800, air: 70 },
      gives: "#N/A",
      from: "identity",
      remark: "settles below 82 °F",
    },
    { at: { ...LAP, area: 800 }, gives: "#VALUE!", from: "identity" },
    { at: { ...LAP, air: 70 }, gives: "#VALUE!", from: "identity" },
  ],
  work(args, { trace, note }) {
    const against = args.area !== undefined;
    note({ poolTemperature: args.to, lossEstimated: against, lossLeftOut: !against });
    return warmUpTime(args, trace);
  },
});
