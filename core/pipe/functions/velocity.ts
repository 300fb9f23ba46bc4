import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { BORE_RULE, NOMINAL_SIZE, SCHEDULE } from "../args";
import { fastWater } from "../cautions";
import { meanVelocity } from "../equations";
import { boreOf } from "../straight/bore";

export const velocity = cellFunction({
  id: "PIPE.VELOCITY",
  topic: "pipe",
  summary: "Mean velocity of water in PVC pipe.",
  finds: ["flow speed"],
  args: { flow: WATER_FLOW, size: NOMINAL_SIZE, schedule: SCHEDULE, bore: BORE_RULE },
  gives: of("velocity", "mean velocity"),
  facts: { waterVelocity: "velocity" },
  cautions: [{ rule: fastWater, fires: { flow: 90, size: "2 in" } }],
  checks: [
    {
      at: { flow: 40, size: "2 in", bore: "minimum wall" },
      gives: 3.82,
      within: 0.01,
      from: "identity",
      remark: "0.4085 Q/d² at 2.067 in",
    },
    { at: { flow: 61.7, size: "2 in" }, gives: 6, within: 0.02, from: "poolVelocityLimits" },
  ],
  work({ flow, size, schedule, bore }, { trace, step, note }) {
    const v = step(meanVelocity, { Q: flow, D: boreOf(size, schedule, bore, trace) });
    note({ waterVelocity: v });
    return v;
  },
});
