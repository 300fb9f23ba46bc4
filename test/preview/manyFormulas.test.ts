/** Calculations of many formulas: in slices, one after the other, and reading each formula once. */
import { afterEach, beforeEach, expect, test } from "vitest";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { emptySheet, type SheetData } from "../../src/preview/file/bookData";
import { columnLetters } from "../../src/workbook/reader/reference";
import { newBook, SHEET } from "./support";

const ROWS = 400;

/** Each row adds 1 from left to right, starting from the row above. */
const chain = (columns: number): SheetData => ({
  ...emptySheet(SHEET),
  cells: Array.from({ length: ROWS * columns }, (_, at) => {
    const [row, column] = [Math.floor(at / columns), at % columns];
    const before = column === 0 ? `A${row}` : `${columnLetters(column - 1)}${row + 1}`;
    return at === 0 ? { row, column, value: 1 } : { row, column, value: null, formula: `=${before}+1` };
  }),
});

let book: SheetBook;
beforeEach(() => (book = newBook()));
afterEach(() => book.dispose());

const valueAt = (row: number, column: number): unknown =>
  book.read({ sheet: SHEET, row, column, rows: 1, columns: 1 }).values[0]?.[0];

const write = (row: number, column: number, content: string | number): void =>
  book.write([{ sheet: SHEET, row, column, content }]);

test("changes made while a calculation lists its formulas are calculated after it", async () => {
  book.load({ sheets: [chain(20)], names: [] });
  await new Promise((resolve) => setTimeout(resolve, 130));
  write(0, 0, 11);
  await new Promise((resolve) => setTimeout(resolve, 110));
  write(0, 25, "=T1*2");
  await book.whenCalculated();
  expect([valueAt(0, 19), valueAt(ROWS - 1, 0), valueAt(0, 25)]).toEqual([30, ROWS - 1 + 11, 60]);
});

test("a formula that is changed, emptied and written again follows its new inputs each time", async () => {
  book.load({ sheets: [chain(3)], names: [] });
  await book.whenCalculated();
  write(0, 2, "=A1*100");
  await book.whenCalculated();
  write(0, 1, 7);
  await book.whenCalculated();
  expect(valueAt(0, 2)).toBe(100);
  write(0, 0, 3);
  await book.whenCalculated();
  expect([valueAt(0, 1), valueAt(0, 2), valueAt(2, 2)]).toEqual([7, 300, 7]);
  book.write([{ sheet: SHEET, row: 0, column: 2, content: null }]);
  await book.whenCalculated();
  write(0, 2, "=B1+1");
  await book.whenCalculated();
  expect(valueAt(0, 2)).toBe(8);
});

test("volatile functions and references made of values follow every change", async () => {
  book.load({ sheets: [chain(3)], names: [] });
  await book.whenCalculated();
  book.write([
    { sheet: SHEET, row: 0, column: 5, content: '=INDIRECT("B1")' },
    { sheet: SHEET, row: 1, column: 5, content: "=OFFSET(A1,0,1)" },
    { sheet: SHEET, row: 2, column: 5, content: "=F1+F2+0*NOW()" },
  ]);
  await book.whenCalculated();
  write(0, 0, 9);
  await book.whenCalculated();
  expect([valueAt(0, 5), valueAt(1, 5), valueAt(2, 5)]).toEqual([10, 10, 20]);
});
