import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { BORE_RULE, NOMINAL_SIZE, SCHEDULE } from "../args";
import { boreOf } from "../straight/bore";

export const pipeBore = cellFunction({
  id: "PIPE.BORE",
  topic: "pipe",
  summary: "Bore of PVC pipe by nominal size and schedule.",
  keywords: ["inside diameter", "ID"],
  details: ["The published average bore is 0.5 to 3.3 % below the bore with minimum wall."],
  args: { size: NOMINAL_SIZE, schedule: SCHEDULE, bore: BORE_RULE },
  returns: quantityResult("diameter", "bore"),
  cautions: [],
  checks: [
    { inputs: { size: "2 in" }, expected: 2.049, tolerance: 0.004, source: "astmD1785" },
    { inputs: { size: "1-1/2 in", schedule: "80" }, expected: 1.476, tolerance: 0.004, source: "astmD1785" },
    { inputs: { size: "2-1/2 in" }, expected: 2.445, tolerance: 0.004, source: "astmD1785" },
    { inputs: { size: "2 in", bore: "minimum wall" }, expected: 2.067, tolerance: 0.001, source: "astmD1785" },
  ],
  compute: ({ size, schedule, bore: rule }, { trace }) => boreOf(size, schedule, rule, trace),
});
