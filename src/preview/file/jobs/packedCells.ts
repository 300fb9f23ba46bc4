/** Cells of the page as columns, in which one thread hands them to another. */
import { textAt, textColumn, valueAt, valueColumn, type TextColumn, type ValueColumn } from "../../../workbook/columns";
import type { CellData, CellStyle, PlainValue, SheetData } from "../bookData";

/** What few cells have, or what many share. */
type OtherParts = Pick<CellData, "validation" | "state" | "spill" | "source" | "kept">;

export interface PackedCells {
  readonly rows: Uint32Array;
  readonly columns: Uint16Array;
  readonly values: ValueColumn;
  /** "" where there is none. */
  readonly formulas: TextColumn;
  /** Places in the lists, from 1 on; 0 where the cell has none. */
  readonly looks: Uint32Array;
  readonly formats: Uint32Array;
  readonly lookList: readonly CellStyle[];
  readonly formatList: readonly string[];
  /** By the cell's number. */
  readonly others: ReadonlyMap<number, OtherParts>;
}

export type PackedSheet = Omit<SheetData, "cells"> & { readonly cells: PackedCells };

type Writable<T> = { -readonly [K in keyof T]: T[K] };

type Pause = () => Promise<void> | undefined;

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
  const [looks, formats] = [new Uint32Array(count), new Uint32Array(count)];
  const others = new Map<number, OtherParts>();
  const lookList = sharedList<CellStyle>((look) => JSON.stringify(look));
  const formatList = sharedList<string>((format) => format);
  for (const [at, cell] of cells.entries()) {
    const wait = pause();
    if (wait !== undefined) await wait;
    looks[at] = lookList.placeOf(cell.look);
    formats[at] = formatList.placeOf(cell.format);
    const parts = otherParts(cell);
    if (parts !== undefined) others.set(at, parts);
  }
  return {
    rows: Uint32Array.from(cells, ({ row }) => row),
    columns: Uint16Array.from(cells, ({ column }) => column),
    values: valueColumn(cells.map(({ value }) => value)),
    formulas: textColumn(cells.map(({ formula = "" }) => formula)),
    ...{ looks, formats, others },
    lookList: lookList.list,
    formatList: formatList.list,
  };
}

export async function unpackCells(packed: PackedCells, pause: Pause): Promise<readonly CellData[]> {
  const { rows, columns, values, formulas, looks, formats, lookList, formatList, others } = packed;
  const cells: CellData[] = [];
  const count = rows.length;
  for (let at = 0; at < count; at++) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const formula = textAt(formulas, at);
    const look = lookList[(looks[at] ?? 0) - 1];
    const format = formatList[(formats[at] ?? 0) - 1];
    // The page keeps errors as texts.
    const value = valueAt(values, at) as PlainValue | null;
    const cell: Writable<CellData> = { row: rows[at] ?? 0, column: columns[at] ?? 0, value };
    if (formula !== "") cell.formula = formula;
    if (look !== undefined) cell.look = look;
    if (format !== undefined) cell.format = format;
    const parts = others.get(at);
    cells.push(parts === undefined ? cell : { ...cell, ...parts });
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
