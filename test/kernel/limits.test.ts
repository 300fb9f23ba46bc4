/** Limits, words and numbers of single arguments, each by itself. */
import { describe, expect, test } from "vitest";
import { quantity } from "../../core/kernel/define/argument";
import { placeText } from "../../core/kernel/call/admit";
import { us } from "../../core/kernel/values/quantity";
import { admitted } from "./oneArgument";

describe("A limit", () => {
  const between = quantity("number", "a number", { from: 2, to: 100 });
  const inside = quantity("number", "a number", { above: 2, below: 100 });

  test("of a closed range is part of it", () => {
    expect([admitted(between, 2), admitted(between, 100)]).toEqual([2, 100]);
    expect(admitted(between, 1.99)).toBe("must be at least 2, got 1.99");
    expect(admitted(between, 100.01)).toBe("must be at most 100, got 100.01");
  });

  test("of an open range is outside it", () => {
    expect([admitted(inside, 2.01), admitted(inside, 99.99)]).toEqual([2.01, 99.99]);
    expect(admitted(inside, 2)).toBe("must be above 2, got 2");
    expect(admitted(inside, 100)).toBe("must be below 100, got 100");
  });

  test("may be missed by 1e-9 of itself, as by the rounding of a unit, and not by more", () => {
    expect(admitted(between, 100 + 5e-8)).toBe(100 + 5e-8);
    expect(admitted(between, 2 - 1e-9)).toBe(2 - 1e-9);
    expect(admitted(between, 100 + 5e-7)).toMatch(/^must be at most 100/);
    expect(admitted(between, 2 - 1e-8)).toMatch(/^must be at least 2/);
  });

  test("of 0 is met exactly", () => {
    const positive = quantity("number", "a number", { from: 0 });
    expect(admitted(positive, 0)).toBe(0);
    expect(admitted(positive, -1e-12)).toMatch(/^must be at least 0/);
    expect(admitted(quantity("number", "a number", { to: 0 }), 1e-12)).toMatch(/^must be at most 0/);
  });

  test("below which 0 lies names a blank cell, since hosts pass one as 0", () => {
    expect(admitted(between, 0)).toBe("must be at least 2, got blank or zero");
    expect(admitted(inside, 0)).toBe("must be above 2, got blank or zero");
    expect(admitted(quantity("number", "a number", { above: 0 }), 0)).toBe("must be above 0, got blank or zero");
  });

  test("above which 0 lies names the 0", () => {
    expect(admitted(quantity("number", "a number", { above: -9, to: -5 }), 0)).toBe("must be at most -5, got 0");
    expect(admitted(quantity("number", "a number", { from: -9, below: -5 }), 0)).toBe("must be below -5, got 0");
    expect(admitted(quantity("number", "a number", { to: -5 }), 0)).toBe("must be at most -5, got 0");
  });

  test("names absolute zero as what it is: no blank temperature", () =>
    expect(admitted(quantity("temperature", "water", { from: us("temperature", 32) }), "-273.15 degC")).toBe(
      "must be at least 32 °F, got -459.67 °F",
    ));

  test.each([
    ["relative humidity", { to: 1 }, "must be at most 1 (a fraction: type 60% or 0.6), got 60"],
    ["fraction", { below: 1 }, "must be below 1 (a fraction: type 60% or 0.6), got 60"],
    ["yearly rate", { to: 1 }, "must be at most 1 1/year (a fraction: type 3% or 0.03), got 60 1/year"],
    ["number", { to: 1 }, "must be at most 1, got 60"],
  ] as const)("of %s says how a share is typed where one was typed as a percentage", (kind, limits, message) =>
    expect(admitted(quantity(kind, "a share", limits), 60)).toBe(message),
  );
});

describe("Any number", () => {
  test("is at most 1e18 in size", () => {
    const any = quantity("number", "a number");
    expect([admitted(any, 1e18), admitted(any, -1e18)]).toEqual([1e18, -1e18]);
    expect(admitted(any, -1.1e18)).toMatch(/^must be at most 1e\+18 in size, got -1100000000000000000$/);
  });

  test("of a count may be asked to be whole, but for rounding", () => {
    const whole = quantity("count", "a count", { whole: true });
    expect([admitted(whole, 3), admitted(whole, -3), admitted(whole, 3 + 1e-10)]).toEqual([3, -3, 3 + 1e-10]);
    expect(admitted(whole, 2.5)).toBe("must be a whole number, got 2.5");
    expect(admitted(whole, 3 + 1e-8)).toMatch(/^must be a whole number/);
    expect(admitted(quantity("count", "a count"), 2.5)).toBe(2.5);
  });

  test("without a unit is asked for as such", () =>
    expect(admitted(quantity("count", "a count"), "many")).toBe(
      'expected a number (count), got "many": expected a number',
    ));

  test("in a text between spaces counts as the number", () =>
    expect(admitted(quantity("length", "a length"), " 12 ", "SI")).toBe(12));
});

test("places are in words up to the tenth", () =>
  expect(Array.from({ length: 11 }, (_, place) => placeText(place + 1))).toEqual(
    "first second third fourth fifth sixth seventh eighth ninth tenth 11th".split(" "),
  ));
