/** Sheets of ours as the file gets them. */
import type { StarterSheet } from "../../sheets/sheet";
import type { NewSheet, NewStyle, PlacedCell } from "../package";
import { placedCells } from "../starterCells";
import { starterPrint } from "../starterPrint";
import { rowHeights, starterStyle, wrappedHeight } from "../starterStyles";
import type { NextSlice } from "../timeSlices";
import type { CopyFacts } from "./copyFacts";
import { bodyCell, formatOf, HEAD_ROWS, printedArea, RECORD_COLUMNS, recordPage } from "./recordPage";
import type { RecordContent, RecordLine } from "./recordTypes";

/** @param name the one that it gets in the copy; the sheet holds values only */
export function newSheetOf(sheet: StarterSheet, name: string): NewSheet {
  return {
    name,
    cells: placedCells(sheet).map(({ row, column, cell }) => ({
      row,
      column,
      value: cell.content,
      style: { ...starterStyle(cell), ...(cell.format !== undefined && { format: cell.format }) },
    })),
    widths: Object.fromEntries(sheet.widths.entries()),
    heights: rowHeights(sheet),
    frozenRows: sheet.frozenRows,
    print: starterPrint(sheet),
  };
}

/** The looks of a record's cells, each made once: a large record has hundreds of thousands of cells. */
function bodyStyles(): (content: RecordContent, column: number) => NewStyle {
  const known = new Map<string, NewStyle>();
  return (content, column) => {
    const key = typeof content === "number" ? formatOf(content) : `${typeof content} ${column > 0}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const { format, ...cell } = bodyCell(content, column);
    const style = { ...starterStyle(cell), ...(format !== undefined && { format }) };
    known.set(key, style);
    return style;
  };
}

/** The record's sheet, line by line. */
export async function newRecord(
  facts: CopyFacts,
  lines: readonly RecordLine[],
  name: string,
  pause: NextSlice,
): Promise<NewSheet> {
  const head = newSheetOf(recordPage(facts, []), name);
  const cells: PlacedCell[] = [...head.cells];
  const heights: Record<number, number> = { ...head.heights };
  const styleFor = bodyStyles();
  for (const [down, line] of lines.entries()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const row = HEAD_ROWS + down;
    for (const [column, content] of line.entries()) {
      cells.push({ row, column, value: content === "" ? null : content, style: styleFor(content, column) });
      const height = typeof content === "string" ? wrappedHeight(content, RECORD_COLUMNS[column]?.[1]) : undefined;
      if (height !== undefined) heights[row] = Math.max(heights[row] ?? 0, height);
    }
  }
  return { ...head, cells, heights, print: { ...head.print, area: printedArea(lines.length) } };
}
