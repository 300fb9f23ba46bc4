import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chebyshevAt, piecewiseFit } from "../../core/numeric/chebyshev";
import { packSeries, unpackSeries } from "../../core/numeric/packedSeries";

describe("packed series", () => {
  test("a packed series comes back as it was: the same ends of pieces and the same coefficients", () => {
    const fit = piecewiseFit((x) => Math.sqrt(x), [0.01, 7.3], {
      degree: 6,
      tolerance: 1e-7,
      decimals: 9,
      narrowest: 1e-3,
    });
    expect(fit.breaks.length).toBeGreaterThan(4);
    const packed = packSeries(fit, 9);
    const back = unpackSeries(packed);
    expect([...back.breaks]).toEqual(fit.breaks);
    expect([...back.coefficients]).toEqual(fit.coefficients.map((c) => c + 0));
    expect(packed.coefficients.length).toBeLessThan(JSON.stringify(fit.coefficients).length * 0.7);
    for (let x = 0.01; x < 7.3; x += 0.0173) expect(chebyshevAt(back, x)).toBeCloseTo(Math.sqrt(x), 6);
  });

  test("a packed series keeps every decimal number of up to fifteen digits to the last bit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 }),
        fc.array(fc.integer({ min: -1e15, max: 1e15 }), { minLength: 4, maxLength: 4 }),
        (decimals, whole) => {
          const coefficients = whole.map((each) => Number(`${each}e-${decimals}`));
          const packed = packSeries({ breaks: [1, 2], degree: 3, coefficients, error: 0 }, decimals);
          expect([...unpackSeries(packed).coefficients]).toEqual(coefficients.map((each) => each + 0));
        },
      ),
    );
  });

  test("coefficients that couldn't come back are refused", () => {
    const packing = (coefficient: number) => () =>
      packSeries({ breaks: [1, 2], degree: 0, coefficients: [coefficient], error: 0 }, 0);
    const largest = 2 ** 52 - 1;
    for (const kept of [largest, -largest]) expect([...unpackSeries(packing(kept)()).coefficients]).toEqual([kept]);
    for (const lost of [Number.NaN, Infinity, 2 ** 52, -(2 ** 52)]) expect(packing(lost)).toThrow(/below 2\^52/);
  });

  test("pieces that aren't halves of their range are refused", () =>
    expect(() => packSeries({ breaks: [0, 1, 3], degree: 0, coefficients: [1, 2], error: 0 }, 1)).toThrow(/halves/));
});
