/** What a cell function gets from the preview's sheet, and what the sheet makes of its result: as in Excel. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { emptySheet } from "../../src/preview/file/bookData";
import { newBook, placeOf, put, SHEET, valueAt, valuesAt } from "./support";

let book: SheetBook;
beforeAll(() => {
  book = newBook();
});
beforeEach(() => book.load({ sheets: [emptySheet(SHEET)], names: [] }));
afterAll(() => book.dispose());

/** The value of one formula beside some inputs. */
const result = async (formula: string, inputs: Readonly<Record<string, string | number | boolean>> = {}) => {
  await put(book, { ...inputs, H1: formula });
  return valueAt(book, "H1");
};

describe("What a function gets", () => {
  test.each([
    ["an empty cell as null", "=WARMBACK.TEST.SHOW(A9)", "null null"],
    ["an omitted argument as null", "=WARMBACK.TEST.SHOW(,2)", "null number:2"],
    ["no argument at all as null", "=WARMBACK.TEST.SHOW()", "null null"],
    ["a trailing comma as an omitted argument", "=WARMBACK.TEST.SHOW(1,)", "number:1 null"],
    ["an empty text as a text", '=WARMBACK.TEST.SHOW("")', "string: null"],
    ["a text of digits as a text", '=WARMBACK.TEST.SHOW("7")', "string:7 null"],
    ["a joined text of digits as a text", '=WARMBACK.TEST.SHOW(7&"")', "string:7 null"],
    ["a yes or no as a boolean", "=WARMBACK.TEST.SHOW(TRUE,1=2)", "boolean:true boolean:false"],
    ["the word true as a text", '=WARMBACK.TEST.SHOW("true")', "string:true null"],
    ["a percentage as its number", "=WARMBACK.TEST.SHOW(60%)", "number:0.6 null"],
    ["a negative number", "=WARMBACK.TEST.SHOW(-2)", "number:-2 null"],
    ["empty cells of a range as 0", "=WARMBACK.TEST.MATRIX(X1:Y2)", "[[number:0,number:0],[number:0,number:0]]"],
    ["a single value for a range as one cell", "=WARMBACK.TEST.MATRIX(5)", "[[number:5]]"],
    [
      "an array constant for a range",
      '=WARMBACK.TEST.MATRIX({1,"a";TRUE,2})',
      "[[number:1,string:a],[boolean:true,number:2]]",
    ],
    ["a whole column as long as Excel's", "=WARMBACK.TEST.MATRIX(X:X)", "1048576 rows"],
    ["repeated arguments as one list", '=WARMBACK.TEST.JOIN(1,"a",X1)', "number:1+string:a+null"],
    ["a number for a text argument as its text", "=WARMBACK.TEST.TEXT(40)", "string:40"],
    ["a boolean for a text argument as its word", "=WARMBACK.TEST.TEXT(TRUE)", "string:TRUE"],
    ["a text of digits for a number argument as the number", '=WARMBACK.TEST.NUMBER("7")', "number:7"],
    ["a word for a yes-or-no argument as the boolean", '=WARMBACK.TEST.YESNO("true")', "boolean:true"],
  ])("a function gets %s", async (_what, formula, expected) => {
    expect(await result(formula)).toBe(expected);
  });

  test("a function gets what cells hold: number, text, digits typed as text, boolean", async () => {
    await put(book, { A1: 1.5, A2: "pool", A3: "007", A4: false });
    await put(book, { H1: "=WARMBACK.TEST.MATRIX(A1:A4)" });
    expect(valueAt(book, "H1")).toBe("[[number:1.5],[string:pool],[string:007],[boolean:false]]");
  });

  test("an empty text in a range is told from an empty cell, also a spilled one", async () => {
    await put(book, { A1: "=WARMBACK.TEST.GAPS()", A5: '=""' });
    await put(book, { H1: "=WARMBACK.TEST.MATRIX(A1:C1)", H2: "=WARMBACK.TEST.MATRIX(A5:B5)" });
    expect(valueAt(book, "H1")).toBe("[[string:a,string:,number:0]]");
    expect(valueAt(book, "H2")).toBe("[[string:,number:0]]");
  });

  test("a range given to a single value makes no call but #CALC! that says so", async () => {
    expect(await result("=WARMBACK.TEST.SHOW(A1:B3)")).toEqual({
      code: "#CALC!",
      message: "value: takes one cell, got a range of 3 × 2 cells",
    });
  });

  test("a word given to a number argument makes no call but #VALUE! that names both", async () => {
    expect(await result('=WARMBACK.TEST.NUMBER("much")')).toEqual({
      code: "#VALUE!",
      message: 'number: must be a number, got "much"',
    });
  });

  test("too many arguments make no call but #VALUE! with both counts", async () => {
    expect(await result("=WARMBACK.TEST.DOUBLE(1,2)")).toEqual({
      code: "#VALUE!",
      message: "too many arguments: TEST.DOUBLE takes at most 1, got 2",
    });
  });

  test("a function's name is found in any case", async () => {
    expect(await result("=warmback.Test.Double(4)")).toBe(8);
  });
});

describe("An error in an argument", () => {
  test("an error in an argument passes through unchanged, and the function isn't called", async () => {
    expect(await result("=WARMBACK.TEST.SHOW(A1)", { A1: "=1/0" })).toEqual({ code: "#DIV/0!" });
    expect(await result("=WARMBACK.TEST.MATRIX(A1:A2)", { A1: 1, A2: "=NA()" })).toEqual({ code: "#N/A" });
  });

  test("an error in an argument brings its message along, from a cell and from a call inside", async () => {
    const refused = { code: "#N/A", message: "out of reach" };
    expect(await result("=WARMBACK.TEST.DOUBLE(A1)", { A1: '=WARMBACK.TEST.FAIL("out of reach")' })).toEqual(refused);
    expect(await result('=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.FAIL("out of reach"))')).toEqual(refused);
  });

  test("an error is followed back through formulas that only pass it on", async () => {
    await put(book, { A1: '=WARMBACK.TEST.FAIL("out of reach")', A2: "=A1+1" });
    expect(await result("=SUM(A2,1)")).toEqual({ code: "#N/A", message: "from Sheet1!A1: out of reach" });
  });
});

describe("What a function gives", () => {
  test("a number is shown at full precision", async () => {
    await put(book, { A1: "=WARMBACK.TEST.TABLE(2,1)" });
    expect(valueAt(book, "B2")).toBe(1 + 1 / 3);
  });

  test("an error that a function gives keeps its message; a fault of the program is #VALUE!", async () => {
    expect(await result('=WARMBACK.TEST.FAIL("why")')).toEqual({ code: "#N/A", message: "why" });
    expect(await result("=WARMBACK.TEST.CRASH()")).toEqual({ code: "#VALUE!", message: "a fault inside" });
  });

  test("a ragged table and a number that isn't finite are errors", async () => {
    expect(await result("=WARMBACK.TEST.RAGGED()")).toMatchObject({ code: "#VALUE!" });
    expect(await result("=WARMBACK.TEST.INFINITE()")).toMatchObject({ code: "#NUM!" });
  });

  test("a table shows null as 0 and an error in its own cell, with its message", async () => {
    await put(book, { A1: "=WARMBACK.TEST.GAPS()" });
    expect(valuesAt(book, "A1:C2")).toEqual([
      ["a", "", 0],
      ["b", { code: "#N/A", message: "outside the table" }, 3],
    ]);
  });
});

describe("A table that spills", () => {
  test("a spilled table grows and shrinks with its input", async () => {
    await put(book, { F1: 2, A1: "=WARMBACK.TEST.TABLE(F1)" });
    expect(book.spill(placeOf("A1"))).toMatchObject({ rows: 2, columns: 2 });
    await put(book, { F1: 4 });
    expect(valueAt(book, "A4")).toBe("row 4");
    await put(book, { F1: 3 });
    expect(valuesAt(book, "A3:A4")).toEqual([["row 3"], [null]]);
    expect(book.used(SHEET)).toMatchObject({ row: 0, column: 0, rows: 3, columns: 6 });
  });

  test("a table is #SPILL! where a cell is in its way, and comes back when that is cleared", async () => {
    await put(book, { A1: "=WARMBACK.TEST.TABLE(3)", A2: "in the way" });
    expect(valueAt(book, "A1")).toEqual({ code: "#SPILL!" });
    await put(book, { A2: null });
    expect(valuesAt(book, "A1:A3")).toEqual([["row 1"], ["row 2"], ["row 3"]]);
  });

  test("INDEX, SUM and another function of ours read a spilled table", async () => {
    await put(book, { A1: "=WARMBACK.TEST.TABLE(3,1)" });
    await put(book, { D1: "=INDEX(A1:B3,2,2)", D2: "=SUM(B1:B3)", D3: "=WARMBACK.TEST.DOUBLE(B3)" });
    expect(valuesAt(book, "D1:D3")).toEqual([[1 + 1 / 3], [4], [2 * (1 + 2 / 3)]]);
    expect(await result("=INDEX(WARMBACK.TEST.TABLE(3),2,1)")).toBe("row 2");
  });
});

describe("Around our functions", () => {
  test.each([
    ["IFERROR", '=IFERROR(WARMBACK.TEST.FAIL("no"),WARMBACK.TEST.DOUBLE(3))', 6],
    ["LET", "=LET(x,WARMBACK.TEST.DOUBLE(3),x+1)", 7],
    ["calls inside calls", "=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(1)))", 8],
    ["a minus sign", "=-WARMBACK.TEST.DOUBLE(2)", -4],
    ["MAP and LAMBDA", "=SUM(MAP({1,2},LAMBDA(x,WARMBACK.TEST.DOUBLE(x))))", 6],
  ])("%s works", async (_what, formula, expected) => {
    expect(await result(formula)).toBe(expected);
  });

  test("a defined name refers to its cell", async () => {
    book.load({ sheets: [emptySheet(SHEET)], names: [{ name: "flow", refersTo: `${SHEET}!$A$1` }] });
    expect(await result("=WARMBACK.TEST.DOUBLE(flow)", { A1: 21 })).toBe(42);
  });

  test("undo takes a write back as one step", async () => {
    await put(book, { A1: 1, A2: 2 });
    await put(book, { A1: 5, A2: "=WARMBACK.TEST.DOUBLE(A1)" });
    expect(valueAt(book, "A2")).toBe(10);
    book.undo();
    await book.whenCalculated();
    expect(valuesAt(book, "A1:A2")).toEqual([[1], [2]]);
  });
});

describe("The log of calls", () => {
  test("the log holds the calls of a cell's latest calculation, with their arguments", async () => {
    await put(book, { A1: 3, A2: "=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(A1))" });
    await put(book, { A1: 4 });
    expect(book.calls(placeOf("A2"))).toEqual([
      { id: "TEST.DOUBLE", args: [4], outcome: { value: 8 } },
      { id: "TEST.DOUBLE", args: [8], outcome: { value: 16 } },
    ]);
  });

  test("the log forgets a cell whose formula is gone", async () => {
    await put(book, { A1: "=WARMBACK.TEST.DOUBLE(1)" });
    await put(book, { A1: 2 });
    expect(book.calls(placeOf("A1"))).toEqual([]);
  });
});

describe("A formula that the engine can't take", () => {
  test.each(["=[", "=)(", '="open', "={1,2", "=@#$%^&", "=LAMBDA(SUM(1),2)(1)", "=SUM(A:ZZZZZ)"])(
    "the formula %s does not affect the others",
    async (formula) => {
      await put(book, { A1: formula, A2: "=WARMBACK.TEST.DOUBLE(4)" });
      expect(valueAt(book, "A1")).toMatchObject({ code: expect.stringMatching(/^#/) as string });
      expect(valueAt(book, "A2")).toBe(8);
      await put(book, { A3: "=1/4" });
      expect(valueAt(book, "A3")).toBe(0.25);
    },
  );
});
