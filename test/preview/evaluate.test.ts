/** The evaluator over the real engine, with the fixture's functions. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { emptySheet } from "../../src/preview/file/bookData";
import { evaluateFormulas, evaluateWorkbook } from "../../src/preview/cli/evaluate";
import { fixtureSet, newBook } from "./support";

const { warmback } = fixtureSet();
let book: SheetBook;
beforeAll(() => {
  book = newBook();
});
afterAll(() => book.dispose());

const one = async (formula: string) => (await evaluateFormulas(book, [formula], warmback))[0];

describe("A formula", () => {
  test("a formula gives its value beside its own text, with or without an equals sign", async () => {
    expect(await one("=WARMBACK.TEST.DOUBLE(4)+SUM(1,2)")).toEqual({
      formula: "=WARMBACK.TEST.DOUBLE(4)+SUM(1,2)",
      value: 11,
      cautions: [],
    });
    expect(await one("1/3")).toEqual({ formula: "1/3", value: 1 / 3, cautions: [] });
  });

  test.each([
    ["a text", '="a "&1', "a 1"],
    ["a boolean", "=1<2", true],
    ["an empty cell as 0", "=A1", 0],
  ])("a formula can give %s", async (_what, formula, value) => {
    expect(await one(formula)).toMatchObject({ value });
  });

  test.each([
    ["3/8", "a tube's size, no date"],
    ["50%", "read by the function that knows what it is"],
    ["1-1/2", "a pipe's size"],
  ])("a formula passes the text %s to a function unchanged: %s", async (text) => {
    expect(await one(`=WARMBACK.TEST.SHOW("${text}")`)).toMatchObject({ value: `string:${text} null` });
  });

  test("a formula passes a percentage to a function as its number", async () => {
    expect(await one("=WARMBACK.TEST.SHOW(50%)")).toMatchObject({ value: "number:0.5 null" });
  });

  test("a formula that spills gives a matrix, with an error inside as an object", async () => {
    expect(await one("=WARMBACK.TEST.TABLE(2)")).toMatchObject({
      value: [
        ["row 1", 0],
        ["row 2", 1 / 3],
      ],
    });
    expect(await one("=WARMBACK.TEST.GAPS()")).toMatchObject({
      value: [
        ["a", "", 0],
        ["b", { code: "#N/A", message: "outside the table" }, 3],
      ],
    });
  });

  test("a refusal by our function gives its message; another error says what it means", async () => {
    expect(await one("=WARMBACK.TEST.DOUBLE()")).toMatchObject({
      error: { code: "#VALUE!", message: "value: is blank" },
    });
    expect(await one("=NOSUCH(1)")).toMatchObject({ error: { code: "#NAME?", message: /unknown/ } });
  });

  test("a formula gives the cautions of all calls inside it, each once", async () => {
    const big = (value: number) => ({ code: "BIG", severity: "Caution", text: `${String(value)} is over 100` });
    expect(await one("=WARMBACK.TEST.DOUBLE(WARMBACK.TEST.DOUBLE(150))+WARMBACK.TEST.DOUBLE(150)")).toMatchObject({
      value: 900,
      cautions: [big(150), big(300)],
    });
  });

  test.each(["=1+", "=)(", '="abc', "={1,2", "=[", "=@#$%^&", "=WARMBACK.TEST.DOUBLE(1"])(
    "a formula that can't be read (%s) is an error like others",
    async (formula) => {
      expect(await one(formula)).toMatchObject({ formula, error: { code: expect.stringMatching(/^#/) as string } });
    },
  );
});

describe("What the sheet engine answered wrongly or never", () => {
  test.each([
    ["a formula that depends on itself", "=AA1+1", "#CYCLE!", /own result/],
    ["a sum over its own cell", "=SUM(AA1:AA3)", "#CYCLE!", /own result/],
    [
      "a Bessel function of no usable order",
      "=BESSELI(1E+308,1E+308)",
      "#NUM!",
      /BESSELI: x: at most 1,000,000, got 1E\+308/,
    ],
    ["an expansion to 1E+308 rows", "=EXPAND(1,1E+308)", "#NUM!", /EXPAND: rows: at most 1,048,576, got 1E\+308/],
    ["a table of 10^12 cells", "=MAKEARRAY(1000000,10000,LAMBDA(r,c,1))", "#NUM!", /at most 1,048,576 cells/],
    ["a sequence of 10^12 cells", "=SEQUENCE(1E6,1E6)", "#NUM!", /SEQUENCE: columns: at most 16,384, got 1,000,000/],
    ["a text of 10^9 signs", '=REPT("ab",1E9)', "#NUM!", /REPT: times: at most 32,767/],
    ["a sum of 10^9 terms", "=POISSON.DIST(1E9,1E9,TRUE)", "#NUM!", /at most 1,000,000/],
    ["a common multiple beyond all numbers", "=LCM(1E+308,3,7)", "#NUM!", /LCM: number: must be below 9\.00/],
    [
      "a common multiple that grows beyond all numbers",
      "=LCM(2147483647,2147483629,2147483587)",
      "#NUM!",
      /LCM: the common multiple must be below 9\.00/,
    ],
    ["permutations of 10^9", "=PERMUT(1E9,1E9)", "#NUM!", /PERMUT: chosen: at most 1,000,000/],
    ["a depreciation over 10^9 periods", "=DB(2,3,1E9,1E9)", "#NUM!", /DB: life: at most 1,000,000/],
    ["a depreciation up to period 10^9", "=DB(2,3,1E6,1E9)", "#NUM!", /DB: period: at most 1,000,000/],
    ["a declining balance over 10^9 periods", "=VDB(2,3,1E9,0,1E9)", "#NUM!", /VDB: life: at most 1,000,000/],
    [
      "principal paid over 10^9 periods",
      "=CUMPRINC(0.05,10,1000,1,1E9,0)",
      "#NUM!",
      /CUMPRINC: end: at most 1,000,000/,
    ],
    ["interest paid over 10^9 periods", "=CUMIPMT(0.05,1E9,1000,1,1E9,0)", "#NUM!", /CUMIPMT: end: at most 1,000,000/],
    ["10^9 working days", "=WORKDAY(2,1E9)", "#NUM!", /WORKDAY: days: at most 100,000/],
    [
      "10^9 working days back",
      "=WORKDAY.INTL(2,-1E9)",
      "#NUM!",
      /WORKDAY\.INTL: days: at most 100,000, got -1,000,000,000/,
    ],
    ["trials by the thousand", "=BINOM.INV(2000,0.5,0.5)", "#NUM!", /BINOM\.INV: trials: at most 1,000, got 2,000/],
    ["trials by the thousand, as of old", "=CRITBINOM(2000,0.5,0.5)", "#NUM!", /CRITBINOM: trials: at most 1,000/],
    ["a picture", '=IMAGE("https://example.com/a.png")', "#CALC!", /IMAGE: gives a picture/],
    [
      "more operators than fit",
      `=${new Array(3_500).fill("1").join("+")}`,
      "#VALUE!",
      /at most 1,500 operators, got 3,499/,
    ],
  ])("%s is an error whose message says why", async (_what, formula, code, message) => {
    const error = (await one(formula))?.error;
    expect(error?.code).toBe(code);
    expect(error?.message).toMatch(message);
  });

  test.each([
    ["=LCM(4,6,10)", 60],
    ["=LCM(94906265,94906263)", 9007198946437695],
    ["=PERMUT(5,2)", 20],
    ["=BINOM.INV(1000,0.5,0.5)", 500],
    ["=WORKDAY(2,10)", 16],
  ])("%s is below its limits and answers %d", async (formula, value) => {
    expect((await one(formula))?.value).toBe(value);
  });

  test("a hyperlink gives its text", async () => {
    expect((await one('=HYPERLINK("https://example.com","pump")'))?.value).toBe("pump");
  });

  test("the row of a formula's own cell is no circle", async () => {
    expect((await one("=ROW(AA1)"))?.value).toBe(1);
  });

  test("of a circle in a workbook every member and dependent is #CYCLE!, and nothing else", async () => {
    const cell = (row: number, formula: string) => ({ row, column: 0, value: null, formula });
    const cells = [cell(0, "=A3+1"), cell(1, "=A1*2"), cell(2, "=A2"), cell(3, "=A2+1"), cell(4, "=1+1")];
    const results = await evaluateWorkbook(book, { sheets: [{ ...emptySheet("S"), cells }], names: [] }, warmback);
    const codes = results.map(({ value, error }) => error?.code ?? value);
    expect(codes).toEqual(["#CYCLE!", "#CYCLE!", "#CYCLE!", "#CYCLE!", 2]);
  });

  test("OFFSET moves whole columns and rows with all their cells", async () => {
    const value = (row: number, column: number, cell: number) => ({ row, column, value: cell });
    const formulas = [
      "SUM(OFFSET(A:A,0,1))",
      "COUNT(OFFSET(A:A,0,0))",
      "SUM(OFFSET(1:1,1,0))",
      "ROWS(OFFSET(A:A,0,1,2))",
    ];
    const cells = [
      ...[value(0, 0, 10), value(1, 0, 20), value(2, 0, 30), value(0, 1, 1), value(1, 1, 2), value(2, 1, 3)],
      ...formulas.map((formula, at) => ({ row: 5 + at, column: 3, value: null, formula: `=${formula}` })),
    ];
    const results = await evaluateWorkbook(book, { sheets: [{ ...emptySheet("S"), cells }], names: [] }, warmback);
    expect(results.map(({ value: found, error }) => error ?? found)).toEqual([6, 3, 22, 2]);
  });

  test("a result without room for it is the error #SPILL!", async () => {
    const cells = [
      { row: 0, column: 0, value: null, formula: "=SEQUENCE(3)" },
      { row: 1, column: 0, value: 5 },
    ];
    const [found] = await evaluateWorkbook(book, { sheets: [{ ...emptySheet("S"), cells }], names: [] }, warmback);
    expect(found?.value).toBeUndefined();
    expect(found?.error?.code).toBe("#SPILL!");
  });
});

test("Many formulas come back in order, and one that can't be read spoils none after it", async () => {
  const lines = Array.from({ length: 620 }, (_, at) => (at % 50 === 7 ? "=[" : `=WARMBACK.TEST.DOUBLE(${String(at)})`));
  const results = await evaluateFormulas(book, lines, warmback);
  expect(results.map(({ formula }) => formula)).toEqual(lines);
  results.forEach((result, at) => {
    if (at % 50 === 7) expect(result.error?.message).toMatch(/can't be read/);
    else expect(result.value).toBe(at * 2);
  });
});

test("A workbook's formulas are calculated afresh and listed with their addresses, sheet by sheet and row by row", async () => {
  const cell = (row: number, column: number, content: number | string) => ({
    row,
    column,
    value: typeof content === "number" ? content : 99,
    ...(typeof content === "string" && { formula: content }),
  });
  const results = await evaluateWorkbook(
    book,
    {
      sheets: [
        {
          ...emptySheet("Inputs"),
          cells: [cell(4, 0, "=B1*2"), cell(0, 1, 60), cell(3, 3, "=WARMBACK.TEST.DOUBLE(flow)")],
        },
        { ...emptySheet("Pool loop"), cells: [cell(0, 0, "=Inputs!A5+1")] },
      ],
      names: [{ name: "flow", refersTo: "Inputs!$B$1" }],
    },
    warmback,
  );
  expect(results).toEqual([
    { address: "Inputs!D4", formula: "=WARMBACK.TEST.DOUBLE(flow)", value: 120, cautions: [] },
    { address: "Inputs!A5", formula: "=B1*2", value: 120, cautions: [] },
    { address: "'Pool loop'!A1", formula: "=Inputs!A5+1", value: 121, cautions: [] },
  ]);
});

test("A workbook's result that runs past its filled cells finds room, as it would in Excel", async () => {
  const formula = '={"a","b","c";1,2,3}';
  const cells = [{ row: 2, column: 60, value: null, formula }];
  const [found] = await evaluateWorkbook(book, { sheets: [{ ...emptySheet("Wide"), cells }], names: [] }, warmback);
  expect(found?.error).toBeUndefined();
  expect(found?.value).toEqual([
    ["a", "b", "c"],
    [1, 2, 3],
  ]);
});

test("Texts of array constants stay whole, and sizes don't become dates", async () => {
  const results = await evaluateFormulas(
    book,
    [
      '=INDEX({"a","10;11";"b",2},1,2)',
      '=INDEX({"a","5/8";"b",2},1,2)',
      '=INDEX({"a","x, y";"b",2},1,2)',
      "=SUM({1,2;3,-4.5})",
    ],
    warmback,
  );
  expect(results.map(({ value }) => value)).toEqual(["10;11", "5/8", "x, y", 1.5]);
});
