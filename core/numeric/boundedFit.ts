/** Least squares within bounds: Gauss-Newton with damping and projection, for a few parameters between 0 and 1. */
import { linearSolve } from "./linearSolve";
import { sumOf } from "./series";

export interface BoundedFit {
  readonly parameters: readonly number[];
  readonly residuals: readonly number[];
  /** Change of the model with each parameter, at the answer. */
  readonly slopes: readonly (readonly number[])[];
}

const SLOPE_STEP = 0.005;
const MOST_PASSES = 40;
const squares = (values: readonly number[]): number => sumOf(values, (value) => value * value);
const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((all, each, place) => all + each * (b[place] ?? 0), 0);
const clip = (value: number): number => Math.min(1, Math.max(0, value));

/** The matrix of the slopes' products, its diagonal raised by a share. */
export function normalMatrix(slopes: readonly (readonly number[])[], damping: number): Float64Array {
  return Float64Array.from(slopes.flatMap((a, i) => slopes.map((b, j) => dot(a, b) * (i === j ? 1 + damping : 1))));
}

/** @param model what is to equal `target`, by the parameters; undefined where they make no sense, but for the first ones */
export function boundedFit(
  model: (parameters: readonly number[]) => readonly number[] | undefined,
  target: readonly number[],
  begin: readonly number[],
): BoundedFit {
  const residualsOf = (at: readonly number[]): readonly number[] => {
    const found = model(at);
    return target.map((value, place) => (found === undefined ? Infinity : value - (found[place] ?? 0)));
  };
  const slopesAt = (at: readonly number[], residuals: readonly number[]) =>
    at.map((value, place) => {
      const movedBy = (step: number) => residualsOf(at.map((each, other) => (other === place ? each + step : each)));
      let step = value + SLOPE_STEP > 1 ? -SLOPE_STEP : SLOPE_STEP;
      let moved = movedBy(step);
      if (moved[0] === Infinity) {
        step = -step;
        moved = movedBy(step);
      }
      return residuals.map((residual, row) => (residual - (moved[row] ?? 0)) / step);
    });
  let at = begin.map(clip);
  let residuals = residualsOf(at);
  let slopes = slopesAt(at, residuals);
  let damping = 1e-3;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const pull = slopes.map((column) => dot(column, residuals));
    // A parameter at its bound that is pulled outwards stays there.
    const free = at.flatMap((value, place) => {
      const out = pull[place] ?? 0;
      return (value <= 0 && out < 0) || (value >= 1 && out > 0) ? [] : [place];
    });
    const change = Float64Array.from(free, (place) => pull[place] ?? 0);
    const matrix = normalMatrix(
      free.map((place) => slopes[place] ?? []),
      damping,
    );
    if (free.length === 0 || !linearSolve(matrix, change)) break;
    const next = at.map((value, place) => {
      const index = free.indexOf(place);
      return index < 0 ? value : clip(value + (change[index] ?? 0));
    });
    const moved = Math.max(...next.map((value, place) => Math.abs(value - (at[place] ?? 0))));
    const found = residualsOf(next);
    const [before, after] = [squares(residuals), squares(found)];
    if (after < before) {
      at = next;
      residuals = found;
      slopes = slopesAt(at, residuals);
      damping = Math.max(1e-9, damping / 10);
      if (before - after < 1e-9 * before) break;
    } else {
      damping *= 10;
      if (damping > 1e8) break;
    }
    if (moved < 1e-7) break;
  }
  return { parameters: at, residuals, slopes };
}
