import { cellFunction } from "../../kernel/define/cellFunction";
import { compile } from "../../kernel/call/evaluate";
import { explain } from "../../kernel/explain/explain";
import { hostError, isFault } from "../../kernel/values/fault";
import { gridResult } from "../../kernel/define/result";
import { NUMBERS_HEAD, workingLines } from "../../kernel/explain/working";
import { ARGUMENTS, FUNCTION, functionNamed } from "../args";
import { resultRows } from "../resultRows";

/** The most rows of a working in cells. */
const MOST_ROWS = 200;

export const noteWorking = cellFunction({
  id: "NOTE.WORKING",
  topic: "note",
  summary: "The working of a calculation: arguments, then every step with equation, numbers, value, unit, source.",
  keywords: ["show steps", "explain", "hand check", "audit"],
  details: [
    "Numbers inside equations are in strict SI (m, kg, s, K, Pa, W); properties, solutions, sums and means carry their units; values are in the units of the call.",
  ],
  args: { function: FUNCTION, arguments: ARGUMENTS },
  returns: gridResult("arguments and steps"),
  cautions: [],
  checks: [
    {
      inputs: { function: "PIPE.BORE", arguments: [["2 in"]] },
      expected: { row: "result", column: "value", value: 2.049 },
      tolerance: 0.004,
      source: "astmD1785",
    },
  ],
  compute({ function: name, arguments: raw }, { catalogue }) {
    const definition = functionNamed(catalogue, name);
    const explanation = explain(compile(definition), raw, catalogue);
    if (isFault(explanation.out)) throw hostError(explanation.out.code, explanation.out.message);
    const inputs = explanation.args.map(({ label, description, value, unit, given }) => [
      "input",
      label,
      given ? description : `${description} (default)`,
      value,
      unit,
      "",
    ]);
    const steps = workingLines(explanation.steps, explanation.system).map((line) => [
      line.number,
      line.text,
      line.numbers,
      line.value,
      line.unit,
      line.source,
    ]);
    const head = ["step", "what", NUMBERS_HEAD, "value", "unit", "source"];
    const results = resultRows(definition, explanation.out, explanation.system);
    const room = MOST_ROWS - 1 - inputs.length - results.length - 1;
    const shown = steps.slice(0, room);
    const left = steps.length - shown.length;
    const cut = left > 0 ? [["…", `${left} further steps are left out: the panel shows all`, "", "", "", ""]] : [];
    return [head, ...inputs, ...shown, ...cut, ...results];
  },
});
