/**
 * A workbook as texts, packed and unpacked in slices: the browser's store copies an object in one piece, which takes long
 * for 50,000 cells, and a text at once.
 */
import type { BookData, CellData } from "../file/bookData";

type Pause = () => Promise<void> | undefined;

/** Cells in one text. */
const CELLS = 2_000;

/** Cells of one sheet, by its place. */
interface Piece {
  readonly sheet: number;
  readonly cells: readonly CellData[];
}

/** @returns the workbook without cells, then its cells */
export async function packBook(data: BookData, pause: Pause): Promise<readonly string[]> {
  const pieces = [JSON.stringify({ ...data, sheets: data.sheets.map((sheet) => ({ ...sheet, cells: [] })) })];
  for (const [sheet, { cells }] of data.sheets.entries())
    for (let from = 0; from < cells.length; from += CELLS) {
      await pause();
      const piece: Piece = { sheet, cells: cells.slice(from, from + CELLS) };
      pieces.push(JSON.stringify(piece));
    }
  return pieces;
}

export async function unpackBook([first = "", ...others]: readonly string[], pause: Pause): Promise<BookData> {
  const data = JSON.parse(first) as BookData;
  const cells: CellData[][] = data.sheets.map(() => []);
  for (const text of others) {
    await pause();
    const piece = JSON.parse(text) as Piece;
    for (const cell of piece.cells) cells[piece.sheet]?.push(cell);
  }
  return { ...data, sheets: data.sheets.map((sheet, place) => ({ ...sheet, cells: cells[place] ?? [] })) };
}
