/** A curve through points that never leaves their range: F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238. */

export interface MonotoneCubic {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** dy/dx at each point. */
  readonly slopes: readonly number[];
}

/** Slope at the end of a parabola through three points; 0 where it would point against the end's own chord. */
const endSlope = (h0: number, h1: number, d0: number, d1: number): number => {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  return slope * d0 > 0 ? slope : 0;
};

/** Reduces both slopes of a span that would overshoot: the circle of radius 3 of the paper. */
const limited = (left: number, right: number, chord: number): readonly [number, number] => {
  if (chord === 0) return [0, 0];
  const size = Math.hypot(left / chord, right / chord);
  return size > 3 ? [(3 * left) / size, (3 * right) / size] : [left, right];
};

/**
 * The curve through points of ascending x: slopes of the parabola through each three points, 0 at turning points,
 * reduced where a span would overshoot. Points on a parabola reproduce it, except at its turning point.
 *
 * @param xs ascending, two or more
 */
export const monotoneCubic = (xs: readonly number[], ys: readonly number[]): MonotoneCubic => {
  const last = xs.length - 1;
  const widths = xs.slice(1).map((x, i) => x - (xs[i] ?? 0));
  const chords = widths.map((h, i) => ((ys[i + 1] ?? 0) - (ys[i] ?? 0)) / h);
  const at = (of: readonly number[], i: number): number => of[i] ?? 0;
  const slopes = xs.map((_, i) => {
    if (last === 1) return at(chords, 0);
    if (i === 0) return endSlope(at(widths, 0), at(widths, 1), at(chords, 0), at(chords, 1));
    if (i === last) return endSlope(at(widths, i - 1), at(widths, i - 2), at(chords, i - 1), at(chords, i - 2));
    const [before, after] = [at(chords, i - 1), at(chords, i)];
    if (before * after <= 0) return 0;
    const [h0, h1] = [at(widths, i - 1), at(widths, i)];
    return (h1 * before + h0 * after) / (h0 + h1);
  });
  chords.forEach((chord, i) => {
    const [left, right] = limited(at(slopes, i), at(slopes, i + 1), chord);
    slopes[i] = left;
    slopes[i + 1] = right;
  });
  return { xs, ys, slopes };
};

/** The span that contains x: its index, and the ends' values and slopes. */
export interface CubicSegment {
  readonly x0: number;
  readonly width: number;
  readonly y0: number;
  readonly y1: number;
  readonly m0: number;
  readonly m1: number;
}

/** Index of the span that contains x; the first or last one for x outside. */
const placeOf = (xs: readonly number[], x: number): number => {
  let i = 0;
  while (i < xs.length - 2 && x > (xs[i + 1] ?? 0)) i++;
  return i;
};

export const spanAt = ({ xs, ys, slopes }: MonotoneCubic, x: number): CubicSegment => {
  const i = placeOf(xs, x);
  const x0 = xs[i] ?? 0;
  return {
    x0,
    width: (xs[i + 1] ?? 0) - x0,
    y0: ys[i] ?? 0,
    y1: ys[i + 1] ?? 0,
    m0: slopes[i] ?? 0,
    m1: slopes[i + 1] ?? 0,
  };
};

/** The curve's value at x, between its first and last point. */
export const cubicAt = ({ xs, ys, slopes }: MonotoneCubic, x: number): number => {
  const i = placeOf(xs, x);
  const x0 = xs[i] ?? 0;
  const width = (xs[i + 1] ?? 0) - x0;
  const t = (x - x0) / width;
  const s = 1 - t;
  const left = (1 + 2 * t) * (ys[i] ?? 0) + t * width * (slopes[i] ?? 0);
  const right = (1 + 2 * s) * (ys[i + 1] ?? 0) - s * width * (slopes[i + 1] ?? 0);
  return s * s * left + t * t * right;
};
