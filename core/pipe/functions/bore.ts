import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { BORE_RULE, NOMINAL_SIZE, SCHEDULE } from "../args";
import { boreOf } from "../straight/bore";

export const bore = cellFunction({
  id: "PIPE.BORE",
  topic: "pipe",
  summary: "Bore of PVC pipe by nominal size and schedule.",
  finds: ["inside diameter", "ID"],
  remarks: ["The published average bore lies 0.5 to 3.3 % below the bore left by the minimum wall."],
  args: { size: NOMINAL_SIZE, schedule: SCHEDULE, bore: BORE_RULE },
  gives: of("diameter", "bore"),
  cautions: [],
  checks: [
    { at: { size: "2 in" }, gives: 2.049, within: 0.004, from: "astmD1785" },
    { at: { size: "1-1/2 in", schedule: "80" }, gives: 1.476, within: 0.004, from: "astmD1785" },
    { at: { size: "2-1/2 in" }, gives: 2.445, within: 0.004, from: "astmD1785" },
    { at: { size: "2 in", bore: "minimum wall" }, gives: 2.067, within: 0.001, from: "astmD1785" },
  ],
  work: ({ size, schedule, bore: rule }, { trace }) => boreOf(size, schedule, rule, trace),
});
