/** Sheets of ours as the file gets them. */
import type { StarterSheet } from "../../sheets/sheet";
import type { NewLine, NewSheet, NewStyle } from "../package";
import { placedCells } from "../starterCells";
import { starterPrint } from "../starterPrint";
import { rowHeights, starterStyle, wrappedHeight } from "../starterStyles";
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

/** The heights that a column's texts need: the same text often comes again. */
function columnHeight(width: number | undefined): (text: string) => number | undefined {
  let before = "";
  let height: number | undefined;
  return (text) => {
    if (text === "") return undefined;
    if (text !== before) height = wrappedHeight(text, width);
    before = text;
    return height;
  };
}

/** The record's sheet: its lines become cells as they are written. */
export function newRecord(facts: CopyFacts, lines: readonly RecordLine[], name: string): NewSheet {
  const head = newSheetOf(recordPage(facts, []), name);
  const styleFor = bodyStyles();
  const heightFor = RECORD_COLUMNS.map(([, width]) => columnHeight(width));
  const line = (at: number): NewLine => {
    const contents: readonly RecordContent[] = lines[at] ?? [];
    const heights = contents.map((content, column) =>
      typeof content === "string" ? (heightFor[column]?.(content) ?? 0) : 0,
    );
    const height = Math.max(...heights);
    return {
      values: contents.map((content) => (content === "" ? null : content)),
      styles: contents.map(styleFor),
      height: height > 0 ? height : undefined,
    };
  };
  return {
    ...head,
    lines: { firstRow: HEAD_ROWS, count: lines.length, line },
    print: { ...head.print, area: printedArea(lines.length) },
  };
}
