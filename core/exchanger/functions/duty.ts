import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, CONDUCTANCE, CORRECTION_FACTOR, DIRECTION, HOT_IN, HOT_OUT } from "../args";
import { hiddenCondensing } from "../surface/cautions";
import { dutyOfConductance } from "../surface/equations";
import { meanDifferenceOf } from "../effectiveness/ends";

export const exchangerDuty = cellFunction({
  id: "EXCHANGER.DUTY",
  topic: "exchanger",
  summary: "Heat that a conductance UA transfers at four end temperatures.",
  keywords: ["capacity of an exchanger", "heat transferred"],
  details: [
    "The four temperatures must be those of the running exchanger: this function doesn't check them against the flows.",
  ],
  args: {
    ua: CONDUCTANCE,
    hotIn: HOT_IN,
    hotOut: HOT_OUT,
    coldIn: COLD_IN,
    coldOut: COLD_OUT,
    arrangement: DIRECTION,
    correction: CORRECTION_FACTOR,
  },
  returns: quantityResult("heat rate", "heat passed"),
  cautions: [{ rule: hiddenCondensing, raisedBy: { ua: 3000, hotIn: 180, hotOut: 95, coldIn: 80, coldOut: 88 } }],
  checks: [
    {
      inputs: { ua: 1000, hotIn: 100, hotOut: 100, coldIn: 20, coldOut: 50, units: "SI" },
      expected: 63.83,
      tolerance: 0.01,
      source: "steamCondenserTables",
    },
    {
      inputs: { ua: 1000, hotIn: 70, hotOut: 40, coldIn: 20, coldOut: 50, correction: 0.9, units: "SI" },
      expected: 18,
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute: ({ ua, arrangement, correction, ...ends }, { trace }) =>
    trace.step(dutyOfConductance, { UA: ua, F: correction, dTm: meanDifferenceOf(ends, arrangement, trace) }),
});
