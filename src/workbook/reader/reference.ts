/** What a reference text says, before any workbook is asked: both adapters start from here. */
import type { Address, Area } from "../port";

export const MOST_ROWS = 1_048_576;
export const MOST_COLUMNS = 16_384;

export type TablePart = "data" | "all" | "headers" | "totals" | "row";

export type ReferenceMeaning =
  /** Cells; `spill` asks for the area that the cell spills into. */
  | { readonly kind: "cells"; readonly sheet?: string; readonly area: Omit<Area, "sheet">; readonly spill: boolean }
  | { readonly kind: "name"; readonly sheet?: string; readonly name: string; readonly spill: boolean }
  /** Table columns from `first` to `last`, the whole width where missing; without `table` the one that holds the cell. */
  | {
      readonly kind: "table";
      readonly table?: string;
      readonly part: TablePart;
      readonly first?: string;
      readonly last?: string;
    };

/** A column's number from its letters: A is 0. */
export function columnNumber(letters: string): number {
  let number = 0;
  for (let at = 0; at < letters.length; at++) number = number * 26 + (letters.charCodeAt(at) & 31);
  return number - 1;
}

/** A column's letters: 0 is A. */
export function columnLetters(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnLetters(before - 1) : "") + String.fromCharCode(65 + (column % 26));
}

/** B4, or B4:C9 for an area of several cells; no sheet. */
export function cellsText(area: Omit<Area, "sheet">): string {
  const from = columnLetters(area.column) + String(area.row + 1);
  if (area.rows === 1 && area.columns === 1) return from;
  return `${from}:${columnLetters(area.column + area.columns - 1)}${String(area.row + area.rows)}`;
}

/** A sheet's name in a formula: quoted wherever Excel might ask for it. */
export function sheetText(sheet: string): string {
  const plain = /^[\p{L}_][\p{L}\p{N}_]*$/u.test(sheet) && !/^[a-z]{1,3}\d+$|^rc?\d*$/i.test(sheet);
  return plain ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}

/** B4, or 'Pool loop'!B4 with its sheet. */
export const addressText = (address: Address): string =>
  `${sheetText(address.sheet)}!${cellsText({ ...address, rows: 1, columns: 1 })}`;

const CELLS = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?$/;
const COLUMNS = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/;
const ROWS = /^\$?(\d{1,7}):\$?(\d{1,7})$/;

function between(rowA: number, columnA: number, rowB: number, columnB: number): Omit<Area, "sheet"> | undefined {
  const row = Math.min(rowA, rowB);
  const column = Math.min(columnA, columnB);
  const rows = Math.abs(rowA - rowB) + 1;
  const columns = Math.abs(columnA - columnB) + 1;
  const inside = row >= 0 && column >= 0 && row + rows <= MOST_ROWS && column + columns <= MOST_COLUMNS;
  return inside ? { row, column, rows, columns } : undefined;
}

const DOLLAR = 36;
const isLetter = (code: number): boolean => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** The commonest reference, one cell on the sheet, without the cost of a pattern: scans read tens of thousands. */
function oneCell(text: string): Omit<Area, "sheet"> | undefined {
  let at = text.charCodeAt(0) === DOLLAR ? 1 : 0;
  let column = 0;
  for (; isLetter(text.charCodeAt(at)); at++) column = column * 26 + (text.charCodeAt(at) & 31);
  if (text.charCodeAt(at) === DOLLAR) at++;
  let row = 0;
  const digits = at;
  for (; isDigit(text.charCodeAt(at)); at++) row = row * 10 + text.charCodeAt(at) - 48;
  const fits = at === text.length && at > digits && column > 0 && column <= MOST_COLUMNS && row > 0 && row <= MOST_ROWS;
  return fits ? { row: row - 1, column: column - 1, rows: 1, columns: 1 } : undefined;
}

/** The cells that A1, $A$1:B2, A:C or 1:3 mean; undefined for anything else, XFE1 included. */
export function parseCells(text: string): Omit<Area, "sheet"> | undefined {
  const one = oneCell(text);
  if (one !== undefined) return one;
  const cells = CELLS.exec(text);
  if (cells) {
    const [, letters = "", row = "", lastLetters = letters, lastRow = row] = cells;
    return between(Number(row) - 1, columnNumber(letters), Number(lastRow) - 1, columnNumber(lastLetters));
  }
  const columns = COLUMNS.exec(text);
  if (columns) return between(0, columnNumber(columns[1] ?? ""), MOST_ROWS - 1, columnNumber(columns[2] ?? ""));
  const rows = ROWS.exec(text);
  return rows ? between(Number(rows[1]) - 1, 0, Number(rows[2]) - 1, MOST_COLUMNS - 1) : undefined;
}

const SHEET = /^(?:'((?:[^']|'')+)'|([^'![\]]+))!(.*)$/s;

/** What a reference means; undefined where it can't be followed (another workbook, several sheets, `#REF!`). */
export function parseReference(text: string): ReferenceMeaning | undefined {
  const qualified = text.includes("!") ? SHEET.exec(text) : null;
  const sheet = qualified?.[1]?.replaceAll("''", "'") ?? qualified?.[2];
  const rest = qualified?.[3] ?? text;
  if (rest.includes("!") || (sheet !== undefined && /[[\]:]/.test(sheet))) return undefined;
  if (rest.includes("[")) return sheet === undefined ? parseTable(rest) : undefined;
  const spill = rest.endsWith("#");
  const bare = spill ? rest.slice(0, -1) : rest;
  const at = sheet === undefined ? {} : { sheet };
  const area = parseCells(bare);
  if (area !== undefined) return { kind: "cells", ...at, area, spill };
  return /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(bare) ? { kind: "name", ...at, name: bare, spill } : undefined;
}

const PARTS: Readonly<Record<string, TablePart>> = {
  "#data": "data",
  "#all": "all",
  "#headers": "headers",
  "#totals": "totals",
  "#this row": "row",
};

/** Table[…]: a part, a column, columns first:last, or a part and columns; `'` escapes a character of a column's name. */
function parseTable(text: string): ReferenceMeaning | undefined {
  const open = text.indexOf("[");
  const table = text.slice(0, open);
  const inner = text.slice(open + 1, -1).trim();
  const row = inner.startsWith("@");
  const pieces = piecesOf(row ? inner.slice(1) : inner);
  if (!text.endsWith("]") || pieces === undefined) return undefined;
  let part: TablePart = row ? "row" : "data";
  const columns: string[] = [];
  for (const piece of pieces) {
    const named = PARTS[piece.toLowerCase()];
    if (named === undefined) columns.push(piece.replace(/'(.)/g, "$1"));
    else if (part === "data") part = named;
    else return undefined;
  }
  const [first, last = first] = columns;
  if (columns.length > 2) return undefined;
  const width = first === undefined || last === undefined ? {} : { first, last };
  return { kind: "table", ...(table === "" ? {} : { table }), part, ...width };
}

/** The pieces inside a table's brackets: bracketed ones apart, or the whole where nothing is bracketed. */
function piecesOf(inner: string): readonly string[] | undefined {
  if (!inner.startsWith("[")) return inner === "" ? [] : [inner];
  const PIECE = /\[((?:'.|[^'[\]])*)\]\s*[,:]?\s*/y;
  const pieces: string[] = [];
  for (let at = 0; at < inner.length; at = PIECE.lastIndex) {
    PIECE.lastIndex = at;
    const found = PIECE.exec(inner);
    if (found === null) return undefined;
    pieces.push(found[1] ?? "");
  }
  return pieces;
}
