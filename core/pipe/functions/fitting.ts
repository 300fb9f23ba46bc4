import { choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { BORE_RULE, FITTING, LOOP_WATER, NOMINAL_SIZE, SCHEDULE } from "../args";
import { contestedFittings, fastPipeWater } from "../cautions";
import { FITTING_METHODS, fittingLoss } from "../fitting/fittingLoss";

export const pipeFitting = cellFunction({
  id: "PIPE.FITTING",
  topic: "pipe",
  summary: "Head lost in equal PVC fittings.",
  keywords: ["elbow", "tee", "valve", "minor loss", "K factor"],
  details: [
    "Couplings and unions K 0.04, sharp entrance 0.5, exit 1.0. A reducer runs from the next larger size; its coefficient is on the smaller bore.",
    "Socket fittings of PVC turn as sharply as screwed ones: the methods' screwed rows are used.",
  ],
  args: {
    fitting: FITTING,
    size: NOMINAL_SIZE,
    flow: WATER_FLOW,
    count: quantity("count", "number of fittings", { from: 0, to: 1000, whole: true }).default(1),
    schedule: SCHEDULE,
    water: LOOP_WATER,
    method: choice("FittingMethod", FITTING_METHODS, "method of the loss coefficient").default("three-constant"),
    bore: BORE_RULE,
  },
  returns: quantityResult("head", "head lost"),
  facts: { waterVelocity: "velocity" },
  cautions: [
    { rule: fastPipeWater, raisedBy: { fitting: "elbow 90", size: "2 in", flow: 90 } },
    { rule: contestedFittings, raisedBy: { fitting: "elbow 90", size: "2 in", flow: 40 } },
  ],
  checks: [
    {
      inputs: { fitting: "elbow 90", size: "2 in", flow: 40, count: 4, method: "equivalent length" },
      expected: 0.61,
      tolerance: 0.02,
      source: "pvcEquivalentLengths",
      remark: "4 × 5.7 ft of 2 in pipe at 2.68 ft per 100 ft",
    },
    {
      inputs: { fitting: "exit", size: "2 in", flow: 61.7 },
      expected: 0.56,
      tolerance: 0.005,
      source: "identity",
      remark: "velocity head at 6 ft/s",
    },
  ],
  compute(args, { trace, recordFacts }) {
    const loss = fittingLoss(args, trace);
    recordFacts({ waterVelocity: loss.velocity });
    return loss.head;
  },
});
