/** The reader against a real sheet engine: what the engine hands to a function is what the reader says it was given. */
import type { CellInput } from "../../core";
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { sessionLog } from "../../src/workbook/callLog";
import type { Workbook } from "../../src/workbook/port";
import { readCells } from "../../src/workbook/reader/read";
import type { Reading } from "../../src/workbook/reader/read";
import { sameValue } from "../../src/workbook/values";
import type { Value } from "../../src/workbook/values";

const ONE = "NOTE.GIVEN";
const MANY = "NOTE.GIVENALL";
const SHEET = "Sheet1";
const KNOWN: ReadonlySet<string> = new Set([ONE, MANY]);

const given = { name: "given", type: "any" };
const standIns = {
  namespace: "WARMBACK",
  metadata: {
    functions: [
      { id: ONE, name: ONE, parameters: [given] },
      { id: MANY, name: MANY, parameters: [{ ...given, dimensionality: "matrix" }] },
    ],
  },
  associated: new Map([
    [ONE, () => 1],
    [MANY, () => 1],
  ]),
};

/** An area or an array goes to an argument that takes many cells. */
const idFor = (text: string): string => (/^[A-C]\d:[A-C]\d$|^\{/.test(text) ? MANY : ONE);

/** A1:C3, the numbers, texts, a truth value and a blank that expressions refer to. */
const CELLS: readonly (readonly (string | number | boolean | null)[])[] = [
  [40, 2.5, "2 in"],
  [-3, 0.1, true],
  [7, null, "GPM"],
];

const WRITTEN: readonly string[] = [
  "A1+B1*A3-A2/2",
  "-A2^2",
  "2^3^2",
  "2^-1",
  "A1*5%",
  "-5%+1",
  'A1&" gpm"',
  'B1&""',
  "A1&B3&C3",
  'C3="gpm"',
  'C1<>"2 in"',
  "A1>=40",
  "A1<C1",
  "C1<C2",
  "B3=0",
  'B3=""',
  "IF(A1>B1,A1,B1)",
  'IF(A2<0,"below","above")',
  "IF(C2,A3,0)",
  "IF(A1<0,1)",
  "IFERROR(1/0,9)",
  "IFERROR(A1/B3,A3)",
  "SUM(A1:B3)",
  "SUM(A1:C3,4)",
  "SUM(C2)",
  "SUM(A1,A2,{1,2,3})",
  "MIN(A1:B3)",
  "MAX(A1:C3)",
  "MAX(B3)",
  "ROUND(2.675,2)",
  "ROUND(-2.5,0)",
  "ROUND(1234.5,-2)",
  "ROUND(B1,0)",
  "INDEX(A1:C3,2,1)",
  "INDEX(A1:A3,3)",
  "INDEX(A1:C1,3)",
  "LET(x,A1,y,x+1,x*y)",
  "(A1+A2)*(A3-B1)",
  "A1:A3",
  "A1:B2",
  "{1,2;3,4}",
  "C2+1",
  "TRUE",
  "1E3",
  '"say ""x"""',
];

const { sum: random } = fc.letrec<{ sum: string }>((tie) => ({
  sum: fc.oneof(
    { depthSize: "small" },
    fc.constantFrom("A1", "A2", "A3", "B1", "B2", "B3", "C2", "2", "0.5", "10%"),
    fc.tuple(tie("sum"), fc.constantFrom("+", "-", "*"), tie("sum")).map((all) => all.join("")),
    tie("sum").map((one) => `(${one})`),
    // A sign right after another operator is beyond this engine's own parser.
    tie("sum").map((one) => `(-${one})`),
    fc.tuple(fc.constantFrom("SUM", "MIN", "MAX"), tie("sum"), tie("sum")).map(([name, a, b]) => `${name}(${a},${b})`),
    fc
      .tuple(tie("sum"), fc.constantFrom("<", ">", "="), tie("sum"))
      .map(([a, sign, b]) => `IF(${a}${sign}${b},${a},${b})`),
    tie("sum").map((one) => `ROUND(${one},2)`),
  ),
}));

const EXPRESSIONS = [...WRITTEN, ...fc.sample(random, { numRuns: 200, seed: 7 }).filter((text) => text.length < 400)];

let sheets: ReturnType<typeof startHeadless>;
let book: Workbook;
let readings: readonly Reading[];

beforeAll(async () => {
  sheets = startHeadless(standIns, { sheets: [emptySheet(SHEET)], names: [] });
  await sheets.whenCalculated();
  book = previewWorkbook(sheets);
  const inputs = CELLS.flatMap((row, at) => row.map((content, column) => ({ sheet: SHEET, row: at, column, content })));
  const cells = EXPRESSIONS.map((text, at) => ({
    sheet: SHEET,
    row: at,
    column: 6,
    content: `=WARMBACK.${idFor(text)}(${text})`,
  }));
  await book.write([...inputs, ...cells]);
  await sheets.whenCalculated();
  const read = cells.map(({ sheet, row, column, content }) => ({
    address: { sheet, row, column },
    formula: content,
    value: 1,
  }));
  readings = await readCells(book, read, { known: KNOWN, call: () => ({ value: 1 }), log: sessionLog() });
}, 60_000);

afterAll(() => sheets.dispose());

test.each(EXPRESSIONS.map((text, at) => [text, at] as const))("%s is read as the engine passes it", (text, at) => {
  const argument = readings[at]?.calls[0]?.args[0];
  const call = sheets.calls({ sheet: SHEET, row: at, column: 6 }).at(-1);
  if (argument === undefined || "unreadable" in argument) {
    expect(text, "only a comparison at the last digit may be left unread").toMatch(/[<>=]/);
    return;
  }
  if ("fault" in argument) expect(call).toBeUndefined();
  else
    expect([text, argument.value, sameValue(argument.value, (call?.args[0] ?? null) as CellInput as Value)]).toEqual([
      text,
      argument.value,
      true,
    ]);
});
