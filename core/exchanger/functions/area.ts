import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { CORRECTION_FACTOR, FILM } from "../args";
import { areaForDuty } from "../surface/equations";

export const exchangerArea = cellFunction({
  id: "EXCHANGER.AREA",
  topic: "exchanger",
  summary: "Area of an exchanger for a duty.",
  keywords: ["surface", "size of an exchanger"],
  details: ["The area is the one that u refers to: the tube's outside for EXCHANGER.OVERALL."],
  args: {
    duty: HEAT_RATE.describedAs("heat to transfer"),
    u: FILM.describedAs("overall coefficient U"),
    lmtd: quantity("temperature difference", "log mean temperature difference", {
      above: 0,
      usual: [us("temperature difference", 2), us("temperature difference", 200)],
    }),
    correction: CORRECTION_FACTOR,
  },
  returns: quantityResult("area", "area"),
  cautions: [],
  checks: [
    {
      inputs: { duty: 3880000, u: 158, lmtd: 47 },
      expected: 523,
      tolerance: 0.6,
      source: "kern1950",
      remark: "Example 12.3, condensing",
    },
    { inputs: { duty: 100000, u: 100, lmtd: 20 }, expected: 50, tolerance: 1e-9, source: "identity" },
    {
      inputs: { duty: 10, u: 500, lmtd: 10, correction: 0.8, units: "SI" },
      expected: 2.5,
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute: ({ duty, u, lmtd, correction }, { step }) => step(areaForDuty, { Q: duty, U: u, F: correction, dTm: lmtd }),
});
