import { cellFunction } from "../../kernel/define/cellFunction";
import { notAvailable } from "../../kernel/values/fault";
import { quantityResult } from "../../kernel/define/result";
import { FITTING, NOMINAL_SIZE } from "../args";
import { contestedFittings } from "../cautions";
import { EQUIVALENT_SIZES } from "../data/fittings";
import { equivalentLength } from "../fitting/fittingLoss";

export const pipeEquivalent = cellFunction({
  id: "PIPE.EQUIVALENT",
  topic: "pipe",
  summary: "Length of straight PVC pipe that loses as much as a fitting.",
  keywords: ["equivalent length"],
  details: [
    "The first of three published PVC tables, which differ by a factor of two to three. An equivalent length is valid only with the friction factor behind it.",
  ],
  args: { fitting: FITTING, size: NOMINAL_SIZE },
  returns: quantityResult("length", "equivalent length"),
  cautions: [{ rule: contestedFittings, raisedBy: { fitting: "elbow 90", size: "2 in" } }],
  checks: [
    { inputs: { fitting: "elbow 90", size: "2 in" }, expected: 5.85, tolerance: 0.151, source: "pvcEquivalentLengths" },
    { inputs: { fitting: "tee branch", size: "2 in" }, expected: 12, tolerance: 0.1, source: "pvcEquivalentLengths" },
  ],
  compute({ fitting, size }, { trace }) {
    const length = equivalentLength(fitting, size);
    if (length === undefined)
      throw notAvailable(
        `size: the table has no ${fitting} of ${size}; it holds ${EQUIVALENT_SIZES.join(", ")} of elbows, tees and gate valves`,
      );
    trace.lookup({
      table: "Equivalent length of PVC fittings",
      row: `${fitting}, ${size}`,
      result: { value: length, kind: "length" },
      source: "pvcEquivalentLengths",
    });
    return length;
  },
});
