/** Calls over constants without the sheet engine: the same answers as from the engine, to the letter. */
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { CATALOGUE, formulaOf } from "../../core";
import { rawByPlace } from "../../core/kernel/explain/describe";
import { evaluateFormulas } from "../../src/preview/cli/evaluate";
import { literalCalls, type LiteralCalls } from "../../src/preview/cli/literalCalls";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import type { LoadedFunctions } from "../../src/preview/host/loadFunctions";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { startHeadless } from "../../src/preview/univer/start";

let set: LoadedFunctions;
let book: SheetBook;
let literal: LiteralCalls;
beforeAll(() => {
  set = loadFunctions(inject("build"));
  book = startHeadless(set, { sheets: [emptySheet("Sheet1")], names: [] });
  literal = literalCalls(set);
});
afterAll(() => book.dispose());

/** One check and one caution of every function, all of them in the full run. */
const MOST = process.env["VERIFY_FULL"] === "1" ? Infinity : 1;

const KNOWN = CATALOGUE.flatMap((definition) =>
  [
    ...definition.checks.slice(0, MOST).map(({ inputs }) => inputs),
    ...definition.cautions.slice(0, MOST).map(({ raisedBy }) => raisedBy),
  ].map((inputs) => formulaOf(definition, rawByPlace(definition, inputs))),
);

/** The formulas whose answers differ from the engine's. */
async function differing(formulas: readonly string[]): Promise<readonly string[]> {
  const theirs = await evaluateFormulas(book, formulas, set.warmback);
  return formulas.filter((formula, at) => {
    const ours = literal(formula);
    return ours !== undefined && JSON.stringify(ours) !== JSON.stringify(theirs[at]);
  });
}

const ODD = [
  'warmback.pipe.headloss(40,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS( 40 , "2 in" , 100 )',
  "=WARMBACK.PIPE.HEADLOSS()",
  "=WARMBACK.PIPE.HEADLOSS(,,)",
  "=WARMBACK.PIPE.HEADLOSS(40)",
  '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100,,,,,,,,,,,,,,)',
  '=WARMBACK.PIPE.HEADLOSS(-40,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(+40,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(--40,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(4000%,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(-4000%%,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(4E1,"2 in",1E2)',
  '=WARMBACK.PIPE.HEADLOSS(4.0e+1,"2 in",.1E3)',
  '=WARMBACK.PIPE.HEADLOSS("40","2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS("4E1","2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS("40 gpm","2 in","30 m")',
  '=WARMBACK.PIPE.HEADLOSS("","2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(TRUE,"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS(40,"2 ""in""",100)',
  '=WARMBACK.PIPE.HEADLOSS(40,"3/8",100)',
  '=WARMBACK.PIPE.HEADLOSS({40},"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS({40,50},"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS({40;50},"2 in",100)',
  '=WARMBACK.PIPE.HEADLOSS({-40},"2 in",{100})',
  '=WARMBACK.PIPE.HEADLOSS(1E-308,"2 in",9007199254740993)',
  `=WARMBACK.PIPE.HEADLOSS(40,"${"x".repeat(255)}",100)`,
  '=WARMBACK.POOL.YEAR({"area",TRUE;"a,b;c",1})',
  "=WARMBACK.POOL.YEAR(5)",
  "=WARMBACK.NOTE.AGREES(1,1.001)",
  "=WARMBACK.NOTE.EDITION()",
  '=WARMBACK.NOTE.INPUTS("POOL.YEAR")',
  "=WARMBACK.REFRIG.LIST()",
];

describe("A call over constants", () => {
  test(`${String(KNOWN.length)} calls of all functions have the engine's answers`, { timeout: 240_000 }, async () => {
    expect(await differing(KNOWN)).toEqual([]);
    // Its column of published values holds error codes as texts, which the engine takes for errors.
    expect(KNOWN.filter((formula) => literal(formula) === undefined)).toEqual(["=WARMBACK.NOTE.SELFTEST()"]);
  });

  test("odd constants and numbers of arguments have the engine's answers too", async () => {
    expect(await differing(ODD)).toEqual([]);
    expect(ODD.filter((formula) => literal(formula) === undefined)).toEqual([
      '=WARMBACK.PIPE.HEADLOSS(-4000%%,"2 in",100)',
      // A text that the engine takes for a number.
      '=WARMBACK.PIPE.HEADLOSS("4E1","2 in",100)',
    ]);
  });

  test.each([
    "=1+1",
    '=WARMBACK.PIPE.HEADLOSS(A1,"2 in",100)',
    '=WARMBACK.PIPE.HEADLOSS(20+20,"2 in",100)',
    '=WARMBACK.PIPE.HEADLOSS(ABS(40),"2 in",100)',
    '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100)*2',
    '=WARMBACK.PIPE.HEADLOSS(#N/A,"2 in",100)',
    '=@WARMBACK.PIPE.HEADLOSS(40,"2 in",100)',
    "=WARMBACK.NOSUCH(1)",
    "=NOSUCH(1)",
    "=WARMBACK.PIPE.HEADLOSS(1",
    `=WARMBACK.PIPE.HEADLOSS(40,"${"x".repeat(256)}",100)`,
  ])("%.60s is left to the sheet engine", (formula) => {
    expect(literal(formula)).toBeUndefined();
  });
});
