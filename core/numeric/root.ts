/** A root of a function of one variable in a bracket. */

export interface Root {
  readonly x: number;
  readonly residual: number;
  readonly iterations: number;
  readonly bracket: readonly [number, number];
  /** False if the ends of the bracket have the same sign, or the passes ran out. */
  readonly found: boolean;
}

export interface RootOptions {
  /** Width of x at which the search ends. */
  readonly tolerance?: number;
  readonly most?: number;
}

/**
 * Brent's method (R. P. Brent: Algorithms for Minimization without Derivatives, 1973, chapter 4): inverse quadratic steps
 * with bisection as the safeguard. Never leaves the bracket, at most `most` passes.
 */
export const bracketedRoot = (
  f: (x: number) => number,
  low: number,
  high: number,
  { tolerance = 1e-12, most = 100 }: RootOptions = {},
): Root => {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  const bracket = [low, high] as const;
  if (fa === 0) return { x: a, residual: 0, iterations: 0, bracket, found: true };
  if (fb === 0) return { x: b, residual: 0, iterations: 0, bracket, found: true };
  if (!(fa * fb < 0)) return { x: Number.NaN, residual: Number.NaN, iterations: 0, bracket, found: false };
  let c = a;
  let fc = fa;
  let step = b - a;
  let last = step;
  for (let iterations = 1; iterations <= most; iterations++) {
    if (fb * fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      last = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const small = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= small || fb === 0) return { x: b, residual: fb, iterations, bracket, found: true };
    const next = Math.abs(last) >= small && Math.abs(fa) > Math.abs(fb) ? interpolated(a, b, c, fa, fb, fc) : half;
    const accepted = 2 * Math.abs(next) < Math.min(3 * Math.abs(half) - small, Math.abs(last)) && next * half > 0;
    last = accepted ? step : half;
    step = accepted ? next : half;
    a = b;
    fa = fb;
    b += Math.abs(step) > small ? step : Math.sign(half) * small;
    fb = f(b);
  }
  return { x: b, residual: fb, iterations: most, bracket, found: false };
};

/** The step from b by inverse quadratic interpolation, or the secant where two points coincide. */
const interpolated = (a: number, b: number, c: number, fa: number, fb: number, fc: number): number => {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
};
