import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { us } from "../../kernel/quantity";
import { of } from "../../kernel/result";
import { SHELTER } from "../args";
import { shelterGuess } from "../losses/cautions";
import { windAtWaterBy } from "../losses/wind";

export const windAtWater = cellFunction({
  id: "POOL.WINDATWATER",
  topic: "pool",
  summary: "Wind at the water of a pool from the wind of a weather station.",
  finds: ["wind speed", "shelter", "weather station"],
  remarks: [
    "Published shares of the 10 m wind: open 0.6 to 1, suburban 0.3, well sheltered 0.1 to 0.15 (from memory).",
  ],
  args: {
    wind10m: quantity("wind speed", "wind of a weather station, at 10 m", { from: 0, to: us("wind speed", 150) }),
    shelter: SHELTER,
  },
  gives: of("wind speed", "wind at the water"),
  cautions: [{ rule: shelterGuess, fires: { wind10m: 8, shelter: "suburban" } }],
  checks: [
    { at: { wind10m: 10, shelter: "suburban" }, gives: 3, within: 1e-9, from: "isoTr12596", remark: "From memory." },
    { at: { wind10m: 10, shelter: "open" }, gives: 6, within: 1e-9, from: "isoTr12596", remark: "From memory." },
    { at: { wind10m: 10, shelter: 0.15 }, gives: 1.5, within: 1e-9, from: "identity" },
  ],
  work: ({ wind10m, shelter }, { trace }) => windAtWaterBy(wind10m, shelter, trace),
});
