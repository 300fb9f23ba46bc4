/** The cells of a stored workbook by place: values, texts for labels, the used part. */
import { placeNumber } from "../columns";
import type { Address, Area, Block, CellValue } from "../port";
import type { FormulaCell } from "./dependents";

export interface StoredCells {
  readonly values: Map<number, CellValue>;
  /** Rows that hold a text, by column, rising. */
  readonly texts: Map<number, number[]>;
  rows: number;
  columns: number;
}

export const noCells = (): StoredCells => ({
  values: new Map(),
  texts: new Map(),
  rows: 0,
  columns: 0,
});

export function addCell(cells: StoredCells, row: number, column: number, value: CellValue): void {
  cells.rows = Math.max(cells.rows, row + 1);
  cells.columns = Math.max(cells.columns, column + 1);
  if (value === null) return;
  cells.values.set(placeNumber(row, column), value);
  if (typeof value !== "string" || value.trim() === "") return;
  const rows = cells.texts.get(column);
  if (rows === undefined) cells.texts.set(column, [row]);
  else rows.push(row);
}

const grid = <T>({ row, column, rows, columns }: Area, of: (key: number) => T): T[][] =>
  Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, over) => of(placeNumber(row + down, column + over))),
  );

/** @param formulas of the sheet, as one types them */
export function blockOf(cells: StoredCells | undefined, formulas: readonly FormulaCell[], area: Area): Block {
  return {
    area,
    // Most readers ask for values alone.
    get formulas() {
      const texts = new Map(
        formulas.map(({ address, formula }) => [placeNumber(address.row, address.column), formula]),
      );
      return grid(area, (key) => texts.get(key) ?? "");
    },
    values: grid(area, (key) => cells?.values.get(key) ?? null),
  };
}

/** A label is looked for so many columns to the left. */
const NEAR_COLUMNS = 12;
const LONGEST_LABEL = 80;

const trimmed = (text: string): string => {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > LONGEST_LABEL ? `${line.slice(0, LONGEST_LABEL - 1)}…` : line;
};

/** The last of the rising rows that lies above. */
function rowAbove(rows: readonly number[], row: number): number | undefined {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] ?? 0) < row) low = middle + 1;
    else high = middle;
  }
  return rows[low - 1];
}

/** The text that names a cell: the nearest one to its left, else the nearest one above; "" where there is none. */
export function labelIn(cells: StoredCells | undefined, { row, column }: Omit<Address, "sheet">): string {
  if (cells === undefined) return "";
  const textAt = (at: number, over: number): string => {
    const value = cells.values.get(placeNumber(at, over));
    return typeof value === "string" ? trimmed(value) : "";
  };
  for (let over = column - 1; over >= Math.max(0, column - NEAR_COLUMNS); over--)
    if (textAt(row, over) !== "") return textAt(row, over);
  const above = rowAbove(cells.texts.get(column) ?? [], row);
  return above === undefined ? "" : textAt(above, column);
}
