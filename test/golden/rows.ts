/** Reads golden files: comment lines begin with "#", the first other line names the columns; quoted cells may hold commas. */
import { readFileSync } from "node:fs";

export type GoldenCells = Readonly<Record<string, string>>;

const cellsOf = (line: string): readonly string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((hit) => (hit[1] ?? hit[2] ?? "").replace(/""/g, '"'));

/** Rows of a file in test/golden as column → text. */
export const cellsIn = (file: string): readonly GoldenCells[] => {
  const text = readFileSync(new URL(file, import.meta.url), "utf8");
  const [header = "", ...lines] = text.split(/\r?\n/).filter((line) => line !== "" && !line.startsWith("#"));
  const columns = cellsOf(header);
  return lines.map((line) => {
    const cells = cellsOf(line);
    return Object.fromEntries(columns.map((column, place) => [column, cells[place] ?? ""]));
  });
};

/** A cell as a number; a missing column is a fault of the test. */
export const numberIn = (cells: GoldenCells, column: string): number => {
  const text = cells[column];
  if (text === undefined || text === "") throw new Error(`no number in column ${column}`);
  return Number(text);
};
