import { describe, expect, test } from "vitest";
import { quantity } from "../../core/kernel/define/argument";
import { cellFunction, type CellFunction } from "../../core/kernel/define/cellFunction";
import { quantityResult } from "../../core/kernel/define/result";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { blocks, doubling, heavyOne, reading, tooLong } from "./sample";

const run = (definition: CellFunction, ...raw: unknown[]): unknown => {
  const out = evaluate(compile(definition), raw, [definition]);
  return isFault(out) ? `${out.code} ${out.message}` : out;
};

describe("scalar arguments", () => {
  test.each<[string, unknown[], unknown]>([
    ["a number counts in the US unit", [3], 6],
    ["a number counts in metres under SI", [3, null, null, null, null, null, null, "SI"], 6],
    ["a text brings its own unit", ["12 m"], 24 / 0.3048],
    ["a text number counts as the number", ["7"], 14],
    ["null and empty text are left out", [3, null, "", null], 6],
    ["a matrix of one cell is that cell", [[[3]]], 6],
    ["an object from a host under stale metadata counts as left out", [3, { address: "A1" }], 6],
    [
      "an Invocation behind the last argument is ignored",
      [3, null, null, null, null, null, null, null, { address: "A1" }],
      6,
    ],
    ["a choice ignores case, spaces and hyphens", [3, " TWI-CE "], 12],
    ["a zero where only words can stand is a blank cell", [3, 0], 6],
    ["an either takes its word", [3, null, null, null, null, "half"], 6 + 0.5 / 0.3048],
    ["an either takes its quantity", [3, null, null, null, null, "50%"], 6 + 0.5 / 0.3048],
    ["several values share the last one's unit", [3, null, null, null, null, null, "12; 16 ft"], 22],
  ])("%s", (_, raw, expected) => {
    const out = run(doubling, ...raw);
    if (typeof expected === "number") expect(out).toBeCloseTo(expected, 9);
    else expect(out).toBe(expected);
  });

  test.each<[string, unknown[], string]>([
    ["a blank required argument is named", [null], "#VALUE! length: is blank, but it is needed (a length)"],
    ["zero where positive is needed", [0], "#VALUE! length: must be above 0 ft, got blank or zero"],
    ["a negative value", [-2], "#VALUE! length: must be above 0 ft, got -2 ft"],
    ["a value above the limit", [1e9], "#VALUE! length: must be at most 3280840 ft, got 1000000000 ft"],
    ["a word for a number", ["n/a"], '#VALUE! length: expected length in ft, got "n/a": expected a number'],
    ["a wrong dimension", ["5 W"], '#VALUE! length: expected length in ft, got "5 W": "W" is not a unit of length'],
    ["a boolean", [true], "#VALUE! length: expected length in ft, got TRUE"],
    ["NaN", [Number.NaN], "#VALUE! length: expected a finite number, got no number"],
    ["infinity", [Number.POSITIVE_INFINITY], "#VALUE! length: expected a finite number, got infinity"],
    ["a range for one value", [[[1, 2]]], "#VALUE! length: expected one value, got a range of 1 row × 2 columns"],
    ["an unknown word", [3, "thrice"], '#VALUE! scale: expected "once" or "twice", got "thrice"'],
    [
      "a unit word in another place",
      [3, "SI"],
      '#VALUE! scale: expected "once" or "twice", got "SI": units is the eighth argument',
    ],
    [
      "an unknown system",
      [3, null, null, null, null, null, null, "metric"],
      '#VALUE! units: expected "US" or "SI" as the eighth argument, got "metric"',
    ],
    [
      "too many arguments",
      [3, null, null, null, null, null, null, "US", 9],
      "#VALUE! SAMPLE.DOUBLE: takes at most 8 arguments, got 9 as the ninth",
    ],
    [
      "a fraction above one",
      [3, null, null, null, null, 60],
      "#VALUE! share: must be at most 1 (a fraction: type 60% or 0.6), got 60",
    ],
    ["an error value passes through", ["#DIV/0!"], "#DIV/0! length: holds #DIV/0!"],
    [
      "a text too long",
      [3, null, null, null, "much too long a name"],
      "#VALUE! name: may have at most 10 characters, got 20",
    ],
    [
      "the wrong count of several",
      [3, null, null, null, null, null, "1;2;3"],
      '#VALUE! widths: expected 1 or 2 values parted by ";", got 3',
    ],
  ])("%s is refused in words", (_, raw, message) => expect(run(doubling, ...raw)).toBe(message));

  test("a whole column is refused by name", () => {
    const column = Array.from({ length: 50_000 }, () => [1]);
    expect(run(doubling, column)).toMatch(/^#VALUE! length: a range may hold at most 40000 cells, got 50000 × 1/);
  });
});

describe("pressure readings", () => {
  const rows = (...raw: unknown[]): (string | number)[] => {
    const out = evaluate(compile(reading), raw, [reading]);
    if (isFault(out)) throw new Error(out.message);
    return (out as (string | number)[][]).map((line) => line[1] ?? "");
  };

  test("a gauge reading counts over the standard atmosphere and comes back as read", () => {
    const [absolute, asRead] = rows(120);
    expect(absolute).toBeCloseTo(134.696, 3);
    expect(asRead).toBeCloseTo(120, 9);
  });

  test("a reading in psia overrides the basis", () => expect(rows("134.7 psia")[0]).toBeCloseTo(134.7, 9));

  test("a reading in psig counts over sea level where the basis is absolute", () =>
    expect(rows("120 psig", "absolute")[0]).toBeCloseTo(134.696, 3));

  test("an altitude lowers the atmosphere by about 2.5 psi at 5,000 ft", () =>
    expect(rows(120, "5000 ft")[0]).toBeCloseTo(134.696 - 2.468, 2));

  test("a reading below vacuum is refused", () =>
    expect(run(reading, -20)).toMatch(/must be above -14\.6959 psi \(vacuum\)/));

  test("a row that doesn't apply is empty and one outside its range is a fault of its own", () => {
    const out = rows(120);
    expect(out[3]).toBe("");
    expect(isFault(out[4])).toBe(true);
  });
});

describe("blocks and rows", () => {
  const line = (...raw: unknown[]): unknown[] => {
    const out = evaluate(compile(blocks), raw, [blocks]);
    if (isFault(out)) throw new Error(out.message);
    return (out as unknown[][])[1] ?? [];
  };

  test("labels match without case, spacing and punctuation; a unit column wins", () => {
    const [cover, area, temperature] = line([
      ["INPUTS", "value", "unit"],
      ["Pool area:", 50, "m2"],
      ["", "", ""],
      ["Water", "", ""],
      ["water-temperature", 27, "degC"],
      ["COVER", "Bubble", null],
    ]);
    expect(cover).toBe("bubble");
    expect(area).toBeCloseTo(50 / 0.09290304, 6);
    expect(temperature).toBeCloseTo(80.6, 9);
  });

  test("blanks that a host hands over as zeros count as blanks: headings, units, words", () => {
    const [cover, area, temperature] = line([
      ["INPUTS", 0, 0],
      [0, 0, 0],
      ["pool area", 500, 0],
      ["Water", 0, 0],
      ["water temperature", 80, 0],
      ["cover", 0, 0],
    ]);
    expect([cover, area]).toEqual(["none", 500]);
    expect(temperature).toBeCloseTo(80, 9);
  });

  test("missing optional labels take their defaults", () => {
    const [cover, , temperature] = line([["pool area", 500]]);
    expect(cover).toBe("none");
    expect(temperature).toBeCloseTo(80, 9);
  });

  test.each<[string, unknown, RegExp]>([
    [
      "unknown",
      [
        ["pool area", 500],
        ["pool aria", 3],
      ],
      /no label "pool aria" here; the nearest is "pool area"/,
    ],
    [
      "twice",
      [
        ["pool area", 500],
        ["Pool Area", 3],
      ],
      /the label "Pool Area" appears twice/,
    ],
    ["missing", [["cover", "none"]], /the label "pool area" is missing or blank: the pool's surface/],
    ["one column", [["pool area"], ["cover"]], /two or three columns/],
    ["a scalar", 5, /expected a range of labels and values, got 5/],
    ["a wrong unit", [["pool area", 500, "gal"]], /"gal" is not a unit of area/],
  ])("a label that is %s is refused", (_, matrix, message) => expect(run(blocks, matrix)).toMatch(message));

  test("rows come with or without a header, in any order, with units in the header", () => {
    const block = [["pool area", 1]];
    expect(
      line(block, [
        [10, 5],
        [20, 3],
      ])[3],
    ).toBeCloseTo(30, 9);
    expect(
      line(block, [
        ["head (m)", "flow (m³/h)"],
        [5, 1],
      ])[3],
    ).toBeCloseTo(4.402868, 5);
    expect(line(block, [["Flow, gpm"], [7]])[3]).toBeCloseTo(7, 9);
  });

  test.each<[string, unknown, RegExp]>([
    ["too many rows", [[1], [2], [3], [4]], /expected 1 to 3 rows, got 4/],
    [
      "an unknown head",
      [
        ["flow", "hed"],
        [1, 2],
      ],
      /no label "hed" here; the nearest is "head"/,
    ],
    [
      "a text in numbers",
      [
        [1, 2],
        ["x", 3],
      ],
      /curve, row 2, flow: expected water flow in gpm, got "x"/,
    ],
    [
      "a blank",
      [
        [1, 2],
        [null, 3],
      ],
      /curve, row 2, flow: is blank/,
    ],
  ])("rows with %s are refused with their place", (_, matrix, message) =>
    expect(run(blocks, [["pool area", 1]], matrix)).toMatch(message),
  );
});

describe("the memo", () => {
  test("a heavy function runs once for equal arguments and again for others", () => {
    let runs = 0;
    const definition = heavyOne(() => (runs += 1));
    const compiled = compile(definition);
    const ask = (...raw: unknown[]): unknown => evaluate(compiled, raw, [definition]);
    expect([ask(1), ask(1), ask(2), ask(1)]).toEqual([1, 1, 2, 1]);
    expect(runs).toBe(2);
    ask(1, [[1], [2]]);
    ask(1, [[1], [2]]);
    ask(1, [[2], [1]]);
    expect(runs).toBe(4);
    for (let value = 10; value < 80; value++) ask(value);
    ask(1);
    expect(runs).toBe(75);
  });
});

describe("explaining a call", () => {
  const compiled = compile(doubling);

  test("an explanation gives arguments with units and marks defaults", () => {
    const { args, out } = explain(compiled, ["12 m"], [doubling]);
    expect(out).toBeCloseTo(24 / 0.3048, 9);
    expect(args.map(({ label, value, unit, given }) => [label, value, unit, given]).slice(0, 3)).toEqual([
      ["length", 39.3700787402, "ft", true],
      ["scale", "once", "", false],
      ["add", "", "", false],
    ]);
  });

  test("an explanation raises cautions in the units of the call, most severe first", () => {
    expect(explain(compiled, [400], [doubling]).cautions).toEqual([
      { code: "SAMPLE-LONG", severity: "Caution", text: "400 ft doubles to 800 ft" },
    ]);
    const si = explain(compiled, [2000, null, null, null, null, null, null, "SI"], [doubling]).cautions;
    expect(si.map(({ code }) => code)).toEqual(["SAMPLE-LONG", "UNUSUAL-INPUT"]);
    expect(si[0]?.text).toBe("2000 m doubles to 4000 m");
    expect(si[1]?.text).toBe("length: 2000 m is outside the usual 0 m to 1000 m; check value and unit.");
  });

  test("facts that a function computes are computed for an explanation, not for a plain cell", () => {
    let computed = 0;
    const deferring = cellFunction({
      id: "SAMPLE.DEFERRING",
      topic: "sample",
      summary: "Doubles a length and defers its facts.",
      args: { length: quantity("length", "a length", { above: 0 }) },
      returns: quantityResult("length", "the doubled length"),
      facts: { doubled: "length" },
      cautions: [{ rule: tooLong, raisedBy: { length: 400 } }],
      checks: [],
      compute({ length }, { recordFacts }) {
        recordFacts(() => {
          computed++;
          return { doubled: 2 * length };
        });
        return 2 * length;
      },
    });
    expect(run(deferring, 400)).toBeCloseTo(800, 9);
    expect(computed).toBe(0);
    expect(explain(compile(deferring), [400], [deferring]).cautions.map(({ code }) => code)).toEqual(["SAMPLE-LONG"]);
    expect(computed).toBe(1);
  });

  test("a zero of a block that may be a blank cell raises ZERO-OR-BLANK; one that means the same as a blank doesn't", () => {
    const codes = (rows: readonly (readonly unknown[])[]) =>
      explain(compile(blocks), [rows], [blocks]).cautions.filter(({ code }) => code === "ZERO-OR-BLANK");
    expect(codes([["pool area", 1]])).toEqual([]);
    expect(
      codes([
        ["pool area", 1],
        ["cover", 0],
        ["wind at 10 m", 5],
      ]),
    ).toEqual([]);
    const [raised] = codes([
      ["pool area", 1],
      ["water temperature", 0],
      ["wind at 10 m", 0],
    ]);
    expect(raised?.severity).toBe("Caution");
    expect(raised?.text).toMatch(/^Taken as 0: "water temperature", "wind at 10 m"\./);
  });

  test("a refused call is explained with what came", () => {
    const told = explain(compiled, [-1, "twice"], [doubling]);
    expect(isFault(told.out)).toBe(true);
    expect(told.args.slice(0, 2).map(({ label, value }) => [label, value])).toEqual([
      ["length", -1],
      ["scale", "twice"],
    ]);
  });
});
