import { cellsIn } from "../golden/rows";

/** A row of a golden file: words and numbers by column; an empty cell is undefined. */
export interface GoldenRow {
  readonly word: (column: string) => string;
  readonly number: (column: string) => number;
  /** The number as printed, or undefined where the cell is empty. */
  readonly text: (column: string) => string | undefined;
}

/** Rows of a file in test/golden; a missing column is a fault of the test. */
export const goldenRows = (file: string): readonly GoldenRow[] =>
  cellsIn(file).map((cells) => {
    const cell = (column: string): string => {
      const text = cells[column];
      if (text === undefined) throw new Error(`${file}: no column ${column}`);
      return text;
    };
    return { word: cell, number: (column) => Number(cell(column)), text: (column) => cell(column) || undefined };
  });

/** Half a unit of the last printed digit, a little widened. */
export function printedTolerance(text: string): number {
  const decimals = text.split(".")[1]?.length ?? 0;
  return 0.55 * 10 ** -decimals;
}

/** The refrigerants in a golden file, in its order. */
export const fluidsIn = (rows: readonly GoldenRow[]): string[] => [...new Set(rows.map((row) => row.word("fluid")))];
