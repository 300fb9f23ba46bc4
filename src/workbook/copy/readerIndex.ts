/** Finds the formulas that refer to an area. Each formula is found once: the work grows with the formulas, not their square. */
import { placeNumber } from "../columns";
import type { Area } from "../port";
import { MOST_COLUMNS } from "../reader/reference";
import type { NextSlice } from "../timeSlices";

/** Areas up to this size are listed cell by cell. */
const FEW_CELLS = 32;

interface LargeArea {
  readonly area: Area;
  readonly readers: number[];
}

interface SheetReaders {
  /** Formulas by the single cells that they refer to. */
  readonly cells: Map<number, number[]>;
  /** Formulas by the larger areas that they refer to. */
  large: LargeArea[];
  readonly largeByText: Map<string, LargeArea>;
}

export interface ReaderIndex {
  /** Formulas that refer to a cell of the area and weren't found before. */
  take(area: Area): readonly number[];
}

const overlap = (a: Area, b: Area): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

function addLarge(sheet: SheetReaders, area: Area, reader: number): void {
  const text = [area.row, area.column, area.rows, area.columns].join(",");
  const known = sheet.largeByText.get(text);
  if (known !== undefined) {
    known.readers.push(reader);
    return;
  }
  const entry = { area, readers: [reader] };
  sheet.largeByText.set(text, entry);
  sheet.large.push(entry);
}

function addCells({ cells }: SheetReaders, { row, column, rows, columns }: Area, reader: number): void {
  for (let down = 0; down < rows; down++)
    for (let over = 0; over < columns; over++) {
      const key = placeNumber(row + down, column + over);
      const readers = cells.get(key);
      if (readers === undefined) cells.set(key, [reader]);
      else readers.push(reader);
    }
}

function takeCell({ cells }: SheetReaders, key: number, found: number[]): void {
  const readers = cells.get(key);
  if (readers === undefined) return;
  for (const reader of readers) found.push(reader);
  cells.delete(key);
}

function takeCells(sheet: SheetReaders, area: Area, found: number[]): void {
  const { cells } = sheet;
  if (area.rows * area.columns > cells.size) {
    for (const key of [...cells.keys()]) {
      const place = { row: Math.floor(key / MOST_COLUMNS), column: key % MOST_COLUMNS, rows: 1, columns: 1 };
      if (overlap({ ...place, sheet: area.sheet }, area)) takeCell(sheet, key, found);
    }
    return;
  }
  for (let down = 0; down < area.rows; down++)
    for (let over = 0; over < area.columns; over++)
      takeCell(sheet, placeNumber(area.row + down, area.column + over), found);
}

function takeLarge(sheet: SheetReaders, area: Area, found: number[]): void {
  if (!sheet.large.some((one) => overlap(one.area, area))) return;
  sheet.large = sheet.large.filter((one) => {
    if (!overlap(one.area, area)) return true;
    for (const reader of one.readers) found.push(reader);
    return false;
  });
}

/** Readers by sheet, whatever the case of its name. */
function sheetReaders() {
  const sheets = new Map<string, SheetReaders>();
  return (name: string): SheetReaders => {
    let sheet = sheets.get(name);
    if (sheet !== undefined) return sheet;
    const key = name.toLowerCase();
    sheet = sheets.get(key) ?? { cells: new Map(), large: [], largeByText: new Map() };
    sheets.set(key, sheet).set(name, sheet);
    return sheet;
  };
}

/** @param reads the areas that each formula refers to; one without known areas is never found */
export async function readerIndex(
  reads: readonly (readonly Area[] | undefined)[],
  pause: NextSlice,
): Promise<ReaderIndex> {
  const sheetOf = sheetReaders();
  const taken = new Uint8Array(reads.length);
  for (let reader = 0; reader < reads.length; reader++) {
    const wait = pause();
    if (wait !== undefined) await wait;
    for (const area of reads[reader] ?? []) {
      const sheet = sheetOf(area.sheet);
      if (area.rows * area.columns <= FEW_CELLS) addCells(sheet, area, reader);
      else addLarge(sheet, area, reader);
    }
  }
  return {
    take(area) {
      const sheet = sheetOf(area.sheet);
      const found: number[] = [];
      takeCells(sheet, area, found);
      takeLarge(sheet, area, found);
      const fresh: number[] = [];
      for (const reader of found) {
        if (taken[reader] === 1) continue;
        taken[reader] = 1;
        fresh.push(reader);
      }
      return fresh;
    },
  };
}
