/**
 * Compact piecewise Chebyshev series, for fitted tables that nobody reads: coefficients are whole numbers of the last
 * decimal in base 32; for the ends of the pieces it stores only how often the range was halved.
 */
import { midpoint, type ChebyshevPieces, type PiecewiseFit } from "./chebyshev";

export interface PackedSeries {
  readonly range: readonly [number, number];
  /** For each piece in order, how often the range was halved down to it: one character each, base 36. */
  readonly halvings: string;
  readonly degree: number;
  /** Decimals that the coefficients keep. */
  readonly decimals: number;
  /** The pieces' coefficients one after the other, in units of the last decimal. */
  readonly coefficients: string;
}

const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
/** A digit below this ends a number; with this added, more digits follow. */
const BASE = 32;

/** A whole number: twice its size, plus one where it is below zero, lowest digit first. */
const packedNumber = (value: number): string => {
  // Twice its size must still be an exact whole number.
  if (!(Number.isInteger(value) && Math.abs(value) < 2 ** 52))
    throw new Error(`a coefficient must be a whole number below 2^52 in units of the last decimal, got ${value}`);
  let left = value < 0 ? -2 * value + 1 : 2 * value;
  let text = "";
  do {
    const digit = left % BASE;
    left = Math.floor(left / BASE);
    text += DIGITS.charAt(left > 0 ? digit + BASE : digit);
  } while (left > 0);
  return text;
};

const numbersOf = (text: string): readonly number[] => {
  const numbers: number[] = [];
  let value = 0;
  let weight = 1;
  for (const character of text) {
    const digit = DIGITS.indexOf(character);
    value += (digit % BASE) * weight;
    weight *= BASE;
    if (digit >= BASE) continue;
    numbers.push(value % 2 === 0 ? value / 2 : -(value - 1) / 2);
    value = 0;
    weight = 1;
  }
  return numbers;
};

const halvingsOf = (breaks: readonly number[]): string => {
  const depths: number[] = [];
  let at = 0;
  const walk = (from: number, to: number, depth: number): void => {
    if (breaks[at + 1] === to && breaks[at] === from) {
      depths.push(depth);
      at++;
      return;
    }
    if (depth >= 36) throw new Error("the pieces aren't halves of their range");
    const middle = midpoint(from, to);
    walk(from, middle, depth + 1);
    walk(middle, to, depth + 1);
  };
  walk(breaks[0] ?? 0, breaks.at(-1) ?? 0, 0);
  return depths.map((depth) => depth.toString(36)).join("");
};

const breaksOf = ([from, to]: readonly [number, number], halvings: string): readonly number[] => {
  const breaks = [from];
  const walk = (left: number, right: number, depth: number): void => {
    if (parseInt(halvings.charAt(breaks.length - 1), 36) === depth) {
      breaks.push(right);
      return;
    }
    const middle = midpoint(left, right);
    walk(left, middle, depth + 1);
    walk(middle, right, depth + 1);
  };
  walk(from, to, 0);
  return breaks;
};

/** Packs a fit whose coefficients are rounded to `decimals`. */
export const packSeries = ({ breaks, degree, coefficients }: PiecewiseFit, decimals: number): PackedSeries => ({
  range: [breaks[0] ?? 0, breaks.at(-1) ?? 0],
  halvings: halvingsOf(breaks),
  degree,
  decimals,
  coefficients: coefficients.map((c) => packedNumber(Math.round(c * 10 ** decimals))).join(""),
});

/** Restores the packed series, with exactly the same numbers. */
export const unpackSeries = (packed: PackedSeries): ChebyshevPieces => {
  const unit = 10 ** packed.decimals;
  return {
    breaks: Float64Array.from(breaksOf(packed.range, packed.halvings)),
    degree: packed.degree,
    coefficients: Float64Array.from(numbersOf(packed.coefficients), (whole) => whole / unit),
  };
};
