/** Words, yes and no, texts, several values and a word or a quantity, each by itself. */
import { describe, expect, test } from "vitest";
import { choice, either, quantity, several, text, yesNo } from "../../core/kernel/define/argument";
import { us } from "../../core/kernel/values/quantity";
import { admitted } from "./oneArgument";

const SCHEDULE = choice("Schedule", ["40", "80"], "a schedule");
const SIZE = choice("Size", ["1/2 in", "1-1/2 in"], "a size");
const COVER = choice(
  "Cover",
  ["none", "bubble", "foam"],
  "a cover",
  { "0": "none", "air bubbles": "bubble" },
  { winter: "leave the pool out" },
);

describe("A word out of a list", () => {
  test("may be a number in its cell", () => {
    expect(admitted(SCHEDULE, 40)).toBe("40");
    expect(admitted(SCHEDULE, -40)).toBe('expected "40" or "80", got -40');
    expect(admitted(SCHEDULE, true)).toBe('expected "40" or "80", got TRUE');
  });

  test("may be written with other spaces, hyphens and fractions, or by another name", () => {
    expect(["1/2IN", "½ in", " 1/2 in "].map((raw) => admitted(SIZE, raw))).toEqual(["1/2 in", "1/2 in", "1/2 in"]);
    expect(["1 1/2 in", "1½ in"].map((raw) => admitted(SIZE, raw))).toEqual(["1-1/2 in", "1-1/2 in"]);
    expect(admitted(COVER, "Air Bubbles")).toBe("bubble");
  });

  test("that belongs elsewhere is refused with what to do instead", () =>
    expect(admitted(COVER, "Winter")).toBe('expected "none", "bubble" or "foam", got "Winter": leave the pool out'));

  test("that is misspelt is refused with the nearest where the list is longer than two", () => {
    expect(admitted(COVER, "buble")).toBe('expected "none", "bubble" or "foam", got "buble": the nearest is "bubble"');
    expect(admitted(COVER, "tarpaulin")).toBe('expected "none", "bubble" or "foam", got "tarpaulin"');
    expect(admitted(SCHEDULE, "41")).toBe('expected "40" or "80", got "41"');
  });

  test("of a list of one is named without 'or'", () =>
    expect(admitted(choice("One", ["only"], "a word"), "other")).toBe('expected "only", got "other"'));

  test("is never 0, which counts as a blank cell unless 0 is another name of a word", () => {
    expect(admitted(SCHEDULE.default("80"), 0)).toBe("80");
    expect(admitted(COVER.default("foam"), 0)).toBe("none");
  });
});

describe("A word or a quantity", () => {
  const WIDTH = either(
    choice("Width", ["thin", "thick", "medium"], "a width", undefined, { flat: "give its height" }),
    quantity("length", "a width", { above: 0 }),
    "a width",
  );
  const EXPECTED = 'expected "thin", "thick" or "medium", or length in ft, got';

  test.each([
    [3, us("length", 3)],
    ["3", us("length", 3)],
    [" .5 m", 0.5],
    ["+2 m", 2],
    ["THICK", "thick"],
  ])("%j is admitted", (raw, value) => expect(admitted(WIDTH, raw)).toBe(value));

  test.each([
    ["-2 m", "must be above 0 ft, got -6.56168 ft"],
    ["mediun", `${EXPECTED} "mediun": the nearest is "medium"`],
    ["flat", `${EXPECTED} "flat": give its height`],
    ["wall-2", `${EXPECTED} "wall-2"`],
    ["SI", `${EXPECTED} "SI": units is the second argument`],
    [true, `${EXPECTED} TRUE`],
  ])("%j is refused in words", (raw, message) => expect(admitted(WIDTH, raw)).toBe(message));

  test("is never 0, which counts as a blank cell", () => expect(admitted(WIDTH.default("thin"), 0)).toBe("thin"));
});

describe("Yes and no", () => {
  const SHOWN = yesNo("whether shown");

  test.each([true, "TRUE", "true", "Yes", " y e s ", 1, "1"])("%j is yes", (raw) =>
    expect(admitted(SHOWN, raw)).toBe(true),
  );
  test.each([false, "FALSE", "no", 0, "0"])("%j is no", (raw) => expect(admitted(SHOWN, raw)).toBe(false));
  test.each([
    [2, "2"],
    ["maybe", '"maybe"'],
  ])("%j is neither", (raw, shown) => expect(admitted(SHOWN, raw)).toBe(`expected TRUE or FALSE, got ${shown}`));
  test("0 is no, not a blank cell", () => expect(admitted(SHOWN.default(true), 0)).toBe(false));
});

describe("A text", () => {
  const NAME = text("a name", 5);

  test("may be a number, and as long as its limit", () => {
    expect([admitted(NAME, 12.5), admitted(NAME, "abcde")]).toEqual(["12.5", "abcde"]);
    expect(admitted(NAME, "abcdef")).toBe("may have at most 5 characters, got 6");
    expect(admitted(NAME, Number.NaN)).toBe("expected a text, got no number");
  });

  test("is never 0, which counts as a blank cell", () => expect(admitted(NAME.default("none"), 0)).toBe("none"));
});

describe("Several values", () => {
  const WIDTHS = several("length", "widths", [1, 2, 3], { above: 0 });
  const ft = (...sizes: readonly number[]) => sizes.map((size) => expect.closeTo(us("length", size), 12) as number);

  test.each<[unknown, readonly number[]]>([
    ["12;16 ft", ft(12, 16)],
    [" 12 ; 16", ft(12, 16)],
    ["12 in; 16 ft", ft(1, 16)],
    ["6 ; 1 1/2 ; 18 in", ft(0.5, 0.125, 1.5)],
  ])("%j are values in feet", (raw, expected) => expect(admitted(WIDTHS, raw)).toEqual(expected));

  test("may be one number", () => expect(admitted(WIDTHS, 3)).toBeCloseTo(us("length", 3), 12));

  test("share a unit of several words", () =>
    expect(admitted(several("irradiance", "suns", [2]), "1; 2 W / m²")).toEqual([1, 2]));

  test.each([
    ["1;2;3;4", 'expected 1 or 2 or 3 values parted by ";", got 4'],
    ["1; 2 W", 'expected length in ft, got "1 W": "W" is not a unit of length'],
    ["1; -2 ft", "must be above 0 ft, got -2 ft"],
    [true, "expected length in ft, got TRUE"],
  ])("%j are refused in words", (raw, message) => expect(admitted(WIDTHS, raw)).toBe(message));
});
