import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { STRAIGHT_LENGTH } from "../args";
import { contestedExpansion } from "../cautions";
import { expansionOf } from "../equations";

export const expansion = cellFunction({
  id: "PIPE.EXPANSION",
  topic: "pipe",
  summary: "Change of length of PVC pipe with temperature.",
  finds: ["thermal expansion", "expansion loop"],
  remarks: ["0.360 in per 10 °F and 100 ft. Sources print 0.336 to 0.375."],
  args: {
    length: STRAIGHT_LENGTH,
    rise: quantity("temperature difference", "rise of the pipe's temperature", {
      usual: [us("temperature difference", -80), us("temperature difference", 100)],
    }),
  },
  gives: of("expansion", "change of length"),
  cautions: [{ rule: contestedExpansion, fires: { length: 100, rise: 60 } }],
  checks: [{ at: { length: 500, rise: 60 }, gives: 10.8, within: 0.01, from: "plasticsManual" }],
  work: ({ length, rise }, { step }) => step(expansionOf, { L: length, dT: rise }),
});
