import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { STRAIGHT_LENGTH } from "../args";
import { contestedExpansion } from "../cautions";
import { expansionOf } from "../equations";

export const pipeExpansion = cellFunction({
  id: "PIPE.EXPANSION",
  topic: "pipe",
  summary: "Change of length of PVC pipe with temperature.",
  keywords: ["thermal expansion", "expansion loop"],
  details: ["0.360 in per 10 °F and 100 ft. Sources print 0.336 to 0.375."],
  args: {
    length: STRAIGHT_LENGTH,
    rise: quantity("temperature difference", "rise of the pipe's temperature", {
      usual: [us("temperature difference", -80), us("temperature difference", 100)],
    }),
  },
  returns: quantityResult("expansion", "change of length"),
  cautions: [{ rule: contestedExpansion, raisedBy: { length: 100, rise: 60 } }],
  checks: [{ inputs: { length: 500, rise: 60 }, expected: 10.8, tolerance: 0.01, source: "plasticsManual" }],
  compute: ({ length, rise }, { step }) => step(expansionOf, { L: length, dT: rise }),
});
