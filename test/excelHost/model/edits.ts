/** Edits by hand: by the user, or by someone else who has the workbook open too. Each is told as an event. */
import type { Host } from "../host/objects";
import { setResult, writeCell, type Result } from "./cells";
import { checkSheetName } from "./limits";
import {
  boxOf,
  keyOf,
  MOST_COLUMNS,
  placeOf,
  sheetNamed,
  type Box,
  type CellModel,
  type Place,
  type SheetModel,
} from "./workbook";

/** "Data!B2" → its sheet and box. */
function at(host: Host, address: string): { sheet: SheetModel; box: Box } {
  const cut = address.lastIndexOf("!");
  const box = boxOf(address.slice(cut + 1));
  if (box === undefined) throw new Error(`${address} is no address`);
  return { sheet: sheetNamed(host.book, address.slice(0, cut)), box };
}

/** Types content into a cell. */
export function type(host: Host, address: string, content: string | number | boolean): void {
  const { sheet, box } = at(host, address);
  writeCell(sheet, box, content, host.resultOf);
  host.events.changed(sheet, box, "Remote");
  host.events.flush();
}

/** A formula's result comes: Excel calculated. */
export function calculated(host: Host, address: string, result: Result, message?: string): void {
  const { sheet, box } = at(host, address);
  setResult(sheet, box, result, message);
  host.events.calculated(sheet, box);
  host.events.flush();
}

const shifted = (place: Place, from: number, by: number): Place =>
  place.row >= from ? { ...place, row: place.row + by } : place;

function moveCells(sheet: SheetModel, from: number, by: number): void {
  const moved = new Map<number, CellModel>();
  for (const [key, cell] of sheet.cells) {
    const place = shifted(placeOf(key), from, by);
    moved.set(keyOf(place.row, place.column), cell);
    if (cell.parent !== undefined) cell.parent = shifted(cell.parent, from, by);
  }
  sheet.cells.clear();
  for (const [key, cell] of moved) sheet.cells.set(key, cell);
}

/** Inserts empty rows: cells, names and tables below move down, and the ranges that the add-in keeps with them. */
export function insertRows(host: Host, title: string, from: number, count: number): void {
  const sheet = sheetNamed(host.book, title);
  moveCells(sheet, from, count);
  const names = [...host.book.names.values(), ...sheet.names.values()].filter((name) => name.sheet === sheet);
  for (const name of names) name.area = { ...name.area, ...shifted(name.area, from, count) };
  for (const table of sheet.tables) table.area = { ...table.area, ...shifted(table.area, from, count) };
  for (const kept of host.references.values()) {
    const target = kept.target as { sheet?: SheetModel; row: number };
    if (kept.type === "Range" && target.sheet === sheet && target.row >= from) target.row += count;
  }
  const area = { row: from, column: 0, rows: count, columns: MOST_COLUMNS };
  host.events.changed(sheet, area, "Remote", "RowInserted");
  host.events.flush();
}

export function rename(host: Host, title: string, name: string): void {
  const sheet = sheetNamed(host.book, title);
  sheet.name = checkSheetName(host.book, name, sheet);
  host.events.sheet("nameChanged", sheet, { source: "Remote", nameBefore: title, nameAfter: name });
  host.events.flush();
}

export function deleteSheet(host: Host, title: string): void {
  const { sheets } = host.book;
  const sheet = sheetNamed(host.book, title);
  sheets.splice(sheets.indexOf(sheet), 1);
  const [next] = sheets;
  if (host.book.active.sheet === sheet && next !== undefined) host.book.active = { sheet: next, row: 0, column: 0 };
  host.events.sheet("deleted", sheet, { source: "Remote" });
  host.events.flush();
}

/** The user selects a cell. */
export function selectByHand(host: Host, address: string): void {
  const { sheet, box } = at(host, address);
  host.book.active = { sheet, row: box.row, column: box.column };
  host.events.selected();
  host.events.flush();
}

/** The pane is closed or opened: its page runs on hidden. */
export function showPane(host: Host, visible: boolean): void {
  host.paneVisible = visible;
  host.events.visibility(visible);
}

/** The user comes back from another workbook. */
export function bringToFront(host: Host): void {
  host.inFront = true;
  host.events.front();
}
