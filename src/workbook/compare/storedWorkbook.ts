/** A workbook file as a port that can only be read: formulas and the values that the file last showed. */
import { placeNumber, textAt, valueAt } from "../columns";
import type { Area, Block, ReferenceText, Workbook } from "../port";
import { MOST_COLUMNS, parseReference } from "../reader/reference";
import type { StoredColumns, StoredFile } from "./storedSheets";

/** A sheet with a cell further out than this is compared no more: reading it would fill the memory. */
const MOST_CELLS = 2_000_000;

interface Grid extends StoredColumns {
  /** Numbers of cells by their places. */
  readonly at: ReadonlyMap<number, number>;
}

function gridOf(sheet: StoredColumns): Grid {
  const at = new Map<number, number>();
  sheet.places.forEach((place, number) => void at.set(place, number));
  return { ...sheet, at };
}

function blockOf(grid: Grid | undefined, area: Area): Block {
  const rows = Array.from({ length: area.rows }, (_, down) =>
    Array.from({ length: area.columns }, (__, over) => grid?.at.get(placeNumber(area.row + down, area.column + over))),
  );
  return {
    area,
    formulas: rows.map((row) =>
      row.map((at) => (grid === undefined || at === undefined ? "" : textAt(grid.formulas, at))),
    ),
    values: rows.map((row) =>
      row.map((at) => (grid === undefined || at === undefined ? null : valueAt(grid.values, at))),
    ),
  };
}

function usedOf(sheet: string, grid: Grid | undefined): Area | undefined {
  let [rows, columns] = [0, 0];
  for (const place of grid?.places ?? []) {
    rows = Math.max(rows, Math.floor(place / MOST_COLUMNS) + 1);
    columns = Math.max(columns, (place % MOST_COLUMNS) + 1);
  }
  if (rows * columns > MOST_CELLS) throw new Error(`the sheet ${sheet} reaches too far to be compared`);
  return rows === 0 ? undefined : { sheet, row: 0, column: 0, rows, columns };
}

const refuse = (): Promise<never> => Promise.reject(new Error("a file that is compared isn't changed"));

interface Sheets {
  readonly file: StoredFile;
  /** By the name in lower case. */
  readonly grids: ReadonlyMap<string, Grid>;
}

function areaOf({ file, grids }: Sheets, { text, from }: ReferenceText): Area | undefined {
  const meaning = parseReference(text);
  if (meaning === undefined || meaning.kind === "table") return undefined;
  const gridNamed = (name: string): Grid | undefined => grids.get(name.toLowerCase());
  const grid = gridNamed(meaning.sheet ?? from.sheet);
  if (grid === undefined) return undefined;
  const sheet = grid.name;
  if (meaning.kind === "cells") {
    const spill = meaning.spill ? grid.spills.get(placeNumber(meaning.area.row, meaning.area.column)) : meaning.area;
    return spill && { sheet, ...spill };
  }
  const called = file.names.filter(({ name }) => name.toLowerCase() === meaning.name.toLowerCase());
  const named = called.find((one) => one.sheet === sheet) ?? called.find((one) => one.sheet === undefined);
  const target =
    named === undefined || named.formula.toLowerCase() === meaning.name.toLowerCase()
      ? undefined
      : parseReference(named.formula);
  const there = target?.kind === "cells" && !target.spill ? gridNamed(target.sheet ?? sheet)?.name : undefined;
  return target?.kind === "cells" && there !== undefined ? { sheet: there, ...target.area } : undefined;
}

export function storedWorkbook(file: StoredFile): Workbook {
  const grids = new Map(file.sheets.map((sheet) => [sheet.name.toLowerCase(), gridOf(sheet)] as const));
  const gridNamed = (name: string): Grid | undefined => grids.get(name.toLowerCase());
  return {
    host: "preview",
    sheets: async () => file.sheets.map(({ name }) => ({ name, visible: true, protected: true })),
    used: async (sheet) => usedOf(sheet, gridNamed(sheet)),
    read: async (areas) => areas.map((area) => blockOf(gridNamed(area.sheet), area)),
    resolve: async (references) => references.map((reference) => areaOf({ file, grids }, reference)),
    selection: async () => undefined,
    select: refuse,
    write: refuse,
    insert: refuse,
    documentName: refuse,
    documentBytes: refuse,
    deliverCopy: refuse,
    recalculate: refuse,
    onSelection: () => () => undefined,
    onChange: () => () => undefined,
  };
}
