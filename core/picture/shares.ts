/**
 * Shares of each input in the variance of an outcome, by the estimators of Saltelli and others (2010) with the outcome centred:
 * first order (the input alone) and total (with everything that it acts through).
 */

/** Outcomes of one pair of points: of the first, of the second, and of the first with one input of the second, by input. */
export interface SharePair {
  readonly first: number;
  readonly second: number;
  readonly mixed: readonly number[];
}

export interface Shares {
  readonly firstOrder: number;
  readonly total: number;
}

const meanOver = (pairs: readonly SharePair[], of: (pair: SharePair) => number): number =>
  pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length;

/** Shares by input; none where the outcome doesn't vary. */
export function sharesOf(pairs: readonly SharePair[]): readonly Shares[] {
  const middle = meanOver(pairs, ({ first, second }) => (first + second) / 2);
  const variance = meanOver(pairs, ({ first, second }) => ((first - middle) ** 2 + (second - middle) ** 2) / 2);
  if (!(variance > 0)) return [];
  return (pairs[0]?.mixed ?? []).map((_, input) => ({
    firstOrder:
      meanOver(pairs, ({ first, second, mixed }) => (second - middle) * ((mixed[input] ?? 0) - first)) / variance,
    total: meanOver(pairs, ({ first, mixed }) => (first - (mixed[input] ?? 0)) ** 2) / (2 * variance),
  }));
}
