/** Parts of the page of a weather file or a log: cells from the top down, facts, sentences, the table. */
import type { SheetCell } from "../../sheets/sheet";
import type { RecordedFile } from "./readFile";

/** Letters in which a sentence is broken into lines over the columns of the table. */
const LINE = 100;
const COLUMNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

/** A sentence as lines. */
export function linesOf(text: string): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + word.length >= LINE) {
      lines.push(line);
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** Cells from the top down. */
export function newPage() {
  const cells: Record<string, SheetCell> = {};
  let row = 0;
  return {
    cells,
    next: (...line: readonly (SheetCell | undefined)[]): number => {
      row += 1;
      line.forEach((cell, at) => {
        if (cell !== undefined) cells[`${COLUMNS[at] ?? "A"}${row}`] = cell;
      });
      return row;
    },
    skip: (rows: number): void => void (row += rows),
  };
}
export type Page = ReturnType<typeof newPage>;

export const textCell = (content: string, style?: SheetCell["style"]): SheetCell => ({
  content,
  text: true,
  ...(style !== undefined && { style }),
});

/** A label, what the file says of it, and its unit. */
export function factRow(at: Page, label: string, value: string | number | undefined, unit = ""): number {
  const shown = value ?? "";
  const cell: SheetCell =
    typeof shown === "number"
      ? { content: shown, style: "Input" }
      : textCell(shown === "" ? "the file doesn't say" : shown);
  return at.next(textCell(label), cell, unit === "" ? undefined : textCell(unit));
}

/** Sentences under a heading. */
export function noteLines(at: Page, title: string, sentences: readonly string[], none: string): void {
  at.next(textCell(title, "Heading 3"));
  for (const sentence of sentences.length > 0 ? sentences : [none])
    linesOf(sentence).forEach((line, place) => at.next(textCell(place === 0 ? line : `    ${line}`)));
  at.next();
}

/** The table's rows; their first column is a date where it is a time. */
export function recordedTable(at: Page, rows: RecordedFile["rows"]): string {
  const [heads = [], ...body] = rows;
  const first = at.next(...heads.map((head) => textCell(String(head), "Heading 3")));
  const isTime = heads[0] === "time";
  let last = first;
  for (const row of body)
    last = at.next(
      ...row.map((content, place): SheetCell | undefined =>
        content === "" ? undefined : { content, ...(isTime && place === 0 ? { format: "yyyy-mm-dd hh:mm" } : {}) },
      ),
    );
  return `A${first}:${COLUMNS[heads.length - 1] ?? "A"}${last}`;
}
