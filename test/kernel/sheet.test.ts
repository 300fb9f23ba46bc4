import { describe, expect, test } from "vitest";
import { sheet } from "../../core/kernel/argument";
import { admitLabel, labelKey } from "../../core/kernel/blockLabel";
import { block, quantity } from "../../core/kernel/argument";
import { cellFunction } from "../../core/kernel/cellFunction";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import { us } from "../../core/kernel/quantity";
import { of, table, word } from "../../core/kernel/result";

const counted = cellFunction({
  id: "TEST.SHEET",
  topic: "test",
  summary: "Counts the cells of a range.",
  args: { range: sheet("a range", 50_000) },
  gives: table("cells", { size: word("rows"), filled: of("count", "filled", { or: "none" }) }),
  cautions: [],
  checks: [],
  work: ({ range }) => {
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
});
