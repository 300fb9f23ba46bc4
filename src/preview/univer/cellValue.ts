/** What a cell of the engine holds. */
import { CellValueType } from "@univerjs/core";
import type { ICellData, Nullable } from "@univerjs/core";

import type { KeptFormula, PlainValue, ValidationData } from "../file/bookData";

export const valueCell = (value: PlainValue): ICellData => {
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
};

/** What a cell of the engine holds; null where it is empty. */
export const plainValue = (cell: Nullable<ICellData>): PlainValue | null => {
  if (cell === null || cell === undefined) return null;
  // What HYPERLINK gives is rich text alone; its last two signs end the paragraph.
  if (cell.v === null || cell.v === undefined) return cell.p?.body?.dataStream.replace(/\r\n$/, "") ?? null;
  if (cell.t === CellValueType.BOOLEAN) return cell.v === true || cell.v === 1 || cell.v === "1";
  if (cell.t === CellValueType.NUMBER) return Number(cell.v);
  if (cell.t === CellValueType.STRING || cell.t === CellValueType.FORCE_STRING) return String(cell.v);
  return cell.v;
};

/** The formula that a cell can't work out; none once something else is in the cell. */
export const keptOf = (cell: Nullable<ICellData>): KeptFormula | undefined => {
  const kept = cell?.custom?.["kept"] as KeptFormula | undefined;
  return kept !== undefined && (cell?.f ?? "") === "" && plainValue(cell) === kept.value ? kept : undefined;
};

/** The engine carries a cell's rule along with the cell. */
export const validationOf = (cell: Nullable<ICellData>): ValidationData | undefined =>
  cell?.custom?.["validation"] as ValidationData | undefined;

/** Whether a cell says a check's state. */
export const saysState = (cell: Nullable<ICellData>): boolean => cell?.custom?.["state"] === true;
