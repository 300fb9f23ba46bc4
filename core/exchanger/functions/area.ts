import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { CORRECTION_FACTOR, FILM } from "../args";
import { areaForDuty } from "../surface/equations";

export const area = cellFunction({
  id: "EXCHANGER.AREA",
  topic: "exchanger",
  summary: "Area of an exchanger for a duty.",
  finds: ["surface", "size of an exchanger"],
  remarks: ["The area is that on which u stands: the tube's outside for EXCHANGER.OVERALL."],
  args: {
    duty: HEAT_RATE.saying("heat to be passed"),
    u: FILM.saying("overall coefficient U"),
    lmtd: quantity("temperature difference", "log mean temperature difference", {
      above: 0,
      usual: [us("temperature difference", 2), us("temperature difference", 200)],
    }),
    correction: CORRECTION_FACTOR,
  },
  gives: of("area", "area"),
  cautions: [],
  checks: [
    {
      at: { duty: 3880000, u: 158, lmtd: 47 },
      gives: 523,
      within: 0.6,
      from: "kern1950",
      remark: "Example 12.3, condensing",
    },
    { at: { duty: 100000, u: 100, lmtd: 20 }, gives: 50, within: 1e-9, from: "identity" },
    { at: { duty: 10, u: 500, lmtd: 10, correction: 0.8, units: "SI" }, gives: 2.5, within: 1e-9, from: "identity" },
  ],
  work: ({ duty, u, lmtd, correction }, { step }) => step(areaForDuty, { Q: duty, U: u, F: correction, dTm: lmtd }),
});
