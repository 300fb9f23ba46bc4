import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, DIRECTION, HOT_IN, HOT_OUT } from "../args";
import { hiddenCondensing } from "../surface/cautions";
import { meanDifferenceOf } from "../effectiveness/ends";

export const exchangerLmtd = cellFunction({
  id: "EXCHANGER.LMTD",
  topic: "exchanger",
  summary: "Log mean temperature difference of two streams.",
  keywords: ["log mean temperature difference", "MTD", "mean difference", "approach"],
  details: [
    "Equal end differences give that difference; nearly equal ones lose no digits.",
    "For a condensing refrigerant give its condensing temperature as hotIn and hotOut.",
  ],
  args: { hotIn: HOT_IN, hotOut: HOT_OUT, coldIn: COLD_IN, coldOut: COLD_OUT, arrangement: DIRECTION },
  returns: quantityResult("temperature difference", "log mean temperature difference"),
  cautions: [{ rule: hiddenCondensing, raisedBy: { hotIn: 180, hotOut: 95, coldIn: 80, coldOut: 88 } }],
  checks: [
    {
      inputs: { hotIn: 60, hotOut: 60, coldIn: 30, coldOut: 45, units: "SI" },
      expected: 21.6,
      tolerance: 0.05,
      source: "steamCondenserTables",
    },
    {
      inputs: { hotIn: 100, hotOut: 100, coldIn: 20, coldOut: 50, units: "SI" },
      expected: 63.83,
      tolerance: 0.01,
      source: "steamCondenserTables",
    },
    {
      inputs: { hotIn: 100, hotOut: 100, coldIn: 10, coldOut: 30, units: "SI" },
      expected: 79.58,
      tolerance: 0.01,
      source: "steamCondenserTables",
    },
    {
      inputs: { hotIn: 95, hotOut: 45, coldIn: 26, coldOut: 31, arrangement: "parallel", units: "SI" },
      expected: 34.4816955255443,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { hotIn: 70, hotOut: 40, coldIn: 20, coldOut: 50, units: "SI" },
      expected: 20,
      tolerance: 1e-9,
      source: "identity",
      remark: "equal ends",
    },
    {
      inputs: { hotIn: 50, hotOut: 45, coldIn: 30, coldOut: 60, units: "SI" },
      expected: "#N/A",
      source: "identity",
      remark: "the cold stream would leave hotter than the hot one enters",
    },
  ],
  compute: ({ arrangement, ...ends }, { trace }) => meanDifferenceOf(ends, arrangement, trace),
});
