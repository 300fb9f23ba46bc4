/** Cells as columns of numbers and one text: threads hand these over many times as fast as an object a cell. */
import type { CellData, CellStyle, PlainValue, SheetData } from "../bookData";

/** What few cells have, or what many share. */
type OtherParts = Pick<CellData, "validation" | "state" | "spill" | "source" | "kept">;

export interface PackedCells {
  readonly rows: Uint32Array;
  readonly columns: Uint16Array;
  /** KINDS of the value, and HAS_FORMULA. */
  readonly kinds: Uint8Array;
  readonly numbers: Float64Array;
  /** Every cell's formula, then its value where that is a text, one after the other. */
  readonly texts: string;
  /** The length of each of them. */
  readonly lengths: Uint32Array;
  /** Places in the lists, from 1 on; 0 where the cell has none. */
  readonly looks: Uint32Array;
  readonly formats: Uint32Array;
  readonly lookList: readonly CellStyle[];
  readonly formatList: readonly string[];
  /** By the cell's number. */
  readonly others: ReadonlyMap<number, OtherParts>;
}

export type PackedSheet = Omit<SheetData, "cells"> & { readonly cells: PackedCells };

type Pause = () => Promise<void> | undefined;

const NO_VALUE = 0;
const NUMBER = 1;
const TEXT = 2;
const FALSE = 3;
const TRUE = 4;
const KINDS = 7;
const HAS_FORMULA = 8;

function kindOf(value: PlainValue | null): number {
  if (value === null) return NO_VALUE;
  if (typeof value === "number") return NUMBER;
  if (typeof value === "string") return TEXT;
  return value ? TRUE : FALSE;
}

/** A list of what is equal once, and the place of each in it, from 1 on. */
function sharedList<T>(keyOf: (item: T) => string) {
  const list: T[] = [];
  const same = new Map<T, number>();
  const equal = new Map<string, number>();
  return {
    list,
    placeOf(item: T | undefined): number {
      if (item === undefined) return 0;
      const known = same.get(item);
      if (known !== undefined) return known;
      const key = keyOf(item);
      const place = equal.get(key) ?? list.push(item);
      equal.set(key, place);
      same.set(item, place);
      return place;
    },
  };
}

function otherParts({ validation, state, spill, source, kept }: CellData): OtherParts | undefined {
  if ((validation ?? state ?? spill ?? source ?? kept) === undefined) return undefined;
  return {
    ...(validation !== undefined && { validation }),
    ...(state !== undefined && { state }),
    ...(spill !== undefined && { spill }),
    ...(source !== undefined && { source }),
    ...(kept !== undefined && { kept }),
  };
}

export async function packCells(cells: readonly CellData[], pause: Pause): Promise<PackedCells> {
  const count = cells.length;
  const [rows, columns, kinds] = [new Uint32Array(count), new Uint16Array(count), new Uint8Array(count)];
  const [numbers, looks, formats] = [new Float64Array(count), new Uint32Array(count), new Uint32Array(count)];
  const texts: string[] = [];
  const others = new Map<number, OtherParts>();
  const lookList = sharedList<CellStyle>((look) => JSON.stringify(look));
  const formatList = sharedList<string>((format) => format);
  for (const [at, cell] of cells.entries()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const { row, column, value, formula, format, look } = cell;
    rows[at] = row;
    columns[at] = column;
    kinds[at] = kindOf(value) + (formula === undefined ? 0 : HAS_FORMULA);
    if (formula !== undefined) texts.push(formula);
    if (typeof value === "number") numbers[at] = value;
    else if (typeof value === "string") texts.push(value);
    looks[at] = lookList.placeOf(look);
    formats[at] = formatList.placeOf(format);
    const parts = otherParts(cell);
    if (parts !== undefined) others.set(at, parts);
  }
  return {
    ...{ rows, columns, kinds, numbers, looks, formats, others },
    texts: texts.join(""),
    lengths: Uint32Array.from(texts, ({ length }) => length),
    lookList: lookList.list,
    formatList: formatList.list,
  };
}

export async function unpackCells(packed: PackedCells, pause: Pause): Promise<readonly CellData[]> {
  const { rows, columns, kinds, numbers, texts, lengths, looks, formats, lookList, formatList, others } = packed;
  const cells: CellData[] = [];
  let text = 0;
  let from = 0;
  const nextText = (): string => texts.slice(from, (from += lengths[text++] ?? 0));
  for (const [at, row] of rows.entries()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const all = kinds[at] ?? 0;
    const formula = all >= HAS_FORMULA ? nextText() : undefined;
    const kind = all & KINDS;
    const value =
      kind === NUMBER ? (numbers[at] ?? 0) : kind === TEXT ? nextText() : kind === NO_VALUE ? null : kind === TRUE;
    const look = lookList[(looks[at] ?? 0) - 1];
    const format = formatList[(formats[at] ?? 0) - 1];
    cells.push({
      row,
      column: columns[at] ?? 0,
      value,
      ...(formula !== undefined && { formula }),
      ...(look !== undefined && { look }),
      ...(format !== undefined && { format }),
      ...others.get(at),
    });
  }
  return cells;
}

export async function packSheets(sheets: readonly SheetData[], pause: Pause): Promise<readonly PackedSheet[]> {
  const packed: PackedSheet[] = [];
  for (const sheet of sheets) packed.push({ ...sheet, cells: await packCells(sheet.cells, pause) });
  return packed;
}

export async function unpackSheets(sheets: readonly PackedSheet[], pause: Pause): Promise<readonly SheetData[]> {
  const unpacked: SheetData[] = [];
  for (const sheet of sheets) unpacked.push({ ...sheet, cells: await unpackCells(sheet.cells, pause) });
  return unpacked;
}
