/** The used cells of whole columns and rows, as the engine holds them. */
import type { IRange, ObjectMatrix } from "@univerjs/core";
import type { BaseReferenceObject } from "@univerjs/engine-formula";
import type { EngineValue } from "./lineValues";

/** Which way a line is long. */
export type LineWay = "rows" | "columns";

type Cells = Pick<ObjectMatrix<unknown>, "getMatrix"> | null | undefined;
type Line = Readonly<Record<number, unknown>>;

const isInside = (line: Line, { startColumn, endColumn }: IRange): boolean => {
  for (let column = startColumn; column <= endColumn; column++)
    if (line[column] !== undefined && line[column] !== null) return true;
  return false;
};

function lastRow(cells: Cells, range: IRange): number {
  const rows = (cells?.getMatrix() ?? {}) as Readonly<Record<number, Line | undefined>>;
  const keys = Object.keys(rows);
  for (let at = keys.length - 1; at >= 0; at--) {
    const row = Number(keys[at]);
    if (row < range.startRow) break;
    if (row <= range.endRow && isInside(rows[row] ?? {}, range)) return row;
  }
  return -1;
}

function lastColumn(cells: Cells, { startRow, endRow, startColumn, endColumn }: IRange): number {
  const rows = (cells?.getMatrix() ?? {}) as Readonly<Record<number, Line | undefined>>;
  let last = -1;
  for (let row = startRow; row <= endRow; row++) {
    const line = rows[row] ?? {};
    for (const key of Object.keys(line)) {
      const column = Number(key);
      if (column >= startColumn && column <= endColumn && column > last && line[column] !== null) last = column;
    }
  }
  return last;
}

/** How many cells from its beginning hold all that is in a range. */
export function usedCount(reference: BaseReferenceObject, range: IRange, way: LineWay): number {
  const layers: readonly Cells[] = [
    reference.getCurrentActiveSheetData()?.cellData,
    reference.getCurrentRuntimeSheetData(),
    reference.getCurrentActiveArrayFormulaCellData(),
    reference.getCurrentRuntimeActiveArrayFormulaCellData(),
  ] as readonly Cells[];
  const ends = layers.map((cells) => (way === "rows" ? lastRow(cells, range) : lastColumn(cells, range)));
  const start = way === "rows" ? range.startRow : range.startColumn;
  return Math.max(0, ...ends.map((end) => end - start + 1));
}

/** Ends a line after so many cells. */
export function clampLine(value: EngineValue | undefined, way: LineWay, count: number): void {
  if (!value?.isReferenceObject() || count === Infinity) return;
  const reference = value as BaseReferenceObject;
  const range = { ...reference.getRangePosition() };
  if (way === "rows") range.endRow = Math.min(range.endRow, range.startRow + count - 1);
  else range.endColumn = Math.min(range.endColumn, range.startColumn + count - 1);
  reference.setRefOffset(0, 0);
  reference.setRangeData(range);
}
