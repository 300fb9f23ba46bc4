import type { CellData, SheetData } from "./bookData";

const TOTAL = /\b(?:SUBTOTAL|AGGREGATE)\s*\(/i;

const keepTotal = (cell: CellData): CellData => {
  const { formula, source, ...rest } = cell;
  if (formula === undefined || !TOTAL.test(formula)) return cell;
  return {
    ...rest,
    kept: { formula: source ?? formula, why: "totals over totals that keep their result", value: cell.value },
  };
};

/** A total leaves other totals out, which the engine can't see in cells that keep their result: then all are kept. */
export function keepNestedTotals(sheets: readonly SheetData[]): readonly SheetData[] {
  const some = sheets.some(({ cells }) => cells.some(({ kept }) => kept !== undefined && TOTAL.test(kept.formula)));
  return some ? sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(keepTotal) })) : sheets;
}
