import { cellFunction } from "../../kernel/define/cellFunction";
import { outside } from "../../kernel/values/fault";
import { of } from "../../kernel/define/result";
import { FITTING, NOMINAL_SIZE } from "../args";
import { contestedFittings } from "../cautions";
import { EQUIVALENT_SIZES } from "../data/fittings";
import { equivalentLength } from "../fitting/fittingLoss";

export const equivalent = cellFunction({
  id: "PIPE.EQUIVALENT",
  topic: "pipe",
  summary: "Length of straight PVC pipe that loses as much as a fitting.",
  finds: ["equivalent length"],
  remarks: [
    "The first of three published PVC tables; they differ two to three times. An equivalent length is tied to the friction factor that made it.",
  ],
  args: { fitting: FITTING, size: NOMINAL_SIZE },
  gives: of("length", "equivalent length"),
  cautions: [{ rule: contestedFittings, fires: { fitting: "elbow 90", size: "2 in" } }],
  checks: [
    { at: { fitting: "elbow 90", size: "2 in" }, gives: 5.85, within: 0.151, from: "pvcEquivalentLengths" },
    { at: { fitting: "tee branch", size: "2 in" }, gives: 12, within: 0.1, from: "pvcEquivalentLengths" },
  ],
  work({ fitting, size }, { trace }) {
    const length = equivalentLength(fitting, size);
    if (length === undefined)
      throw outside(
        `size: the table has no ${fitting} of ${size}; it holds ${EQUIVALENT_SIZES.join(", ")} of elbows, tees and gate valves`,
      );
    trace.lookup({
      table: "Equivalent length of PVC fittings",
      row: `${fitting}, ${size}`,
      gives: { value: length, kind: "length" },
      source: "pvcEquivalentLengths",
    });
    return length;
  },
});
