/** NOTE.UNCERTAINTY of several functions, and what it refuses. */
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";

const compiledOf = (id: string) => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no ${id}`);
  return compiled;
};

const noteOf = (...args: readonly unknown[]) => evaluate(compiledOf("NOTE.UNCERTAINTY"), args, CATALOGUE);

describe("NOTE.UNCERTAINTY", () => {
  test("varies a label of a block, also one that isn't in it", () => {
    const block = Object.entries({ duty: 50, hotIn: 70 });
    expect(isFault(noteOf("EXCHANGER.ZONES", [["duty", "normal", 1, null, 2]], block))).toBe(true);
  });

  test("takes any function of one value, with units, arguments left out and readings", () => {
    for (const [id, ranges, ...args] of [
      ["EXCHANGER.UA", [["cold out", "rectangular", 86, null, 90]], 100_000, 130, 100, 80],
      ["CYCLE.COP", [["condensing", "normal", 100, 110, 120]], "R-410A", 45],
      ["POOL.AREA", [["length", "normal", 9, 10, 11, "m"]], "rectangle", "", 5],
    ] as const) {
      const out = noteOf(id, ranges, ...args);
      expect(isFault(out) ? out.message : "", id).toBe("");
      const [, p10, p50, p90] = out as readonly (readonly number[])[];
      expect(Number(p10?.[1])).toBeLessThan(Number(p50?.[1]));
      expect(Number(p50?.[1])).toBeLessThan(Number(p90?.[1]));
    }
  });

  test.each([
    ["an unknown function", ["POOL.ARIA", [["length", "normal", 1, null, 2]], "rectangle"], /nearest is "POOL.AREA"/],
    [
      "a function of several values",
      ["POOL.YEAR", [["wind", "normal", 1, null, 2]]],
      /POOL.YEAR returns no single number/,
    ],
    ["itself", ["NOTE.UNCERTAINTY", [["low", "normal", 1, null, 2]]], /returns no single number/],
    ["an unknown argument", ["POOL.AREA", [["lenght", "normal", 1, null, 2]], "rectangle"], /nearest is "length"/],
  ])("refuses %s", (_, args, message) => {
    const out = noteOf(...args);
    expect(isFault(out) ? out.message : "no refusal").toMatch(message);
  });
});
