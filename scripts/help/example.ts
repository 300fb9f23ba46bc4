/** The worked example and the published checks on a help page. */
import {
  basisOf,
  type CellFunction,
  type CellOut,
  cite,
  type Explanation,
  type Fault,
  isFault,
  type Out,
  rawByPlace,
  readableCell,
  readableCells,
  readableNumber,
  resultUnit,
  type WorkingLine,
  workingLines,
} from "../../core";
import { type Check, NUMBERS_HEAD } from "../../core/help";
import { formulaBlock, formulaCell } from "./formula";
import type { HelpContent } from "./gather";
import { resultGrid } from "./grid";
import { code, escaped, collapsed, table, type Cell } from "./html";

/** The most lines of a working on a page; the panel shows more. */
const MOST_LINES = 60;
/** Longer workings are collapsed. */
const MOST_OPEN = 40;

const unitOf = ({ definition: { returns }, system, out, args }: Explanation): string =>
  returns.type === "quantity" ? resultUnit(returns, out, system, basisOf(args)) : "";

const LIST_HEADS = ["label", "value", "unit"];

const outText = (explanation: Explanation): string => {
  const out: Out | Fault = explanation.out;
  if (isFault(out)) return `<p>It shows <code>${escaped(out.code)}</code>: ${escaped(out.message)}</p>`;
  if (Array.isArray(out)) {
    const { definition, system, args } = explanation;
    const cells = out as readonly (readonly CellOut[])[];
    const rows = readableCells(definition.returns, cells, system, basisOf(args));
    return resultGrid(rows, explanation.definition.returns.type === "list" ? LIST_HEADS : undefined);
  }
  const unit = unitOf(explanation);
  return `<p class="answer">It shows <strong>${escaped(readableCell(out as CellOut))}</strong>${unit === "" ? "" : ` ${escaped(unit)}`}.</p>`;
};

const valueText = ({ value, unit }: WorkingLine): string => {
  const shown = typeof value === "number" ? readableNumber(value) : String(value);
  return unit === "" ? shown : `${shown} ${unit}`;
};

/** Equations have their own section: here the name is enough. */
const nameOf = ({ text, form }: WorkingLine): string => (form === undefined ? text : text.replace(`: ${form}`, ""));

const workingTable = (explanation: Explanation): string => {
  const lines = workingLines(explanation.steps, explanation.system);
  if (lines.length === 0) return "";
  const shown = lines.slice(0, MOST_LINES);
  const left = lines.length - shown.length;
  const more = left > 0 ? `<p>${String(left)} further steps: the panel shows all of them.</p>` : "";
  const rows = shown.map((line): readonly Cell[] => [
    line.number,
    nameOf(line),
    line.numbers === "" ? "" : code(line.numbers),
    valueText(line),
    line.source,
  ]);
  const heads = ["Step", "What", `W${NUMBERS_HEAD.slice(1)}`, "Value", "Source"];
  const whole = `${table("Its working", heads, rows)}\n${more}`;
  return lines.length > MOST_OPEN ? collapsed(`Its working, ${String(lines.length)} lines`, whole, "working") : whole;
};

/** A formula, what it shows, and its working step by step. */
export const workedExample = ({ example }: HelpContent): string => {
  if (example === undefined) return "";
  const { raw, explanation } = example;
  return [formulaBlock(explanation.definition, raw), outText(explanation), workingTable(explanation)].join("\n");
};

const expected = ({ expected }: Check): string => {
  if (typeof expected !== "object") return String(expected);
  if ("column" in expected && "row" in expected && "value" in expected)
    return `${String(expected.row)}, ${String(expected.column)}: ${String(expected.value)}`;
  return Object.entries(expected)
    .map(([row, value]) => `${row}: ${String(value)}`)
    .join("; ");
};

/** Values from print and from other programs that the function must reproduce. */
export const checkTable = (definition: CellFunction): string => {
  if (definition.checks.length === 0) return "";
  const raws = definition.checks.map(({ inputs }) => rawByPlace(definition, inputs));
  return table(
    "Every build is refused that misses one",
    ["Formula", "Published value", "Within", "Source"],
    definition.checks.map((check, place) => [
      formulaCell(definition, raws[place] ?? [], raws),
      expected(check),
      check.tolerance === undefined ? "equal" : String(check.tolerance),
      `${cite(check.source)}${check.remark === undefined ? "" : `. ${check.remark}`}`,
    ]),
  );
};
