/** Systems of equations solved by hand: A = L Lᵀ with whole numbers. */
import { describe, expect, test } from "vitest";
import { choleskySolve } from "../../core/numeric/choleskySolve";
import { boundedFit, normalMatrix } from "../../core/numeric/boundedFit";

describe("Cholesky's method", () => {
  test("solves a full system and reads the lower triangle only", () => {
    // L = (2; 1 3; 4 -1 5), x = (1, -2, 3); what lies above the diagonal is no part of the matrix.
    const a = Float64Array.of(4, 99, 99, 2, 10, 99, 8, 1, 42);
    const b = Float64Array.of(24, -15, 132);
    expect(choleskySolve(a, b, Int32Array.of(0, 0, 0))).toBe(true);
    [1, -2, 3].forEach((value, i) => expect(b[i]).toBeCloseTo(value, 12));
    expect([a[0], a[3], a[4], a[6], a[7], a[8]]).toEqual([2, 1, 3, 4, -1, 5]);
  });

  test("skips what lies left of a row's first entry", () => {
    // A chain: 2 on the diagonal, -1 beside it; x = (1, 2, 3, 4).
    const a = Float64Array.of(2, 0, 0, 0, -1, 2, 0, 0, NaN, -1, 2, 0, NaN, NaN, -1, 2);
    const b = Float64Array.of(0, 0, 0, 5);
    expect(choleskySolve(a, b, Int32Array.of(0, 0, 1, 2))).toBe(true);
    [1, 2, 3, 4].forEach((value, i) => expect(b[i]).toBeCloseTo(value, 12));
  });

  test.each([
    ["indefinite", [1, 0, 2, 1]],
    ["semidefinite", [1, 0, 1, 1]],
    ["zero", [0, 0, 0, 1]],
  ])("refuses a matrix that is %s", (_, rows) => {
    expect(choleskySolve(Float64Array.from(rows), Float64Array.of(1, 1), Int32Array.of(0, 0))).toBe(false);
  });
});

describe("least squares within bounds", () => {
  test("finds the parameters of a curve that it can reach", () => {
    const at = [0, 1, 2, 3, 4];
    const model = ([a = 0, b = 0]: readonly number[]) => at.map((x) => a * Math.exp(-b * x));
    const { parameters, residuals, slopes } = boundedFit(model, model([0.8, 0.3]), [0.2, 0.9]);
    expect(parameters[0]).toBeCloseTo(0.8, 5);
    expect(parameters[1]).toBeCloseTo(0.3, 5);
    for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(1e-4);
    // The derivative with a is exp(-b x); its step is 0.005 of a straight line.
    at.forEach((x, row) => expect(slopes[0]?.[row]).toBeCloseTo(Math.exp(-0.3 * x), 4));
  });

  test.each([
    ["above", 1.4, 1],
    ["below", -0.4, 0],
  ])("stays at the bound that the answer lies %s of, and fits the others", (_, beyond, bound) => {
    const model = ([a = 0, b = 0]: readonly number[]) => [a + b, a - b, 2 * a + b];
    // By hand, with a at its bound: b that is nearest to (beyond + 0.5 - a, 0.5 - beyond + a, 2 beyond + 0.5 - 2 a).
    const gap = beyond - bound;
    const best = (gap + 0.5 + (0.5 - gap) + (2 * gap + 0.5)) / 3;
    const { parameters } = boundedFit(model, model([beyond, 0.5]), [0.5, 0.2]);
    expect(parameters[0]).toBe(bound);
    expect(parameters[1]).toBeCloseTo(Math.min(1, Math.max(0, best)), 5);
  });

  test("begins inside the bounds, and steps back where the model has no answer", () => {
    const asked: number[] = [];
    const model = ([a = 0]: readonly number[]) => (asked.push(a), a > 0.9 ? undefined : [a, a * a]);
    const { parameters } = boundedFit(model, [0.6, 0.36], [0.899]);
    expect(parameters[0]).toBeCloseTo(0.6, 6);
    expect(boundedFit(([a = 0]) => [a], [0.25], [7]).parameters[0]).toBeCloseTo(0.25, 6);
    expect(Math.max(...asked)).toBeLessThanOrEqual(1);
  });

  test.each([0, 0.2, 0.997, 1])("asks for no parameter outside the bounds when it begins at %d", (begin) => {
    const asked: number[] = [];
    const model = ([a = 0, b = 0]: readonly number[]) => (asked.push(a, b), [a + b, a - b, a * b]);
    // The answers lie at the bounds' own corner (1, 0).
    const { parameters } = boundedFit(model, [1, 1, 0], [begin, begin]);
    expect(parameters[0]).toBeCloseTo(1, 6);
    expect(parameters[1]).toBeCloseTo(0, 6);
    expect([Math.min(...asked), Math.max(...asked)]).toEqual([expect.closeTo(0, 6), expect.closeTo(1, 6)]);
    expect(asked.every((value) => value >= 0 && value <= 1)).toBe(true);
  });

  test("the normal matrix is the slopes' products with a raised diagonal", () => {
    expect([
      ...normalMatrix(
        [
          [1, 2],
          [3, 4],
        ],
        0.5,
      ),
    ]).toEqual([7.5, 11, 11, 37.5]);
  });
});
