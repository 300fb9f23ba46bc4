/** Quantiles of distributions and of samples, against SciPy 1.17.1 (stats.norm, stats.t, stats.spearmanr, numpy.quantile). */
import { describe, expect, test } from "vitest";
import { normalQuantile } from "../../core/numeric/normal";
import { ascending, rankCorrelation, sampleQuantile, shortestInterval } from "../../core/numeric/sample";
import { clamp, item, mean, standardDeviation, sum, sumOf } from "../../core/numeric/series";
import { studentQuantile, studentTable } from "../../core/numeric/student";

describe("the normal distribution", () => {
  test.each([
    [0.5, 0],
    [0.6, 0.2533471031357998],
    [0.9, 1.2815515655446008],
    [0.975, 1.9599639845400536],
    [0.995, 2.5758293035489],
    [0.9999, 3.7190164854557084],
    [0.001, -3.090232306167813],
    [1e-6, -4.753424308822899],
  ])("a share of %d lies below %d", (share, value) => {
    expect(normalQuantile(share)).toBeCloseTo(value, 9);
  });
});

describe("Student's distribution", () => {
  test.each([
    [0.95, 1, 12.706204736174694],
    [0.95, 4, 2.7764451051977934],
    [0.95, 10.5, 2.2138402929187886],
    [0.5, 3, 0.7648923284043444],
    [0.99, 7, 3.4994832973504924],
    [0.9545, 50, 2.0512507818518815],
    [0.99, 1, 63.656741162871526],
    [0.999, 200, 3.3398354062757107],
  ])("a share of %d at %d degrees of freedom lies within %d", (confidence, freedom, t) => {
    expect(studentQuantile(confidence, freedom) / t).toBeCloseTo(1, 8);
    expect(studentTable(freedom)((1 + confidence) / 2) / t).toBeCloseTo(1, 3);
    expect(studentTable(freedom)((1 - confidence) / 2) / -t).toBeCloseTo(1, 3);
  });
});

describe("a sample", () => {
  const X = [3, 1, 4, 1, 5, 9, 2, 6, 5, 3];

  test.each([
    [0, 1],
    [0.05, 1],
    [0.1, 1],
    [0.25, 2],
    [0.5, 3.5],
    [0.62, 4.7],
    [0.9, 7.5],
    [0.97, 9],
    [1, 9],
  ])("the value that a share of %d lies below is %d", (share, value) => {
    expect(sampleQuantile(ascending(X), share)).toBeCloseTo(value, 12);
  });

  test("infinite values sort last and are no NaN between each other", () => {
    const sorted = ascending([Infinity, 2, Infinity, 1]);
    expect([...sorted]).toEqual([1, 2, Infinity, Infinity]);
    expect(sampleQuantile(sorted, 1)).toBe(Infinity);
    expect(sampleQuantile(sorted, 0.75)).toBe(Infinity);
  });

  test("the shortest interval of a share is the narrowest of those that hold as many values", () => {
    const sorted = [0, 5, 6, 7, 8, 20, 21, 40];
    expect(shortestInterval(sorted, 0.5)).toEqual([0, 8]);
    expect(shortestInterval(sorted, 0.375)).toEqual([5, 8]);
    expect(shortestInterval([1, 2, 3], 1)).toEqual([1, 3]);
    expect(shortestInterval([0, 9, 10], 0.4)).toEqual([9, 10]);
    expect(shortestInterval([1, 2, 3, 4], 0.5)).toEqual([1, 3]);
  });

  test("equal values share their ranks, and what doesn't vary has no correlation", () => {
    expect(rankCorrelation(X, [2, 7, 1, 8, 2, 8, 1, 8, 2, 8])).toBeCloseTo(0.13471506281091267, 12);
    expect(
      rankCorrelation(
        X,
        X.map((x) => -(x ** 3)),
      ),
    ).toBeCloseTo(-1, 12);
    expect(
      rankCorrelation(
        X,
        X.map(() => 4),
      ),
    ).toBe(0);
  });

  test("sums, means, deviations and bounds are those of the numbers", () => {
    expect(sum(X)).toBe(39);
    expect(sumOf(X, (x) => 2 * x)).toBe(78);
    expect(mean(X)).toBe(3.9);
    // By hand: squares sum to 207, so the variance is 20.7 - 3.9².
    expect(standardDeviation(X)).toBeCloseTo(Math.sqrt(20.7 - 3.9 ** 2), 12);
    expect([clamp(-1, 0, 2), clamp(1, 0, 2), clamp(3, 0, 2)]).toEqual([0, 1, 2]);
    expect(item(X, 5)).toBe(9);
  });
});
