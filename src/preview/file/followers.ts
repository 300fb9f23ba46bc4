/** Which formulas follow from which cells, through names, tables and any number of steps. */
import type { Address, Area } from "../../workbook/port";
import { isRefusal, tokens } from "../../workbook/reader/tokens";
import { parseReference } from "../../workbook/reader/reference";
import { areaOf } from "./address";
import type { BookData } from "./bookData";
import { cellMap, cellSet, type CellMap, type CellSet } from "./cellMap";
import type { ReadableBook } from "./readable/pass";
import { isUnread, plainMeaning } from "./readable/places";

interface FormulaAt extends Address {
  readonly text: string;
}

/** Cells that a formula is worked out from; `unclear` where it makes references out of values. */
interface Inputs {
  readonly areas: readonly Area[];
  readonly unclear: boolean;
}

const UNCLEAR = /^(?:_xlfn\.)?(?:INDIRECT|OFFSET)$/i;
/** Names that lead to names that lead on. */
const DEEPEST = 20;

/** What references mean in a workbook, for formulas of one sheet. */
interface Meanings {
  readonly known: ReadableBook;
  readonly data: BookData;
  /** Functions that are no names of the workbook: nearly all. */
  readonly functions: Set<string>;
}

function nameAreas(text: string, from: Address, meanings: Meanings, depth: number): readonly Area[] | undefined {
  const { known, data } = meanings;
  const found = parseReference(text);
  if (found?.kind !== "name" || depth > DEEPEST) return undefined;
  const meaning = known.names.meaning(found.name, found.sheet ?? from.sheet);
  if (meaning?.kind === "cells") return meaning.areas;
  const added = data.names.find(({ name }) => name.toLowerCase() === found.name.toLowerCase());
  const formula = meaning?.text ?? added?.refersTo;
  return formula === undefined ? undefined : inputsOf(formula, from, meanings, depth + 1).areas;
}

function functionAreas(text: string, from: Address, meanings: Meanings, depth: number): readonly Area[] {
  if (meanings.functions.has(text)) return [];
  const areas = nameAreas(text, from, meanings, depth);
  if (areas === undefined && depth <= DEEPEST) meanings.functions.add(text);
  return areas ?? [];
}

function referenceAreas(text: string, from: Address, meanings: Meanings, depth: number): readonly Area[] {
  const { places, book } = meanings.known;
  const bare = text.endsWith("#") ? text.slice(0, -1) : text;
  const plain = plainMeaning(bare, from, places, book.tables);
  if (plain !== undefined && !isUnread(plain)) return plain.areas;
  // Sheets that the page added are none of the file's.
  const added = areaOf(bare, from.sheet);
  return added === undefined ? (nameAreas(bare, from, meanings, depth) ?? []) : [added];
}

function inputsOf(text: string, from: Address, meanings: Meanings, depth = 0): Inputs {
  const found = tokens(text);
  if (isRefusal(found)) return { areas: [], unclear: true };
  const areas: Area[] = [];
  let unclear = false;
  for (const { kind, text: word } of found) {
    if (kind === "reference") for (const area of referenceAreas(word, from, meanings, depth)) areas.push(area);
    if (kind !== "function") continue;
    for (const area of functionAreas(word, from, meanings, depth)) areas.push(area);
    unclear ||= UNCLEAR.test(word);
  }
  return { areas, unclear };
}

/** Areas of more columns are looked through by sheet, others by column. */
const WIDE = 64;

interface AreaOfFormula {
  readonly area: Area;
  readonly formula: FormulaAt;
}

interface Index {
  readonly cells: CellMap<FormulaAt[]>;
  /** Areas of several cells, by the first row's cell in each of their columns. */
  readonly columns: CellMap<AreaOfFormula[]>;
  /** Areas of many columns, by the sheet's first cell. */
  readonly wide: CellMap<AreaOfFormula[]>;
  readonly unclear: FormulaAt[];
}

function put<T>(map: CellMap<T[]>, cell: Address, item: T): void {
  const list = map.get(cell);
  if (list === undefined) map.set(cell, [item]);
  else list.push(item);
}

function addTo(index: Index, formula: FormulaAt, { areas, unclear }: Inputs): void {
  if (unclear) index.unclear.push(formula);
  for (const area of areas) {
    const { sheet } = area;
    if (area.rows * area.columns === 1) put(index.cells, area, formula);
    else if (area.columns > WIDE) put(index.wide, { sheet, row: 0, column: 0 }, { area, formula });
    else
      for (let column = area.column; column < area.column + area.columns; column++)
        put(index.columns, { sheet, row: 0, column }, { area, formula });
  }
}

const holds = ({ row, rows, column, columns }: Area, at: Address): boolean =>
  at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;

/** Calls back with each formula that refers to a cell. */
function eachFollowing(index: Index, at: Address, call: (formula: FormulaAt) => void): void {
  const { sheet, column } = at;
  index.cells.get(at)?.forEach(call);
  for (const list of [index.columns.get({ sheet, row: 0, column }), index.wide.get({ sheet, row: 0, column: 0 })])
    for (const { area, formula } of list ?? []) if (holds(area, at)) call(formula);
}

type Pause = () => Promise<void> | undefined;

export interface Followers {
  /** The roots themselves, what their formulas fill, and every formula that follows from one of them. */
  of(roots: readonly Address[]): Promise<CellSet>;
}

/** @param data formulas as they are now; kept ones count as well */
export async function followers(
  data: BookData,
  known: ReadableBook,
  pause: Pause = () => undefined,
): Promise<Followers> {
  const index: Index = { cells: cellMap(), columns: cellMap(), wide: cellMap(), unclear: [] };
  const filled = cellMap<readonly Address[]>();
  for (const { name: sheet, cells } of data.sheets) {
    const meanings: Meanings = { known, data, functions: new Set() };
    for (const { row, column, formula, kept, spill } of cells) {
      const text = formula ?? kept?.formula;
      if (text === undefined) continue;
      const at = { sheet, row, column, text };
      addTo(index, at, inputsOf(text, at, meanings));
      if (spill !== undefined)
        filled.set(
          at,
          spill.flatMap((line, down) => line.map((_, over) => ({ sheet, row: row + down, column: column + over }))),
        );
      const wait = pause();
      if (wait !== undefined) await wait;
    }
  }
  return {
    async of(roots) {
      const waiting: Address[] = [...roots, ...(roots.length === 0 ? [] : index.unclear)];
      const found = cellSet(waiting);
      const visit = (cell: Address): void => {
        if (found.add(cell)) waiting.push(cell);
      };
      for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
        eachFollowing(index, at, visit);
        filled.get(at)?.forEach(visit);
        const wait = pause();
        if (wait !== undefined) await wait;
      }
      return found;
    },
  };
}
