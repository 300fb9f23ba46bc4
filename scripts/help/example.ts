/** The worked example and the published checks on a help page. */
import {
  type CellFunction,
  type CellOut,
  cite,
  type Explanation,
  type Fault,
  isFault,
  KINDS,
  type Out,
  rawByPlace,
  showNumber,
  type WorkingLine,
  workingLines,
} from "../../core";
import { type Check, NUMBERS_HEAD } from "../../core/help";
import { formulaBlock, formulaCell } from "./formula";
import type { Gathered } from "./gather";
import { cellText, resultGrid } from "./grid";
import { code, escaped, folded, table, type Cell } from "./html";

/** The most lines of a working on a page; the panel shows all. */
const MOST_LINES = 60;
/** Longer workings are folded. */
const MOST_OPEN = 40;

const unitOf = ({ definition: { gives }, system }: Explanation): string =>
  gives.type === "quantity" ? KINDS[gives.kind][system].text : "";

const LIST_HEADS = ["label", "value", "unit"];

const outText = (told: Explanation): string => {
  const out: Out | Fault = told.out;
  if (isFault(out)) return `<p>It shows <code>${escaped(out.code)}</code>: ${escaped(out.message)}</p>`;
  if (Array.isArray(out)) {
    const rows = out as readonly (readonly CellOut[])[];
    return resultGrid(rows, told.definition.gives.type === "list" ? LIST_HEADS : undefined);
  }
  const unit = unitOf(told);
  return `<p class="answer">It shows <strong>${escaped(cellText(out as CellOut))}</strong>${unit === "" ? "" : ` ${escaped(unit)}`}.</p>`;
};

const valueText = ({ value, unit }: WorkingLine): string => {
  const shown = typeof value === "number" ? showNumber(value) : String(value);
  return unit === "" ? shown : `${shown} ${unit}`;
};

/** An equation's form stands in its own section: here its name is enough. */
const nameOf = ({ says, form }: WorkingLine): string => (form === undefined ? says : says.replace(`: ${form}`, ""));

const workingTable = (told: Explanation): string => {
  const lines = workingLines(told.steps, told.system);
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
  return lines.length > MOST_OPEN ? folded(`Its working, ${String(lines.length)} lines`, whole, "working") : whole;
};

/** A formula, what it shows, and its working step by step. */
export const workedExample = ({ example }: Gathered): string => {
  if (example === undefined) return "";
  const { raw, told } = example;
  return [formulaBlock(told.definition, raw), outText(told), workingTable(told)].join("\n");
};

const expected = ({ gives }: Check): string => {
  if (typeof gives !== "object") return String(gives);
  if ("column" in gives && "row" in gives && "is" in gives)
    return `${String(gives.row)}, ${String(gives.column)}: ${String(gives.is)}`;
  return Object.entries(gives)
    .map(([row, value]) => `${row}: ${String(value)}`)
    .join("; ");
};

/** Values of print and of other programs that the function must give. */
export const checkTable = (definition: CellFunction): string => {
  if (definition.checks.length === 0) return "";
  const raws = definition.checks.map(({ at }) => rawByPlace(definition, at));
  return table(
    "Every build is refused that misses one",
    ["Formula", "Published value", "Within", "Source"],
    definition.checks.map((check, place) => [
      formulaCell(definition, raws[place] ?? [], raws),
      expected(check),
      check.within === undefined ? "equal" : String(check.within),
      `${cite(check.from)}${check.remark === undefined ? "" : `. ${check.remark}`}`,
    ]),
  );
};
