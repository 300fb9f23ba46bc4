/** Whether formulas may depend on their own results, by the references in them. */
import type { IRange } from "@univerjs/core";
import { circular } from "./cycles";

export interface OrderedFormula {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly inputs: readonly { readonly sheetId: string; readonly range: IRange }[];
}

/** Looking into more cells than these costs more than a calculation. */
const MOST_LOOKS = 5_000_000;

type Order = (cell: Pick<OrderedFormula, "sheetId" | "row" | "column">) => number;

const WIDTH = 16_384;
const SHEET_SIZE = WIDTH * 1_048_576;

/** Formulas by place: those of a range are found in it, or one by one where the range is larger than their number. */
function formulasInRanges(cells: readonly OrderedFormula[]) {
  const index = (): Map<string, Map<number, number>> => {
    const sheets = new Map<string, Map<number, number>>();
    for (const [id, { sheetId, row, column }] of cells.entries()) {
      const places = sheets.get(sheetId) ?? new Map<number, number>();
      sheets.set(sheetId, places);
      places.set(row * WIDTH + column, id);
    }
    return sheets;
  };
  /** Made when it is asked for: most workbooks need none. */
  let known: ReturnType<typeof index> | undefined;
  let looks = 0;
  return {
    isTooMuch: () => looks > MOST_LOOKS,
    within({ sheetId, range }: OrderedFormula["inputs"][number]): readonly number[] {
      known ??= index();
      const places = known.get(sheetId);
      if (places === undefined || looks > MOST_LOOKS) return [];
      const found: number[] = [];
      const { startRow, endRow, startColumn, endColumn } = range;
      // Whole rows and columns have no end.
      const size = (endRow - startRow + 1) * (endColumn - startColumn + 1);
      looks += size < places.size ? size : places.size;
      if (size < places.size) {
        for (let row = startRow; row <= endRow; row++)
          for (let column = startColumn; column <= endColumn; column++) {
            const id = places.get(row * WIDTH + column);
            if (id !== undefined) found.push(id);
          }
        return found;
      }
      for (const [place, id] of places) {
        const [row, column] = [Math.floor(place / WIDTH), place % WIDTH];
        const above = row < startRow || column < startColumn;
        if (!above && !(row > endRow) && !(column > endColumn)) found.push(id);
      }
      return found;
    },
  };
}

/**
 * Reading on from left to right, row by row and sheet by sheet, a circle needs a formula that refers to a later one. Most
 * workbooks have few of those: the search begins there.
 * @param sheetIds in the order of the tabs
 */
export async function mayCircle(
  cells: readonly OrderedFormula[],
  sheetIds: readonly string[],
  pause: () => Promise<void> | undefined,
): Promise<boolean> {
  const places = new Map(sheetIds.map((id, place) => [id, place] as const));
  const order: Order = ({ sheetId, row, column }) => (places.get(sheetId) ?? 0) * SHEET_SIZE + row * WIDTH + column;
  const index = formulasInRanges(cells);
  const forward: number[] = [];
  for (const [id, cell] of cells.entries()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const own = order(cell);
    const isLater = ({ sheetId, range: { endRow, endColumn } }: OrderedFormula["inputs"][number]): boolean =>
      !(order({ sheetId, row: endRow, column: endColumn }) < own);
    if (cell.inputs.some((input) => isLater(input) && index.within(input).length > 0)) forward.push(id);
  }
  if (forward.length === 0) return index.isTooMuch();
  const following = (id: number): readonly number[] =>
    (cells[id]?.inputs ?? []).flatMap((input) => index.within(input));
  return (await circular(forward, following, pause)).size > 0 || index.isTooMuch();
}
