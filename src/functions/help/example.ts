/** The worked example and the published checks on a help page. */
import type { CellFunction, Check } from "../../../core/kernel/cellFunction";
import { formulaOf, rawByPlace } from "../../../core/kernel/describe";
import type { Explanation } from "../../../core/kernel/explain";
import { isFault, type Fault } from "../../../core/kernel/fault";
import type { CellOut, Out } from "../../../core/kernel/present";
import { KINDS, showNumber } from "../../../core/kernel/quantity";
import { cite } from "../../../core/kernel/reference";
import { NUMBERS_HEAD, workingLines, type WorkingLine } from "../../../core/kernel/working";
import type { Gathered, WorkedCheck } from "./gather";
import { code, escaped, table, type Cell } from "./html";

/** The most lines of a working on a page; the panel shows all. */
const MOST_LINES = 60;
/** The most rows of a spilled result on a page. */
const MOST_ROWS = 16;

const cellText = (cell: CellOut): string => {
  if (isFault(cell)) return `${cell.code} ${cell.message}`;
  return typeof cell === "number" ? showNumber(cell) : String(cell);
};

const unitOf = ({ definition: { gives }, system }: Explanation): string =>
  gives.type === "quantity" ? KINDS[gives.kind][system].text : "";

const matrixTable = (rows: readonly (readonly CellOut[])[]): string => {
  const [heads = [], ...body] = rows;
  const isHeaded = heads.every((cell) => typeof cell === "string") && body.length > 0;
  const width = heads.length;
  const names = isHeaded
    ? heads.map(cellText)
    : Array.from({ length: width }, (_, place) => `column ${String(place + 1)}`);
  const lines = (isHeaded ? body : rows).slice(0, MOST_ROWS).map((line) => line.map(cellText));
  const left = (isHeaded ? body : rows).length - lines.length;
  const caption = left > 0 ? `What it shows, first ${String(lines.length)} rows` : "What it shows";
  return table(caption, names, lines);
};

const LIST_HEADS = ["label", "value", "unit"];

const outText = (told: Explanation): string => {
  const out: Out | Fault = told.out;
  if (isFault(out)) return `<p>It shows <code>${escaped(out.code)}</code>: ${escaped(out.message)}</p>`;
  if (Array.isArray(out)) {
    const rows = out as readonly (readonly CellOut[])[];
    return matrixTable(told.definition.gives.type === "list" ? [LIST_HEADS, ...rows] : rows);
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
  return `${table("Its working", ["Step", "What", `W${NUMBERS_HEAD.slice(1)}`, "Value", "Source"], rows)}\n${more}`;
};

const formula = (definition: CellFunction, { at }: Check): string => formulaOf(definition, rawByPlace(definition, at));

/** The first check that gives a value, else the first. */
const exampleOf = ({ worked }: Gathered): WorkedCheck | undefined =>
  worked.find(({ told }) => !isFault(told.out)) ?? worked[0];

/** A formula, what it shows, and its working step by step. */
export const workedExample = (definition: CellFunction, gathered: Gathered): string => {
  const example = exampleOf(gathered);
  if (example === undefined) return "";
  return `<pre tabindex="0"><code>${escaped(formula(definition, example.check))}</code></pre>
${outText(example.told)}
${workingTable(example.told)}`;
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
export const checkTable = (definition: CellFunction): string =>
  definition.checks.length === 0
    ? ""
    : table(
        "Every build is refused that misses one",
        ["Formula", "Published value", "Within", "Source"],
        definition.checks.map((check) => [
          code(formula(definition, check)),
          expected(check),
          check.within === undefined ? "equal" : String(check.within),
          `${cite(check.from)}${check.remark === undefined ? "" : `. ${check.remark}`}`,
        ]),
      );
