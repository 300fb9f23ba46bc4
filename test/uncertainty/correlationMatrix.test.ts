/** Correlation matrices: which can be, and their factor. */
import { array, assert, double, integer, property, tuple } from "fast-check";
import { describe, expect, test } from "vitest";
import { correlationOf } from "../../core/uncertainty/correlation";
import { goldenModel } from "./goldenModels";

/** Inputs named a, b, c, … */
const inputsOf = (count: number) =>
  goldenModel("1", Array.from({ length: count }, (_, i) => `${"abcdef"[i] ?? ""}=normal(mean 0, sd 1)`).join("; "))
    .inputs;

const pairsOf = (matrix: readonly (readonly number[])[]) =>
  matrix.flatMap((line, i) =>
    line.slice(0, i).map((r, j) => ({ label: "abcdef"[j] ?? "", with: "abcdef"[i] ?? "", r })),
  );

describe("Matrices of correlations", () => {
  test("that can't be are refused with the range that the others leave", () => {
    const make = (ab: number, ac: number, bc: number) => () =>
      correlationOf(pairsOf([[1], [ab, 1], [ac, bc, 1]]), inputsOf(3));
    // By hand: 0.9² ∓ (1 - 0.9²).
    expect(make(0.9, 0.9, -0.9)).toThrow(/b and c.*from 0\.62 to 1, got -0\.9/);
    expect(make(0.9, 0.9, 0.63)).not.toThrow();
    expect(make(0.9, 0.9, 0.61)).toThrow(/got 0\.61/);
    expect(make(1, 0.3, 0.3)).not.toThrow();
    expect(make(1, 0.3, 0.4)).toThrow(/from 0\.3 to 0\.3, got 0\.4/);
    expect(() =>
      correlationOf(
        [
          { label: "a", with: "b", r: 0.9 },
          { label: "b", with: "c", r: 0.9 },
        ],
        inputsOf(3),
      ),
    ).toThrow(/those not given are 0/);
  });

  test("of any vectors' cosines can be, and come back from their factor", () =>
    assert(
      property(
        integer({ min: 2, max: 6 }).chain((count) =>
          tuple(
            array(array(double({ min: -1, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }), {
              minLength: count,
              maxLength: count,
            }),
          ),
        ),
        ([vectors]) => {
          const unit = vectors.map((vector) => {
            const length = Math.hypot(...vector);
            return length > 1e-3 ? vector.map((each) => each / length) : [1, 0, 0];
          });
          const dot = (p: readonly number[], q: readonly number[]): number =>
            p.reduce((total, each, at) => total + each * (q[at] ?? 0), 0);
          const matrix = unit.map((p) => unit.map((q) => Math.min(1, Math.max(-1, dot(p, q)))));
          const found = correlationOf(pairsOf(matrix), inputsOf(unit.length));
          for (const [i, line] of (found?.factor ?? []).entries())
            for (const [j, other] of (found?.factor ?? []).slice(0, i + 1).entries())
              expect(Math.abs(dot(line.slice(0, j + 1), other) - (matrix[i]?.[j] ?? 0))).toBeLessThan(1e-3);
        },
      ),
      { numRuns: 200 },
    ));
});
