import { cellFunction } from "../../kernel/cellFunction";
import { verdictsOf } from "../../kernel/check";
import { isFault } from "../../kernel/fault";
import { cite } from "../../kernel/reference";
import { grid } from "../../kernel/result";

export const selfTest = cellFunction({
  id: "NOTE.SELFTEST",
  topic: "note",
  summary: "Runs every published check and shows expected, computed and verdict.",
  finds: ["verification", "validation", "published values"],
  remarks: ["Takes part of a second the first time; the answer is remembered until the workbook is opened again."],
  args: {},
  gives: grid("checks"),
  heavy: true,
  cautions: [],
  checks: [],
  work(_args, { catalogue }) {
    const tested = catalogue.filter(({ id }) => !id.startsWith("NOTE."));
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
      `${tested.length} functions`,
    ];
    return [head, ...rows, foot];
  },
});
