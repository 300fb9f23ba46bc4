import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { outside } from "../../kernel/values/fault";
import { show, us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { fixedOrificeOnly, highTarget } from "../cautions";
import { targetSuperheat as rule } from "../equations";

const degF = (value: number): number => us("temperature", value);

export const targetSuperheat = cellFunction({
  id: "LINE.TARGETSUPERHEAT",
  topic: "line",
  summary: "Target superheat of a fixed-orifice machine on its outdoor coil.",
  finds: ["charging", "fixed orifice", "piston"],
  remarks: [
    "(3 × wet bulb − 80 − dry bulb)/2 in °F. Below 5 °F no target exists: the machine can't be charged by superheat then.",
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
  gives: of("temperature difference", "target superheat"),
  cautions: [
    { rule: fixedOrificeOnly, fires: { indoorWetBulb: 64, outdoorDryBulb: 96 } },
    { rule: highTarget, fires: { indoorWetBulb: 72, outdoorDryBulb: 80 } },
  ],
  checks: [
    { at: { indoorWetBulb: 64, outdoorDryBulb: 96 }, gives: 8, within: 0.01, from: "targetSuperheatNotes" },
    { at: { indoorWetBulb: 68, outdoorDryBulb: 95 }, gives: 14, within: 0.6, from: "superheatTable" },
    {
      at: { indoorWetBulb: 66, outdoorDryBulb: 90 },
      gives: 13,
      within: 1.01,
      from: "targetSuperheatNotes",
      remark: "chart value; the formula gives 14",
    },
    { at: { indoorWetBulb: 58, outdoorDryBulb: 95 }, gives: "#N/A", from: "title24Superheat" },
  ],
  work({ indoorWetBulb, outdoorDryBulb }, { step, system }) {
    const target = step(rule, { WB: indoorWetBulb, DB: outdoorDryBulb });
    if (target < us("temperature difference", 5))
      throw outside(
        `the target comes to ${show(target, "temperature difference", system)}, under ${show(us("temperature difference", 5), "temperature difference", system)}: the machine can't be charged by superheat at these conditions`,
      );
    return target;
  },
});
