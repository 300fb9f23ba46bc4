import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable } from "../../kernel/values/fault";
import { show, us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { fixedOrificeOnly, highTarget } from "../cautions";
import { targetSuperheatEquation as rule } from "../equations";

const degF = (value: number): number => us("temperature", value);

export const lineTargetSuperheat = cellFunction({
  id: "LINE.TARGETSUPERHEAT",
  topic: "line",
  summary: "Target superheat of a fixed-orifice machine on its outdoor coil.",
  keywords: ["charging", "fixed orifice", "piston"],
  details: [
    "(3 × wet bulb − 80 − dry bulb)/2 in °F. Below 5 °F there is no target: the machine can't be charged by superheat then.",
  ],
  args: {
    indoorWetBulb: quantity("temperature", "wet bulb of the air entering the indoor coil", {
      from: degF(32),
      to: degF(100),
      usual: [degF(50), degF(76)],
    }),
    outdoorDryBulb: quantity("temperature", "dry bulb of the air entering the outdoor coil", {
      from: degF(32),
      to: degF(130),
      usual: [degF(55), degF(115)],
    }),
  },
  returns: quantityResult("temperature difference", "target superheat"),
  cautions: [
    { rule: fixedOrificeOnly, raisedBy: { indoorWetBulb: 64, outdoorDryBulb: 96 } },
    { rule: highTarget, raisedBy: { indoorWetBulb: 72, outdoorDryBulb: 80 } },
  ],
  checks: [
    { inputs: { indoorWetBulb: 64, outdoorDryBulb: 96 }, expected: 8, tolerance: 0.01, source: "targetSuperheatNotes" },
    { inputs: { indoorWetBulb: 68, outdoorDryBulb: 95 }, expected: 14, tolerance: 0.6, source: "superheatTable" },
    {
      inputs: { indoorWetBulb: 66, outdoorDryBulb: 90 },
      expected: 13,
      tolerance: 1.01,
      source: "targetSuperheatNotes",
      remark: "chart value; the formula gives 14",
    },
    { inputs: { indoorWetBulb: 58, outdoorDryBulb: 95 }, expected: "#N/A", source: "title24Superheat" },
  ],
  compute({ indoorWetBulb, outdoorDryBulb }, { step, system }) {
    const target = step(rule, { WB: indoorWetBulb, DB: outdoorDryBulb });
    if (target < us("temperature difference", 5))
      throw notAvailable(
        `indoorWetBulb and outdoorDryBulb: the target is ${show(target, "temperature difference", system)}, under ${show(us("temperature difference", 5), "temperature difference", system)}: the machine can't be charged by superheat at these conditions`,
      );
    return target;
  },
});
