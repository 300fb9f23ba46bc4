/** What the preview's tests share: the engine with the functions of the fixture, and reading results by address. */
import { join } from "node:path";
import { emptySheet } from "../../src/preview/file/bookData";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import type { CellValue } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";

export const FIXTURE = join(import.meta.dirname, "fixture");

export const fixtureSet = () => loadFunctions(FIXTURE);

export const SHEET = "Sheet1";

export const newBook = (): SheetBook => startHeadless(fixtureSet(), { sheets: [emptySheet(SHEET)], names: [] });

const cellsOf = (address: string) => {
  const area = parseCells(address);
  if (area === undefined) throw new Error(`${address} is no address`);
  return { sheet: SHEET, ...area };
};

/** Writes cells by address and waits until they are calculated. */
export const put = async (book: SheetBook, cells: Readonly<Record<string, string | number | boolean | null>>) => {
  book.write(Object.entries(cells).map(([address, content]) => ({ ...cellsOf(address), content })));
  await book.whenCalculated();
};

export const valuesAt = (book: SheetBook, address: string): readonly (readonly CellValue[])[] =>
  book.read(cellsOf(address)).values;

export const valueAt = (book: SheetBook, address: string): CellValue => valuesAt(book, address)[0]?.[0] ?? null;

export const placeOf = (address: string) => cellsOf(address);
