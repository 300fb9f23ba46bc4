import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { outside } from "../../kernel/values/fault";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { word } from "../../kernel/define/result";
import { BORE_RULE, SCHEDULE } from "../args";
import { fastWater } from "../cautions";
import { smallestSize } from "../straight/size";

export const size = cellFunction({
  id: "PIPE.SIZE",
  topic: "pipe",
  summary: "Smallest PVC pipe that carries a flow within a velocity limit.",
  finds: ["pipe diameter", "choose pipe"],
  args: {
    flow: WATER_FLOW,
    velocityLimit: quantity("velocity", "highest mean velocity allowed (pools: 6 suction, 8 ft/s return)", {
      above: 0,
      usual: [us("velocity", 2), us("velocity", 10)],
    }),
    schedule: SCHEDULE,
    bore: BORE_RULE,
  },
  gives: word("nominal size"),
  facts: { waterVelocity: "velocity" },
  cautions: [{ rule: fastWater, fires: { flow: 90, velocityLimit: 10 } }],
  checks: [
    {
      at: { flow: 61.6, velocityLimit: 6 },
      gives: "2 in",
      from: "poolVelocityLimits",
      remark: "2 in carries 61.7 gpm at 6 ft/s",
    },
    { at: { flow: 61.9, velocityLimit: 6 }, gives: "2-1/2 in", from: "poolVelocityLimits" },
    { at: { flow: 82.1, velocityLimit: 8 }, gives: "2 in", from: "poolVelocityLimits", remark: "82.2 gpm at 8 ft/s" },
  ],
  work({ flow, velocityLimit, schedule, bore }, { trace, note }) {
    const found = smallestSize(flow, velocityLimit, schedule, bore, trace);
    if (!found) throw outside("flow: no size of this table, up to 8 in, stays within the velocity limit");
    note({ waterVelocity: found.velocity });
    return found.size;
  },
});
