/** Few areas that hold many cells: a host takes long over thousands of areas of one cell. */
import type { Address, Area } from "../port";
import { BLOCK_CELLS, cellsOf } from "../reader/sheets";

/** An area may hold so many cells for each one that is asked for. */
const MOST_PER_CELL = 4;

interface Covering {
  readonly areas: readonly Area[];
  /** By cell, the place of its area. */
  readonly areaOf: readonly number[];
}

function joined(area: Area, { row, column }: Address): Area {
  const [top, left] = [Math.min(area.row, row), Math.min(area.column, column)];
  const rows = Math.max(area.row + area.rows, row + 1) - top;
  const columns = Math.max(area.column + area.columns, column + 1) - left;
  return { sheet: area.sheet, row: top, column: left, rows, columns };
}

/** Joins cells that follow each other in the order of rows, as long as the area stays well filled. */
export function coveringAreas(cells: readonly Address[]): Covering {
  const order = cells
    .map((cell, at) => ({ cell, at }))
    .sort(({ cell: a }, { cell: b }) =>
      a.sheet === b.sheet ? a.row - b.row || a.column - b.column : a.sheet < b.sheet ? -1 : 1,
    );
  const areas: Area[] = [];
  const areaOf = new Array<number>(cells.length).fill(0);
  let held = 0;
  for (const { cell, at } of order) {
    const last = areas.at(-1);
    const wider = last?.sheet === cell.sheet ? joined(last, cell) : undefined;
    if (wider !== undefined && cellsOf(wider) <= Math.min(BLOCK_CELLS, MOST_PER_CELL * (held + 1))) {
      areas[areas.length - 1] = wider;
      held++;
    } else {
      areas.push({ sheet: cell.sheet, row: cell.row, column: cell.column, rows: 1, columns: 1 });
      held = 1;
    }
    areaOf[at] = areas.length - 1;
  }
  return { areas, areaOf };
}
