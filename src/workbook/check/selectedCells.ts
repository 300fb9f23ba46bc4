/** The cells of a selection that a check can be of. */
import type { Address, Area, Block, Workbook } from "../port";

/** More cells than these in one go are a slip of the mouse. */
const MOST_SELECTED = 200;

type SelectedCells = { readonly cells: readonly Address[] } | { readonly why: string };

function shared(a: Area, b: Area): Area | undefined {
  const [row, column] = [Math.max(a.row, b.row), Math.max(a.column, b.column)];
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return rows > 0 && columns > 0 ? { sheet: a.sheet, row, column, rows, columns } : undefined;
}

/** Formulas and numbers; labels, units and empty cells beside them are none. */
function checkable({ area, formulas, values }: Block): readonly Address[] {
  return values.flatMap((line, down) =>
    line.flatMap((value, over) =>
      typeof value === "number" || (formulas[down]?.[over] ?? "") !== ""
        ? [{ sheet: area.sheet, row: area.row + down, column: area.column + over }]
        : [],
    ),
  );
}

/** One selected cell as it is; of several those that hold a number or a formula. */
export async function selectedCells(book: Workbook): Promise<SelectedCells> {
  const areas = (await book.selectedAreas?.()) ?? [];
  const size = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  if (size < 2) {
    const cell = await book.selection();
    return cell === undefined ? { why: "Select a cell first." } : { cells: [cell] };
  }
  const filled: Area[] = [];
  for (const area of areas) {
    const used = await book.used(area.sheet);
    const inside = used === undefined ? undefined : shared(area, used);
    if (inside !== undefined) filled.push(inside);
  }
  const cells = filled.length === 0 ? [] : (await book.read(filled)).flatMap(checkable);
  if (cells.length === 0) return { why: "No selected cell holds a number or a formula." };
  return cells.length > MOST_SELECTED
    ? {
        why: `${String(cells.length)} selected cells hold numbers or formulas: select at most ${String(MOST_SELECTED)}.`,
      }
    : { cells };
}
