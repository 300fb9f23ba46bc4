/** Which functions have the argument units, and its place. */
import { describe, expect, test } from "vitest";
import {
  block,
  choice,
  either,
  quantity,
  repeat,
  rows,
  several,
  sheet,
  text,
  yesNo,
  type Args,
} from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import {
  gridResult,
  listResult,
  quantityResult,
  rowResult,
  tableResult,
  wordResult,
  type ResultShape,
} from "../../core/kernel/define/result";
import { hasUnits, placedArgs } from "../../core/kernel/define/unitsArgument";

const withArgs = (args: Args, returns: ResultShape = wordResult("a word"), unitsAfter?: string): CellFunction =>
  cellFunction({
    id: "SAMPLE.UNITS",
    topic: "sample",
    summary: "Nothing.",
    args,
    returns,
    ...(unitsAfter === undefined ? {} : { unitsAfter }),
    cautions: [],
    checks: [],
    compute: () => "",
  });

describe("The argument units", () => {
  const length = quantity("length", "a length");
  const word = choice("Word", ["none"], "a word");
  const count = quantity("count", "a count");
  const byFuel = (none: "money" | "count") =>
    quantity({ choice: "fuel", kinds: { none: "count", some: none } }, "a price");

  test.each<[string, boolean, Args]>([
    ["a quantity with a unit", true, { length }],
    ["one that has a unit in US units alone", true, { cv: quantity("flow coefficient", "Cv") }],
    ["a quantity that has a unit by one word of a choice", true, { fuel: word, price: byFuel("money") }],
    ["several values", true, { widths: several("length", "widths", [1]) }],
    ["a word or a quantity", true, { share: either(word, length, "a share") }],
    ["a block with a quantity among its labels", true, { inputs: block({ word, length }, "a block") }],
    ["rows with a quantity among the columns", true, { curve: rows({ word, length }, "rows", { least: 1, most: 2 }) }],
    ["a range", true, { range: sheet("a range", 9) }],
    ["nothing", false, {}],
    ["a count", false, { count }],
    ["a quantity without unit by every word of a choice", false, { fuel: word, price: byFuel("count") }],
    ["several counts", false, { counts: several("count", "counts", [1]) }],
    ["a word or a count", false, { share: either(word, count, "a share") }],
    ["words, texts and yes or no", false, { word, name: text("a name"), shown: yesNo("whether") }],
    ["a block of words", false, { inputs: block({ word, count }, "a block") }],
    ["rows of words", false, { names: rows({ word, count }, "rows", { least: 1, most: 2 }) }],
    ["whatever follows", false, { rest: repeat("the rest") }],
  ])("is there for a function that takes %s: %s", (_, has, args) => {
    expect(hasUnits(withArgs(args))).toBe(has);
    expect(placedArgs(withArgs(args)).map(([name]) => name)).toEqual([...Object.keys(args), ...(has ? ["units"] : [])]);
  });

  test.each<[string, boolean, ResultShape]>([
    ["a quantity with a unit", true, quantityResult("length", "a length")],
    ["a count", false, quantityResult("count", "a count")],
    [
      "a list with one",
      true,
      listResult("a list", { note: wordResult("a word"), size: quantityResult("length", "x") }),
    ],
    ["a table with one", true, tableResult("a table", { size: quantityResult("length", "x") })],
    ["a row with one", true, rowResult("a row", { size: quantityResult("length", "x") })],
    ["a grid", false, gridResult("a grid")],
  ])("is there for a function that answers %s: %s", (_, has, returns) =>
    expect(hasUnits(withArgs({ count }, returns))).toBe(has),
  );

  test("follows the last argument, or the one before those that were added later", () => {
    const args = { length, count, word };
    expect(placedArgs(withArgs(args)).map(([name]) => name)).toEqual(["length", "count", "word", "units"]);
    expect(placedArgs(withArgs(args, undefined, "count")).map(([name]) => name)).toEqual([
      "length",
      "count",
      "units",
      "word",
    ]);
  });

  test("is US or SI, and US by default", () => {
    const [, units] = placedArgs(withArgs({ length }))[1] ?? [];
    expect(units).toMatchObject({
      shape: { type: "choice", name: "Units", words: ["US", "SI"] },
      description: "the system of units of plain numbers, US or SI",
      presence: "default",
      fallback: "US",
    });
  });
});
