import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { SHELTER } from "../args";
import { shelterGuess } from "../losses/cautions";
import { windAtWaterBy } from "../losses/wind";

export const poolWindAtWater = cellFunction({
  id: "POOL.WINDATWATER",
  topic: "pool",
  summary: "Wind at the water of a pool from the wind of a weather station.",
  keywords: ["wind speed", "shelter", "weather station"],
  details: [
    "Published shares of the 10 m wind: open 0.6 to 1, suburban 0.3, well sheltered 0.1 to 0.15 (from memory).",
  ],
  args: {
    wind10m: quantity("wind speed", "wind of a weather station, at 10 m", { from: 0, to: us("wind speed", 150) }),
    shelter: SHELTER,
  },
  returns: quantityResult("wind speed", "wind at the water"),
  cautions: [{ rule: shelterGuess, raisedBy: { wind10m: 8, shelter: "suburban" } }],
  checks: [
    {
      inputs: { wind10m: 10, shelter: "suburban" },
      expected: 3,
      tolerance: 1e-9,
      source: "isoTr12596",
      remark: "From memory.",
    },
    {
      inputs: { wind10m: 10, shelter: "open" },
      expected: 6,
      tolerance: 1e-9,
      source: "isoTr12596",
      remark: "From memory.",
    },
    { inputs: { wind10m: 10, shelter: 0.15 }, expected: 1.5, tolerance: 1e-9, source: "identity" },
  ],
  compute: ({ wind10m, shelter }, { trace }) => windAtWaterBy(wind10m, shelter, trace),
});
