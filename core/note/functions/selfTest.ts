import { cellFunction } from "../../kernel/define/cellFunction";
import { runCheck } from "../../kernel/explain/check";
import { isFault } from "../../kernel/values/fault";
import { cite } from "../../kernel/reference";
import { gridResult } from "../../kernel/define/result";

export const noteSelfTest = cellFunction({
  id: "NOTE.SELFTEST",
  topic: "note",
  summary: "Runs every published check and shows expected, computed and verdict.",
  keywords: ["verification", "validation", "published values"],
  details: [
    "The first run takes part of a second; then the result is cached. The panel also runs the checks of the slow functions.",
  ],
  args: {},
  returns: gridResult("checks"),
  memoised: true,
  cautions: [],
  checks: [
    { inputs: {}, expected: { function: "row" }, source: "identity", remark: "The head of its first two columns." },
  ],
  compute(_args, { catalogue }) {
    const all = catalogue.filter(({ topic }) => topic !== "note");
    const tested = all.filter(({ slow }) => slow !== true);
    const left = all.filter(({ slow }) => slow === true).map(({ id }) => id);
    const rows = tested.flatMap((definition) =>
      definition.checks.flatMap((check) =>
        runCheck(definition, check, catalogue).map(({ what, expected, got, agrees }) => [
          definition.id,
          what,
          expected,
          isFault(got) ? got.code : got,
          check.tolerance ?? "equal",
          agrees ? "agrees" : "DIFFERS",
          cite(check.source),
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
