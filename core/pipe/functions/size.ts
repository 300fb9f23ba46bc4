import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable } from "../../kernel/values/fault";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { wordResult } from "../../kernel/define/result";
import { BORE_RULE, SCHEDULE } from "../args";
import { fastPipeWater } from "../cautions";
import { smallestSize } from "../straight/size";

export const pipeSize = cellFunction({
  id: "PIPE.SIZE",
  topic: "pipe",
  summary: "Smallest PVC pipe that carries a flow within a velocity limit.",
  keywords: ["pipe diameter", "choose pipe"],
  args: {
    flow: WATER_FLOW,
    velocityLimit: quantity("velocity", "highest mean velocity allowed (pools: 6 suction, 8 ft/s return)", {
      above: 0,
      usual: [us("velocity", 2), us("velocity", 10)],
    }),
    schedule: SCHEDULE,
    bore: BORE_RULE,
  },
  returns: wordResult("nominal size"),
  facts: { waterVelocity: "velocity" },
  cautions: [{ rule: fastPipeWater, raisedBy: { flow: 90, velocityLimit: 10 } }],
  checks: [
    {
      inputs: { flow: 61.6, velocityLimit: 6 },
      expected: "2 in",
      source: "poolVelocityLimits",
      remark: "2 in carries 61.7 gpm at 6 ft/s",
    },
    { inputs: { flow: 61.9, velocityLimit: 6 }, expected: "2-1/2 in", source: "poolVelocityLimits" },
    {
      inputs: { flow: 82.1, velocityLimit: 8 },
      expected: "2 in",
      source: "poolVelocityLimits",
      remark: "82.2 gpm at 8 ft/s",
    },
  ],
  compute({ flow, velocityLimit, schedule, bore }, { trace, recordFacts }) {
    const found = smallestSize(flow, velocityLimit, schedule, bore, trace);
    if (!found) throw notAvailable("flow: no size of this table, up to 8 in, stays within the velocity limit");
    recordFacts({ waterVelocity: found.velocity });
    return found.size;
  },
});
