/**
 * A function given piecewise by Chebyshev series of one degree. `breaks` holds the ends of the pieces in ascending order,
 * `coefficients` the pieces' rows one after the other.
 */
export interface ChebyshevPieces {
  readonly breaks: Float64Array;
  readonly degree: number;
  readonly coefficients: Float64Array;
}

/** A value and its slope: written by `chebyshevWithSlope`. */
export interface ValueSlope {
  value: number;
  slope: number;
}

function pieceOf(breaks: Float64Array, x: number): number {
  let piece = 0;
  const last = breaks.length - 2;
  while (piece < last && x > breaks[piece + 1]!) piece++;
  return piece;
}

/** The value at x; beyond the outer breaks the end pieces are extended. */
export function chebyshevAt(pieces: ChebyshevPieces, x: number): number {
  const { breaks, degree, coefficients } = pieces;
  const piece = pieceOf(breaks, x);
  const from = breaks[piece]!;
  const to = breaks[piece + 1]!;
  const u = (2 * x - from - to) / (to - from);
  const u2 = 2 * u;
  const first = piece * (degree + 1);
  let b1 = 0;
  let b2 = 0;
  for (let k = first + degree; k > first; k--) {
    const b0 = coefficients[k]! + u2 * b1 - b2;
    b2 = b1;
    b1 = b0;
  }
  return coefficients[first]! + u * b1 - b2;
}

/** The value and the slope at x (Clenshaw's recurrence and its derivative). */
export function chebyshevWithSlope(pieces: ChebyshevPieces, x: number, into: ValueSlope): void {
  const { breaks, degree, coefficients } = pieces;
  const piece = pieceOf(breaks, x);
  const from = breaks[piece]!;
  const to = breaks[piece + 1]!;
  const u = (2 * x - from - to) / (to - from);
  const u2 = 2 * u;
  const first = piece * (degree + 1);
  let b1 = 0;
  let b2 = 0;
  let d1 = 0;
  let d2 = 0;
  for (let k = first + degree; k > first; k--) {
    const d0 = 2 * b1 + u2 * d1 - d2;
    d2 = d1;
    d1 = d0;
    const b0 = coefficients[k]! + u2 * b1 - b2;
    b2 = b1;
    b1 = b0;
  }
  into.value = coefficients[first]! + u * b1 - b2;
  into.slope = ((b1 + u * d1 - d2) * 2) / (to - from);
}

/** Coefficients of the series of one degree through f at the Chebyshev nodes of [from, to]. */
export function chebyshevFit(f: (x: number) => number, from: number, to: number, degree: number): number[] {
  const n = degree + 1;
  const values = Array.from({ length: n }, (_, j) => {
    const u = Math.cos((Math.PI * (j + 0.5)) / n);
    return f((from + to) / 2 + ((to - from) / 2) * u);
  });
  return Array.from({ length: n }, (_, k) => {
    const sum = values.reduce((a, value, j) => a + value * Math.cos((Math.PI * k * (j + 0.5)) / n), 0);
    return (sum * (k === 0 ? 1 : 2)) / n;
  });
}

/** The point that halves a piece: its middle to eight digits. */
export const midpoint = (from: number, to: number): number => Number(((from + to) / 2).toPrecision(8));

/** A piecewise fit, its rows rounded to `decimals`, and the largest error found between the nodes. */
export interface PiecewiseFit {
  readonly breaks: number[];
  readonly degree: number;
  readonly coefficients: number[];
  readonly error: number;
}

/**
 * Fits f on [from, to] by pieces of one degree, halving a piece until the error between its nodes is below `tolerance` or
 * the piece is narrower than `narrowest`.
 */
export function piecewiseFit(
  f: (x: number) => number,
  [from, to]: readonly [number, number],
  options: { degree: number; tolerance: number; decimals: number; narrowest: number },
): PiecewiseFit {
  const { degree, tolerance, decimals, narrowest } = options;
  const coefficients = chebyshevFit(f, from, to, degree).map((c) => Number(c.toFixed(decimals)));
  const one = { breaks: Float64Array.of(from, to), degree, coefficients: Float64Array.from(coefficients) };
  let error = 0;
  for (let i = 0; i <= 2 * degree + 2; i++) {
    const x = from + ((to - from) * i) / (2 * degree + 2);
    error = Math.max(error, Math.abs(chebyshevAt(one, x) - f(x)));
  }
  if (error <= tolerance || (to - from) / 2 < narrowest) return { breaks: [from, to], degree, coefficients, error };
  const middle = midpoint(from, to);
  const left = piecewiseFit(f, [from, middle], options);
  const right = piecewiseFit(f, [middle, to], options);
  return {
    breaks: [...left.breaks, ...right.breaks.slice(1)],
    degree,
    coefficients: [...left.coefficients, ...right.coefficients],
    error: Math.max(left.error, right.error),
  };
}
