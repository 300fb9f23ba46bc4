import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { COLD_IN, COLD_OUT, CORRECTION_FACTOR, DIRECTION, HOT_IN, HOT_OUT } from "../args";
import { hiddenCondensing } from "../surface/cautions";
import { conductanceForDuty } from "../surface/equations";
import { meanDifferenceOf } from "../effectiveness/ends";

export const exchangerUa = cellFunction({
  id: "EXCHANGER.UA",
  topic: "exchanger",
  summary: "Conductance UA that a duty needs at four end temperatures.",
  keywords: ["conductance", "size of an exchanger"],
  args: {
    duty: HEAT_RATE.describedAs("heat to transfer"),
    hotIn: HOT_IN,
    hotOut: HOT_OUT,
    coldIn: COLD_IN,
    coldOut: COLD_OUT,
    arrangement: DIRECTION,
    correction: CORRECTION_FACTOR,
  },
  returns: quantityResult("heat conductance", "conductance UA"),
  cautions: [{ rule: hiddenCondensing, raisedBy: { duty: 110000, hotIn: 180, hotOut: 95, coldIn: 80, coldOut: 88 } }],
  checks: [
    {
      inputs: { duty: 63.83, hotIn: 100, hotOut: 100, coldIn: 20, coldOut: 50, units: "SI" },
      expected: 1000,
      tolerance: 0.2,
      source: "steamCondenserTables",
    },
    {
      inputs: { duty: 10, hotIn: 70, hotOut: 40, coldIn: 20, coldOut: 50, units: "SI" },
      expected: 500,
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute: ({ duty, arrangement, correction, ...ends }, { trace }) =>
    trace.step(conductanceForDuty, { Q: duty, F: correction, dTm: meanDifferenceOf(ends, arrangement, trace) }),
});
