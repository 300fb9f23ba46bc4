import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { wordResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { ANY, agree, TOLERANCE } from "../agreement";

export const noteVerdict = cellFunction({
  id: "NOTE.VERDICT",
  topic: "note",
  summary: "States in one word whether a hand calculation and a computed value agree.",
  keywords: ["check table", "verify", "hand calculation", "sign off"],
  details: [
    'A blank hand value is not checked. Excel on the desktop passes a blank cell as 0: write IF(LEN(C5)=0,"",C5) for it, as the check table of the panel does. NOTE.AGREES shows the difference too.',
  ],
  args: {
    byHand: quantity("number", "value from a hand calculation", ANY).optional(),
    // Excel allows no needed argument after one that may be blank.
    computed: quantity("number", "the computed value, in the same unit", ANY).optional(),
    tolerance: TOLERANCE,
  },
  returns: wordResult("agrees or differs, or not checked"),
  cautions: [],
  checks: [
    { inputs: { byHand: 101, computed: 100 }, expected: "agrees", tolerance: 0, source: "identity" },
    { inputs: { byHand: 97, computed: 100 }, expected: "differs", tolerance: 0, source: "identity" },
    { inputs: { computed: 100 }, expected: "not checked", tolerance: 0, source: "identity" },
  ],
  compute({ byHand, computed, tolerance }) {
    if (computed === undefined) throw valueError("computed: is blank, but it is needed");
    if (byHand === undefined) return "not checked";
    return agree(byHand, computed, tolerance) ? "agrees" : "differs";
  },
});
