import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bracketedRoot } from "../../core/numeric/root";

describe("the bracketed root", () => {
  test.each<[string, (x: number) => number, number, number, number]>([
    ["a cubic", (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ["a cosine", (x) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ["a steep exponential", (x) => Math.exp(20 * x) - 2, -1, 1, Math.LN2 / 20],
    ["a straight line", (x) => 3 * x - 1, 0, 10, 1 / 3],
  ])("the root of %s is found in few passes", (_, f, low, high, root) => {
    const found = bracketedRoot(f, low, high);
    expect(found.found).toBe(true);
    expect(found.x).toBeCloseTo(root, 10);
    expect(found.iterations).toBeLessThanOrEqual(16);
  });

  test("never leaves its bracket and reports that there is none", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (at, width) => {
          const seen: number[] = [];
          const found = bracketedRoot((x) => (seen.push(x), Math.atan(x - at)), at - width, at + 2 * width);
          expect(found.x).toBeCloseTo(at, 9);
          for (const x of seen) expect(x >= at - width && x <= at + 2 * width).toBe(true);
        },
      ),
    );
    expect(bracketedRoot((x) => x * x + 1, -1, 1).found).toBe(false);
  });
});
