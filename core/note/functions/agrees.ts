import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { ANY, agree, TOLERANCE } from "../agreement";

export const noteAgrees = cellFunction({
  id: "NOTE.AGREES",
  topic: "note",
  summary: "Compares a hand calculation with a computed value and states whether they agree.",
  keywords: ["compare", "verify", "hand calculation", "tolerance"],
  args: {
    byHand: quantity("number", "value from a hand calculation", ANY),
    computed: quantity("number", "the computed value, in the same unit", ANY),
    tolerance: TOLERANCE,
  },
  returns: listResult("verdict", {
    verdict: wordResult("agrees or differs"),
    difference: quantityResult("number", "hand calculation less computed value"),
    share: quantityResult("fraction", "difference as a fraction of the computed value"),
    allowed: quantityResult("number", "difference allowed"),
  }),
  cautions: [],
  checks: [
    {
      inputs: { byHand: 101, computed: 100 },
      expected: { verdict: "agrees", difference: 1, share: 0.01, allowed: 2 },
      tolerance: 1e-9,
      source: "identity",
    },
    {
      inputs: { byHand: 97, computed: 100 },
      expected: { verdict: "differs", difference: -3 },
      tolerance: 1e-9,
      source: "identity",
    },
  ],
  compute({ byHand, computed, tolerance }) {
    const difference = byHand - computed;
    const allowed = tolerance * Math.abs(computed);
    return {
      verdict: agree(byHand, computed, tolerance) ? "agrees" : "differs",
      difference,
      share: computed === 0 ? NO_VALUE : difference / computed,
      allowed,
    };
  },
});
