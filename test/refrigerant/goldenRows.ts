import { readFileSync } from "node:fs";

/** A row of a golden file: words and numbers by column; an empty cell is undefined. */
export interface GoldenRow {
  readonly word: (column: string) => string;
  readonly number: (column: string) => number;
  /** The number as printed, or undefined where the cell is empty. */
  readonly text: (column: string) => string | undefined;
}

/** Rows of a file in test/golden, its comment lines skipped. */
export function goldenRows(file: string): GoldenRow[] {
  const text = readFileSync(new URL(`../golden/${file}`, import.meta.url), "utf8");
  const [header, ...lines] = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
  const columns = header!.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    const cell = (column: string) => {
      const place = columns.indexOf(column);
      if (place < 0) throw new Error(`${file}: no column ${column}`);
      return cells[place]!;
    };
    return { word: cell, number: (column) => Number(cell(column)), text: (column) => cell(column) || undefined };
  });
}

/** Half a unit of the last printed digit, a little widened. */
export function printedTolerance(text: string): number {
  const decimals = text.split(".")[1]?.length ?? 0;
  return 0.55 * 10 ** -decimals;
}

/** The refrigerants in a golden file, in its order. */
export const fluidsIn = (rows: readonly GoldenRow[]): string[] => [...new Set(rows.map((row) => row.word("fluid")))];
