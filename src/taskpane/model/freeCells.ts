/** Checks that the cells of an insertion are free. */
import type { Address, Block } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";

/** The first cell of a block that isn't empty. */
export function firstFilledCell({ area, formulas, values }: Block): Address | undefined {
  for (const [down, row] of values.entries()) {
    const over = row.findIndex(
      (value, place) => (value !== null && value !== "") || (formulas[down]?.[place] ?? "") !== "",
    );
    if (over >= 0) return { sheet: area.sheet, row: area.row + down, column: area.column + over };
  }
  return undefined;
}

/** The message if a block isn't free; undefined if it is. */
export function freeCellsRefusal(block: Block): string | undefined {
  const taken = firstFilledCell(block);
  if (taken === undefined) return undefined;
  const { rows, columns } = block.area;
  const cell = cellsText({ ...taken, rows: 1, columns: 1 });
  if (rows === 1 && columns === 1) return `${cell} is not empty: select an empty cell.`;
  return `${cell} is not empty: select a cell with ${String(rows)} × ${String(columns)} empty cells (rows × columns) from it on.`;
}
