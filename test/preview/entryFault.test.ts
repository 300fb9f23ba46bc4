/** Rules of cells as .xlsx files carry them (ECMA-376 part 1, 18.3.1.32 and 18.18.20), tested on entries. */
import { describe, expect, test } from "vitest";
import type { PlainValue, ValidationData } from "../../src/preview/file/bookData";
import { entryFault } from "../../src/preview/file/entryFault";
import { starterData } from "../../src/preview/file/starterBook";
import { STARTER_SHEETS } from "../../src/sheets";

const PLACE = { row: 3, column: 1 };

const rule = (given: Partial<ValidationData> & Pick<ValidationData, "type" | "formulae">): ValidationData => ({
  allowBlank: true,
  showErrorMessage: true,
  error: "a right one",
  ...given,
});

const keeps = (validation: ValidationData, value: PlainValue | null): boolean =>
  entryFault(validation, value, PLACE) === undefined;

describe("An entry and its cell's rule", () => {
  test.each<[string, ValidationData, PlainValue[], PlainValue[]]>([
    ["a list", rule({ type: "list", formulae: ['"open,1-1/2 in"'] }), ["open", "1-1/2 in", " Open"], ["shut", 3]],
    [
      "limits",
      rule({ type: "decimal", operator: "between", formulae: [33, "104"] }),
      [33, 104, 50.5],
      [32.9, -5, "warm", true],
    ],
    ["limits without an operator, which are between", rule({ type: "decimal", formulae: [1, 2] }), [1], [0, 3]],
    ["above", rule({ type: "decimal", operator: "greaterThan", formulae: [0] }), [0.1], [0, -1]],
    ["whole numbers", rule({ type: "whole", operator: "notBetween", formulae: [3, 5] }), [2, 6], [4, 2.5]],
    [
      "a text's length",
      rule({ type: "textLength", operator: "lessThanOrEqual", formulae: [3] }),
      ["abc", 12],
      ["abcd"],
    ],
    ["a number", rule({ type: "custom", formulae: ["ISNUMBER(B4)"] }), [0], ["abc"]],
    [
      "terms that are joined",
      rule({ type: "custom", formulae: ["=AND(ISNUMBER($B$4), B4>0, B4<=1.5)"] }),
      [0.1, 1.5],
      [0, 1.6, "x"],
    ],
  ])("%s", (_name, validation, right, wrong) => {
    for (const value of right) expect(keeps(validation, value), String(value)).toBe(true);
    for (const value of wrong) expect(entryFault(validation, value, PLACE), String(value)).toBe("a right one");
  });

  test("a blank breaks a rule only where it may not be blank", () => {
    const validation = rule({ type: "custom", formulae: ["LEN(B4)>0"] });
    expect([keeps(validation, null), keeps(validation, "")]).toEqual([true, true]);
    expect(keeps({ ...validation, allowBlank: false }, "")).toBe(false);
  });

  test("a rule that asks other cells, or only informs, finds nothing wrong", () => {
    for (const formulae of [["ISNUMBER(C9)"], ["B4>C9"], ["COUNTIF(A:A,B4)=1"]])
      expect(keeps(rule({ type: "custom", formulae }), "abc")).toBe(true);
    expect(keeps(rule({ type: "decimal", operator: "greaterThan", formulae: ["C9"] }), "abc")).toBe(true);
    expect(keeps(rule({ type: "list", formulae: ["$C$1:$C$9"] }), "abc")).toBe(true);
    expect(keeps(rule({ type: "whole", formulae: [1, 2], showErrorMessage: false }), "abc")).toBe(true);
  });

  test("every rule of the starter sheets refuses some entry, and none refuses the sheet's own", () => {
    const cells = STARTER_SHEETS.flatMap((starter) => starterData(starter, starter.name, new Set()).sheet.cells);
    const ruled = cells.filter(({ validation, formula }) => validation !== undefined && formula === undefined);
    expect(ruled.length).toBeGreaterThan(100);
    for (const { validation, value, row, column } of ruled) {
      expect(entryFault(validation, value, { row, column })).toBeUndefined();
      const wrong = [-1e9, 1e9, "no such word"].map((entry) => entryFault(validation, entry, { row, column }));
      // Any text will do where a cell must only be filled.
      const filled = validation?.type === "custom" && String(validation.formulae[0]).startsWith("LEN");
      expect(wrong.some((fault) => fault === validation?.error)).toBe(!filled);
    }
  });
});
