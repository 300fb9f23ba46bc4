import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, DIRECTION, HOT_IN, HOT_OUT } from "../args";
import { condensingBetween } from "../surface/cautions";
import { meanDifferenceOf } from "../effectiveness/ends";

export const lmtd = cellFunction({
  id: "EXCHANGER.LMTD",
  topic: "exchanger",
  summary: "Log mean temperature difference of two streams.",
  finds: ["log mean temperature difference", "MTD", "mean difference", "approach"],
  remarks: [
    "Equal end differences give that difference; ends that are nearly equal lose no digits.",
    "For a condensing refrigerant give its condensing temperature as hotIn and hotOut.",
  ],
  args: { hotIn: HOT_IN, hotOut: HOT_OUT, coldIn: COLD_IN, coldOut: COLD_OUT, arrangement: DIRECTION },
  gives: of("temperature difference", "log mean temperature difference"),
  cautions: [{ rule: condensingBetween, fires: { hotIn: 180, hotOut: 95, coldIn: 80, coldOut: 88 } }],
  checks: [
    {
      at: { hotIn: 60, hotOut: 60, coldIn: 30, coldOut: 45, units: "SI" },
      gives: 21.6,
      within: 0.05,
      from: "steamCondenserTables",
    },
    {
      at: { hotIn: 100, hotOut: 100, coldIn: 20, coldOut: 50, units: "SI" },
      gives: 63.83,
      within: 0.01,
      from: "steamCondenserTables",
    },
    {
      at: { hotIn: 100, hotOut: 100, coldIn: 10, coldOut: 30, units: "SI" },
      gives: 79.58,
      within: 0.01,
      from: "steamCondenserTables",
    },
    {
      at: { hotIn: 95, hotOut: 45, coldIn: 26, coldOut: 31, arrangement: "parallel", units: "SI" },
      gives: 34.4816955255443,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { hotIn: 70, hotOut: 40, coldIn: 20, coldOut: 50, units: "SI" },
      gives: 20,
      within: 1e-9,
      from: "identity",
      remark: "equal ends",
    },
    {
      at: { hotIn: 50, hotOut: 45, coldIn: 30, coldOut: 60, units: "SI" },
      gives: "#N/A",
      from: "identity",
      remark: "the cold stream would leave hotter than the hot one enters",
    },
  ],
  work: ({ arrangement, ...ends }, { trace }) => meanDifferenceOf(ends, arrangement, trace),
});
