import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, CONDUCTANCE, CORRECTION_FACTOR, DIRECTION, HOT_IN, HOT_OUT } from "../args";
import { condensingBetween } from "../surface/cautions";
import { dutyOfConductance } from "../surface/equations";
import { meanDifferenceOf } from "../effectiveness/ends";

export const duty = cellFunction({
  id: "EXCHANGER.DUTY",
  topic: "exchanger",
  summary: "Heat that a conductance UA passes at four end temperatures.",
  finds: ["capacity of an exchanger", "heat transferred"],
  remarks: ["The four temperatures must be those of the running exchanger: they and the flows are not checked here."],
  args: {
    ua: CONDUCTANCE,
    hotIn: HOT_IN,
    hotOut: HOT_OUT,
    coldIn: COLD_IN,
    coldOut: COLD_OUT,
    arrangement: DIRECTION,
    correction: CORRECTION_FACTOR,
  },
  gives: of("heat rate", "heat passed"),
  cautions: [{ rule: condensingBetween, fires: { ua: 3000, hotIn: 180, hotOut: 95, coldIn: 80, coldOut: 88 } }],
  checks: [
    {
      at: { ua: 1000, hotIn: 100, hotOut: 100, coldIn: 20, coldOut: 50, units: "SI" },
      gives: 63.83,
      within: 0.01,
      from: "steamCondenserTables",
    },
    {
      at: { ua: 1000, hotIn: 70, hotOut: 40, coldIn: 20, coldOut: 50, correction: 0.9, units: "SI" },
      gives: 18,
      within: 1e-9,
      from: "identity",
    },
  ],
  work: ({ ua, arrangement, correction, ...ends }, { trace }) =>
    trace.step(dutyOfConductance, { UA: ua, F: correction, dTm: meanDifferenceOf(ends, arrangement, trace) }),
});
