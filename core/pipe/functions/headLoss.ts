import { choice } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { BORE_RULE, LOOP_WATER, NOMINAL_SIZE, SCHEDULE, STRAIGHT_LENGTH } from "../args";
import { fastWater, hotPlastic, outsideHazenWilliams, transitionalFlow } from "../cautions";
import { headLossOf } from "../straight/headLoss";

export const headLoss = cellFunction({
  id: "PIPE.HEADLOSS",
  topic: "pipe",
  summary: "Friction head lost in a straight run of PVC pipe.",
  finds: ["pressure drop", "friction loss", "pump head", "Hazen-Williams", "Darcy"],
  remarks: [
    "Fittings come on top. Wall roughness of PVC 0.0015 mm; laminar below Reynolds number 2,040, Colebrook above.",
    "Published friction tables for C = 150 are often worked with the inside diameters of steel pipe and read 6 to 7 % low for PVC.",
  ],
  args: {
    flow: WATER_FLOW,
    size: NOMINAL_SIZE,
    length: STRAIGHT_LENGTH,
    schedule: SCHEDULE,
    water: LOOP_WATER,
    method: choice("FrictionMethod", ["Darcy-Weisbach", "Hazen-Williams"], "friction formula").otherwise(
      "Darcy-Weisbach",
    ),
    bore: BORE_RULE,
  },
  gives: of("head", "head lost to friction"),
  facts: { waterVelocity: "velocity", reynolds: "number" },
  cautions: [
    { rule: fastWater, fires: { flow: 90, size: "2 in", length: 100 } },
    { rule: transitionalFlow, fires: { flow: 1, size: "1 in", length: 100 } },
    { rule: outsideHazenWilliams, fires: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams", water: 95 } },
    { rule: hotPlastic, fires: { flow: 40, size: "2 in", length: 100, water: 120 } },
  ],
  checks: [
    {
      at: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams" },
      gives: 2.77,
      within: 0.03,
      from: "hazenWilliams",
    },
    {
      at: { flow: 40, size: "2 in", length: 100, method: "Hazen-Williams", bore: "minimum wall" },
      gives: 2.62,
      within: 0.079,
      from: "illinois906",
      remark: "The table fits an inside diameter of 2.067 in, which the minimum wall gives too.",
    },
    {
      at: { flow: 9.32175006, size: "1/2 in", length: 100, water: "10 degC", bore: "minimum wall" },
      gives: 66.0799126,
      within: "0.1 %",
      from: "fluids131",
    },
  ],
  work(args, { trace, note }) {
    const loss = headLossOf(args, trace);
    note({ waterVelocity: loss.velocity, reynolds: loss.reynolds });
    return loss.head;
  },
});
