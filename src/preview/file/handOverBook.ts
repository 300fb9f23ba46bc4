import type { CellValue, HandOverCopy, ValueArea } from "../../workbook/port";
import { isCellFault } from "../../workbook/port";
import { freeName } from "../../workbook/starterCells";
import type { BookData, CellData, PlainValue, SheetData } from "./bookData";
import { starterData } from "./starterBook";

/** A hand-over copy as a workbook of its own: looks, widths, formats and print set-up stay. */

const plain = (value: CellValue): PlainValue | null => (isCellFault(value) ? value.code : value);

const key = (row: number, column: number): string => `${row},${column}`;

/** The values by place. */
const valuesOf = (areas: readonly ValueArea[]): ReadonlyMap<string, PlainValue | null> =>
  new Map(
    areas.flatMap(({ row, column, values }) =>
      values.flatMap((line, down) =>
        line.map((value, over) => [key(row + down, column + over), plain(value)] as const),
      ),
    ),
  );

const placeOf = (text: string): { readonly row: number; readonly column: number } => {
  const [row = 0, column = 0] = text.split(",").map(Number);
  return { row, column };
};

const valued = (cell: CellData, value: PlainValue | null): CellData => {
  const { row, column, format, look, validation } = cell;
  return {
    row,
    column,
    value,
    ...(format !== undefined && { format }),
    ...(look !== undefined && { look }),
    ...(validation !== undefined && { validation }),
  };
};

const handedSheet = (sheet: SheetData, areas: readonly ValueArea[]): SheetData => {
  const values = valuesOf(areas);
  const there = new Set(sheet.cells.map(({ row, column }) => key(row, column)));
  const cells = sheet.cells.map((cell) => {
    const value = values.get(key(cell.row, cell.column));
    return value === undefined ? cell : valued(cell, value);
  });
  const spilled = [...values].flatMap(([place, value]) =>
    there.has(place) || value === null ? [] : [{ ...placeOf(place), value }],
  );
  return { ...sheet, cells: [...cells, ...spilled] };
};

/** The workbook with its values and its record; the record is its last sheet. */
export const handOverBook = (book: BookData, { sheets, record }: HandOverCopy): BookData => {
  const areas = new Map(sheets.map((one) => [one.sheet, one.areas]));
  const title = freeName(
    record.name,
    book.sheets.map(({ name }) => name),
  );
  return {
    ...book,
    sheets: [
      ...book.sheets.map((sheet) => handedSheet(sheet, areas.get(sheet.name) ?? [])),
      starterData(record, title, new Set()).sheet,
    ],
  };
};
