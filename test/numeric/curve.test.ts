/** The curve through points: slopes by hand from the rules of F. N. Fritsch and R. E. Carlson (1980), and its properties. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicAt, monotoneCubic, spanAt } from "../../core/numeric/monotoneCubic";

describe("the curve through points", () => {
  test("reproduces a parabola through points apart from its turning point", () => {
    const xs = [1, 1.5, 3, 4, 7];
    const curve = monotoneCubic(
      xs,
      xs.map((x) => x * x),
    );
    expect(curve.slopes).toEqual(xs.map((x) => 2 * x));
    for (const x of [1, 1.2, 1.5, 2.9, 3.5, 6, 7]) expect(cubicAt(curve, x)).toBeCloseTo(x * x, 12);
  });

  test("two points give the straight line", () => {
    const line = monotoneCubic([2, 6], [5, -3]);
    expect(line.slopes).toEqual([-2, -2]);
    expect(cubicAt(line, 3)).toBeCloseTo(3, 12);
  });

  test("turns level at a turning point and along level spans", () => {
    expect(monotoneCubic([0, 1, 2, 3], [0, 1, 1, 0]).slopes.slice(1, 3)).toEqual([0, 0]);
    expect(monotoneCubic([0, 1, 2], [0, 1, 0]).slopes[1]).toBe(0);
  });

  test("an end whose parabola points against its own chord is level", () => {
    // By hand: (3 × 1 - 10) / 2 < 0 against a chord of 1.
    expect(monotoneCubic([0, 1, 2], [0, 1, 11]).slopes[0]).toBe(0);
    expect(monotoneCubic([0, 1, 2], [0, 10, 11]).slopes[2]).toBe(0);
  });

  test("slopes are cut back to the circle of radius 3 where a span would overshoot", () => {
    // Chords 0.1, 1, 0.1 by hand: the middle ones are 0.55, so the first span's (0, 5.5) has size 5.5 and becomes (0, 3).
    const { slopes } = monotoneCubic([0, 1, 2, 3], [0, 0.1, 1.1, 1.2]);
    expect(slopes[0]).toBe(0);
    expect(slopes[1]).toBeCloseTo(0.3, 12);
    expect(slopes[2]).toBeCloseTo(0.3, 12);
  });

  test("never leaves the range of its neighbours and passes through every point", () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })),
      {
        minLength: 2,
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(steps, (list) => {
        let [x, y] = [0, 0];
        const points = list.map(([dx, dy]) => [(x += dx), (y += dy)] as const);
        const [xs, ys] = [points.map(([at]) => at), points.map(([, at]) => at)];
        const curve = monotoneCubic(xs, ys);
        xs.forEach((at, i) => expect(cubicAt(curve, at)).toBeCloseTo(ys[i] ?? NaN, 9));
        for (let i = 0; i + 1 < xs.length; i++) {
          const [a, b] = [ys[i] ?? 0, ys[i + 1] ?? 0];
          const middle = spanAt(curve, ((xs[i] ?? 0) + (xs[i + 1] ?? 0)) / 2);
          expect([middle.x0, middle.y0, middle.y1]).toEqual([xs[i], a, b]);
          expect([middle.m0, middle.m1]).toEqual([curve.slopes[i], curve.slopes[i + 1]]);
          for (let part = 0; part <= 1; part += 0.125) {
            const value = cubicAt(curve, middle.x0 + part * middle.width);
            expect(value).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-9);
            expect(value).toBeLessThanOrEqual(Math.max(a, b) + 1e-9);
          }
        }
      }),
    );
  });

  test("outside its points the first or last span is the nearest", () => {
    const curve = monotoneCubic([0, 1, 2], [0, 1, 4]);
    expect(spanAt(curve, -5).x0).toBe(0);
    expect(spanAt(curve, 1).x0).toBe(0);
    expect(spanAt(curve, 9).x0).toBe(1);
  });
});
