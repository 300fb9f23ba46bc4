/** Whole calls: the argument units, pressures by their own text, further arguments, and what a calculation throws. */
import { describe, expect, test } from "vitest";
import { quantity, repeat, sheet, text } from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { BASIS } from "../../core/kernel/define/pressureBasis";
import { gridResult, quantityResult } from "../../core/kernel/define/result";
import { UNFINISHED } from "../../core/kernel/define/slice";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault, notAvailable } from "../../core/kernel/values/fault";
import { quantityMark } from "../../core/kernel/values/quantityMark";
import { doubling, reading } from "./sample";

const run = (definition: CellFunction, ...raw: readonly unknown[]): unknown => {
  const out = evaluate(compile(definition), raw, []);
  return isFault(out) ? `${out.code} ${out.message}` : out;
};

const inUnits = (units: unknown) => run(doubling, 3, null, null, null, null, null, null, units);

describe("The argument units", () => {
  test("counts as US where it is blank or 0", () =>
    expect([inUnits(null), inUnits(""), inUnits(0), inUnits("us")]).toEqual([6, 6, 6, 6]));

  test("is refused if it is a range, and passes an error value on", () => {
    expect(inUnits([["US", "SI"]])).toBe('#VALUE! units: expected "US" or "SI", got a range of 1 row × 2 columns');
    expect(inUnits("#REF!")).toBe("#REF! units: holds #REF!");
    expect(inUnits("x".repeat(256))).toMatch(/^#VALUE! units: a text may have at most 255 characters/);
  });

  test("comes first of what is refused, and is no part of a function without units", () => {
    expect(run(doubling, -3, null, null, null, null, null, null, "metric")).toMatch(/^#VALUE! units: expected/);
    const count = cellFunction({
      id: "SAMPLE.COUNT",
      topic: "sample",
      summary: "A count.",
      args: { count: quantity("count", "a count"), name: text("a name").default("none") },
      returns: quantityResult("count", "the count"),
      cautions: [],
      checks: [],
      compute: ({ count }) => count,
    });
    expect(run(count, 3, "SI")).toBe(3);
    expect(run(count, "SI")).toBe('#VALUE! count: expected a number (count), got "SI": expected a number');
    expect(run(count, 3, "a", "SI")).toBe('#VALUE! SAMPLE.COUNT: takes at most 2 arguments, got "SI" as the third');
  });
});

test.each(["US", "us", " si "])("%j in another argument's place is refused with the place of units", (word) =>
  expect(run(doubling, 3, word)).toMatch(/got " ?(?:us|si) ?": units is the eighth argument$/i),
);

describe("A pressure", () => {
  const absolute = (...raw: readonly unknown[]) => (run(reading, ...raw) as unknown[][])[0]?.[1];
  // U.S. Standard Atmosphere, 1976: 101.325, 89.876 and 54.048 kPa at 0, 1000 and 5000 m (from memory).
  test.each([
    [100, "1000 m", 189.876],
    ["100 kPa gauge", "1000 m", 189.876],
    ["100 kPa", "5000 m", 154.048],
    ["100 kPa absolute", "1000 m", 100],
    ["100 kPa absolute", "gauge", 100],
    ["100 kPa gauge", "absolute", 201.325],
    [100, "absolute", 100],
    [100, null, 201.325],
  ])("of %j read as %j is %d kPa absolute", (pressure, basis, kPa) =>
    expect(absolute(pressure, basis, "SI")).toBeCloseTo(kPa, 1),
  );

  test("is shown as it was read", () => {
    const asRead = (basis: string) => (run(reading, 100, basis, "SI") as unknown[][])[1]?.[1];
    for (const basis of ["gauge", "absolute", "1000 m"]) expect(asRead(basis)).toBeCloseTo(100, 9);
  });

  test("of a vacuum is refused with the value given", () => {
    expect(run(reading, -101.325, null, "SI")).toBe(
      "#VALUE! pressure: must be above -101.325 kPa (vacuum), got -101.325 kPa",
    );
    expect(run(reading, -120, null, "SI")).toBe("#VALUE! pressure: must be above -101.325 kPa (vacuum), got -120 kPa");
    expect(run(reading, 0, "absolute", "SI")).toMatch(/^#VALUE! pressure: must be above 0 kPa \(vacuum\), got 0 kPa/);
  });

  test("may be left out where it is optional", () => {
    const optional = cellFunction({
      ...reading,
      id: "SAMPLE.OPTIONALREADING",
      args: { pressure: quantity("pressure", "a reading", { reading: true }).optional(), basis: BASIS },
      returns: gridResult("the value given"),
      compute: ({ pressure }: { readonly pressure?: number | undefined }) => [[pressure ?? "left out"]],
    } as never);
    expect(run(optional, null)).toEqual([["left out"]]);
    expect(run(optional, 0)).toEqual([[101_325]]);
  });
});

describe("Further arguments", () => {
  const all = cellFunction({
    id: "SAMPLE.ALL",
    topic: "sample",
    summary: "Shows all arguments.",
    args: { name: text("a name"), rest: repeat("all others") },
    returns: gridResult("the value given"),
    cautions: [],
    checks: [],
    compute: ({ name, rest }) => [[name, rest.map((each) => JSON.stringify(each)).join(" ")]],
  });

  test("come as they are, without end", () => {
    expect(run(all, "a", 1, null, [[2, 3]], "#N/A", {})).toEqual([["a", '1 null [[2,3]] "#N/A" null']]);
    expect(run(all, "a")).toEqual([["a", ""]]);
  });

  test("come behind several of their own place", () => {
    const named = { name: text("a name"), place: text("a place"), rest: repeat("all others") };
    const three = { ...all, id: "SAMPLE.THREE", args: named };
    expect(run(three, "a", "b", 1, 2, 3)).toEqual([["a", "1 2 3"]]);
  });

  test("that hold too much are refused by name", () =>
    expect(run(all, "a", "x".repeat(256))).toMatch(/^#VALUE! rest: a text may have at most 255 characters/));

  test("are refused elsewhere unless they are blank, by the place of the first", () => {
    const call = (...more: readonly unknown[]) => run(doubling, 3, ...Array<null>(7).fill(null), ...more);
    expect(call(null, "", {})).toBe(6);
    expect(call(null, 5, 6)).toMatch(/takes at most 8 arguments, got 5 as the tenth$/);
  });

  test("that are too long beyond the last are refused by function and place", () =>
    expect(run(doubling, 3, null, null, null, null, null, null, "US", "x".repeat(256))).toMatch(
      /^#VALUE! SAMPLE\.DOUBLE, ninth argument: a text may have at most 255 characters, got 256: "x/,
    ));

  test("of the largest range hold its cells, of any other argument 40,000", () => {
    const wide = cellFunction({
      ...all,
      id: "SAMPLE.WIDE",
      args: { name: sheet("a range", 50_000) },
      compute: () => [[1]],
    } as never);
    const column = Array.from({ length: 40_001 }, () => [1]);
    expect(run(wide, column)).toEqual([[1]]);
    expect(run(all, column)).toMatch(/^#VALUE! name: a range may hold at most 40000 cells/);
  });
});

describe("What a calculation throws", () => {
  const throwing = (thrown: unknown) =>
    cellFunction({
      ...doubling,
      compute: () => {
        throw thrown;
      },
    } as never);

  test("is shown in the call's units", () => {
    const hot = notAvailable(`length: must be below ${quantityMark("length", 1)}`);
    expect(run(throwing(hot), 1, null, null, null, null, null, null, "SI")).toBe("#N/A length: must be below 1 m");
    expect(run(throwing(hot), 1)).toBe("#N/A length: must be below 3.28084 ft");
  });

  test("is a fault unchanged where it has no units", () => {
    const plain = notAvailable("length: too long");
    expect(evaluate(compile(throwing(plain)), [1], [])).toBe(plain);
  });

  test("becomes a sentence if it is no fault", () => {
    expect(run(throwing(new Error("no root")), 1)).toBe("#N/A can't be computed for these inputs: no root");
    expect(run(throwing("no root"), 1)).toBe("#N/A can't be computed for these inputs: no root");
  });

  test("goes through if the slice is over", () =>
    expect(() => evaluate(compile(throwing(UNFINISHED)), [1], [], () => true)).toThrow(UNFINISHED));
});
