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

  test("a root at an end of the bracket takes no pass", () => {
    const line = (x: number) => x - 2;
    expect(bracketedRoot(line, 2, 5)).toEqual({ x: 2, residual: 0, iterations: 0, bracket: [2, 5], found: true });
    expect(bracketedRoot(line, -1, 2)).toEqual({ x: 2, residual: 0, iterations: 0, bracket: [-1, 2], found: true });
  });

  test("ends of the same sign give no number", () => {
    const none = { x: NaN, residual: NaN, iterations: 0, bracket: [1, 2], found: false };
    expect(bracketedRoot((x) => x, 1, 2)).toEqual(none);
    expect(bracketedRoot((x) => -x, 1, 2)).toEqual(none);
    expect(bracketedRoot(() => NaN, 1, 2)).toEqual(none);
  });

  test("reports how far it came where the passes run out", () => {
    const stair = (x: number) => (x < Math.SQRT1_2 ? -1 : 1);
    const found = bracketedRoot(stair, 0, 1, { most: 10 });
    expect(found).toMatchObject({ found: false, iterations: 10 });
    expect(Math.abs(found.x - Math.SQRT1_2)).toBeLessThan(2 ** -8);
    expect(bracketedRoot(stair, 0, 1, { tolerance: 1e-3 })).toMatchObject({ found: true, residual: 1 });
  });

  test("ends at the width that is asked for", () => {
    const seen = (tolerance: number) => bracketedRoot((x) => x ** 3 - 2 * x - 5, 2, 3, { tolerance }).iterations;
    expect(seen(1e-2)).toBeLessThan(seen(1e-12));
    expect(Math.abs(bracketedRoot((x) => x ** 9, -1, 1.5, { tolerance: 1e-6 }).x)).toBeLessThan(1e-6);
  });

  // SciPy 1.17.1, scipy.optimize.brentq with xtol 1e-12 and rtol 4 ε: root and passes for the same brackets.
  test.each<[string, (x: number) => number, number, number, number, number]>([
    ["x³ - 2 x - 5", (x) => x ** 3 - 2 * x - 5, 2, 3, 2.094551481542327, 7],
    ["cos x - x", (x) => Math.cos(x) - x, 0, 1, 0.7390851332151559, 7],
    ["exp 20 x - 2", (x) => Math.exp(20 * x) - 2, -1, 1, 0.03465735902799726, 12],
    ["3 x - 1", (x) => 3 * x - 1, 0, 10, 0.3333333333333333, 2],
    ["x⁹ - 0.5", (x) => x ** 9 - 0.5, -1, 4, 0.9258747122872936, 17],
    ["atan 50 (x - 0.3)", (x) => Math.atan(50 * (x - 0.3)), -10, 3, 0.3, 14],
    [
      "√|x - 0.1| with its sign",
      (x) => Math.sign(x - 0.1) * Math.sqrt(Math.abs(x - 0.1)),
      -1,
      3,
      0.09999999999988007,
      29,
    ],
    ["ln x + 7", (x) => Math.log(x) + 7, 1e-9, 50, 0.0009118819656696181, 22],
  ])("%s takes the passes of another program's Brent's method, to the same root", (_, f, low, high, root, passes) => {
    const found = bracketedRoot(f, low, high);
    expect(found.x / root).toBeCloseTo(1, 14);
    expect(found.iterations).toBe(passes);
    expect(found.residual).toBe(f(found.x));
  });
});
