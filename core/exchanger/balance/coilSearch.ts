/** Searches for the condensing temperature that leaves a coil no spare area: by ratings that converge, else by a bracket. */
import { isFault } from "../../kernel/values/fault";
import { bracketedRoot } from "../../numeric/root";
import { noEquilibrium } from "./balance";

/** Spare area over the area needed, at a condensing temperature, K. */
type Margin = (condensing: number) => number;

export interface Settled {
  /** A temperature at which the coil was rated, K. */
  readonly condensing: number;
  /** The temperatures searched, K. */
  readonly bracket: readonly [number, number];
}

/** Margin when the streams cross: no area is enough. */
export const CROSSED = -1;

/** Change of the condensing temperature, K, at which machine and coil agree: a millionth of any result. */
const SETTLED = 1e-6;
/** Beyond these, a coil rests where the relation of a film changes, and no estimate converges. */
const MOST_RATINGS = 6;

/** A rating: the condensing temperature and the logarithm of the area there is over the area needed. */
interface Rated {
  readonly T: number;
  readonly spare: number;
}

/** The temperature without spare area by the inverse polynomial through the latest three ratings at most, K. */
const withoutSpare = (rated: readonly Rated[]): number => {
  const latest = rated.slice(-3);
  return latest.reduce(
    (sum, one) =>
      sum +
      latest.reduce((part, { spare }) => (spare === one.spare ? part : (part * spare) / (spare - one.spare)), one.T),
    0,
  );
};

/**
 * Rates the coil, lets the machine settle at the conductance that the coil has there, and repeats until both agree.
 *
 * @param start a first condensing temperature, K
 * @param settledWith the temperature at which the machine settles if the conductance grows by the spare share, K;
 *   undefined where no conductance describes the coil
 * @returns undefined where the streams cross or nothing converges
 */
export function settleByRatings(
  margin: Margin,
  start: () => number,
  settledWith: (condensing: number, spare: number) => number | undefined,
): Settled | undefined {
  const rated: Rated[] = [];
  try {
    let T: number | undefined = start();
    while (T !== undefined && rated.length < MOST_RATINGS) {
      const found = margin(T);
      if (found === CROSSED) return undefined;
      rated.push({ T, spare: Math.log1p(found) });
      const next: number | undefined = rated.length === 1 ? settledWith(T, found) : withoutSpare(rated);
      if (next !== undefined && Math.abs(next - T) < SETTLED) {
        const all = rated.map((each) => each.T);
        return { condensing: T, bracket: [Math.min(...all), Math.max(...all)] };
      }
      T = next;
    }
  } catch (error) {
    // An estimate may leave the machine's range where the bracket doesn't.
    if (!isFault(error)) throw error;
  }
  return undefined;
}

/** Width of the last bracket, K: the margin is steep when a large coil brings the streams close together. */
const TOLERANCE = 1e-7;
const MOST_STEPS = 60;

/** First width of the bracket, K; it doubles until the margin changes sign. */
const FIRST_WIDTH = 4;

/** A bracket around the root of a rising margin, widened from `start` inside the limits, K. */
const bracketFrom = (
  margin: Margin,
  start: number,
  [lowest, highest]: readonly [number, number],
): readonly [number, number] => {
  const inside = (T: number): number => Math.min(highest, Math.max(lowest, T));
  let near = inside(start);
  const up = margin(near) < 0;
  for (let width = FIRST_WIDTH; ; width *= 2) {
    const far = inside(near + (up ? width : -width));
    if (far === near) return noEquilibrium(near, highest);
    if (margin(far) < 0 !== up) return up ? [near, far] : [far, near];
    near = far;
  }
};

/** The known temperature nearest to `x`. */
const nearestTo = (x: number, known: ReadonlyMap<number, unknown>): number | undefined =>
  [...known.keys()].reduce<number | undefined>(
    (best, each) => (best === undefined || Math.abs(each - x) < Math.abs(best - x) ? each : best),
    undefined,
  );

/**
 * Brackets the temperature at which the margin vanishes, and narrows the bracket.
 *
 * @param ratings the coil by the temperatures at which its streams were apart
 * @throws if the margin has one sign inside the limits
 */
export function searchByBracket(
  margin: Margin,
  ratings: ReadonlyMap<number, unknown>,
  start: number,
  limits: readonly [number, number],
): Settled {
  const bracket = bracketFrom(margin, start, limits);
  const root = bracketedRoot(margin, bracket[0], bracket[1], { tolerance: TOLERANCE, most: MOST_STEPS });
  // On a large coil the margin jumps from crossed streams to spare area inside the last bracket: take the end with streams apart.
  const nearest = root.found ? nearestTo(root.x, ratings) : undefined;
  return nearest === undefined ? noEquilibrium(bracket[0], limits[1]) : { condensing: nearest, bracket };
}
