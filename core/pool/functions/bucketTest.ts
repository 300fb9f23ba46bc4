import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { bucketConditions, bucketShort, waterIsLost } from "../learn/bucketCautions";
import { BUCKET_INPUTS, bucketTest } from "../learn/bucketTest";

const fall = (description: string) => quantityResult("rain depth", description);

/** An invented day of the hall's pool: rain and a measured fill. */
const DAY = { poolArea: 50, poolFell: 6.5, bucketFell: 6 } as const;
const WEEK = {
  poolArea: 46.45,
  testDays: 7,
  poolFell: 40,
  bucketFell: 36,
  backwashAndSplash: 0.15,
  mainsTemperature: 15,
} as const;

export const poolBucketTest = cellFunction({
  id: "POOL.BUCKETTEST",
  topic: "pool",
  summary: "Bucket test: what a pool evaporates and leaks in a day, with uncertainty, and the heat of both.",
  keywords: ["leak", "water loss", "make-up water", "water balance", "evaporation measured", "level", "fill meter"],
  details: [
    "A bucket filled with pool water is set IN the pool (on a step), weighted, with equal levels inside and outside, both marked; automatic fill off, nobody bathing, a day or more. Evaporation: fall in the bucket and rain, times the bucket ratio, by day. Leak: fall of the pool, rain, fill water less backwash and splash, less evaporation.",
    "Errors: standard, of readings with the level error each. A leak within twice its error is none found; below minus twice it the pool gains water (an open fill, surface water).",
    "Bucket ratio: 1 in the pool's own water; a bucket above the water or in the sun evaporates 20 to 30 % more (common practice): then 0.8.",
    "Evaporation heat over the area is what POOL.EVAPORATION and POOL.LOSSES give for the weather of these days: their ratio is the multiplier of your pool. 1 mm on 1 m² counts 1 kg.",
    "Make-up water: the heat that the mains water needs to reach the pool's temperature (997 kg/m³, 4.18 kJ/(kg·K)), over the test and as a mean over the area; negative where it comes in warmer.",
  ],
  args: { inputs: BUCKET_INPUTS },
  returns: listResult("the test", {
    dailyEvaporation: fall("in a day"),
    dailyEvaporationError: fall("its standard error"),
    evaporationHeat: quantityResult("irradiance", "mean heat of the evaporation, by surface"),
    dailyLeak: fall("in a day, as a fall of the level"),
    dailyLeakError: fall("its standard error"),
    dailyLeakVolume: quantityResult("daily draw", "leak in a day"),
    dailyLeakVolumeError: quantityResult("daily draw", "its standard error"),
    finding: wordResult("leak, none found or gains water"),
    makeUpHeat: quantityResult("heat", "heat of the make-up water over the test"),
    makeUpLoss: quantityResult("irradiance", "the same as a mean, by surface"),
  }),
  cautions: [
    { rule: bucketConditions, raisedBy: { inputs: DAY, units: "SI" } },
    { rule: bucketShort, raisedBy: { inputs: { ...DAY, poolFell: 7.5 }, units: "SI" } },
    { rule: waterIsLost, raisedBy: { inputs: { ...DAY, poolFell: 14 }, units: "SI" } },
  ],
  example: { inputs: WEEK, units: "SI" },
  checks: [
    {
      inputs: { inputs: WEEK, units: "SI" },
      expected: {
        dailyEvaporation: 5.142857,
        dailyEvaporationError: 0.142857,
        dailyLeak: 0.110103,
        dailyLeakVolume: 5.114286,
      },
      tolerance: "0.001 %",
      source: "identity",
      remark: "by another program; 36/7, and the balance less it",
    },
    {
      inputs: {
        inputs: { poolArea: 50, testDays: 7, makeUp: 40, poolTemperature: 27, mainsTemperature: 15 },
        units: "SI",
      },
      expected: { makeUpLoss: 3.307508 },
      tolerance: "0.001 %",
      source: "identity",
      remark: "by another program",
    },
    {
      inputs: { inputs: { poolArea: 538, poolFell: 0.25, bucketFell: 0.25 } },
      expected: { finding: "none found" },
      source: "commonPractice",
      remark: "a quarter of an inch a day is commonly evaporation",
    },
  ],
  compute({ inputs }, { trace }) {
    if (inputs.bucketFell === undefined && inputs.makeUp === undefined)
      throw valueError("inputs: one of bucket fell and make up is needed, both are blank");
    const { finding, ...found } = bucketTest(inputs, trace);
    const values = Object.fromEntries(Object.entries(found).map(([key, value]) => [key, value ?? NO_VALUE]));
    return { ...(values as { [K in keyof typeof found]: number | typeof NO_VALUE }), finding };
  },
});
