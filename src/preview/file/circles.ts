/** Circular formulas of workbooks that Excel calculates again and again until they settle. */
import { isCellFault, type Address } from "../../workbook/port";
import type { SheetBook } from "../host/sheetBook";
import type { BookData, CellData } from "./bookData";
import { cellSet } from "./cellMap";
import type { FileBook } from "./openedBook";

const ERROR = /^#[A-Z0-9/]+[!?]?$/;

/** The cells of a circle keep the results that Excel found; the engine finds none. */
export function keepCircles(data: BookData, isCircular: (sheet: string, cell: CellData) => boolean): BookData {
  const keep = (sheet: string, cell: CellData): CellData => {
    const { formula, source, ...rest } = cell;
    const shown = cell.value !== null && !(typeof cell.value === "string" && ERROR.test(cell.value));
    if (formula === undefined || !shown || !isCircular(sheet, cell)) return cell;
    return {
      ...rest,
      kept: { formula: source ?? formula, why: "circles that Excel calculates step by step", value: cell.value },
    };
  };
  return {
    ...data,
    sheets: data.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map((cell) => keep(sheet.name, cell)) })),
  };
}

/** Cells of circles that the engine finds no result for. */
export function circularCells({ data, facts }: FileBook, book: SheetBook): readonly Address[] {
  if (!facts.calculation.iterate) return [];
  const found: Address[] = [];
  keepCircles(data, (sheet, { row, column }) => {
    const value = book.read({ sheet, row, column, rows: 1, columns: 1 }).values[0]?.[0] ?? null;
    const circular = isCellFault(value) && value.code === "#CYCLE!";
    if (circular) found.push({ sheet, row, column });
    return circular;
  });
  return found;
}

export function circlesKept(data: BookData, cells: readonly Address[]): BookData {
  if (cells.length === 0) return data;
  const circles = cellSet(cells);
  return keepCircles(data, (sheet, { row, column }) => circles.has({ sheet, row, column }));
}
