import { cellFunction } from "../../kernel/define/cellFunction";
import { verdictsOf } from "../../kernel/explain/check";
import { isFault } from "../../kernel/values/fault";
import { cite } from "../../kernel/reference";
import { grid } from "../../kernel/define/result";

export const selfTest = cellFunction({
  id: "NOTE.SELFTEST",
  topic: "note",
  summary: "Runs every published check and shows expected, computed and verdict.",
  finds: ["verification", "validation", "published values"],
  remarks: [
    "Takes part of a second the first time, then it is remembered. The panel runs the checks of the slow functions too.",
  ],
  args: {},
  gives: grid("checks"),
  heavy: true,
  cautions: [],
  checks: [{ at: {}, gives: { function: "row" }, from: "identity", remark: "The head of its first two columns." }],
  work(_args, { catalogue }) {
    const all = catalogue.filter(({ topic }) => topic !== "note");
    const tested = all.filter(({ heavy }) => heavy !== "slow");
    const left = all.filter(({ heavy }) => heavy === "slow").map(({ id }) => id);
    const rows = tested.flatMap((definition) =>
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
    const agree = rows.filter((line) => line[5] === "agrees").length;
    const head = ["function", "row", "published", "computed", "within", "verdict", "source"];
    const foot = [
      "total",
      `${agree} of ${rows.length} agree`,
      "",
      "",
      "",
      agree === rows.length ? "agrees" : "DIFFERS",
      `${tested.length} functions; the panel runs those of ${left.join(", ")}`,
    ];
    return [head, ...rows, foot];
  },
});
