/** Reads golden files: comment lines begin with "#", the first other line names the columns; quoted cells may hold commas; ".gz" is unpacked. */
import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";

export type GoldenCells = Readonly<Record<string, string>>;

const CELL = /(?:"((?:[^"]|"")*)"|([^",]*))(?:,|$)/y;

const cellsOf = (line: string): readonly string[] => {
  const cells: string[] = [];
  CELL.lastIndex = 0;
  while (CELL.lastIndex < line.length) {
    const hit = CELL.exec(line);
    if (!hit) throw new Error(`can't read the line ${line}`);
    cells.push(hit[1]?.replace(/""/g, '"') ?? hit[2] ?? "");
  }
  return line.endsWith(",") ? [...cells, ""] : cells;
};

const readRows = (file: string): readonly GoldenCells[] => {
  const bytes = readFileSync(new URL(file, import.meta.url));
  const text = (file.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString("utf8");
  const [header = "", ...lines] = text.split(/\r?\n/).filter((line) => line !== "" && !line.startsWith("#"));
  const columns = cellsOf(header);
  return lines.map((line) => {
    const cells = cellsOf(line);
    return Object.fromEntries(columns.map((column, place) => [column, cells[place] ?? ""]));
  });
};

const known = new Map<string, readonly GoldenCells[]>();

/** Rows of a file in test/golden as column → text. Each file is read once; one without rows is a fault of the test. */
export function cellsIn(file: string): readonly GoldenCells[] {
  const rows = known.get(file) ?? readRows(file);
  if (rows.length === 0) throw new Error(`${file} has no rows`);
  known.set(file, rows);
  return rows;
}

/** A cell as a number; a missing column is a fault of the test. */
export const numberIn = (cells: GoldenCells, column: string): number => {
  const text = cells[column];
  if (text === undefined || text === "") throw new Error(`no number in column ${column}`);
  return Number(text);
};

/** A cell as it stands; a missing column is a fault of the test. */
export const wordIn = (cells: GoldenCells, column: string): string => {
  const text = cells[column];
  if (text === undefined) throw new Error(`no column ${column}`);
  return text;
};
