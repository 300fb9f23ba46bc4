/** Formulas that are typed into an opened file's workbook with its tables and the names of single sheets. */
import { strFromU8, unzipSync } from "fflate";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { WorkbookFile } from "../../src/preview/file/workbookFile";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { isCellFault } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { fullBook } from "../workbook/package/fullBook";
import { zipOf } from "../workbook/package/zipParts";
import { fileOf } from "./files";
import { newBook } from "./support";

let book: SheetBook;
let file: WorkbookFile;
beforeEach(async () => {
  book = newBook();
  file = fileOf(book);
  await file.open(zipOf(fullBook()));
});
afterEach(() => book.dispose());

const area = (sheet: string, address: string) => ({ sheet, ...parseCells(address)! });

async function typed(sheet: string, address: string, formula: string): Promise<unknown> {
  book.write([{ ...area(sheet, address), content: formula }]);
  await book.whenCalculated();
  const value = book.read(area(sheet, address)).values[0]?.[0] ?? null;
  return isCellFault(value) ? value.code : value;
}

const prices = (): readonly unknown[] => book.read(area("Prices", "B2:B3")).values.map(([value]) => value);
const sum = (): number => prices().reduce<number>((all, value) => all + Number(value), 0);

test("a table's column is calculated, and saved as it was typed", async () => {
  expect(await typed("Loop", "H2", "=SUM(Price_list[Price])")).toBe(sum());
  const parts = unzipSync(await file.savedBytes());
  expect(strFromU8(parts["xl/worksheets/sheet2.xml"]!)).toContain("<f>SUM(Price_list[Price])</f>");
});

test("a table's cell of the row and its head are read", async () => {
  expect(await typed("Prices", "D3", "=Price_list[@Price]*2")).toBe(Number(prices()[1]) * 2);
  expect(await typed("Prices", "D4", "=Price_list[[#Headers],[Price]]")).toBe("Price");
});

test("a name of one sheet is read there, and elsewhere with its sheet", async () => {
  expect(await typed("Prices", "E2", "=Local*10")).toBe(Number(prices()[0]) * 10);
  expect(await typed("Loop", "H3", "=Prices!Local+1")).toBe(Number(prices()[0]) + 1);
});

test("a change of the table's cells reaches what was typed, undone and done again", async () => {
  await typed("Loop", "H2", "=SUM(Price_list[Price])");
  await typed("Prices", "B2", "=100");
  const read = (): unknown => book.read(area("Loop", "H2")).values[0]?.[0];
  expect(read()).toBe(sum());
  book.undo();
  await book.whenCalculated();
  expect(read()).toBe(sum());
});
