import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { POOL_LENGTH, POOL_WIDTH, SHAPE, WATER_DEPTH } from "../args";
import { volumeOfPool } from "../equations";
import { areaOfShape } from "../size";

export const poolVolume = cellFunction({
  id: "POOL.VOLUME",
  topic: "pool",
  summary: "Volume of a pool by its outline and depths.",
  keywords: ["gallons", "capacity", "content"],
  details: [
    "Mean depth is the mean of both ends: an even slope of the floor. A hopper or a long shallow end needs its own mean.",
    'A kidney takes both its widths, as "12; 16 ft": 0.45 × (A + B) × length. An oval is reckoned as an ellipse.',
  ],
  args: {
    shape: SHAPE,
    length: POOL_LENGTH,
    width: POOL_WIDTH,
    shallow: WATER_DEPTH.describedAs("depth of the water at the shallow end"),
    deep: WATER_DEPTH.describedAs("depth of the water at the deep end").default({
      words: "as shallow",
      from: (args) => args["shallow"] as number,
    }),
  },
  returns: quantityResult("pool volume", "volume of water"),
  cautions: [],
  checks: [
    {
      inputs: { shape: "rectangle", length: 40, width: "25 ft", shallow: "1 in" },
      expected: 625,
      tolerance: 2,
      source: "doePoolHeaters",
      remark: "1,000 ft² by 1 in, rounded in print; 623.4 exact.",
    },
    {
      inputs: { shape: "rectangle", length: 32, width: 16, shallow: 3, deep: 7 },
      expected: 19149,
      tolerance: "0.1 %",
      source: "poolTextbook",
      remark: "512 ft² by 5 ft with 7.48 gal/ft³.",
    },
    {
      inputs: { shape: "kidney", length: 30, width: "12; 16 ft", shallow: 5 },
      expected: 14138,
      tolerance: 1,
      source: "poolTextbook",
      remark: "0.45 × (12 + 16) × 30 = 378 ft².",
    },
    { inputs: { shape: "round", length: 20, width: 20, shallow: 4 }, expected: 9400, tolerance: 1, source: "identity" },
    { inputs: { shape: "kidney", length: 30, width: 12, shallow: 5 }, expected: "#VALUE!", source: "identity" },
  ],
  compute({ shape, length, width, shallow, deep }, { trace, step }) {
    const A = areaOfShape(shape, length, width, trace);
    return step(volumeOfPool, { A, d1: shallow, d2: deep });
  },
});
