/** Brings the cells that formulas refer to, for many formulas at once: a few round trips however many there are. */
import type { Address, Area, Block, CellValue, ReferenceText, Workbook } from "../port";
import type { ValueMatrix } from "../values";
import { fault, unread, UNREADABLE } from "./operators";
import type { Answer } from "./operators";
import { parseReference } from "./reference";

/** No argument of ours takes more. */
export const MOST_CELLS_READ = 40_000;
/** The largest block that is asked of a host at once. */
export const BLOCK_CELLS = 50_000;
/** More areas than this on one sheet are had cheaper by reading its used part. */
const MANY_AREAS = 100;
const LARGEST_SHEET = 500_000;

/** Sheets that were read already: name → blocks, from the top down. */
export type HeldSheets = ReadonlyMap<string, readonly Block[]>;

/** Answers references once everything has come. */
export interface Resolved {
  read(text: string, from: Address): Answer;
  meet(text: string, from: Address): Answer;
}

const cellsOf = (area: Area): number => area.rows * area.columns;
const areaKey = (area: Area): string =>
  `${String(area.row)},${String(area.column)},${String(area.rows)},${String(area.columns)},${area.sheet}`;

const sheetKey = (text: string, from: Address): string => `${text}\n${from.sheet}`;
/** A table's reference may mean another area in every cell. */
const cellKey = (text: string, from: Address): string =>
  `${text}\n${from.sheet}\n${String(from.row)}\n${String(from.column)}`;
const keyOf = (text: string, from: Address): string => (text.includes("[") ? cellKey : sheetKey)(text, from);

/** The blocks of at most 50,000 cells that make up an area. */
export function blocksOf(area: Area): readonly Area[] {
  const deep = Math.max(1, Math.floor(BLOCK_CELLS / area.columns));
  const blocks: Area[] = [];
  for (let down = 0; down < area.rows; down += deep) {
    blocks.push({ ...area, row: area.row + down, rows: Math.min(deep, area.rows - down) });
  }
  return blocks;
}

/** A sheet's used part, block by block; none where it is empty or missing. */
export async function readSheet(book: Workbook, sheet: string): Promise<readonly Block[]> {
  const used = await book.used(sheet);
  const blocks: Block[] = [];
  for (const area of used === undefined ? [] : blocksOf(used)) blocks.push(...(await book.read([area])));
  return blocks;
}

const oneFrom = (block: Block | undefined, { row, column }: Address): CellValue =>
  block?.values[row - block.area.row]?.[column - block.area.column] ?? null;

/** An area's values out of a sheet's blocks; what lies outside its used part is blank. */
export function valuesFrom(blocks: readonly Block[], area: Area): ValueMatrix {
  if (blocks.length === 1 && area.rows === 1 && area.columns === 1) return [[oneFrom(blocks[0], area)]];
  const rows: CellValue[][] = [];
  for (let row = area.row; row < area.row + area.rows; row++) {
    const block = blocks.find((held) => row >= held.area.row && row < held.area.row + held.area.rows);
    const line = block?.values[row - block.area.row];
    const cells: CellValue[] = [];
    for (let at = 0; at < area.columns; at++) cells.push(line?.[area.column + at - (block?.area.column ?? 0)] ?? null);
    rows.push(cells);
  }
  return rows;
}

/** Areas by reference: plain cells are worked out here, the host is asked for names, tables and spills. */
async function areasOf(
  book: Workbook,
  wanted: readonly ReferenceText[],
  pause: (() => Promise<void> | undefined) | undefined,
): Promise<ReadonlyMap<string, Area>> {
  const areas = new Map<string, Area>();
  const asked = new Map<string, ReferenceText>();
  const elsewhere: { key: string; sheet: string; area: Omit<Area, "sheet"> }[] = [];
  for (const reference of wanted) {
    const waiting = pause?.();
    if (waiting !== undefined) await waiting;
    const key = keyOf(reference.text, reference.from);
    if (areas.has(key) || asked.has(key)) continue;
    const meaning = parseReference(reference.text);
    if (meaning === undefined) continue;
    if (meaning.kind !== "cells" || meaning.spill) asked.set(key, reference);
    else if (meaning.sheet === undefined) areas.set(key, { sheet: reference.from.sheet, ...meaning.area });
    else elsewhere.push({ key, sheet: meaning.sheet, area: meaning.area });
  }
  if (elsewhere.length > 0) {
    const names = new Map((await book.sheets()).map(({ name }) => [name.toLowerCase(), name]));
    for (const { key, sheet, area } of elsewhere) {
      const name = names.get(sheet.toLowerCase());
      if (name !== undefined) areas.set(key, { sheet: name, ...area });
    }
  }
  const keys = [...asked.keys()];
  const found = asked.size === 0 ? [] : await book.resolve([...asked.values()]);
  found.forEach((area, at) => area !== undefined && areas.set(keys[at] ?? "", area));
  return areas;
}

/** The values of areas that no held sheet has, by key; a sheet with many of them is read whole into `held`. */
async function valuesOf(book: Workbook, areas: Iterable<Area>, held: Map<string, readonly Block[]>) {
  const bySheet = new Map<string, Map<string, Area>>();
  for (const area of areas) {
    if (held.has(area.sheet) || cellsOf(area) > MOST_CELLS_READ) continue;
    const here = bySheet.get(area.sheet) ?? new Map<string, Area>();
    bySheet.set(area.sheet, here.set(areaKey(area), area));
  }
  const single: Area[] = [];
  for (const [sheet, here] of bySheet) {
    const used = here.size > MANY_AREAS ? await book.used(sheet) : undefined;
    if (used !== undefined && cellsOf(used) <= LARGEST_SHEET) held.set(sheet, await readSheet(book, sheet));
    else single.push(...here.values());
  }
  const values = new Map<string, ValueMatrix>();
  const blocks = single.length === 0 ? [] : await book.read(single);
  blocks.forEach((block, at) => single[at] !== undefined && values.set(areaKey(single[at]), block.values));
  return values;
}

/** The cell of `area` in the row or column of `from`: what a leading @ picks. */
function crossing(area: Area, from: Address): Area | undefined {
  const inRow = from.row >= area.row && from.row < area.row + area.rows;
  const inColumn = from.column >= area.column && from.column < area.column + area.columns;
  const row = area.rows === 1 ? area.row : inRow ? from.row : undefined;
  const column = area.columns === 1 ? area.column : inColumn ? from.column : undefined;
  return row === undefined || column === undefined
    ? undefined
    : { sheet: area.sheet, row, column, rows: 1, columns: 1 };
}

/** Resolves references and reads their cells; `known` sheets are not read again; `pause` comes between references. */
export async function resolveAll(
  book: Workbook,
  wanted: readonly ReferenceText[],
  known: HeldSheets = new Map(),
  pause?: () => Promise<void> | undefined,
): Promise<Resolved> {
  const areas = await areasOf(book, wanted, pause);
  const held = new Map(known);
  const values = await valuesOf(book, areas.values(), held);
  const areaAt = (text: string, from: Address): Area | undefined => areas.get(keyOf(text, from));
  const cells = (area: Area): ValueMatrix | undefined => {
    const blocks = held.get(area.sheet);
    return blocks === undefined ? values.get(areaKey(area)) : valuesFrom(blocks, area);
  };
  return {
    read(text, from) {
      const area = areaAt(text, from);
      if (area === undefined) return UNREADABLE;
      return cellsOf(area) > MOST_CELLS_READ ? tooLarge(area) : (cells(area) ?? UNREADABLE);
    },
    meet(text, from) {
      const area = areaAt(text, from);
      if (area === undefined) return UNREADABLE;
      const one = crossing(area, from);
      if (one === undefined) return fault("#VALUE!");
      const whole = held.has(area.sheet) ? undefined : values.get(areaKey(area));
      const cell = whole?.[one.row - area.row]?.[one.column - area.column];
      return cell === undefined ? (cells(one)?.[0]?.[0] ?? (held.has(area.sheet) ? null : UNREADABLE)) : cell;
    },
  };
}

const tooLarge = (area: Area): Answer =>
  unread(
    `is a range of ${cellsOf(area).toLocaleString("en-US")} cells: at most ${MOST_CELLS_READ.toLocaleString("en-US")} can be read`,
  );
