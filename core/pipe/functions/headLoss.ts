import { choice } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { BORE_RULE, LOOP_WATER, NOMINAL_SIZE, SCHEDULE, STRAIGHT_LENGTH } from "../args";
import { fastPipeWater, hotPlastic, outsideHazenWilliams, transitionalFlow } from "../cautions";
import { headLossOf } from "../straight/headLoss";

export const pipeHeadLoss = cellFunction({
  id: "PIPE.HEADLOSS",
  topic: "pipe",
  summary: "Friction head lost in a straight run of PVC pipe.",
  keywords: ["pressure drop", "friction loss", "pump head", "Hazen-Williams", "Darcy"],
  details: [
    "Fittings are extra. Wall roughness of PVC 0.0015 mm; laminar below Reynolds number 2,040, Colebrook above.",
    "Published friction tables for C = 150 often use the inside diameters of steel pipe and read 6 to 7 % low for PVC.",
  ],
  args: {
    flow: WATER_FLOW,
    size: NOMINAL_SIZE,
    length: STRAIGHT_LENGTH,
    schedule: SCHEDULE,
    water: LOOP_WATER,
    method: choice("FrictionMethod", ["Darcy-Weisbach", "Hazen-Williams"], "friction formula").default(
      "Darcy-Weisbach",
    ),
    bore: BORE_RULE,
  },
  returns: quantityResult("head", "head lost to friction"),
  facts: { waterVelocity: "velocity", reynolds: "number" },
  cautions: [
    { rule: fastPipeWater, raisedBy: { flow: 90, size: "2 in", length: 100 } },
    { rule: transitionalFlow, raisedBy: { flow: 1, size: "1 in", length: 100 } },
    {
      rule: outsideHazenWilliams,
      raisedBy: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams", water: 95 },
    },
    { rule: hotPlastic, raisedBy: { flow: 40, size: "2 in", length: 100, water: 120 } },
  ],
  checks: [
    {
      inputs: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams" },
      expected: 2.77,
      tolerance: 0.03,
      source: "hazenWilliams",
    },
    {
      inputs: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams", bore: "minimum wall" },
      expected: 2.62,
      tolerance: 0.079,
      source: "illinois906",
      remark: "The table fits an inside diameter of 2.067 in, which the minimum wall also gives.",
    },
    {
      inputs: { flow: 9.32175006, size: "1/2 in", length: 100, water: "10 degC", bore: "minimum wall" },
      expected: 66.0799126,
      tolerance: "0.1 %",
      source: "fluids131",
    },
  ],
  compute(args, { trace, recordFacts }) {
    const loss = headLossOf(args, trace);
    recordFacts({ waterVelocity: loss.velocity, reynolds: loss.reynolds });
    return loss.head;
  },
});
