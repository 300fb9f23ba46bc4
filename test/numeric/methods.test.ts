import { describe, expect, it } from "vitest";
import { chebyshevAt, chebyshevWithSlope, piecewiseFit } from "../../core/numeric/chebyshev";
import { linearSolve } from "../../core/numeric/linearSolve";
import { newtonSystem } from "../../core/numeric/newtonSystem";
import { regulaFalsi } from "../../core/numeric/regulaFalsi";

describe("linearSolve", () => {
  it("solves a system that needs its rows exchanged", () => {
    const a = Float64Array.of(0, 2, 1, 1, 1, 1, 2, 1, 3);
    const b = Float64Array.of(7, 6, 13);
    expect(linearSolve(a, b)).toBe(true);
    [1, 2, 3].forEach((value, i) => expect(b[i]).toBeCloseTo(value, 12));
  });

  it("takes the largest pivot, without which rounding would swallow a row", () => {
    // x + y = 2 with 1e-20 x + y = 1: both are 1 to sixteen digits; the small pivot first would give x = 0.
    const b = Float64Array.of(1, 2);
    expect(linearSolve(Float64Array.of(1e-20, 1, 1, 1), b)).toBe(true);
    expect([...b]).toEqual([1, 1]);
    const c = Float64Array.of(1, 1, 2);
    expect(linearSolve(Float64Array.of(0, 1e-20, 1, 5, 0, 0, 0, 1, 1), c)).toBe(true);
    [0.2, 1, 1].forEach((value, i) => expect(c[i]).toBeCloseTo(value, 14));
  });

  it("refuses a singular matrix", () => {
    expect(linearSolve(Float64Array.of(1, 2, 0, 0), Float64Array.of(1, 1))).toBe(false);
  });
});

describe("newtonSystem", () => {
  it("finds where a circle meets a curve", () => {
    const found = newtonSystem(
      (u, into) => {
        into[0] = u[0]! ** 2 + u[1]! ** 2 - 4;
        into[1] = Math.exp(u[0]!) + u[1]! - 1;
      },
      [1, -1.7],
      1e-9,
    );
    // R. L. Burden, J. D. Faires, Numerical Analysis: solution near (1.004169, -1.729637) (from memory).
    expect(found!.unknowns[0]).toBeCloseTo(1.004169, 5);
    expect(found!.unknowns[1]).toBeCloseTo(-1.729637, 5);
    expect(found!.residual).toBeLessThan(1e-12);
  });

  it("answers undefined where the matrix is singular or the residual is no number", () => {
    expect(newtonSystem((_, into) => void (into[0] = 3), [0.5], 1e-9)).toBeUndefined();
    const edge = (u: Float64Array, into: Float64Array) => void (into[0] = u[0]! < 0.45 ? NaN : u[0]!);
    expect(newtonSystem(edge, [0.5], 1e-9)).toBeUndefined();
  });

  it("shortens long steps, counts its passes, and ends when they run out", () => {
    const line = (u: Float64Array, into: Float64Array) => void (into[0] = u[0]! - 1);
    // Steps of 0.3 from 0: three are shortened, the fourth arrives, the fifth brings nothing more.
    const found = newtonSystem(line, [0], 1e-9);
    expect(found?.passes).toBeGreaterThanOrEqual(5);
    expect(found?.passes).toBeLessThanOrEqual(7);
    expect(newtonSystem(line, [0], 1e-9, 0.3, 3)).toBeUndefined();
    const near = newtonSystem(line, [0], 0.2, 0.3, 3);
    expect(near?.unknowns[0]).toBeCloseTo(0.9, 9);
    expect(near).toMatchObject({ passes: 3 });
    expect(near?.residual).toBeCloseTo(0.1, 9);
  });

  it("answers undefined where there is no solution", () => {
    const never = newtonSystem((u, into) => void (into[0] = u[0]! ** 2 + 1), [0.5], 1e-9);
    expect(never).toBeUndefined();
  });
});

describe("regulaFalsi", () => {
  it("finds a root between ends of opposite sign", () => {
    const f = (x: number) => Math.cos(x) - x;
    const root = regulaFalsi(f, { from: 0, to: 1, fromValue: f(0), toValue: f(1) }, 1e-13);
    expect(root).toBeCloseTo(0.7390851332151607, 12);
  });

  it("asks nothing where an end is the root", () => {
    const never = (): number => {
      throw new Error("asked");
    };
    expect(regulaFalsi(never, { from: 3, to: 8, fromValue: 0, toValue: 5 }, 1e-9)).toBe(3);
    expect(regulaFalsi(never, { from: -2, to: 3, fromValue: -5, toValue: 0 }, 1e-9)).toBe(3);
  });

  it("a straight line takes one value, and a bent one keeps moving both ends", () => {
    const asked: number[] = [];
    const line = (x: number) => (asked.push(x), 2 * x - 1);
    expect(regulaFalsi(line, { from: 0, to: 4, fromValue: -1, toValue: 7 }, 1e-12)).toBe(0.5);
    expect(asked).toEqual([0.5]);
    // Plain false position keeps one end of x⁵ and needs hundreds of values; the Illinois variant 22, counted by another program.
    let values = 0;
    const bent = (x: number) => ((values += 1), x ** 5 - 1e-3);
    expect(regulaFalsi(bent, { from: 0, to: 2, fromValue: -1e-3, toValue: 32 - 1e-3 }, 1e-12)).toBeCloseTo(
      1e-3 ** 0.2,
      11,
    );
    expect(values).toBe(22);
  });

  it("gives the last point where the passes run out", () => {
    const bent = (x: number) => x ** 5 - 1e-3;
    const ends = { from: 0, to: 2, fromValue: -1e-3, toValue: 32 - 1e-3 };
    // By hand: the first point is 2 - 31.999 × 2 / 32.
    expect(regulaFalsi(bent, ends, 1e-12, 1)).toBeCloseTo(2 - (31.999 * 2) / 32, 12);
  });

  it("refuses ends of the same sign", () => {
    expect(() => regulaFalsi((x) => x, { from: 1, to: 2, fromValue: 1, toValue: 2 }, 1e-9)).toThrow("differ in sign");
  });
});

describe("Chebyshev pieces", () => {
  const fit = piecewiseFit(Math.exp, [-2, 6], { degree: 8, tolerance: 1e-9, decimals: 14, narrowest: 0.01 });
  const pieces = {
    breaks: Float64Array.from(fit.breaks),
    degree: fit.degree,
    coefficients: Float64Array.from(fit.coefficients),
  };

  it("the pieces meet the tolerance everywhere, and their slopes nearly so", () => {
    expect(fit.breaks.length).toBeGreaterThan(2);
    const at = { value: 0, slope: 0 };
    for (let x = -2; x <= 6; x += 0.037) {
      chebyshevWithSlope(pieces, x, at);
      expect(Math.abs(chebyshevAt(pieces, x) - Math.exp(x))).toBeLessThan(2e-9);
      expect(at.value).toBeCloseTo(chebyshevAt(pieces, x), 12);
      expect(Math.abs(at.slope - Math.exp(x))).toBeLessThan(1e-6);
    }
  });

  it("the pieces state the error that they have", () => {
    expect(fit.error).toBeLessThan(1e-9);
    expect(fit.error).toBeGreaterThan(0);
  });
});
