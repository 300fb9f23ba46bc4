/** Formula texts between what one types and what an .xlsx file keeps. */
import { describe, expect, test } from "vitest";
import { formulaTexts, inlineNames } from "../../src/preview/file/formulaTexts";
import type { FunctionsMetadata } from "../../src/preview/host/functionsMetadata";

const metadata: FunctionsMetadata = {
  functions: [
    { id: "POOL.YEAR", name: "POOL.YEAR", parameters: [] },
    { id: "PIPE.HEADLOSS", name: "PIPE.HEADLOSS", parameters: [] },
  ],
};
const texts = formulaTexts("WARMBACK", metadata);

describe("From a file", () => {
  test.each([
    [
      "the stored name of our function",
      "_xldudf_WARMBACK_PIPE_HEADLOSS(40,B2,100)",
      "=WARMBACK.PIPE.HEADLOSS(40,B2,100)",
    ],
    ["our function as it is typed", "WARMBACK.PIPE.HEADLOSS(40,B2,100)", "=WARMBACK.PIPE.HEADLOSS(40,B2,100)"],
    ["a stored name behind another workbook's number", "[2]!_xldudf_WARMBACK_POOL_YEAR(A1)", "=WARMBACK.POOL.YEAR(A1)"],
    ["a stored name behind a book's name", "Book.xla!_xldudf_WARMBACK_POOL_YEAR(A1)", "=WARMBACK.POOL.YEAR(A1)"],
    [
      "a call inside a newer function",
      "_xlfn.LET(_xlpm.x,_xldudf_WARMBACK_POOL_YEAR(A1),_xlpm.x)",
      "=LET(x,WARMBACK.POOL.YEAR(A1),x)",
    ],
    ["a spilled range", "SUM(_xlfn.ANCHORARRAY(S!E3))", "=SUM(S!E3#)"],
    ["the two prefixes of SORT", "_xlfn._xlws.SORT(A1:A3)", "=SORT(A1:A3)"],
    [
      "a stored name behind a path",
      "'C:\\Add Ins\\tools.xla'!_xldudf_WARMBACK_POOL_YEAR(A1)",
      "=WARMBACK.POOL.YEAR(A1)",
    ],
    [
      "a stored name behind a path with quotes and spaces",
      "1+'C:\\Bob''s ''old'' tools\\my add-in.xlam'!_xldudf_WARMBACK_POOL_YEAR(A1)",
      "=1+WARMBACK.POOL.YEAR(A1)",
    ],
    [
      "a stored name behind a book and its sheet",
      "'C:\\x\\[tools.xlam]Sheet 1'!_xldudf_WARMBACK_POOL_YEAR(A1)",
      "=WARMBACK.POOL.YEAR(A1)",
    ],
    [
      "a stored name behind a sheet's name, which stays",
      "Sheet1!_xldudf_WARMBACK_POOL_YEAR(A1)",
      "=Sheet1!WARMBACK.POOL.YEAR(A1)",
    ],
    [
      "two calls",
      "B1+[2]!_xldudf_WARMBACK_POOL_YEAR(A1)*_xldudf_WARMBACK_POOL_YEAR(A2)",
      "=B1+WARMBACK.POOL.YEAR(A1)*WARMBACK.POOL.YEAR(A2)",
    ],
    ["another add-in's function, which stays", "_xldudf_OTHER_THING(1)", "=_xldudf_OTHER_THING(1)"],
    ["a text that looks like a prefix", 'A1&"_xlfn.x"', '=A1&"_xlfn.x"'],
  ])("a formula from a file reads %s", (_what, stored, typed) => {
    expect(texts.fromFile(stored)).toBe(typed);
  });
});

test.each([
  ["letters", "x".repeat(200_000)],
  ["dots", "a.xl".repeat(50_000)],
  ["starts of stored names", "_xldudf_".repeat(25_000)],
  ["calls behind long names", `${"x".repeat(2_000)}!_xldudf_WARMBACK_POOL_YEAR(`.repeat(100)],
])("a formula of 200,000 %s from a file is read within a second", (_what, formula) => {
  const began = performance.now();
  texts.fromFile(formula);
  expect(performance.now() - began).toBeLessThan(1_000);
});

describe("To a file", () => {
  test.each([
    ["our functions as they are typed", "=WARMBACK.PIPE.HEADLOSS(40,B2,100)", "WARMBACK.PIPE.HEADLOSS(40,B2,100)"],
    ["newer functions under their prefix", '=IFNA(XLOOKUP(A1,B:B,C:C),"")', '_xlfn.IFNA(_xlfn.XLOOKUP(A1,B:B,C:C),"")'],
    ["SORT under its two prefixes", "=SORT(A1:A3)", "_xlfn._xlws.SORT(A1:A3)"],
    [
      "the variables of LET under theirs",
      "=LET(x,A1,y, flow,x*y)",
      "_xlfn.LET(_xlpm.x,A1,_xlpm.y, flow,_xlpm.x*_xlpm.y)",
    ],
    ["a spilled range", "=SUM(E3#)+S!A1#", "SUM(_xlfn.ANCHORARRAY(E3))+_xlfn.ANCHORARRAY(S!A1)"],
    ["the cell of a range in the formula's row", "=@A1:A9*2", "_xlfn.SINGLE(A1:A9)*2"],
    ["old functions without", "=SUM(A1:A3)*2 ", "SUM(A1:A3)*2 "],
    ["a text that names a function", '=A1&"SORT("', 'A1&"SORT("'],
  ])("a formula to a file writes %s", (_what, typed, stored) => {
    expect(texts.toFile(typed)).toBe(stored);
    expect(texts.fromFile(stored)).toBe(typed);
  });
});

test("A name that only one sheet knows gives way to its cell, but not inside a text or a longer name", () => {
  const names = new Map([["flow", "'Loop 2'!$B$2"]]);
  expect(inlineNames('=FLOW*2+flow_rate+LEN("flow")', names)).toBe("='Loop 2'!$B$2*2+flow_rate+LEN(\"flow\")");
});
