import { cellFunction } from "../../kernel/cellFunction";
import { verdictsOf } from "../../kernel/check";
import { isFault } from "../../kernel/fault";
import { cite } from "../../kernel/reference";
import { grid } from "../../kernel/result";

export const selfTest = cellFunction({
  id: "NOTE.SELFTEST",
  topic: "note",
  summary: "Runs every published check of the light functions and shows expected, computed and verdict.",
  finds: ["verification", "validation", "published values"],
  remarks: ["Heavy functions are checked by the panel; the last row says how many."],
  args: {},
  gives: grid("checks"),
  heavy: true,
  cautions: [],
  checks: [],
  work(_args, { catalogue }) {
    const tested = catalogue.filter(({ id }) => !id.startsWith("NOTE."));
    const light = tested.filter(({ heavy }) => !heavy);
    const rows = light.flatMap((definition) =>
      definition.checks.flatMap((check) =>
        verdictsOf(definition, check, catalogue).map(({ what, expected, got, agrees }) => [
          definition.id,
          what,
          expected,
          isFault(got) ? got.code : got,
          check.within ?? "equal",
          agrees ? "agrees" : "DIFFERS",
          cite(check.from),
        ]),
      ),
    );
    const heavy = tested.filter((each) => each.heavy).reduce((sum, { checks }) => sum + checks.length, 0);
    const agree = rows.filter((line) => line[5] === "agrees").length;
    const head = ["function", "row", "published", "computed", "within", "verdict", "source"];
    const foot = [
      "total",
      `${agree} of ${rows.length} agree`,
      "",
      "",
      "",
      agree === rows.length ? "agrees" : "DIFFERS",
      `${heavy} checks of heavy functions run in the panel`,
    ];
    return [head, ...rows, foot];
  },
});
