/** The workbook that the stand-in keeps: plain data, and the little that every part of it needs. Places count from 0. */

export type Scalar = string | number | boolean;

export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface Box extends Place {
  readonly rows: number;
  readonly columns: number;
}

export interface CellModel {
  /** The formula as typed, "" in a cell that holds a constant. */
  formula: string;
  value: Scalar;
  /** The value is an error, not a text that looks like one. */
  error?: boolean;
  /** The message that a cell function gave with its error. */
  message?: string;
  /** The number format that typing gave it: 5% leaves 0.05 shown in percent. */
  format?: string;
  /** In a spilled cell: the cell whose result it shows. */
  parent?: Place;
  /** In a cell whose result spills, or would if it had room. */
  spill?: { readonly values: readonly (readonly Scalar[])[]; readonly room: boolean };
  /** What an error is called in this Excel's language, where that isn't English. */
  foreign?: string;
}

export interface TableModel {
  name: string;
  readonly columns: string[];
  area: Box;
  headers: boolean;
  totals: boolean;
}

/** A defined name: what it refers to. */
export interface NameModel {
  readonly name: string;
  readonly sheet: SheetModel;
  area: Box;
}

/** A chart: what was set for it and its parts, by dotted names, and its series. */
export interface ChartModel {
  readonly settings: Map<string, unknown>;
  readonly series: Map<string, unknown>[];
}

export interface SheetModel {
  readonly id: string;
  name: string;
  visibility: "Visible" | "Hidden" | "VeryHidden";
  protection: { readonly password?: string } | undefined;
  readonly cells: Map<number, CellModel>;
  readonly names: Map<string, NameModel>;
  readonly tables: TableModel[];
  /** Pictures over the cells. */
  readonly shapes: Map<string, unknown>[];
  readonly charts: ChartModel[];
  readonly merged: Box[];
  /** Areas that may be edited though the sheet is protected. */
  readonly unlocked: Box[];
  readonly filteredRows: Set<number>;
  /** Everything else that was set for cells, the last one counting. */
  /** Conditional formats in the order in which they were added. */
  readonly conditional: { readonly area: Box; readonly format: ReadonlyMap<string, unknown> }[];
  readonly formats: { readonly area: Box; readonly name: string; readonly value: unknown }[];
  /** Everything else that was set for the sheet. */
  readonly settings: Map<string, unknown>;
}

export interface BookModel {
  readonly sheets: SheetModel[];
  readonly names: Map<string, NameModel>;
  structureProtected: boolean;
  active: { sheet: SheetModel; row: number; column: number };
  /** What else than the active cell is selected on its sheet. */
  selected?: readonly Box[];
  /** A chart, not a cell, has the selection. */
  chartSelected: boolean;
  made: number;
}

/** Columns of a sheet: also what a cell's key is made with. */
export const MOST_COLUMNS = 16_384;
export const MOST_ROWS = 1_048_576;

export const keyOf = (row: number, column: number): number => row * MOST_COLUMNS + column;
export const placeOf = (key: number): Place => ({ row: Math.floor(key / MOST_COLUMNS), column: key % MOST_COLUMNS });

export const contains = (box: Box, { row, column }: Place): boolean =>
  row >= box.row && row < box.row + box.rows && column >= box.column && column < box.column + box.columns;

export function columnName(column: number): string {
  return column < 26
    ? String.fromCharCode(65 + column)
    : columnName(Math.floor(column / 26) - 1) + columnName(column % 26);
}

export function addressOf({ row, column, rows, columns }: Box): string {
  const from = `${columnName(column)}${String(row + 1)}`;
  return rows === 1 && columns === 1 ? from : `${from}:${columnName(column + columns - 1)}${String(row + rows)}`;
}

const columnOf = (letters: string): number => [...letters].reduce((at, one) => at * 26 + one.charCodeAt(0) - 64, 0) - 1;

/** The box of "B2" or "A1:C3", with or without dollars; undefined for anything else. */
export function boxOf(address: string): Box | undefined {
  const found = /^([A-Z]{1,3})(\d{1,7})(?::([A-Z]{1,3})(\d{1,7}))?$/.exec(address.replaceAll("$", "").toUpperCase());
  if (found === null) return undefined;
  const [, left = "", top = "", right = left, bottom = top] = found;
  const [row, column] = [Number(top) - 1, columnOf(left)];
  return { row, column, rows: Number(bottom) - row, columns: columnOf(right) - column + 1 };
}

/** Sheet names count as equal whatever their case; a sheet also answers to its id. */
export function findSheet(book: BookModel, key: string): SheetModel | undefined {
  return book.sheets.find(({ name, id }) => name.toLowerCase() === key.toLowerCase() || id === key);
}

/** For tests: the sheet of a name that is there. */
export function sheetNamed(book: BookModel, name: string): SheetModel {
  const sheet = findSheet(book, name);
  if (sheet === undefined) throw new Error(`the stand-in has no sheet "${name}"`);
  return sheet;
}

export function newSheet(book: BookModel, name: string): SheetModel {
  book.made += 1;
  return {
    id: `{00000000-0001-0000-${String(book.made).padStart(4, "0")}-000000000000}`,
    name,
    visibility: "Visible",
    protection: undefined,
    cells: new Map(),
    names: new Map(),
    tables: [],
    shapes: [],
    charts: [],
    merged: [],
    unlocked: [],
    filteredRows: new Set(),
    conditional: [],
    formats: [],
    settings: new Map(),
  };
}

export function newBook(...names: readonly string[]): BookModel {
  const book: BookModel = {
    sheets: [],
    names: new Map(),
    structureProtected: false,
    active: undefined as never,
    chartSelected: false,
    made: 0,
  };
  for (const name of names) book.sheets.push(newSheet(book, name));
  const [sheet] = book.sheets;
  if (sheet === undefined) throw new Error("a workbook has at least one sheet");
  book.active = { sheet, row: 0, column: 0 };
  return book;
}

/** What was last set of a cell, whichever area it came with; of a matrix its own element. */
export function formatOf(sheet: SheetModel, place: Place, name: string): unknown {
  for (let at = sheet.formats.length - 1; at >= 0; at--) {
    const set = sheet.formats[at];
    if (set?.name !== name || !contains(set.area, place)) continue;
    if (!Array.isArray(set.value)) return set.value;
    const rows = set.value as readonly (readonly unknown[])[];
    const row = rows[rows.length === 1 ? 0 : place.row - set.area.row];
    return row?.[row.length === 1 ? 0 : place.column - set.area.column];
  }
  return undefined;
}

/** The same for tests: `formatAt(sheet, "B4", "style")`. */
export function formatAt(sheet: SheetModel, address: string, name: string): unknown {
  const box = boxOf(address);
  return box && formatOf(sheet, box, name);
}

/** A cell as a test sees it: `cellAt(sheet, "B4")`. */
export function cellAt(sheet: SheetModel, address: string): CellModel | undefined {
  const box = boxOf(address);
  return box && sheet.cells.get(keyOf(box.row, box.column));
}
