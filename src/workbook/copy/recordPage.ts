/** The sheet Record: its lines under a head that is repeated on every printed page. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import { columnLetters } from "../reader/reference";
import { factLine, type CopyFacts } from "./copyFacts";
import type { RecordContent, RecordLines } from "./recordTypes";

/** The record's columns: heading and width in characters. */
export const RECORD_COLUMNS: readonly (readonly [string, number])[] = [
  ["Cell", 13],
  ["Label", 18],
  ["Formula", 28],
  ["Inputs with units", 34],
  ["Value", 13],
  ["Unit", 12],
  ["Method", 24],
  ["Source", 25],
  ["Cautions", 33],
];

/** Unit, method, source and cautions: many lines have the same. */
export const REPEATED_COLUMNS: ReadonlySet<number> = new Set([5, 6, 7, 8]);

/** Rows of the head. */
export const HEAD_ROWS = 4;
const WHAT_IT_IS =
  "These cells hold values in this copy and change with no input. Method, source and cautions are of the live workbook when the copy was made. A cell without a method depends on those above it; its unit is on its sheet.";

const headCells = (facts: CopyFacts): readonly (readonly [string, SheetCell])[] => [
  ["A1", { content: "Record of the calculation", style: "Title" }],
  ["A2", { content: factLine(facts), text: true, style: "Explanatory Text" }],
  ["A3", { content: WHAT_IT_IS, style: "Explanatory Text" }],
  ...RECORD_COLUMNS.map(([heading], at): readonly [string, SheetCell] => [
    `${columnLetters(at)}${String(HEAD_ROWS)}`,
    { content: heading, style: "Heading 3" },
  ]),
];

/** Enough digits to check by, few enough for the column. */
export function formatOf(value: number): string {
  const size = Math.abs(value);
  if (value === 0 || size >= 1e9 || size < 1e-3) return "General";
  return size >= 1000 ? "#,##0.0" : size >= 10 ? "0.00" : size >= 1 ? "0.000" : "0.00000";
}

/** A cell of a line. */
export const bodyCell = (content: RecordContent, column: number): SheetCell => ({
  content,
  entry: true,
  ...(typeof content === "string" && { text: true, wrap: true, ...(column > 0 && { indent: true }) }),
  ...(typeof content === "number" && { format: formatOf(content) }),
});

const LAST = columnLetters(RECORD_COLUMNS.length - 1);

/** What is printed of a record with so many lines. */
export const printedArea = (lines: number): string => `A1:${LAST}${String(HEAD_ROWS + lines)}`;

/** A printed sheet of the lines. */
export function recordPage(facts: CopyFacts, lines: RecordLines): StarterSheet {
  const cells: Record<string, SheetCell> = Object.fromEntries(headCells(facts));
  for (let down = 0; down < lines.count; down++)
    for (const [over, content] of lines.line(down).entries())
      cells[`${columnLetters(over)}${String(HEAD_ROWS + 1 + down)}`] = bodyCell(content, over);
  return {
    id: "record",
    name: "Record",
    summary: "The formulas behind the values.",
    widths: RECORD_COLUMNS.map(([, width]) => width),
    cells,
    names: {},
    frozenRows: HEAD_ROWS,
    print: {
      area: printedArea(lines.count),
      landscape: true,
      fitToWidth: true,
      titleRows: `1:${String(HEAD_ROWS)}`,
      footer: `Record, ${facts.edition}: sheet &P of &N`,
    },
  };
}
