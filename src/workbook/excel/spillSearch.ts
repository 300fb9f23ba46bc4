/**
 * Finds out which of many cells may have a spill. Most formulas have none, and Excel says so of a whole area at once; only
 * cells of an area that holds a spill are then asked one by one.
 */
import type { Address } from "../port";
import { boxesOf, type Box } from "./dress";
import { inPortions } from "./portions";
import { RANGE_COST } from "./ranges";
import { brief, reading, supports } from "./run";

/** Fewer cells than this are asked one by one at once. */
const MANY = 20;

/** One area holds at most so many cells: a spill in it makes each of them asked. */
const LARGEST = 256;

type SheetBox = Box & { readonly sheet: string };

const cellKey = ({ sheet, row, column }: Address): string => `${String(row)},${String(column)},${sheet.toLowerCase()}`;

function cut(sheet: string, { row, column, rows, columns }: Box): readonly SheetBox[] {
  const deep = Math.max(1, Math.floor(LARGEST / columns));
  const count = Math.ceil(rows / deep);
  return Array.from({ length: count }, (_, at) => {
    const down = at * deep;
    return { sheet, row: row + down, column, rows: Math.min(deep, rows - down), columns };
  });
}

function areasAround(cells: readonly Address[]): readonly SheetBox[] {
  const bySheet = new Map<string, Map<string, Address>>();
  for (const cell of cells) {
    const here = bySheet.get(cell.sheet) ?? new Map<string, Address>();
    bySheet.set(cell.sheet, here.set(cellKey(cell), cell));
  }
  return [...bySheet].flatMap(([sheet, here]) => boxesOf([...here.values()]).flatMap((box) => cut(sheet, box)));
}

/** Those of the areas that hold a cell of a spill; an area of a sheet that isn't there holds none. */
const withSpill = (areas: readonly SheetBox[]): Promise<readonly SheetBox[]> =>
  reading(async (context) => {
    const sheets = new Map(
      areas.map(({ sheet }) => [sheet, context.workbook.worksheets.getItemOrNullObject(sheet)] as const),
    );
    for (const worksheet of sheets.values()) worksheet.load("name");
    await context.sync();
    const asked = areas.flatMap((area) => {
      const worksheet = sheets.get(area.sheet);
      if (worksheet === undefined || worksheet.isNullObject) return [];
      const range = brief(worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns));
      return [{ area, range: range.load("hasSpill") }];
    });
    await context.sync();
    // One range: true, false, or null where its cells differ.
    return asked.filter(({ range }) => (range.hasSpill as boolean | null) !== false).map(({ area }) => area);
  });

/** Whether a cell may have a spill, after asking for all of them. */
export async function spillSearch(cells: readonly Address[]): Promise<(cell: Address) => boolean> {
  if (!supports("1.12")) return () => false;
  if (cells.length < MANY) return () => true;
  const found = await inPortions(areasAround(cells), { cost: () => RANGE_COST, run: withSpill });
  const open = new Set(
    found.flatMap(({ sheet, row, column, rows, columns }) =>
      Array.from({ length: rows * columns }, (_, at) =>
        cellKey({ sheet, row: row + Math.floor(at / columns), column: column + (at % columns) }),
      ),
    ),
  );
  return (cell) => open.has(cellKey(cell));
}
