/** Sheets of ours as the file gets them. */
import type { StarterSheet } from "../../sheets/sheet";
import type { NewLine, NewSheet, NewStyle } from "../package";
import type { CellValue } from "../port";
import { placedCells } from "../starterCells";
import { starterPrint } from "../starterPrint";
import { rowHeights, starterStyle, wrappedHeight } from "../starterStyles";
import type { CopyFacts } from "./copyFacts";
import { bodyCell, formatOf, HEAD_ROWS, printedArea, RECORD_COLUMNS, recordPage, REPEATED_COLUMNS } from "./recordPage";
import type { RecordContent, RecordLines } from "./recordTypes";

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

const lookOf = (content: RecordContent, column: number): NewStyle => {
  const { format, ...cell } = bodyCell(content, column);
  return { ...starterStyle(cell), ...(format !== undefined && { format }) };
};

/** The looks of a record's cells, each made once: a large record has hundreds of thousands of cells. */
function bodyStyles(): (content: RecordContent, column: number) => NewStyle {
  const texts = [lookOf("", 0), lookOf("", 1)] as const;
  const truth = lookOf(true, 0);
  const numbers = new Map<string, NewStyle>();
  return (content, column) => {
    if (typeof content === "string") return texts[column > 0 ? 1 : 0];
    if (typeof content === "boolean") return truth;
    const format = formatOf(content);
    let look = numbers.get(format);
    if (look === undefined) numbers.set(format, (look = lookOf(content, column)));
    return look;
  };
}

/** The heights that a column's texts need: the same text often comes again. */
function columnHeight(width: number | undefined): (text: string) => number {
  let before = "";
  let height = 0;
  return (text) => {
    if (text === "") return 0;
    if (text !== before) height = wrappedHeight(text, width) ?? 0;
    before = text;
    return height;
  };
}

/** The record's sheet: its lines become cells as they are written. */
export function newRecord(facts: CopyFacts, lines: RecordLines, name: string): NewSheet {
  const head = newSheetOf(recordPage(facts, { count: 0, line: () => [] }), name);
  const styleFor = bodyStyles();
  const heightFor = RECORD_COLUMNS.map(([, width]) => columnHeight(width));
  const line = (at: number): NewLine => {
    const contents = lines.line(at);
    const values: CellValue[] = [];
    const styles: NewStyle[] = [];
    let height = 0;
    for (let column = 0; column < contents.length; column++) {
      const content = contents[column] ?? "";
      if (typeof content === "string") height = Math.max(height, heightFor[column]?.(content) ?? 0);
      values.push(content === "" ? null : content);
      styles.push(styleFor(content, column));
    }
    return { values, styles, height: height > 0 ? height : undefined };
  };
  return {
    ...head,
    lines: { firstRow: HEAD_ROWS, count: lines.count, sharedColumns: REPEATED_COLUMNS, line },
    print: { ...head.print, area: printedArea(lines.count) },
  };
}
