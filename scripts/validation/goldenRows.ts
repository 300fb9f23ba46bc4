/** The rows of golden values from outside, for the validation report. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../root";

export type ReferenceRow = Readonly<Record<string, string>>;

export interface ReferenceFile {
  readonly rows: readonly ReferenceRow[];
  /** The comment lines at its head, which name the source. */
  readonly heading: string;
}

const CELL = /(?:"((?:[^"]|"")*)"|([^",]*))(?:,|$)/g;

const cellsOf = (line: string): readonly string[] =>
  [...line.matchAll(CELL)].map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? "");

export function referenceFile(name: string): ReferenceFile {
  const lines = readFileSync(join(ROOT, "test/golden", name), "utf8").split(/\r?\n/);
  const [head = "", ...rest] = lines.filter((line) => line !== "" && !line.startsWith("#"));
  const columns = cellsOf(head);
  return {
    rows: rest.map((line) => {
      const cells = cellsOf(line);
      return Object.fromEntries(columns.map((column, at) => [column, cells[at] ?? ""]));
    }),
    heading: lines
      .filter((line) => line.startsWith("#"))
      .map((line) => line.replace(/^#\s*/, ""))
      .join(" "),
  };
}

/** A cell's number; undefined where the cell is empty or the column is missing. */
export function numberInColumn(row: ReferenceRow, column: string): number | undefined {
  const text = row[column];
  return text === undefined || text === "" ? undefined : Number(text);
}
