import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, list, of, word } from "../../kernel/define/result";

export const agrees = cellFunction({
  id: "NOTE.AGREES",
  topic: "note",
  summary: "Compares a value worked by hand with a computed one and says whether they agree.",
  finds: ["compare", "verify", "hand calculation", "tolerance"],
  args: {
    byHand: quantity("number", "the value worked by hand"),
    computed: quantity("number", "the computed value, in the same unit"),
    tolerance: quantity("fraction", "difference allowed, as a fraction of the computed value", {
      from: 0,
      to: 1,
    }).otherwise(0.02),
  },
  gives: list("verdict", {
    verdict: word("agrees or differs"),
    difference: of("number", "by hand less computed"),
    share: of("fraction", "difference as a fraction of the computed value"),
    allowed: of("number", "difference allowed"),
  }),
  cautions: [],
  checks: [
    {
      at: { byHand: 101, computed: 100 },
      gives: { verdict: "agrees", difference: 1, share: 0.01, allowed: 2 },
      within: 1e-9,
      from: "identity",
    },
    {
      at: { byHand: 97, computed: 100 },
      gives: { verdict: "differs", difference: -3 },
      within: 1e-9,
      from: "identity",
    },
  ],
  work({ byHand, computed, tolerance }) {
    const difference = byHand - computed;
    const allowed = tolerance * Math.abs(computed);
    const close = Math.abs(difference) <= allowed * (1 + 1e-12);
    return {
      verdict: close ? "agrees" : "differs",
      difference,
      share: computed === 0 ? NO_VALUE : difference / computed,
      allowed,
    };
  },
});
