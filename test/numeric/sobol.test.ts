/** Points of the sequence against SciPy 1.17.1 (stats.qmc.Sobol, not scrambled, 32 bits), and their evenness. */
import { describe, expect, test } from "vitest";
import { SOBOL_DIMENSIONS, sobolAt } from "../../core/numeric/sobol";

const DIMENSIONS = [0, 1, 2, 3, 7, 12, 18, 25, 33, 36, 37, 38, 39];

const POINTS: readonly (readonly [number, readonly number[]])[] = [
  [2, [0.75, 0.25, 0.25, 0.25, 0.75, 0.25, 0.75, 0.75, 0.75, 0.25, 0.25, 0.25, 0.25]],
  [5, [0.875, 0.875, 0.125, 0.375, 0.375, 0.875, 0.375, 0.375, 0.375, 0.125, 0.375, 0.875, 0.375]],
  [10, [0.9375, 0.0625, 0.6875, 0.1875, 0.1875, 0.6875, 0.1875, 0.8125, 0.1875, 0.4375, 0.5625, 0.0625, 0.8125]],
  [
    23,
    [
      0.21875, 0.84375, 0.09375, 0.53125, 0.46875, 0.03125, 0.40625, 0.53125, 0.28125, 0.15625, 0.15625, 0.65625,
      0.78125,
    ],
  ],
  [
    63,
    [
      0.015625, 0.796875, 0.359375, 0.453125, 0.140625, 0.546875, 0.953125, 0.640625, 0.515625, 0.859375, 0.203125,
      0.921875, 0.171875,
    ],
  ],
];

const every = Array.from({ length: SOBOL_DIMENSIONS }, (_, dimension) => dimension);

describe("the points that fill a cube", () => {
  test.each(POINTS)("point %d of the plain sequence is the published one", (index, at) => {
    expect(DIMENSIONS.map((dimension) => sobolAt(index, dimension, 0))).toEqual(at);
  });

  test.each([0, 1, 7])("256 points of seed %d have one in each 256th of every dimension", (seed) => {
    for (const dimension of every) {
      const parts = new Set(
        Array.from({ length: 256 }, (_, index) => Math.floor(256 * sobolAt(index, dimension, seed))),
      );
      expect(parts.size).toBe(256);
    }
  });

  test("scrambled coordinates are inside the cube, the same for the same seed, and others for another", () => {
    for (const dimension of every) {
      expect(sobolAt(0, dimension)).toBeGreaterThan(0);
      expect(sobolAt(0, dimension)).toBe(sobolAt(0, dimension, 1));
      expect(sobolAt(3, dimension, 2)).not.toBe(sobolAt(3, dimension, 1));
    }
    expect(sobolAt(3, 4)).not.toBe(sobolAt(3, 5));
  });

  test("two scrambled dimensions don't run together", () => {
    const product = (a: number, b: number): number =>
      Array.from({ length: 256 }, (_, i) => (sobolAt(i, a) - 0.5) * (sobolAt(i, b) - 0.5)).reduce((x, y) => x + y) /
      256;
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [5, 9],
      [20, 39],
    ] as const)
      expect(Math.abs(product(a, b)) * 12).toBeLessThan(0.15);
  });
});
