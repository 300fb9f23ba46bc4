/** Whole columns and rows of a sheet that reaches to Excel's last cell: results, and how many cells are read for them. */
import { BaseReferenceObject } from "@univerjs/engine-formula";
import { afterEach, expect, test, vi } from "vitest";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { workbookFile } from "../../src/preview/file/workbookFile";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { plainBook, zipOf } from "../workbook/package/zipParts";
import { filesHere } from "./files";
import { fixtureSet, newBook, put, SHEET, valueAt, valuesAt } from "./support";

const [ROWS, COLUMNS] = [1_048_576, 16_384];

/** What may be read for one formula over ten used cells a line. */
const MOST_READ = 500;

afterEach(() => void vi.restoreAllMocks());

/** Counts the cells that references read. */
const readings = () => vi.spyOn(BaseReferenceObject.prototype, "getCellData");

const numbers = Object.fromEntries(
  Array.from({ length: 10 }, (_, at) => [
    [`A${at + 2}`, at + 1],
    [`B${at + 2}`, 2 * (at + 1)],
  ]).flat() as [string, number][],
);

/** A2:A11 holds 1 to 10, B2:B11 twice as much, and a text is in the last cell. */
async function longBook(): Promise<SheetBook> {
  const book = newBook();
  book.makeRoom({ sheet: SHEET, row: 0, column: 0, rows: ROWS, columns: COLUMNS });
  await put(book, { ...numbers, XFD1048576: "last" });
  return book;
}

const REFUSED = {
  code: "#NUM!",
  message: `a calculation that needs each cell of a whole column or row: at most 100,000 cells, got 1,048,576`,
};

/** Worked out by hand: sums over empty cells count all of the column's 1,048,576. */
const RESULTS: Readonly<Record<string, unknown>> = {
  "SUM(A:A)": 55,
  "SUM(-(A:A))": -55,
  "SUM(A:A*B:B)": 770,
  "SUM(A:B*{1,10})": 55 + 1_100,
  "SUMPRODUCT((A:A>1)*(A:A<9))": 7,
  "SUMPRODUCT((A:A>1)*(B:B<9)*A:A)": 2 + 3 + 4,
  'SUM(--(A:A=""))': ROWS - 10,
  "SUM(A:A+1)": 55 + ROWS,
  'COUNTIF(A:A,"")': ROWS - 10,
  "COUNTBLANK(A:C)": 3 * ROWS - 20,
  "COUNT(1/(A:A>3))": 7,
  "MAX(IF(A:A>1,A:A))": 10,
  "MIN(IF(A:A>1,A:A))": 2,
  "AVERAGE(IF(A:A>1,A:A))": 6,
  "SUM(IF(A:A>AVERAGE(A:A),1,0))": 5,
  'LOOKUP(2,1/(A:A<>""),B:B)': 20,
  "MATCH(7,A:A,0)": 8,
  "INDEX(A:A,3)": 2,
  "INDEX(B:B,MATCH(7,A:A,0))": 14,
  "XLOOKUP(7,A:A,B:B)": 14,
  "VLOOKUP(7,A:B,2,FALSE)": 14,
  'SUMIFS(B:B,A:A,">3",A:A,"<8")': 44,
  "MEDIAN(A:A)": 5.5,
  "ROWS(A:A)": ROWS,
  "LARGE(A:A,2)": 9,
  "SUM(2:3*2)": 2 * (1 + 2 + 2 + 4),
  "SUM(2:9*2)": 2 * 3 * 36,
  "SUM((2:9>0)*(2:9<4))": 3 + 1,
  "SUM(A1:A1048576*1)": 55,
  "MAX(A:A)-MIN(B:B)": 8,
  "SUM(A:A*C:C)": 0,
};

test("whole columns and rows give what all of their cells give, and their used cells are read", async () => {
  const book = await longBook();
  const read = readings();
  for (const [formula, result] of Object.entries(RESULTS)) {
    read.mockClear();
    await put(book, { L20: `=${formula}` });
    expect({ formula, value: valueAt(book, "L20") }).toEqual({ formula, value: result });
    expect({ formula, isFew: read.mock.calls.length < MOST_READ }).toEqual({ formula, isFew: true });
  }
  book.dispose();
});

test("lists out of whole columns fill their cells", async () => {
  const book = await longBook();
  await put(book, { L20: "=FILTER(A:A,A:A>8)" });
  expect(valuesAt(book, "L20:L22")).toEqual([[9], [10], [null]]);
  await put(book, { L20: "=UNIQUE(A:A)" });
  expect(valuesAt(book, "L20:L31").flat()).toEqual([null, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, null]);
  book.dispose();
});

test("a result follows a cell that is written behind the used ones", async () => {
  const book = await longBook();
  await put(book, { L20: "=SUM((A:A>1)*B:B)" });
  await put(book, { A5000: 5, B5000: 100 });
  expect(valueAt(book, "L20")).toBe(108 + 100);
  book.dispose();
});

const NEEDING_EACH_CELL = [
  ...['-(A:A)&">"', "A:A", "A:A+B:B"],
  ...["SORT(A:A)", "LARGE(A:A*1,2)", "MEDIAN(A:A*1)", "AVERAGE(-(A:A))", "INDEX(A:A*2,3)", "SUM(ROW(A:A))"],
  ...["MAX((ROW(A:A)>500000)*1)", "LET(x,A:A*2,SUM(x))", "SUM(A:A+SEQUENCE(20))", "SUM(A:A*A2:A1048576)"],
];

test("what needs each cell of a whole column is refused by rule and limit", async () => {
  const book = await longBook();
  const read = readings();
  for (const formula of NEEDING_EACH_CELL) {
    await put(book, { L1: `=${formula}` });
    expect({ formula, value: valueAt(book, "L1") }).toEqual({ formula, value: REFUSED });
  }
  expect(read.mock.calls.length).toBeLessThan(MOST_READ * NEEDING_EACH_CELL.length);
  book.dispose();
});

test("a whole column has no room below the first row", async () => {
  const book = await longBook();
  await put(book, { L2: '=-(A:A)&">"' });
  expect(valueAt(book, "L2")).toEqual({ code: "#SPILL!" });
  book.dispose();
});

test("whole columns of a short sheet are worked out as before", async () => {
  const book = newBook();
  await put(book, { ...numbers, L1: "=A:A*2", M1: "=LARGE(A:A*1,2)" });
  expect(valuesAt(book, "L1:M3")).toEqual([
    [0, 9],
    [2, null],
    [4, null],
  ]);
  book.dispose();
});

const cell = (at: string, formula: string, value: string, kind = "") =>
  `<c r="${at}"${kind}><f t="array" ref="${at}">${formula.replaceAll(/[<>&]/g, (c) => `&#${String(c.charCodeAt(0))};`)}</f><v>${value}</v></c>`;

const STORED = `<sheetData>
  <row r="1"><c r="A1"><v>4</v></c>${cell("C1", '-(A:A)&">"', "-4>", ' t="str"')}${cell("D1", "MAX(IF(A:A>1,A:A))", "6")}</row>
  <row r="2"><c r="A2"><v>6</v></c>${cell("C2", "LARGE(A:A*1,2)", "4")}</row>
  <row r="1048576"><c r="XFD1048576"><v>1</v></c></row>
</sheetData>`;

test("a stored array over a whole column keeps its formula and result, and is named", async () => {
  const book = newBook();
  const file = workbookFile(book, formulaTexts("WARMBACK", fixtureSet().metadata), filesHere());
  const read = readings();
  await file.open(zipOf(plainBook({ S: STORED })));
  await book.whenCalculated();
  expect(read.mock.calls.length).toBeLessThan(MOST_READ);
  const at = (row: number, column: number) => ({ sheet: "S", row, column });
  expect(book.read({ ...at(0, 2), rows: 2, columns: 2 }).values).toEqual([
    ["-4>", 6],
    [4, null],
  ]);
  const why = "calculations over whole columns or rows that need each of their cells";
  expect(book.kept(at(0, 2))).toMatchObject({ formula: '=-(A:A)&">"', why, value: "-4>" });
  expect(book.kept(at(1, 2))).toMatchObject({ formula: "=LARGE(A:A*1,2)", why, value: 4 });
  expect(book.kept(at(0, 3))).toBeUndefined();
  book.dispose();
});

test("functions that take a range by its corners or expand one see the whole column", async () => {
  const book = newBook();
  // The engine reads all cells here, so there are just enough.
  book.makeRoom({ sheet: SHEET, row: 0, column: 0, rows: 100_200, columns: 30 });
  await put(book, { ...numbers, B900: 5, L20: '=SUMIF(A:A,"",B1)', L21: "=GCD(A:A)", L22: "=XOR(A:A>8,A:A>9)" });
  expect(valuesAt(book, "L20:L21")).toEqual([[5], [1]]);
  expect(valueAt(book, "L22")).toMatchObject({ code: "#NUM!" });
  book.dispose();
});
