import type { CellInput } from "../../core";
import { describe, expect, test, vi } from "vitest";
import { sessionLog } from "../../src/workbook/callLog";
import type { CellValue } from "../../src/workbook/port";
import { readCalls } from "../../src/workbook/reader/calls";
import { readCells } from "../../src/workbook/reader/read";
import type { Engine } from "../../src/workbook/reader/prepare";
import type { ReadArgument, Reading } from "../../src/workbook/reader/read";
import type { CellOutcome } from "../../src/workbook/values";
import { at, fakePort } from "./fakeWorkbook";

const KNOWN = new Set(["PIPE.HEADLOSS", "PIPE.SIZE", "EXCHANGER.LMTD", "WATER.PROPERTIES", "NOTE.EDITION"]);

/** A stand-in for the calculation: a sum of the numbers that came; a text "refuse" is refused. */
function total(id: string, args: readonly CellInput[]): CellOutcome {
  const flat = args.flatMap((argument) => (Array.isArray(argument) ? argument.flat() : [argument])) as unknown[];
  if (flat.includes("refuse")) return { code: "#VALUE!", message: "flow: expected a flow" };
  const sum = flat.reduce((sum: number, value) => sum + (typeof value === "number" ? value : 0), 0);
  if (id === "WATER.PROPERTIES")
    return {
      value: [
        ["density", sum, "kg/m3"],
        ["heat capacity", 2 * sum, ""],
      ],
    };
  return { value: sum };
}

const engine = (log = sessionLog()): Engine => ({ known: KNOWN, call: vi.fn(total), log });

const port = () => {
  const fake = fakePort({
    Inputs: {
      A1: 40,
      A2: "2 in",
      A3: 100,
      A4: true,
      A6: "7",
      A7: { value: { code: "#DIV/0!" } },
      A8: "gpm",
      B1: 1,
      B2: 2,
      B3: 3,
      C1: 10,
      C2: "x",
      C3: 30,
      E1: 2.675,
      F4: 44,
    },
    "Pool loop": { A1: 5, B4: 6 },
    Calc: { H9: 1 },
  });
  fake.meanings.set("Flow", "Inputs!A1");
  fake.meanings.set("Pumps[Flow]", "Inputs!B1:B3");
  fake.meanings.set("[@Flow]", "Inputs!B2");
  fake.meanings.set("A1#", "Inputs!B1:C2");
  return fake;
};

async function read(formula: string, value: CellValue = 0, log = sessionLog()): Promise<Reading> {
  const [reading] = await readCells(port().book, [{ address: at("Inputs", "F4"), formula, value }], engine(log));
  if (reading === undefined) throw new Error("no reading");
  return reading;
}

const plain = (argument: ReadArgument): unknown =>
  "value" in argument ? argument.value : "fault" in argument ? argument.fault.code : argument.unreadable;

const CANT = (number: number): string =>
  `argument ${String(number)} is an expression we can't read: put it in its own cell to see its working`;

/** Argument text of PIPE.HEADLOSS → the raw value. */
const ARGUMENTS: readonly (readonly [string, CellInput])[] = [
  ["40", 40],
  ["-40", -40],
  ["+40", 40],
  ["4E1", 40],
  ["50%", 0.5],
  ['"2 in"', "2 in"],
  ['"say ""x"""', 'say "x"'],
  ["TRUE", true],
  [
    "{1,2;3,4}",
    [
      [1, 2],
      [3, 4],
    ],
  ],
  ['{-1,"a"}', [[-1, "a"]]],
  ["{5}", 5],
  ["A1", 40],
  ["$A$1", 40],
  ["a1", 40],
  ["Inputs!A1", 40],
  ["inputs!$A$1", 40],
  ["'Pool loop'!A1", 5],
  ["'pool loop'!B4", 6],
  ["A2", "2 in"],
  ["A4", true],
  ["A5", null],
  ["Z99", null],
  ["A1:A3", [[40], ["2 in"], [100]]],
  [
    "A4:B5",
    [
      [true, null],
      [null, null],
    ],
  ],
  ["A3:A1", [[40], ["2 in"], [100]]],
  ["Flow", 40],
  ["Pumps[Flow]", [[1], [2], [3]]],
  ["[@Flow]", 2],
  [
    "A1#",
    [
      [1, 10],
      [2, "x"],
    ],
  ],
  ["@A1:A9", true],
  ["@A4:F4", 44],
  ["@Pumps[Flow]", "#VALUE!"],
  ["(A1)", 40],
  ["A1+1", 41],
  ["A1-1", 39],
  ["A1*2", 80],
  ["A1/2", 20],
  ["A1^2", 1600],
  ["-A1", -40],
  ["-2^2", 4],
  ["A1*5%", 2],
  ["A5+1", 1],
  ["A4+1", 2],
  ["A6+1", 8],
  ["1/0", "#DIV/0!"],
  ["A1/A5", "#DIV/0!"],
  ["A2+1", CANT(1)],
  ["A8+1", "#VALUE!"],
  ["10^400", "#NUM!"],
  ["(-8)^0.5", "#NUM!"],
  ["0^0", "#NUM!"],
  ["A7", "#DIV/0!"],
  ["A7+1", "#DIV/0!"],
  ["#N/A", "#N/A"],
  ["A6:A8", "#DIV/0!"],
  ['A1&" "&A8', "40 gpm"],
  ['1.5&""', "1.5"],
  ['0.1+0.2&""', "0.3"],
  ['A4&""', "TRUE"],
  ['A5&""', ""],
  ["A1=40", true],
  ["A1<>40", false],
  ["A1>=40", true],
  ["A1<40", false],
  ['A2="2 IN"', true],
  ['A2<>"3 in"', true],
  ['A2>"1 in"', CANT(1)],
  ['"abc"<"abd"', true],
  ["A1<A2", true],
  ["A4>A2", true],
  ["A5=0", true],
  ['A5=""', true],
  ["A5=FALSE", true],
  ["0.1+0.2=0.3", CANT(1)],
  ["B1:B3*2", [[2], [4], [6]]],
  ["B1:B3+C1", [[11], [12], [13]]],
  [
    "B1:B2*{1,10}",
    [
      [1, 10],
      [2, 20],
    ],
  ],
  ["B1:B3+B1:B2", "#N/A"],
  ["IF(A1>0,A1,A3)", 40],
  ["IF(A1<0,A1,A3)", 100],
  ["IF(A1<0,1)", false],
  ["IF(A1,,5)", 0],
  ["IF(A4,A5,1)", null],
  ["IF(A7,1,2)", "#DIV/0!"],
  ["IF(A2,1,2)", "#VALUE!"],
  ["IF(A1>0,A1,UNKNOWN(5))", 40],
  ["IF(A1:A2>0,1,2)", CANT(1)],
  ["IFERROR(A7,9)", 9],
  ["IFERROR(A1,9)", 40],
  ['IFERROR(1/0,"none")', "none"],
  ["IFERROR(A5,1)", CANT(1)],
  ["SUM(B1:B3)", 6],
  ["SUM(B1:B3,4)", 10],
  ["SUM(C1:C3)", 40],
  ["SUM(A4)", 0],
  ['SUM(TRUE,"3")', 4],
  ['SUM("x")', "#VALUE!"],
  ["SUM(A6:A7)", "#DIV/0!"],
  ["SUM(Pumps[Flow])", 6],
  ["SUM(B1:B3*C1)", 60],
  ["MIN(B1:B3)", 1],
  ["MAX(B1:B3,7)", 7],
  ["MAX(A5)", 0],
  ["ROUND(2.675,2)", 2.68],
  ["ROUND(E1,2)", 2.68],
  ["ROUND(-2.5,0)", -3],
  ["ROUND(1234,-2)", 1200],
  ["ROUND(1.5,1E9)", 1.5],
  ["INDEX(B1:B3,2)", 2],
  ["INDEX(B1:C3,3,2)", 30],
  ["INDEX(B1:C3,0,1)", [[1], [2], [3]]],
  ["INDEX(B1:C3,2,0)", [[2, "x"]]],
  ["INDEX(A4:F4,6)", 44],
  ["INDEX(B1:B3,9)", "#REF!"],
  ["INDEX(A1#,2,1)", 2],
  ["LET(x,2,x*x)", 4],
  ["LET(x,A1,y,x+1,x*y)", 1640],
  ["LET(x,1,LET(x,x+1,x*10))", 20],
  ["LET(Flow,3,Flow)", 3],
  ["LET(x,A1,SUM(x,1))", 41],
  ["_xlfn.LET(_xlpm.x,2,_xlpm.x)", 2],
  ["WARMBACK.PIPE.SIZE(1,2)", 3],
  ["WARMBACK.PIPE.SIZE(WARMBACK.PIPE.SIZE(1,2),A1)+1", 44],
  ["INDEX(WARMBACK.WATER.PROPERTIES(5),2,2)", 10],
  ['IFERROR(WARMBACK.PIPE.SIZE("refuse"),8)', 8],
  ['WARMBACK.PIPE.SIZE("refuse")', "#VALUE!"],
  ["VLOOKUP(1,A1:B3,2)", CANT(1)],
  ["Missing", CANT(1)],
  ["Gone!A1", CANT(1)],
  ["[Book.xlsx]Sheet1!A1", CANT(1)],
  ["A1:INDEX(A:A,3)", CANT(1)],
  ["A1:B2 B1:C3", CANT(1)],
  ["Jan:Dec!A1", CANT(1)],
  ["A:A", "argument 1 is a range of 1,048,576 cells: at most 40,000 can be read"],
  ["WARMBACK.NO.SUCH(1)", CANT(1)],
];

describe("An argument", () => {
  test.each(ARGUMENTS)("an argument %s is read", async (text, expected) => {
    const reading = await read(`=WARMBACK.PIPE.HEADLOSS(${text})`);
    expect(reading.calls[0]?.id).toBe("PIPE.HEADLOSS");
    expect(reading.calls[0]?.args.map(plain)).toEqual([expected]);
  });

  test("an argument that is left out is null, in its place", async () => {
    const reading = await read('=WARMBACK.PIPE.HEADLOSS(A1,,100,,"SI")');
    expect(reading.calls[0]?.args.map(plain)).toEqual([40, null, 100, null, "SI"]);
  });

  test("a name of a LAMBDA is never mistaken for a name of the workbook", async () => {
    const reading = await read("=MAP(B1:B3,LAMBDA(Flow,WARMBACK.PIPE.HEADLOSS(Flow,2)))");
    expect(reading.calls[0]?.args.map(plain)).toEqual([CANT(1), 2]);
  });

  test("an argument inside a LET is read with the LET's names", async () => {
    const reading = await read("=LET(f,A1,g,WARMBACK.PIPE.SIZE(f,1),WARMBACK.PIPE.HEADLOSS(g,f))", 81);
    expect(reading.calls.map((call) => [call.id, ...call.args.map(plain)])).toEqual([
      ["PIPE.SIZE", 40, 1],
      ["PIPE.HEADLOSS", 41, 40],
    ]);
    expect(reading).toMatchObject({ checked: true, stale: false });
  });

  test("an argument of 1,500 terms, or nested 140 deep, is computed", async () => {
    const chain = await read(`=WARMBACK.PIPE.HEADLOSS(A1${"+1".repeat(1500)})`, 1540);
    expect(chain.calls[0]?.args.map(plain)).toEqual([1540]);
    const nest = await read(`=WARMBACK.PIPE.HEADLOSS(${"SUM(".repeat(140)}A1${")".repeat(140)})`, 40);
    expect(nest.calls[0]?.args.map(plain)).toEqual([40]);
  });

  test("names that double each other are computed once each", async () => {
    const names = Array.from(
      { length: 60 },
      (_, at) => `n${String(at)}x,${at === 0 ? "1" : `n${String(at - 1)}x+n${String(at - 1)}x`}`,
    );
    const reading = await read(`=WARMBACK.PIPE.HEADLOSS(LET(${names.join(",")},n59x))`);
    expect(reading.calls[0]?.args.map(plain)).toEqual([2 ** 59]);
  });
});

/** Formula → our calls in it: id, whether it is whole, and the text it spans. */
const CALLS: readonly (readonly [string, readonly (readonly [string, boolean, string])[]])[] = [
  ["=WARMBACK.PIPE.SIZE(1)", [["PIPE.SIZE", true, "WARMBACK.PIPE.SIZE(1)"]]],
  ["=warmback.pipe.size(1)", [["PIPE.SIZE", true, "warmback.pipe.size(1)"]]],
  ["=@WARMBACK.PIPE.SIZE(1)", [["PIPE.SIZE", true, "WARMBACK.PIPE.SIZE(1)"]]],
  ["=(WARMBACK.PIPE.SIZE(1))", [["PIPE.SIZE", true, "WARMBACK.PIPE.SIZE(1)"]]],
  ["=+WARMBACK.PIPE.SIZE(1)", [["PIPE.SIZE", true, "WARMBACK.PIPE.SIZE(1)"]]],
  ["=-WARMBACK.PIPE.SIZE(1)", [["PIPE.SIZE", false, "WARMBACK.PIPE.SIZE(1)"]]],
  ["=_xldudf_WARMBACK_PIPE_SIZE(1)", [["PIPE.SIZE", true, "_xldudf_WARMBACK_PIPE_SIZE(1)"]]],
  ["=_XLDUDF_warmback_pipe_size(1)", [["PIPE.SIZE", true, "_XLDUDF_warmback_pipe_size(1)"]]],
  ["=[2]!_xldudf_WARMBACK_PIPE_SIZE(1)", [["PIPE.SIZE", true, "[2]!_xldudf_WARMBACK_PIPE_SIZE(1)"]]],
  ["=WARMBACK.NOTE.EDITION()", [["NOTE.EDITION", true, "WARMBACK.NOTE.EDITION()"]]],
  ['=TEXT(WARMBACK.PIPE.SIZE(1),"0")', [["PIPE.SIZE", false, "WARMBACK.PIPE.SIZE(1)"]]],
  [
    "=WARMBACK.PIPE.SIZE(WARMBACK.PIPE.HEADLOSS(1),2)",
    [
      ["PIPE.SIZE", true, "WARMBACK.PIPE.SIZE(WARMBACK.PIPE.HEADLOSS(1),2)"],
      ["PIPE.HEADLOSS", false, "WARMBACK.PIPE.HEADLOSS(1)"],
    ],
  ],
  ["=WARMBACK.NO.SUCH(1)", []],
  ["=WARMBACK(1)", []],
  ["=PIPE.SIZE(1)", []],
  ["=MYWARMBACK.PIPE.SIZE(1)", []],
  ['="WARMBACK.PIPE.SIZE(1)"', []],
  ["WARMBACK.PIPE.SIZE(1)", []],
  ["=WARMBACK.PIPE.SIZE(1", []],
  ["=SUM(1)", []],
];

describe("Our calls", () => {
  test.each(CALLS)("the calls of ours in %s are found", (formula, expected) => {
    const sites = readCalls(formula, KNOWN);
    expect(sites.map((site) => [site.id, site.whole, formula.slice(site.start, site.end)])).toEqual(expected);
  });
});

describe("A cell", () => {
  test("a cell that holds what its formula gives is not stale", async () => {
    expect(await read("=WARMBACK.PIPE.SIZE(A1,1)", 41)).toMatchObject({ checked: true, stale: false });
    expect(await read("=WARMBACK.PIPE.SIZE(A1,1)*2", 82)).toMatchObject({ checked: true, stale: false });
    expect(await read("=WARMBACK.PIPE.SIZE(A1,1)", 41 * (1 + 5e-10))).toMatchObject({ stale: false });
  });

  test("a cell that differs by more than a billionth is stale", async () => {
    const reading = await read("=WARMBACK.PIPE.SIZE(A1,1)", 41 * (1 + 5e-9));
    expect(reading).toMatchObject({ checked: true, stale: true });
    expect(reading.calls[0]?.stale).toBe(true);
    expect(await read("=WARMBACK.PIPE.SIZE(A1,1)*2", 83)).toMatchObject({ stale: true });
  });

  test("a cell with a table is checked at its first cell, or whole where its spill is known", async () => {
    expect(await read("=WARMBACK.WATER.PROPERTIES(A1)", "density")).toMatchObject({ stale: false });
    expect(await read("=WARMBACK.WATER.PROPERTIES(A1)", "mass")).toMatchObject({ stale: true });
    const cell = { address: at("Inputs", "F4"), formula: "=WARMBACK.WATER.PROPERTIES(A1)", value: "density" };
    const spill = [
      ["density", 40, "kg/m3"],
      ["heat capacity", 81, ""],
    ];
    expect((await readCells(port().book, [{ ...cell, spill }], engine()))[0]).toMatchObject({ stale: true });
  });

  test("a cell with a refused call agrees with the same error only, and keeps the message", async () => {
    const reading = await read('=WARMBACK.PIPE.SIZE("refuse")', { code: "#VALUE!" });
    expect(reading).toMatchObject({ checked: true, stale: false });
    expect(reading.calls[0]?.outcome).toEqual({ code: "#VALUE!", message: "flow: expected a flow" });
    expect(await read('=WARMBACK.PIPE.SIZE("refuse")', { code: "#NAME?" })).toMatchObject({ stale: true });
  });

  test("a cell that the host still computes is not judged", async () => {
    expect(await read("=WARMBACK.PIPE.SIZE(1)", { code: "#BUSY!" })).toMatchObject({ checked: false, stale: false });
    expect(await read("=WARMBACK.PIPE.SIZE(1)", { code: "#SPILL!" })).toMatchObject({ checked: false, stale: false });
  });

  test("a cell wrapped in a function that we can't read is not judged, but its call is read", async () => {
    const reading = await read('=TEXT(WARMBACK.PIPE.SIZE(A1,1),"0")', "41");
    expect(reading).toMatchObject({ checked: false, stale: false });
    expect(reading.calls[0]?.outcome).toEqual({ value: 41 });
  });

  test("a formula that can't be parsed says where and why", async () => {
    expect(await read("=WARMBACK.PIPE.SIZE(1")).toMatchObject({ calls: [], refusal: { at: 21, why: ") is missing" } });
  });

  test("an argument that is an error passes it on without a call", async () => {
    const own = engine();
    await readCells(port().book, [{ address: at("Inputs", "F4"), formula: "=WARMBACK.PIPE.SIZE(A7)", value: 1 }], own);
    expect(own.call).not.toHaveBeenCalled();
  });
});

describe("The log of calls", () => {
  const FORMULA = "=WARMBACK.PIPE.HEADLOSS(VLOOKUP(1,A1:B3,2),A1)";

  test("the log supplies an argument that we can't read when just one call agrees", async () => {
    const log = sessionLog();
    log.add("PIPE.HEADLOSS", [7, 40], { value: 47 });
    log.add("PIPE.HEADLOSS", [8, 41], { value: 49 });
    log.add("PIPE.SIZE", [9, 40], { value: 49 });
    const reading = await read(FORMULA, 47, log);
    expect(reading.calls[0]?.args.map(plain)).toEqual([7, 40]);
    expect(reading).toMatchObject({ checked: true, stale: false });
  });

  test("the log counts the same call made twice once, a trailing omission included", async () => {
    const log = sessionLog();
    log.add("PIPE.HEADLOSS", [7, 40], { value: 47 });
    log.add("PIPE.HEADLOSS", [7, 40, null], { value: 47 });
    expect((await read(FORMULA, 47, log)).calls[0]?.args.map(plain)).toEqual([7, 40]);
  });

  test("the log supplies nothing when two calls agree", async () => {
    const log = sessionLog();
    log.add("PIPE.HEADLOSS", [7, 40], { value: 47 });
    log.add("PIPE.HEADLOSS", ["7 gpm", 40], { value: 47 });
    expect((await read(FORMULA, 47, log)).calls[0]?.args.map(plain)).toEqual([CANT(1), 40]);
  });

  test("the log tells calls apart by the cell's value only where the call is the whole formula", async () => {
    const log = sessionLog();
    log.add("PIPE.HEADLOSS", [7, 40], { value: 47 });
    log.add("PIPE.HEADLOSS", [8, 40], { value: 48 });
    expect((await read(FORMULA, 48, log)).calls[0]?.args.map(plain)).toEqual([8, 40]);
    expect((await read(`${FORMULA}*1`, 48, log)).calls[0]?.args.map(plain)).toEqual([CANT(1), 40]);
    expect((await read(FORMULA, 50, log)).calls[0]?.args.map(plain)).toEqual([CANT(1), 40]);
  });

  test("the log is not trusted where its call doesn't give the cell's value", async () => {
    const log = sessionLog();
    log.add("PIPE.HEADLOSS", [7, 40], { value: 47 });
    expect((await read(`${FORMULA}*2`, 94, log)).calls[0]?.args.map(plain)).toEqual([7, 40]);
    const reading = await read(`${FORMULA}*2`, 95, log);
    expect(reading.calls[0]?.args.map(plain)).toEqual([CANT(1), 40]);
    expect(reading).toMatchObject({ checked: false, stale: false });
  });

  test("the log keeps the newest calls only, and drops the oldest for large matrices", () => {
    const log = sessionLog(3, 10);
    for (const flow of [1, 2, 3, 4]) log.add("PIPE.SIZE", [flow], { value: flow });
    expect(log.of("PIPE.SIZE").map((call) => call.args[0])).toEqual([4, 3, 2]);
    log.add("PIPE.SIZE", [[[1, 2, 3, 4, 5, 6, 7, 8]]], { value: 0 });
    log.add("PIPE.SIZE", [[[1, 2, 3]]], { value: 0 });
    expect(log.size()).toBe(1);
    log.add("PIPE.SIZE", [[Array.from({ length: 50 }, () => 1)]], { value: 0 });
    expect(log.size()).toBe(1);
  });
});

describe("Many cells", () => {
  test("many cells are read in one round trip, each area once", async () => {
    const fake = port();
    const cells = Array.from({ length: 60 }, (_, row) => ({
      address: { sheet: "Inputs", row, column: 9 },
      formula: `=WARMBACK.PIPE.SIZE(A1,Flow,'Pool loop'!B${String(row + 1)})`,
      value: row === 3 ? 86 : 80,
    }));
    const readings = await readCells(fake.book, cells, engine());
    expect(readings.every(({ checked, stale }) => checked && !stale)).toBe(true);
    expect(fake.asked).toMatchObject({ reads: 1, resolves: 1, areas: 61 });
  });

  test("cells that refer to hundreds of places have the sheet read whole", async () => {
    const fake = port();
    const cells = Array.from({ length: 400 }, (_, row) => ({
      address: { sheet: "Calc", row, column: 9 },
      formula: `=WARMBACK.PIPE.SIZE(Inputs!A${String(row + 1)})`,
      value: 0,
    }));
    const readings = await readCells(fake.book, cells, engine());
    expect(readings[2]?.calls[0]?.args.map(plain)).toEqual([100]);
    expect(fake.asked.areas).toBe(1);
  });
});
