/** What is known of cells of a workbook, by their places. */
import { placeNumber } from "../../workbook/columns";
import type { Address } from "../../workbook/port";

export interface CellMap<T> {
  get(cell: Address): T | undefined;
  has(cell: Address): boolean;
  set(cell: Address, item: T): void;
}

/** Sheets' names are the same in upper and lower case. */
export function cellMap<T>(): CellMap<T> {
  const sheets = new Map<string, Map<number, T>>();
  /** By the name as it is spelled, which costs less. */
  const spelled = new Map<string, Map<number, T>>();
  const ofSheet = (name: string): Map<number, T> => {
    const known = spelled.get(name);
    if (known !== undefined) return known;
    const lower = name.toLowerCase();
    const cells = sheets.get(lower) ?? new Map<number, T>();
    sheets.set(lower, cells);
    spelled.set(name, cells);
    return cells;
  };
  return {
    get: ({ sheet, row, column }) => ofSheet(sheet).get(placeNumber(row, column)),
    has: ({ sheet, row, column }) => ofSheet(sheet).has(placeNumber(row, column)),
    set: ({ sheet, row, column }, item) => void ofSheet(sheet).set(placeNumber(row, column), item),
  };
}

export interface CellSet {
  has(cell: Address): boolean;
  /** Whether the cell wasn't in it before. */
  add(cell: Address): boolean;
}

export function cellSet(cells: readonly Address[] = []): CellSet {
  const found = cellMap<true>();
  for (const cell of cells) found.set(cell, true);
  return {
    has: found.has,
    add: (cell) => {
      if (found.has(cell)) return false;
      found.set(cell, true);
      return true;
    },
  };
}
