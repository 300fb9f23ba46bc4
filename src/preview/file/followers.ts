/** Which formulas follow from which cells, through names, tables and any number of steps. */
import type { Address, Area } from "../../workbook/port";
import { isRefusal, tokens, type Token } from "../../workbook/reader/tokens";
import { parseReference } from "../../workbook/reader/reference";
import { areaOf } from "./address";
import type { BookData } from "./bookData";
import type { ReadableBook } from "./readable/pass";
import { isUnread, plainMeaning } from "./readable/places";

export const cellKey = ({ sheet, row, column }: Address): string => `${sheet.toLowerCase()}!${row}:${column}`;

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

function nameAreas(text: string, from: Address, known: ReadableBook, data: BookData, depth: number): readonly Area[] {
  const found = parseReference(text);
  if (found?.kind !== "name" || depth > DEEPEST) return [];
  const meaning = known.names.meaning(found.name, found.sheet ?? from.sheet);
  if (meaning?.kind === "cells") return meaning.areas;
  const added = data.names.find(({ name }) => name.toLowerCase() === found.name.toLowerCase());
  const formula = meaning?.text ?? added?.refersTo;
  return formula === undefined ? [] : inputsOf(formula, from, known, data, depth + 1).areas;
}

function inputsOf(text: string, from: Address, known: ReadableBook, data: BookData, depth = 0): Inputs {
  const found = tokens(text);
  if (isRefusal(found)) return { areas: [], unclear: true };
  const areas = found.flatMap((token: Token): readonly Area[] => {
    if (token.kind === "function") return nameAreas(token.text, from, known, data, depth);
    if (token.kind !== "reference") return [];
    const bare = token.text.replace(/#$/, "");
    const plain = plainMeaning(bare, from, known.places, known.book.tables);
    if (plain !== undefined && !isUnread(plain)) return plain.areas;
    // Sheets that the page added are none of the file's.
    const added = areaOf(bare, from.sheet);
    return added === undefined ? nameAreas(bare, from, known, data, depth) : [added];
  });
  return { areas, unclear: found.some(({ kind, text: name }) => kind === "function" && UNCLEAR.test(name)) };
}

/** Areas of more columns are looked through by sheet, others by column. */
const WIDE = 64;

interface Index {
  readonly cells: Map<string, FormulaAt[]>;
  readonly columns: Map<string, { readonly area: Area; readonly formula: FormulaAt }[]>;
  readonly unclear: FormulaAt[];
}

function put<T>(map: Map<string, T[]>, key: string, item: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [item]);
  else list.push(item);
}

function addTo(index: Index, formula: FormulaAt, { areas, unclear }: Inputs): void {
  if (unclear) index.unclear.push(formula);
  for (const area of areas) {
    const sheet = area.sheet.toLowerCase();
    if (area.rows * area.columns === 1) put(index.cells, cellKey(area), formula);
    else if (area.columns > WIDE) put(index.columns, sheet, { area, formula });
    else
      for (let column = area.column; column < area.column + area.columns; column++)
        put(index.columns, `${sheet}!${column}`, { area, formula });
  }
}

const holds = ({ row, rows, column, columns }: Area, at: Address): boolean =>
  at.row >= row && at.row < row + rows && at.column >= column && at.column < column + columns;

function following(index: Index, at: Address): readonly FormulaAt[] {
  const sheet = at.sheet.toLowerCase();
  const ranges = [index.columns.get(`${sheet}!${at.column}`) ?? [], index.columns.get(sheet) ?? []];
  return [
    ...(index.cells.get(cellKey(at)) ?? []),
    ...ranges.flatMap((list) => list.filter(({ area }) => holds(area, at)).map(({ formula }) => formula)),
  ];
}

export interface Followers {
  /** The roots themselves, what their formulas fill, and every formula that follows from one of them, by key. */
  of(roots: readonly Address[]): ReadonlySet<string>;
}

/** @param data formulas as they are now; kept ones count as well */
export async function followers(
  data: BookData,
  known: ReadableBook,
  pause: () => Promise<void> | undefined = () => undefined,
): Promise<Followers> {
  const index: Index = { cells: new Map(), columns: new Map(), unclear: [] };
  const filled = new Map<string, readonly Address[]>();
  for (const { name: sheet, cells } of data.sheets)
    for (const { row, column, formula, kept, spill } of cells) {
      const text = formula ?? kept?.formula;
      if (text === undefined) continue;
      const at = { sheet, row, column, text };
      addTo(index, at, inputsOf(text, at, known, data));
      if (spill !== undefined)
        filled.set(
          cellKey(at),
          spill.flatMap((line, down) => line.map((_, over) => ({ sheet, row: row + down, column: column + over }))),
        );
      await pause();
    }
  return {
    of(roots) {
      const found = new Set(roots.map(cellKey));
      const waiting: Address[] = [...roots, ...(roots.length === 0 ? [] : index.unclear)];
      for (const one of waiting) found.add(cellKey(one));
      for (let at = waiting.pop(); at !== undefined; at = waiting.pop())
        for (const next of [...following(index, at), ...(filled.get(cellKey(at)) ?? [])]) {
          const key = cellKey(next);
          if (found.has(key)) continue;
          found.add(key);
          waiting.push(next);
        }
      return found;
    },
  };
}
