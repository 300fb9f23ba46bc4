/** States that a real workbook or a real Excel can be in, one function each. oddities.test.ts shows each through the client. */
import type { Host } from "./host/objects";
import { addTable } from "./members/tables";
import type { Scalar, TableModel } from "./model/workbook";
import { boxOf, keyOf, sheetNamed, type Box, type SheetModel } from "./model/workbook";
import { writeCell } from "./model/cells";
import { calculated, insertRows, rename } from "./model/edits";

function at(host: Host, address: string): { sheet: SheetModel; box: Box } {
  const cut = address.lastIndexOf("!");
  const box = boxOf(address.slice(cut + 1));
  if (box === undefined) throw new Error(`${address} is no address`);
  return { sheet: sheetNamed(host.book, address.slice(0, cut)), box };
}

/** The user is typing in a cell; `host.finishEditing()` ends it. */
export function editingACell(host: Host): void {
  host.editing = true;
}

/** Another workbook has the focus; `bringToFront(host)` ends it. */
export function anotherWorkbookInFront(host: Host): void {
  host.inFront = false;
}

export function protectedSheet(host: Host, sheet: string, password?: string, unlocked: readonly string[] = []): void {
  const model = sheetNamed(host.book, sheet);
  model.protection = password === undefined ? {} : { password };
  for (const address of unlocked) model.unlocked.push(boxOf(address) ?? { row: 0, column: 0, rows: 1, columns: 1 });
}

export function protectedStructure(host: Host): void {
  host.book.structureProtected = true;
}

export function hiddenSheet(host: Host, sheet: string): void {
  sheetNamed(host.book, sheet).visibility = "Hidden";
}

export function veryHiddenSheet(host: Host, sheet: string): void {
  sheetNamed(host.book, sheet).visibility = "VeryHidden";
}

export function chartSelected(host: Host): void {
  host.book.chartSelected = true;
}

/** A filter hides rows, counted from 0. */
export function filteredRows(host: Host, sheet: string, ...rows: readonly number[]): void {
  for (const row of rows) sheetNamed(host.book, sheet).filteredRows.add(row);
}

export function mergedCells(host: Host, address: string): void {
  const { sheet, box } = at(host, address);
  sheet.merged.push(box);
}

export function tableOn(host: Host, address: string, facts: Omit<TableModel, "area">): void {
  const { sheet } = at(host, address);
  addTable(sheet, address.slice(address.lastIndexOf("!") + 1), facts);
}

/** A formula whose result fills several cells. */
export function spill(host: Host, address: string, formula: string, values: readonly (readonly Scalar[])[]): void {
  const { sheet, box } = at(host, address);
  writeCell(sheet, box, formula, () => values);
}

/** A formula that has no result yet: it shows #BUSY! until `calculated(host, address, …)`. */
export function busyCell(host: Host, address: string, formula: string): void {
  const { sheet, box } = at(host, address);
  writeCell(sheet, box, formula, () => ({ error: "#BUSY!" }));
}

/** An error that Excel shows in the user's language: `text` has it so, `values` in English. */
export function foreignError(host: Host, address: string, foreign: string): void {
  const { sheet, box } = at(host, address);
  const cell = sheet.cells.get(keyOf(box.row, box.column));
  if (cell?.error !== true) throw new Error(`${address} holds no error`);
  cell.foreign = foreign;
}

/** Someone inserts rows just before a request is carried out: 0 is the next one. */
export function rowsInsertedBefore(host: Host, request: number, sheet: string, from: number, count: number): void {
  beforeRequest(host, request, () => insertRows(host, sheet, from, count));
}

export function sheetRenamedBefore(host: Host, request: number, sheet: string, name: string): void {
  beforeRequest(host, request, () => rename(host, sheet, name));
}

function beforeRequest(host: Host, request: number, edit: () => void): void {
  let coming = 0;
  host.before = () => {
    if (coming++ === request) edit();
  };
}

/** Excel turns requests away for a while: so many of the next ones. */
export function tooBusy(host: Host, requests: number): void {
  let left = requests;
  host.refusal = () => (left-- > 0 ? "ActivityLimitReached" : undefined);
}

/** The first action of the next so many requests fails with a code: RequestAborted, ServiceNotAvailable and the like. */
export function failing(host: Host, code: string, requests = 1): void {
  let left = requests;
  host.fault = ({ index }) => (index === 0 && left-- > 0 ? code : undefined);
}

export { calculated };
