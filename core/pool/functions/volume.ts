import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { POOL_LENGTH, POOL_WIDTH, SHAPE, WATER_DEPTH } from "../args";
import { volumeOfPool } from "../equations";
import { areaOfShape } from "../size";

export const volume = cellFunction({
  id: "POOL.VOLUME",
  topic: "pool",
  summary: "Volume of a pool by its outline and depths.",
  finds: ["gallons", "capacity", "content"],
  remarks: [
    "Mean depth is the mean of both ends: an even slope of the floor. A hopper or a long shallow end needs its own mean.",
    'A kidney takes both its widths, as "12; 16 ft": 0.45 × (A + B) × length. An oval is reckoned as an ellipse.',
  ],
  args: {
    shape: SHAPE,
    length: POOL_LENGTH,
    width: POOL_WIDTH,
    shallow: WATER_DEPTH.saying("depth of the water at the shallow end"),
    deep: WATER_DEPTH.saying("depth of the water at the deep end").otherwise({
      says: "as shallow",
      from: (args) => args["shallow"] as number,
    }),
  },
  gives: of("pool volume", "volume of water"),
  cautions: [],
  checks: [
    {
      at: { shape: "rectangle", length: 40, width: "25 ft", shallow: "1 in" },
      gives: 625,
      within: 2,
      from: "doePoolHeaters",
      remark: "1,000 ft² by 1 in, rounded in print; 623.4 exact.",
    },
    {
      at: { shape: "rectangle", length: 32, width: 16, shallow: 3, deep: 7 },
      gives: 19149,
      within: "0.1 %",
      from: "poolTextbook",
      remark: "512 ft² by 5 ft with 7.48 gal/ft³.",
    },
    {
      at: { shape: "kidney", length: 30, width: "12; 16 ft", shallow: 5 },
      gives: 14138,
      within: 1,
      from: "poolTextbook",
      remark: "0.45 × (12 + 16) × 30 = 378 ft².",
    },
    { at: { shape: "round", length: 20, width: 20, shallow: 4 }, gives: 9400, within: 1, from: "identity" },
    { at: { shape: "kidney", length: 30, width: 12, shallow: 5 }, gives: "#VALUE!", from: "identity" },
  ],
  work({ shape, length, width, shallow, deep }, { trace, step }) {
    const A = areaOfShape(shape, length, width, trace);
    return step(volumeOfPool, { A, d1: shallow, d2: deep });
  },
});
