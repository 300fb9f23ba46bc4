/** Numbers, inputs and messages as cells show them. */
import { describe, expect, test } from "vitest";
import {
  describeInput,
  isErrorText,
  normalizeInput,
  quoteText,
  refuseErrorText,
  sizeText,
} from "../../core/kernel/values/cellInput";
import { renderMarks } from "../../core/kernel/values/fault";
import { markedValues, quantityMark, replaceMarks } from "../../core/kernel/values/quantityMark";
import { readableNumber, show, showBriefly, showNumber, showReadable, si, us } from "../../core/kernel/values/quantity";
import { inchesOfSize } from "../../core/kernel/values/numberText";

describe("A number in a message", () => {
  test.each([
    [0, "0"],
    [-0, "0"],
    [1 / 3, "0.333333"],
    [2 / 3, "0.666667"],
    [-12.5, "-12.5"],
    [100, "100"],
    [1234.567891, "1234.57"],
    [99999.94, "99999.9"],
    [1e5, "100000"],
    [123456.7, "123457"],
    [1.5e-6, "0.0000015"],
    [9.9e-7, "9.9e-7"],
    [1e-7, "1e-7"],
    [9.99e14, "999000000000000"],
    [1e15, "1e+15"],
    [-2.5e20, "-2.5e+20"],
    [Number.NaN, "no number"],
    [Number.NEGATIVE_INFINITY, "infinity"],
  ])("%d has six significant digits: %s", (value, text) => expect(showNumber(value)).toBe(text));

  test.each([
    [0.123456, "0.1235"],
    [12.3456, "12.35"],
    [999.96, "1000"],
    [1000.4, "1000"],
    [9999.4, "9999"],
    [-9999.4, "-9999"],
    [12345.6, "12,346"],
    [-1234567, "-1,234,567"],
    [1e15, "1e+15"],
  ])("%d to be read has four, whole thousands in full: %s", (value, text) => expect(readableNumber(value)).toBe(text));

  test("has its unit in either system, and a 0 of a shifted scale without rounding errors", () => {
    expect([show(us("temperature", 0), "temperature", "US"), show(273.15, "temperature", "SI")]).toEqual([
      "0 °F",
      "0 °C",
    ]);
    expect(showReadable(us("temperature", 0), "temperature", "US")).toBe("0 °F");
    expect(showReadable(us("heat rate", 36_000), "heat rate", "US")).toBe("36,000 BTU/h");
    expect(showReadable(0.5, "fraction", "SI")).toBe("0.5");
    expect(showBriefly(us("heat rate", 12_345), "heat rate", "US")).toBe("12350 BTU/h");
    expect(showBriefly(us("temperature", 80.123), "temperature", "US")).toBe("80.12 °F");
  });
});

describe("A message of a solver", () => {
  const message = `hot: ${quantityMark("temperature", si("temperature", 25))} above ${quantityMark("length", 1)}`;

  test("is shown in the call's units", () => {
    expect(renderMarks(message, "SI")).toBe("hot: 25 °C above 1 m");
    expect(renderMarks(message, "US")).toBe("hot: 77 °F above 3.28084 ft");
    expect(replaceMarks("plain", () => "changed")).toBe("plain");
  });

  test("has its values by themselves", () => {
    expect(markedValues(message)).toEqual([298.15, 1]);
    expect(markedValues("plain")).toEqual([]);
  });
});

describe("An input in a message", () => {
  test.each([
    [null, "a blank"],
    ["", "a blank"],
    ["x", '"x"'],
    [true, "TRUE"],
    [false, "FALSE"],
    [1.5, "1.5"],
    [Number.NaN, "no number"],
    [Number.POSITIVE_INFINITY, "infinity"],
    [[[1, 2]], "a range of 1 row × 2 columns"],
    [[[1], [2]], "a range of 2 rows × 1 column"],
    [[], "a range of 0 rows × 0 columns"],
  ])("%j is %s", (value, text) => expect(describeInput(value)).toBe(text));

  test("is quoted in 60 characters", () => {
    expect(quoteText("a".repeat(60))).toBe(`"${"a".repeat(60)}"`);
    expect(quoteText("a".repeat(61))).toBe(`"${"a".repeat(59)}…"`);
    expect(sizeText([[1], [2]])).toBe("2 rows × 1 column");
  });
});

describe("An input from a host", () => {
  test("may be a matrix of one cell, of rows of any length, or nothing", () => {
    expect(normalizeInput([[5]], "x")).toBe(5);
    expect([normalizeInput(true, "x"), normalizeInput(null, "x")]).toEqual([true, null]);
    expect(normalizeInput([[{}]], "x")).toBeNull();
    expect(normalizeInput([[1, 2]], "x")).toEqual([[1, 2]]);
    expect(normalizeInput([[1], [2]], "x")).toEqual([[1], [2]]);
    expect(normalizeInput([[1, {}], 7, [2]], "x")).toEqual([[1, null], [], [2]]);
    for (const value of [undefined, {}, [], [1, 2], () => 1]) expect(normalizeInput(value, "x")).toBeNull();
  });

  test("may be as long and as large as its limit", () => {
    const long = "x".repeat(255);
    expect([normalizeInput(long, "x"), normalizeInput([[long]], "x")]).toEqual([long, long]);
    expect(() => normalizeInput(`${long}x`, "x")).toThrow(
      /^x: a text may have at most 255 characters, got 256: "x{59}…"$/,
    );
    expect(() => normalizeInput([[`${long}x`]], "x")).toThrow(/at most 255/);
    expect(() => normalizeInput([[1, `${long}x`]], "x")).toThrow(/at most 255/);
    expect(
      normalizeInput(
        [
          [1, 2],
          [3, 4],
        ],
        "x",
        4,
      ),
    ).toHaveLength(2);
    expect(() =>
      normalizeInput(
        [
          [1, 2],
          [3, 4],
        ],
        "x",
        3,
      ),
    ).toThrow("x: a range may hold at most 3 cells, got 2 × 2; name the filled cells rather than a whole column");
  });

  test("that is an error value passes through, and other texts with its mark don't", () => {
    const errors = ["#N/A", "#VALUE!", "#REF!", "#DIV/0!", "#NAME?", "#NUM!", "#NULL!", "#SPILL!", "#CALC!", "#BUSY!"];
    for (const error of errors) expect(isErrorText(error)).toBe(true);
    for (const text of ["#N/A?", "see #N/A", "#40", "", null, 5]) expect(isErrorText(text)).toBe(false);
    expect(() => refuseErrorText("#NUM!", "flow")).toThrow("flow: holds #NUM!");
    expect(refuseErrorText("#40", "flow")).toBeUndefined();
  });
});

test("a nominal size is its inches, and anything else no size", () => {
  expect(["1-1/2 in", "2 in", "5/8 in"].map(inchesOfSize)).toEqual([1.5, 2, 0.625]);
  expect(() => inchesOfSize("DN 50")).toThrow("not a size in inches: DN 50");
  expect(() => inchesOfSize("50 mm")).toThrow("not a size in inches: 50 mm");
});
