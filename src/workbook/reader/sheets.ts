/** Reads sheets in blocks that a host can return at once. */
import type { Address, Area, Block, CellValue, BookReader } from "../port";
import type { ValueMatrix } from "../values";
import { addressText } from "./reference";

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

/** More would fill the memory: a few cells far from the others span as many as a sheet has. */
const MOST_CELLS = 20_000_000;

/** @throws a sentence where a sheet reaches so far that its cells can't all be read */
function refuseVast(area: Area): void {
  const cells = cellsOf(area);
  if (cells <= MOST_CELLS) return;
  const last = addressText({
    sheet: area.sheet,
    row: area.row + area.rows - 1,
    column: area.column + area.columns - 1,
  });
  throw new Error(
    `The sheet's cells reach to ${last} and span ${cells.toLocaleString("en-US")} cells; at most ${MOST_CELLS.toLocaleString("en-US")} can be read. Delete the cells that lie far from the others.`,
  );
}

/** A sheet's used part, block by block; none if it is empty or missing. */
export async function readSheet(book: BookReader, sheet: string): Promise<readonly Block[]> {
  const used = await book.used(sheet);
  if (used !== undefined) refuseVast(used);
  const blocks: Block[] = [];
  for (const area of used === undefined ? [] : blocksOf(used)) blocks.push(...(await book.read([area])));
  return blocks;
}

/** What was read of a sheet for its formulas. */
export interface SheetFormulas {
  readonly blocks: Block[];
  /** All of the sheet's used part is there, not only the rectangle around its formulas. */
  readonly whole: boolean;
}

/** A sheet of so few used cells is read whole: its formulas refer to most of them. */
const SMALL_SHEET = 5_000;

interface Plan {
  readonly area: Area | undefined;
  readonly whole: boolean;
}

/** A sheet of more used cells is read for its formulas only, even where texts are asked for. */
const MOST_WITH_TEXTS = 200_000;

async function planFor(book: BookReader, sheet: string, texts: boolean): Promise<Plan> {
  const [used, formulas] = await Promise.all([book.used(sheet), book.formulaArea?.(sheet)]);
  if (used === undefined || book.formulaArea === undefined) return { area: used, whole: true };
  if (texts && cellsOf(used) <= MOST_WITH_TEXTS) return { area: used, whole: true };
  if (formulas === undefined) return { area: undefined, whole: false };
  const whole = cellsOf(used) <= Math.max(SMALL_SHEET, 2 * cellsOf(formulas));
  return { area: whole ? used : formulas, whole };
}

/** Blocks in groups that a host can give at once. */
export function* groupsOf(blocks: readonly Area[]): Generator<readonly Area[]> {
  let group: Area[] = [];
  let cells = 0;
  for (const block of blocks) {
    if (group.length > 0 && cells + cellsOf(block) > BLOCK_CELLS) {
      yield group;
      group = [];
      cells = 0;
    }
    group.push(block);
    cells += cellsOf(block);
  }
  if (group.length > 0) yield group;
}

/**
 * Everything of sheets that may hold a formula, with few round trips for any number of sheets.
 * @param pause is called between two round trips
 * @param texts asks for texts too: sheets of up to 200,000 cells are read whole
 */
export async function readFormulas(
  book: BookReader,
  sheets: readonly string[],
  pause: () => Promise<void> | undefined = () => undefined,
  texts = false,
): Promise<ReadonlyMap<string, SheetFormulas>> {
  const plans = await Promise.all(sheets.map((sheet) => planFor(book, sheet, texts)));
  await pause();
  const found = new Map(
    sheets.map((sheet, at) => [sheet, { blocks: [] as Block[], whole: plans[at]?.whole === true }]),
  );
  for (const { area } of plans) if (area !== undefined) refuseVast(area);
  const blocks = plans.flatMap(({ area }) => (area === undefined ? [] : blocksOf(area)));
  for (const group of groupsOf(blocks)) {
    for (const block of await book.read(group)) found.get(block.area.sheet)?.blocks.push(block);
    await pause();
  }
  return found;
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
