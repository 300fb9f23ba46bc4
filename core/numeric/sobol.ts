/**
 * Points that fill a cube evenly (I. M. Sobol), with the direction numbers of S. Joe and F. Y. Kuo, 2008; scrambled by B. Burley's
 * hash (2020) in the manner of A. B. Owen. Any power of two of points, from the first on, is even in every dimension.
 */

/** The most dimensions. */
export const SOBOL_DIMENSIONS = 40;

/** For dimensions from the second on: coefficients of the primitive polynomial as a number, then the initial numbers. */
const INITIAL =
  "0,1 1,1,3 1,1,3,1 2,1,1,1 1,1,1,3,3 4,1,3,5,13 2,1,1,5,5,17 4,1,1,5,5,5 7,1,1,7,11,19 11,1,1,5,1,1 " +
  "13,1,1,1,3,11 14,1,3,5,5,31 1,1,3,3,9,7,49 13,1,1,1,15,21,21 16,1,3,1,13,27,49 19,1,1,1,15,7,5 " +
  "22,1,3,1,15,13,25 25,1,1,5,5,19,61 1,1,3,7,11,23,15,103 4,1,3,7,13,13,15,69 7,1,1,3,13,7,35,63 " +
  "8,1,3,5,9,1,25,53 14,1,3,1,13,9,35,107 19,1,3,1,5,27,61,31 21,1,1,5,11,19,41,61 28,1,3,5,3,3,13,69 " +
  "31,1,1,7,13,1,19,1 32,1,3,7,5,13,19,59 37,1,1,3,9,25,29,41 41,1,3,5,13,23,1,55 42,1,3,7,3,13,59,17 " +
  "50,1,3,1,3,5,53,69 55,1,1,5,5,23,33,13 56,1,1,7,7,1,61,123 59,1,1,7,9,13,61,49 62,1,3,3,5,3,55,33 " +
  "14,1,3,1,15,31,13,49,245 21,1,3,5,15,31,59,63,97 22,1,3,1,11,11,11,77,249";

const BITS = 32;

/** The direction numbers of a dimension from the second on. */
function directionsOf(row: string): Uint32Array {
  const [a = 0, ...initial] = row.split(",").map(Number);
  const s = initial.length;
  const v = new Uint32Array(BITS);
  for (let i = 0; i < BITS; i++) {
    if (i < s) {
      v[i] = initial[i]! << (BITS - 1 - i);
      continue;
    }
    let bits = v[i - s]! ^ (v[i - s]! >>> s);
    for (let k = 1; k < s; k++) if ((a >>> (s - 1 - k)) & 1) bits ^= v[i - k]!;
    v[i] = bits;
  }
  return v;
}

const FIRST = Uint32Array.from({ length: BITS }, (_, i) => 1 << (BITS - 1 - i));

const DIRECTIONS: readonly Uint32Array[] = [FIRST, ...INITIAL.split(" ").map(directionsOf)];

/** The bits of a coordinate, dimensions counted from 0. */
function sobolBits(index: number, dimension: number): number {
  const v = DIRECTIONS[dimension]!;
  let bits = 0;
  for (let gray = index ^ (index >>> 1), i = 0; gray > 0; gray >>>= 1, i++) if (gray & 1) bits ^= v[i]!;
  return bits;
}

function reversed(bits: number): number {
  let x = bits;
  for (const [by, mask] of [
    [1, 0x55555555],
    [2, 0x33333333],
    [4, 0x0f0f0f0f],
    [8, 0x00ff00ff],
  ] as const)
    x = ((x >>> by) & mask) | ((x & mask) << by);
  return (x >>> 16) | (x << 16);
}

/** Moves halves, quarters and so on of the axis about: each point keeps its even neighbours. */
function scrambled(bits: number, seed: number): number {
  let x = reversed(bits);
  x = (x + seed) | 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return reversed(x);
}

/** A coordinate of a point of the plain sequence, from 0 to below 1. */
function plainAt(index: number, dimension: number): number {
  return (sobolBits(index, dimension) >>> 0) / 2 ** BITS;
}

/**
 * A coordinate of a point, scrambled: above 0 and below 1, and the same for the same seed. Seed 0 is the plain sequence, whose
 * first point is the origin.
 */
export function sobolAt(index: number, dimension: number, seed = 1): number {
  if (seed === 0) return plainAt(index, dimension);
  const own = Math.imul(seed * 64 + dimension + 1, 0x9e3779b1);
  return ((scrambled(sobolBits(index, dimension), own) >>> 0) + 0.5) / 2 ** BITS;
}
