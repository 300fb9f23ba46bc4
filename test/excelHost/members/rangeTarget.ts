/** Ranges as the members know them, and what several members ask of one. */
import { HostError } from "../client/protocol";
import type { Host } from "../host/objects";
import { checkBox, MOST_CELLS_READ, refuse } from "../model/limits";
import { isEditable, writeCell } from "../model/cells";
import type { RangeTarget } from "./targets";
import {
  boxOf,
  keyOf,
  MOST_COLUMNS,
  MOST_ROWS,
  placeOf,
  type Box,
  type CellModel,
  type SheetModel,
} from "../model/workbook";

export const rangeOn = (sheet: SheetModel, box: Box): RangeTarget => ({ sheet, ...checkBox(box) });

/** A range by its address; without one all cells. */
export function rangeAt(sheet: SheetModel, address: unknown): RangeTarget {
  if (address === undefined || address === null || address === "")
    return rangeOn(sheet, { row: 0, column: 0, rows: MOST_ROWS, columns: MOST_COLUMNS });
  const box = typeof address === "string" ? boxOf(address) : undefined;
  return box === undefined ? refuse("InvalidArgument") : rangeOn(sheet, box);
}

/** The range that another one is in part. */
export const partOf = (
  { sheet, row, column }: RangeTarget,
  down: number,
  over: number,
  rows = 1,
  columns = 1,
): RangeTarget => rangeOn(sheet, { row: row + down, column: column + over, rows, columns });

/** @throws HostError RangeExceedsLimit for more cells than Excel hands out at once */
export function grid<T>(
  { sheet, row, column, rows, columns }: RangeTarget,
  of: (cell: CellModel | undefined, row: number, column: number) => T,
): T[][] {
  if (rows * columns > MOST_CELLS_READ) refuse("RangeExceedsLimit");
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, over) =>
      of(sheet.cells.get(keyOf(row + down, column + over)), row + down, column + over),
    ),
  );
}

/** Puts content into every cell: a matrix of the range's size, or one content for all. */
export function write(target: RangeTarget, content: unknown, host: Host): void {
  const { sheet, row, column, rows, columns } = target;
  const matrix = Array.isArray(content) ? (content as readonly unknown[][]) : undefined;
  if (matrix !== undefined && (matrix.length !== rows || matrix.some((line) => line.length !== columns)))
    throw new HostError("InvalidArgument", "the matrix has another size than the range");
  // Protection is looked at for the whole range before anything is written.
  for (let down = 0; down < rows; down++)
    for (let over = 0; over < columns; over++)
      if (sheet.protection !== undefined && !isEditable(sheet, { row: row + down, column: column + over }))
        refuse("AccessDenied");
  let formulas = false;
  for (let down = 0; down < rows; down++)
    for (let over = 0; over < columns; over++) {
      const one = matrix === undefined ? content : matrix[down]?.[over];
      writeCell(sheet, { row: row + down, column: column + over }, one, host.resultOf);
      formulas ||= typeof one === "string" && one.startsWith("=");
    }
  const { row: top, column: left } = target;
  const area = { row: top, column: left, rows, columns };
  host.events.changed(sheet, area);
  if (formulas) host.events.calculated(sheet, area);
}

/** The box around all cells that hold something, within a range. */
export function usedWithin({ sheet, row, column, rows, columns }: RangeTarget): RangeTarget | undefined {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const key of sheet.cells.keys()) {
    const at = placeOf(key);
    if (at.row < row || at.row >= row + rows || at.column < column || at.column >= column + columns) continue;
    top = Math.min(top, at.row);
    left = Math.min(left, at.column);
    bottom = Math.max(bottom, at.row);
    right = Math.max(right, at.column);
  }
  return bottom < 0 ? undefined : { sheet, row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

/** Neighbouring cells that a test holds for, as boxes: runs within a row, equal runs of following rows joined. */
export function boxesWhere(target: RangeTarget, holds: (cell: CellModel) => boolean): readonly RangeTarget[] {
  const { sheet, row, column, rows, columns } = target;
  const keys = [...sheet.cells]
    .filter(([key, cell]) => {
      const at = placeOf(key);
      const inside = at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;
      return inside && holds(cell);
    })
    .map(([key]) => key)
    .sort((a, b) => a - b);
  const runs: RangeTarget[] = [];
  for (const key of keys) {
    const at = placeOf(key);
    const last = runs.at(-1);
    if (last?.row === at.row && last.column + last.columns === at.column) last.columns += 1;
    else runs.push({ sheet, ...at, rows: 1, columns: 1 });
  }
  const open = new Map<string, RangeTarget>();
  const boxes: RangeTarget[] = [];
  for (const run of runs) {
    const name = `${String(run.column)} ${String(run.columns)}`;
    const above = open.get(name);
    if (above !== undefined && above.row + above.rows === run.row) above.rows += 1;
    else {
      boxes.push(run);
      open.set(name, run);
    }
  }
  return boxes;
}
