/** Reads sheets in blocks that a host can return at once. */
import type { Address, Area, Block, CellValue, Workbook } from "../port";
import type { ValueMatrix } from "../values";

/** The largest block to request from a host at once. */
export const BLOCK_CELLS = 50_000;

/** Sheets that were read already: name → blocks, from the top down. */
export type HeldSheets = ReadonlyMap<string, readonly Block[]>;

export const cellsOf = (area: Omit<Area, "sheet">): number => area.rows * area.columns;

/** The blocks of at most 50,000 cells that make up an area. */
export function blocksOf(area: Area): readonly Area[] {
  const deep = Math.max(1, Math.floor(BLOCK_CELLS / area.columns));
  const blocks: Area[] = [];
  for (let down = 0; down < area.rows; down += deep) {
    blocks.push({ ...area, row: area.row + down, rows: Math.min(deep, area.rows - down) });
  }
  return blocks;
}

/** A sheet's used part, block by block; none if it is empty or missing. */
export async function readSheet(book: Workbook, sheet: string): Promise<readonly Block[]> {
  const used = await book.used(sheet);
  const blocks: Block[] = [];
  for (const area of used === undefined ? [] : blocksOf(used)) blocks.push(...(await book.read([area])));
  return blocks;
}

const oneFrom = (block: Block | undefined, { row, column }: Omit<Address, "sheet">): CellValue =>
  block?.values[row - block.area.row]?.[column - block.area.column] ?? null;

/** An area's values from a sheet's blocks; cells outside its used part are blank. */
export function valuesFrom(blocks: readonly Block[], area: Omit<Area, "sheet">): ValueMatrix {
  const rows: CellValue[][] = [];
  for (let row = area.row; row < area.row + area.rows; row++) {
    const block = blocks.find((held) => row >= held.area.row && row < held.area.row + held.area.rows);
    const cells: CellValue[] = [];
    for (let at = 0; at < area.columns; at++) cells.push(oneFrom(block, { row, column: area.column + at }));
    rows.push(cells);
  }
  return rows;
}
