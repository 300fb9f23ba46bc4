import { describe, expect, it } from "vitest";
import { resolver } from "../../../src/workbook/package/formula/resolve";
import type { BookFacts } from "../../../src/workbook/package";

const named = (...names: readonly string[]): BookFacts =>
  ({
    sheets: [{ name: "Loop" }],
    names: names.map((name) => ({ name, formula: "Loop!$A$1" })),
    tables: [],
  }) as unknown as BookFacts;

describe("Whether a formula may use a name", () => {
  it("says no in a workbook without names", () => {
    expect(resolver(named()).mayName("Flow*2")).toBe(false);
  });

  it.each(["Flow*2", "SUM(FLOW)", "Loop!flow+1", "Flow[Speed]", "LET(_xlpm.a,Flow,_xlpm.a)", "Größe+A1"])(
    "says yes wherever one is found: %s",
    (formula) => {
      const { of, mayName } = resolver(named("Flow", "Größe"));
      expect(of(formula, "Loop").names.size).toBe(1);
      expect(mayName(formula)).toBe(true);
    },
  );

  it("says no for cells and functions alone", () => {
    expect(resolver(named("Flow")).mayName('IF($B2>0,B2/3,"none")')).toBe(false);
  });
});
