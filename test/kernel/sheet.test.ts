import { describe, expect, test } from "vitest";
import { sheet } from "../../core/kernel/define/argument";
import { admitLabel, labelKey, labelKind, numberKind } from "../../core/kernel/call/admitLabel";
import { block, choice, either, quantity, several, text } from "../../core/kernel/define/argument";
import { cellFunction } from "../../core/kernel/define/cellFunction";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { quantityResult, tableResult, wordResult } from "../../core/kernel/define/result";

const counted = cellFunction({
  id: "TEST.SHEET",
  topic: "test",
  summary: "Counts the cells of a range.",
  args: { range: sheet("a range", 50_000) },
  returns: tableResult("cells", {
    size: wordResult("rows"),
    filled: quantityResult("count", "filled", { or: "none" }),
  }),
  cautions: [],
  checks: [],
  compute: ({ range }) => {
    const filled = range.flat().filter((cell) => cell !== null).length;
    return [{ size: String(range.length), filled: filled === 0 ? ("none" as const) : filled }];
  },
});

const run = (raw: unknown) => evaluate(compile(counted), [raw], []);
const message = (raw: unknown): string => {
  const out = run(raw);
  return isFault(out) ? `${out.code} ${out.message}` : "";
};

describe("a range as it stands", () => {
  test("a plain range may be longer than other arguments, up to its own limit", () => {
    expect(isFault(run(Array.from({ length: 45_000 }, () => [1])))).toBe(false);
    expect(message(Array.from({ length: 50_001 }, () => [1]))).toMatch(/range: a range may hold at most 50000 cells/);
  });

  test("takes one cell as a range of one", () => {
    expect((run(7) as unknown[][])[1]).toEqual(["1", 1]);
  });

  test("passes an error value through", () => {
    expect(message([[1], ["#DIV/0!"]])).toMatch(/^#DIV\/0! range/);
  });

  test("shows the declared word in place of a number", () => {
    expect((run([[null, null]]) as unknown[][])[1]).toEqual(["1", "none"]);
  });
});

describe("one label of a block by itself", () => {
  const inputs = block({ poolArea: quantity("area", "area", { above: 0 }) }, "block");

  test("a label is found without case and spacing, and an unknown one is refused with the nearest", () => {
    expect(labelKey(inputs, "Pool Area", "label")).toBe("poolArea");
    expect(() => labelKey(inputs, "pol area", "label")).toThrow(/nearest is "pool area"/);
  });

  test("a label by itself is admitted as its block admits it", () => {
    expect(admitLabel(inputs, "poolArea", 10, "values", "US", {})).toBeCloseTo(us("area", 10), 12);
    expect(() => admitLabel(inputs, "poolArea", -1, "values", "US", {})).toThrow(/values: must be above 0/);
    expect(() => admitLabel(inputs, "poolArea", null, "values", "US", {})).toThrow(/values: is blank/);
  });

  test("a blank text is refused as a blank, and a unit's word without a place", () => {
    expect(() => admitLabel(inputs, "poolArea", "", "values", "US", {})).toThrow(/values: is blank/);
    expect(() => admitLabel(inputs, "poolArea", "SI", "values", "US", {})).toThrow(
      /^values: expected area in ft², got "SI": expected a number$/,
    );
  });

  test("a label's number has the kind of its quantity, by an earlier choice too; what has no single number is refused", () => {
    const word = choice("Word", ["none"], "a word");
    const area = quantity("area", "an area");
    const kinds = block(
      {
        fuel: word,
        price: quantity({ choice: "fuel", kinds: { none: "money", "two words": "mass", third: "time" } }, "a price"),
        cover: either(word, area, "a cover"),
        widths: several("length", "widths", [1, 2]),
        pairs: several("length", "pairs", [2]),
        name: text("a name"),
      },
      "block",
    );
    const kindOf = (label: string, fuel = "none") => labelKind(kinds, label, "range", { fuel });
    expect(["price", "Cover", "widths"].map((label) => kindOf(label))).toEqual(["money", "area", "length"]);
    expect([kindOf("price", "two words"), kindOf("price", "Third"), kindOf("price", "other")]).toEqual([
      "mass",
      "time",
      "number",
    ]);
    for (const label of ["fuel", "pairs", "name"])
      expect(() => kindOf(label)).toThrow("range: takes no single number, so it has no range");
    expect(numberKind(area.shape, "range", {})).toBe("area");
  });
});
