import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { BORE_RULE, NOMINAL_SIZE, SCHEDULE } from "../args";
import { fastPipeWater } from "../cautions";
import { meanVelocity } from "../equations";
import { boreOf } from "../straight/bore";

export const pipeVelocity = cellFunction({
  id: "PIPE.VELOCITY",
  topic: "pipe",
  summary: "Mean velocity of water in PVC pipe.",
  keywords: ["flow speed"],
  args: { flow: WATER_FLOW, size: NOMINAL_SIZE, schedule: SCHEDULE, bore: BORE_RULE },
  returns: quantityResult("velocity", "mean velocity"),
  facts: { waterVelocity: "velocity" },
  cautions: [{ rule: fastPipeWater, raisedBy: { flow: 90, size: "2 in" } }],
  checks: [
    {
      inputs: { flow: 40, size: "2 in", bore: "minimum wall" },
      expected: 3.82,
      tolerance: 0.01,
      source: "identity",
      remark: "0.4085 Q/d² at 2.067 in",
    },
    { inputs: { flow: 61.7, size: "2 in" }, expected: 6, tolerance: 0.02, source: "poolVelocityLimits" },
  ],
  compute({ flow, size, schedule, bore }, { trace, step, recordFacts }) {
    const v = step(meanVelocity, { Q: flow, D: boreOf(size, schedule, bore, trace) });
    recordFacts({ waterVelocity: v });
    return v;
  },
});
