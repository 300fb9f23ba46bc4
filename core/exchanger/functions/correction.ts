import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, HOT_IN, HOT_OUT } from "../args";
import { lowCorrection } from "../surface/cautions";
import { correctionOf } from "../effectiveness/correction";

export const exchangerCorrection = cellFunction({
  id: "EXCHANGER.CORRECTION",
  topic: "exchanger",
  summary: "Correction factor F of the counterflow mean difference, shell and tube.",
  keywords: ["F factor", "LMTD correction", "shell passes", "tube passes"],
  details: [
    "Shells in series, each with an even number of tube passes. F multiplies the counterflow mean difference.",
    "A stream that keeps its temperature, such as a condensing one, needs no correction: F = 1.",
  ],
  args: {
    hotIn: HOT_IN,
    hotOut: HOT_OUT,
    coldIn: COLD_IN,
    coldOut: COLD_OUT,
    shellPasses: quantity("count", "shells in series, or shell passes", { from: 1, to: 20, whole: true }).default(1),
  },
  returns: quantityResult("fraction", "correction factor F"),
  cautions: [{ rule: lowCorrection, raisedBy: { hotIn: 120, hotOut: 63, coldIn: 20, coldOut: 77, units: "SI" } }],
  checks: [
    {
      inputs: { hotIn: 120, hotOut: 70, coldIn: 20, coldOut: 70, units: "SI" },
      expected: 0.802278,
      tolerance: 1e-5,
      source: "fakheri2003",
      remark: "R = 1, P = 0.5 by the printed special form √2 P/(1 − P) / ln((2 − P(2 − √2))/(2 − P(2 + √2)))",
    },
    {
      inputs: { hotIn: 120, hotOut: 50, coldIn: 20, coldOut: 90, units: "SI" },
      expected: "#N/A",
      source: "exchangerRows",
      remark: "P = 0.7 is above the limit 0.585786 at R = 1",
    },
    { inputs: { hotIn: 110, hotOut: 110, coldIn: 80, coldOut: 90 }, expected: 1, tolerance: 0, source: "identity" },
  ],
  compute: ({ shellPasses, ...ends }, { trace }) => correctionOf(ends, shellPasses, trace),
});
