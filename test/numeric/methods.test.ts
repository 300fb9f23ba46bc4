import { describe, expect, it } from "vitest";
import { chebyshevAt, chebyshevWithSlope, piecewiseFit } from "../../core/numeric/chebyshev";
import { linearSolve } from "../../core/numeric/linearSolve";
import { newtonSystem } from "../../core/numeric/newtonSystem";
import { isOutside, outside } from "../../core/numeric/outside";
import { regulaFalsi } from "../../core/numeric/regulaFalsi";

describe("linearSolve", () => {
  it("solves a system that needs its rows exchanged", () => {
    const a = Float64Array.of(0, 2, 1, 1, 1, 1, 2, 1, 3);
    const b = Float64Array.of(7, 6, 13);
    expect(linearSolve(a, b)).toBe(true);
    [1, 2, 3].forEach((value, i) => expect(b[i]).toBeCloseTo(value, 12));
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

describe("outside", () => {
  it("carries the quantity, the limit and what came", () => {
    const error = outside("R-32 temperature", "at most 478.5 K", "500 K");
    expect(error.message).toBe("R-32 temperature: must be at most 478.5 K, got 500 K");
    expect(isOutside(error)).toBe(true);
    expect(isOutside(new Error("other"))).toBe(false);
  });
});
