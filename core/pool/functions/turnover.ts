import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { WATER_VOLUME } from "../args";
import { slowTurnover } from "../cautions";
import { turnoverTime } from "../equations";

export const turnover = cellFunction({
  id: "POOL.TURNOVER",
  topic: "pool",
  summary: "Hours in which the pump moves a pool's volume once.",
  finds: ["filtration", "circulation", "pump run time"],
  remarks: [
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
  gives: of("time", "time of one turnover"),
  cautions: [{ rule: slowTurnover, fires: { volume: 40_000, flow: 50 } }],
  checks: [
    { at: { volume: 19_149, flow: 39.9 }, gives: 8, within: 0.01, from: "poolTextbook" },
    { at: { volume: 100, flow: 20, units: "SI" }, gives: 5, within: 1e-9, from: "identity" },
  ],
  work: ({ volume, flow }, { step }) => step(turnoverTime, { V: volume, Q: flow }),
});
