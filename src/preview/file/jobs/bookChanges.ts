/** What the page changed in an opened workbook, for a thread that has the workbook as it was opened. */
import { placeNumber } from "../../../workbook/columns";
import type { BookData, CellData, NameData, SheetData } from "../bookData";
import type { ShownValue } from "../differences";
import { packCells, packSheets, unpackCells, unpackSheets, type PackedCells, type PackedSheet } from "./packedCells";

interface SheetChanges {
  readonly name: string;
  /** Cells that are new or show something else: without looks and rules, which saving leaves as they are. */
  readonly cells: PackedCells;
  /** Cells that are gone, as places. */
  readonly gone: Float64Array;
}

export interface BookChanges {
  readonly sheets: readonly SheetChanges[];
  /** Sheets that the page added. */
  readonly added: readonly PackedSheet[];
  readonly names: readonly NameData[];
}

type Pause = () => Promise<void> | undefined;

const placeOf = ({ row, column }: CellData): number => placeNumber(row, column);

function sameShown(a: ShownValue | undefined, b: ShownValue | undefined): boolean {
  if (!Array.isArray(a) || !Array.isArray(b)) return a === b;
  return JSON.stringify(a) === JSON.stringify(b);
}

const isSame = (a: CellData, b: CellData): boolean =>
  a.value === b.value &&
  a.formula === b.formula &&
  a.format === b.format &&
  a.kept?.formula === b.kept?.formula &&
  sameShown(a.spill, b.spill);

/** What saving an opened file looks at. */
function savedParts({ row, column, value, formula, source, format, spill, kept }: CellData): CellData {
  return {
    ...{ row, column, value },
    ...(formula !== undefined && { formula }),
    ...(source !== undefined && { source }),
    ...(format !== undefined && { format }),
    ...(spill !== undefined && { spill }),
    ...(kept !== undefined && { kept }),
  };
}

async function sheetChanges(before: SheetData, now: SheetData, pause: Pause): Promise<SheetChanges> {
  const old = new Map<number, CellData>();
  for (const cell of before.cells) {
    const wait = pause();
    if (wait !== undefined) await wait;
    old.set(placeOf(cell), cell);
  }
  const changed: CellData[] = [];
  for (const cell of now.cells) {
    const wait = pause();
    if (wait !== undefined) await wait;
    const place = placeOf(cell);
    const known = old.get(place);
    old.delete(place);
    if (known === undefined || !isSame(known, cell)) changed.push(savedParts(cell));
  }
  return { name: now.name, cells: await packCells(changed, pause), gone: Float64Array.from(old.keys()) };
}

export async function bookChanges(before: BookData, now: BookData, pause: Pause): Promise<BookChanges> {
  const opened = new Map(before.sheets.map((sheet) => [sheet.name, sheet] as const));
  const sheets: SheetChanges[] = [];
  const added: SheetData[] = [];
  for (const sheet of now.sheets) {
    const old = opened.get(sheet.name);
    if (old === undefined) added.push(sheet);
    else sheets.push(await sheetChanges(old, sheet, pause));
  }
  return { sheets, added: await packSheets(added, pause), names: now.names };
}

/** The workbook of the page, as far as saving looks at it. */
export async function changedBook(
  before: BookData,
  { sheets, added, names }: BookChanges,
  pause: Pause,
): Promise<BookData> {
  const opened = new Map(before.sheets.map((sheet) => [sheet.name, sheet] as const));
  const now: SheetData[] = [];
  for (const { name, cells, gone } of sheets) {
    const old = opened.get(name);
    if (old === undefined) throw new Error(`the file has no sheet ${JSON.stringify(name)}`);
    const changed = new Map((await unpackCells(cells, pause)).map((cell) => [placeOf(cell), cell] as const));
    const left = new Set(gone);
    const kept: CellData[] = [];
    for (const cell of old.cells) {
      const wait = pause();
      if (wait !== undefined) await wait;
      const place = placeOf(cell);
      if (left.has(place)) continue;
      kept.push(changed.get(place) ?? cell);
      changed.delete(place);
    }
    now.push({ ...old, cells: [...kept, ...changed.values()] });
  }
  return { sheets: [...now, ...(await unpackSheets(added, pause))], names };
}
