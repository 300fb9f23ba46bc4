import { linearSolve } from "./linearSolve";

/** How a Newton search over several unknowns ended. */
export interface SystemSolution {
  readonly unknowns: Float64Array;
  /** The largest absolute residual at the answer. */
  readonly residual: number;
  readonly passes: number;
}

const largest = (values: Float64Array) => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/**
 * Newton's method on a small system with a Jacobian by central differences; meant for unknowns of order one
 * (logarithms of densities, of fractions). Steps longer than `longest` in any unknown are shortened. Continues while the
 * residual keeps falling, so that the answer is as sharp as rounding allows; undefined where the residual stays above
 * `tolerance`.
 */
export function newtonSystem(
  residuals: (unknowns: Float64Array, into: Float64Array) => void,
  start: ArrayLike<number>,
  tolerance: number,
  longest = 0.3,
  mostPasses = 40,
): SystemSolution | undefined {
  const n = start.length;
  let x = Float64Array.from(start);
  let f = new Float64Array(n);
  residuals(x, f);
  let now = largest(f);
  for (let passes = 1; passes <= mostPasses; passes++) {
    const step = newtonStep(residuals, x, f);
    if (!step) return undefined;
    const scale = Math.min(1, longest / largest(step));
    const next = x.map((value, i) => value - scale * step[i]!);
    const g = new Float64Array(n);
    residuals(next, g);
    const after = largest(g);
    if (!Number.isFinite(after)) return undefined;
    if (now <= tolerance && after >= now * 0.5) return { unknowns: x, residual: now, passes };
    x = next;
    f = g;
    now = after;
  }
  return now <= tolerance ? { unknowns: x, residual: now, passes: mostPasses } : undefined;
}

function newtonStep(
  residuals: (unknowns: Float64Array, into: Float64Array) => void,
  x: Float64Array,
  f: Float64Array,
): Float64Array | undefined {
  const n = x.length;
  const h = 1e-6;
  const jacobian = new Float64Array(n * n);
  const up = new Float64Array(n);
  const down = new Float64Array(n);
  const moved = Float64Array.from(x);
  for (let j = 0; j < n; j++) {
    moved[j] = x[j]! + h;
    residuals(moved, up);
    moved[j] = x[j]! - h;
    residuals(moved, down);
    moved[j] = x[j]!;
    for (let i = 0; i < n; i++) jacobian[i * n + j] = (up[i]! - down[i]!) / (2 * h);
  }
  const step = Float64Array.from(f);
  return linearSolve(jacobian, step) ? step : undefined;
}
