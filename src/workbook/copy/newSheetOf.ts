/** A sheet of ours as the file gets it. */
import type { StarterSheet } from "../../sheets/sheet";
import type { NewSheet } from "../package";
import { placedCells } from "../starterCells";
import { rowHeights, styleOf } from "../starterStyles";

/** @param name the one that it gets in the copy; the sheet holds values only */
export function newSheetOf(sheet: StarterSheet, name: string): NewSheet {
  return {
    name,
    cells: placedCells(sheet).map(({ row, column, cell }) => ({
      row,
      column,
      value: cell.content,
      style: { ...styleOf(cell), ...(cell.format !== undefined && { format: cell.format }) },
    })),
    widths: Object.fromEntries(sheet.widths.entries()),
    heights: rowHeights(sheet),
    frozenRows: sheet.frozenRows,
    print: sheet.print,
  };
}
