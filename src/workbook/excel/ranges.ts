/** Ranges by their areas, and what is read of them. */
import type { Area, CellValue } from "../port";
import { brief } from "./run";

/** Bytes of one range with what is loaded of it. */
export const RANGE_COST = 700;

/** What Excel says of an area. */
export interface Piece {
  readonly area: Area;
  readonly formulas: string[][];
  readonly values: CellValue[][];
  /** Some of its cells may belong to a spill. */
  readonly spilled: boolean;
}

/** Ranges for one request; the sheets are asked for once each. */
export function rangesOf(context: Excel.RequestContext, areas: readonly Area[]): readonly Excel.Range[] {
  const sheets = new Map<string, Excel.Worksheet>();
  return areas.map(({ sheet, row, column, rows, columns }) => {
    const worksheet = sheets.get(sheet) ?? context.workbook.worksheets.getItem(sheet);
    sheets.set(sheet, worksheet);
    return brief(worksheet.getRangeByIndexes(row, column, rows, columns));
  });
}

export const rangeOf = (context: Excel.RequestContext, area: Area): Excel.Range =>
  rangesOf(context, [area])[0] as Excel.Range;
