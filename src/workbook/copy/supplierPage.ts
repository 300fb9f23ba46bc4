/** One printed page for a supplier: inputs and results, without formulas. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import type { Address, CellValue } from "../port";
import { isCellFault } from "../port";
import { addressText } from "../reader/reference";
import { factRows, type CopyFacts } from "./copyFacts";
import type { DependentCell } from "./dependents";
import { formatOf } from "./recordPage";
import type { OnRecordedCall } from "./recordSheet";
import type { CallDescription, RecordContent } from "./recordTypes";

/** What fits one page with a type size that can be read. */
const MOST = { inputs: 18, results: 24, cautions: 6 };

interface Line {
  readonly label: string;
  readonly value: RecordContent;
  readonly unit: string;
  /** The cell of a result. */
  readonly cell: string;
}

/** A list of which the first lines are shown. */
interface Shown {
  readonly count: number;
  readonly first: readonly Line[];
}

export interface PageLines {
  readonly inputs: Shown;
  readonly results: Shown;
  readonly cautions: readonly string[];
}

/** Functions that print or check, and calculate nothing of the plant. */
const NOTES = "NOTE.";

const SERIOUS: ReadonlySet<string> = new Set(["Danger", "Warning"]);

function addDescribed(
  { inputs, cautions }: CallDescription,
  into: { inputs: Map<string, Line>; cautions: Set<string> },
) {
  for (const { label, value, unit, given } of inputs)
    if (given && value !== "")
      into.inputs.set([label, String(value), unit].join("\n"), { label, value, unit, cell: "" });
  for (const { severity, text } of cautions) if (SERIOUS.has(severity)) into.cautions.add(`${severity}: ${text}`);
}

const codeOrValue = (value: CellValue): RecordContent => (isCellFault(value) ? value.code : (value ?? ""));

const isOneValue = ({ value, area }: DependentCell): boolean => area.rows * area.columns === 1 && value !== null;

function resultOf(
  { value, address }: DependentCell,
  id: string,
  unit: string,
  labelOf: (address: Address) => string,
): Line {
  return { label: labelOf(address) || id, value: codeOrValue(value), unit, cell: addressText(address) };
}

/** Collects the inputs of calls, and the results of those that fill a cell by themselves; equal inputs count once. */
export function supplierLines(labelOf: (address: Address) => string) {
  const into = { inputs: new Map<string, Line>(), cautions: new Set<string>() };
  const results: Line[] = [];
  const seen = new Set<CallDescription>();
  let count = 0;
  const onCall: OnRecordedCall = (cell, call, described) => {
    // Equal calls share their description.
    if (described !== undefined && !seen.has(described)) {
      seen.add(described);
      addDescribed(described, into);
    }
    if (!call.whole || call.id.startsWith(NOTES) || !isOneValue(cell)) return;
    count++;
    if (results.length < MOST.results) results.push(resultOf(cell, call.id, described?.unit ?? "", labelOf));
  };
  const lines = (): PageLines => ({
    inputs: { count: into.inputs.size, first: [...into.inputs.values()].slice(0, MOST.inputs) },
    results: { count, first: results },
    cautions: [...into.cautions],
  });
  return { onCall, lines };
}

const valueCell = (value: RecordContent): SheetCell => ({
  content: value,
  entry: true,
  ...(typeof value === "number" ? { format: formatOf(value) } : { text: true, wrap: true }),
});

const textCell = (content: string): SheetCell => ({ content, text: true, entry: true, wrap: true });

interface Draft {
  readonly cells: Record<string, SheetCell>;
  row: number;
}

function addTable(draft: Draft, title: string, { count, first }: Shown, record: string): void {
  if (count === 0) return;
  draft.row += 2;
  draft.cells[`A${draft.row}`] = { content: title, style: "Heading 2" };
  for (const { label, value, unit, cell } of first) {
    const row = ++draft.row;
    const texts = { A: label, C: unit, D: cell };
    for (const [column, text] of Object.entries(texts)) draft.cells[`${column}${row}`] = textCell(text);
    draft.cells[`B${row}`] = valueCell(value);
  }
  if (count > first.length)
    draft.cells[`A${++draft.row}`] = {
      content: `and ${(count - first.length).toLocaleString("en")} more: see the sheet ${record}`,
      style: "Explanatory Text",
    };
}

/** @param record the name of the sheet that has all of it */
export function supplierPage(facts: CopyFacts, { inputs, results, cautions }: PageLines, record: string): StarterSheet {
  const draft: Draft = { cells: { A1: { content: "For the supplier", style: "Title" } }, row: 1 };
  for (const [label, text] of factRows(facts)) {
    draft.cells[`A${++draft.row}`] = { content: label, style: "Heading 3" };
    draft.cells[`B${draft.row}`] = { content: text, text: true };
  }
  addTable(draft, "Inputs", inputs, record);
  addTable(draft, "Results", results, record);
  if (cautions.length > 0) draft.cells[`A${(draft.row += 2)}`] = { content: "Cautions", style: "Heading 2" };
  for (const text of cautions.slice(0, MOST.cautions)) draft.cells[`A${++draft.row}`] = textCell(text);
  if (cautions.length > MOST.cautions)
    draft.cells[`A${++draft.row}`] = {
      content: `and ${cautions.length - MOST.cautions} more: see the sheet ${record}`,
      style: "Explanatory Text",
    };
  return {
    id: "supplier",
    name: "For the supplier",
    summary: "Inputs and results on one page.",
    widths: [40, 16, 12, 22],
    cells: draft.cells,
    names: {},
    frozenRows: 0,
    print: {
      area: `A1:D${draft.row}`,
      landscape: false,
      fitToWidth: true,
      onePage: true,
      titleRows: "1:1",
      footer: facts.edition,
    },
  };
}
