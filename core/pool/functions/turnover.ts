import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { WATER_VOLUME } from "../args";
import { slowTurnover } from "../cautions";
import { turnoverTime } from "../equations";

export const poolTurnover = cellFunction({
  id: "POOL.TURNOVER",
  topic: "pool",
  summary: "Hours in which the pump moves a pool's volume once.",
  keywords: ["filtration", "circulation", "pump run time"],
  details: [
    "Public pools: ISPSC 2012 table 407.2 asks for 1.5 × mean depth in ft, at most 6 h; residential design practice is 6 to 8 h.",
  ],
  args: {
    volume: WATER_VOLUME,
    flow: quantity("water flow", "water flow of the pump", {
      from: us("water flow", 0.01),
      to: us("water flow", 1e6),
      usual: [us("water flow", 2), us("water flow", 1000)],
    }),
  },
  returns: quantityResult("time", "time of one turnover"),
  cautions: [{ rule: slowTurnover, raisedBy: { volume: 40_000, flow: 50 } }],
  checks: [
    { inputs: { volume: 19_149, flow: 39.9 }, expected: 8, tolerance: 0.01, source: "poolTextbook" },
    { inputs: { volume: 100, flow: 20, units: "SI" }, expected: 5, tolerance: 1e-9, source: "identity" },
  ],
  compute: ({ volume, flow }, { step }) => step(turnoverTime, { V: volume, Q: flow }),
});
