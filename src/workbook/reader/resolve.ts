/** Fetches the cells that formulas refer to, for many formulas at once, in a few round trips. */
import type { Address, Area, Block, ReferenceText, BookReader } from "../port";
import type { ValueMatrix } from "../values";
import { fault, unsupported, UNSUPPORTED } from "./operators";
import type { Operand } from "./operators";
import { parseCells, parseReference } from "./reference";
import { cellsOf, readSheet, valuesFrom } from "./sheets";
import type { HeldSheets } from "./sheets";

/** No argument of ours may have more. */
export const MOST_CELLS_READ = 40_000;
/** With more areas than this on one sheet, reading its used part is cheaper. */
const MANY_AREAS = 100;
const LARGEST_SHEET = 500_000;

/** Answers references once they are loaded. */
export interface Resolved {
  read(text: string, from: Address): Operand;
  /** The cell of an area in the row or column of `from`: the one that a leading @ picks. */
  meet(text: string, from: Address): Operand;
}

export interface References extends Resolved {
  /** Fetches the areas and values of these references, except those already loaded. */
  load(wanted: readonly ReferenceText[]): Promise<void>;
}

const areaKey = ({ sheet, row, column, rows, columns }: Area): string =>
  `${String(row)},${String(column)},${String(rows)},${String(columns)},${sheet}`;

/** A table's reference may mean another area in every cell, any other one the same on the whole sheet. */
const keyOf = (text: string, { sheet, row, column }: Address): string =>
  text.includes("[") ? `${text}\n${sheet}\n${String(row)}\n${String(column)}` : `${text}\n${sheet}`;

interface Store {
  readonly book: BookReader;
  readonly held: Map<string, readonly Block[]>;
  /** Areas by reference; undefined for one without a meaning here. */
  readonly areas: Map<string, Area | undefined>;
  /** Values of areas on sheets that aren't loaded. */
  readonly values: Map<string, ValueMatrix>;
  names: ReadonlyMap<string, string> | undefined;
}

/** The sheet of that name, spelled as in the workbook. */
async function sheetNamed(store: Store, sheet: string): Promise<string | undefined> {
  store.names ??= new Map((await store.book.sheets()).map(({ name }) => [name.toLowerCase(), name]));
  return store.names.get(sheet.toLowerCase());
}

/** Finds areas: plain cells from their text; names, tables and spills from the host. */
async function find(store: Store, wanted: readonly ReferenceText[]): Promise<readonly Area[]> {
  const { areas, held, book } = store;
  const asked = new Map<string, ReferenceText>();
  const found: Area[] = [];
  for (const reference of wanted) {
    const { text, from } = reference;
    if (held.has(from.sheet) && parseCells(text) !== undefined) continue;
    const key = keyOf(text, from);
    if (areas.has(key) || asked.has(key)) continue;
    const meaning = parseReference(text);
    if (meaning !== undefined && (meaning.kind !== "cells" || meaning.spill)) {
      asked.set(key, reference);
      continue;
    }
    const sheet = meaning?.sheet === undefined ? from.sheet : await sheetNamed(store, meaning.sheet);
    const area = meaning === undefined || sheet === undefined ? undefined : { sheet, ...meaning.area };
    areas.set(key, area);
    if (area !== undefined) found.push(area);
  }
  const keys = [...asked.keys()];
  const answers = asked.size === 0 ? [] : await book.resolve([...asked.values()]);
  answers.forEach((area, at) => areas.set(keys[at] ?? "", area));
  return [...found, ...answers.filter((area) => area !== undefined)];
}

/** Reads areas of sheets that aren't loaded; loads a sheet with many of them as a whole. */
async function fetch({ book, held, values }: Store, areas: readonly Area[]): Promise<void> {
  const bySheet = new Map<string, Map<string, Area>>();
  for (const area of areas) {
    if (held.has(area.sheet) || cellsOf(area) > MOST_CELLS_READ || values.has(areaKey(area))) continue;
    const here = bySheet.get(area.sheet) ?? new Map<string, Area>();
    bySheet.set(area.sheet, here.set(areaKey(area), area));
  }
  const single: Area[] = [];
  for (const [sheet, here] of bySheet) {
    const used = here.size > MANY_AREAS ? await book.used(sheet) : undefined;
    if (used !== undefined && cellsOf(used) <= LARGEST_SHEET) held.set(sheet, await readSheet(book, sheet));
    else single.push(...here.values());
  }
  const blocks = single.length === 0 ? [] : await book.read(single);
  blocks.forEach((block, at) => single[at] !== undefined && values.set(areaKey(single[at]), block.values));
}

function areaOf({ held, areas }: Store, text: string, from: Address): Area | undefined {
  const plain = held.has(from.sheet) ? parseCells(text) : undefined;
  return plain === undefined ? areas.get(keyOf(text, from)) : { sheet: from.sheet, ...plain };
}

function cells({ held, values }: Store, area: Area): ValueMatrix | undefined {
  const blocks = held.get(area.sheet);
  return blocks === undefined ? values.get(areaKey(area)) : valuesFrom(blocks, area);
}

/** The cell of `area` in the row or column of `from`, from the area's corner. */
function crossing(area: Area, from: Address): { readonly down: number; readonly over: number } | undefined {
  const down = area.rows === 1 ? 0 : from.row - area.row;
  const over = area.columns === 1 ? 0 : from.column - area.column;
  const inside = down >= 0 && down < area.rows && over >= 0 && over < area.columns;
  const one = area.rows === 1 || area.columns === 1;
  return inside && one ? { down, over } : undefined;
}

/** A store of the areas and values of references; `known` sheets aren't read again. */
export function resolveFormulaReferences(book: BookReader, known: HeldSheets = new Map()): References {
  const store: Store = { book, held: new Map(known), areas: new Map(), values: new Map(), names: undefined };
  const read = (area: Area | undefined): Operand => {
    if (area === undefined) return UNSUPPORTED;
    return cellsOf(area) > MOST_CELLS_READ ? tooLarge(area) : (cells(store, area) ?? UNSUPPORTED);
  };
  return {
    load: async (wanted) => fetch(store, await find(store, wanted)),
    read: (text, from) => read(areaOf(store, text, from)),
    meet(text, from) {
      const area = areaOf(store, text, from);
      const at = area && crossing(area, from);
      if (area === undefined) return UNSUPPORTED;
      if (at === undefined) return fault("#VALUE!");
      if (!store.held.has(area.sheet)) return cells(store, area)?.[at.down]?.[at.over] ?? null;
      return read({ sheet: area.sheet, row: area.row + at.down, column: area.column + at.over, rows: 1, columns: 1 });
    },
  };
}

function tooLarge(area: Area): Operand {
  const [size, most] = [cellsOf(area), MOST_CELLS_READ].map((count) => count.toLocaleString("en-US"));
  return unsupported(`is a range of ${String(size)} cells: at most ${String(most)} can be read`);
}
