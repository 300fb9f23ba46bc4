/** What a sample of values shows: quantiles, intervals, ranks. */
import { item, mean, sumOf } from "./series";

/** The values in ascending order; infinite ones last. */
export function ascending(values: ArrayLike<number>): Float64Array {
  return Float64Array.from(values).sort();
}

/** The value that a share of sorted values lies below: straight lines between the middles of the steps. */
export function sampleQuantile(sorted: ArrayLike<number>, share: number): number {
  const last = sorted.length - 1;
  const place = Math.min(last, Math.max(0, share * sorted.length - 0.5));
  const low = item(sorted, Math.floor(place));
  const high = item(sorted, Math.ceil(place));
  return low === high ? low : low + (place - Math.floor(place)) * (high - low);
}

/** The narrowest interval that holds a share of sorted values. */
export function shortestInterval(sorted: ArrayLike<number>, share: number): readonly [number, number] {
  const reach = Math.min(sorted.length - 1, Math.round(share * sorted.length));
  let best = 0;
  const width = (at: number): number => item(sorted, at + reach) - item(sorted, at);
  for (let at = 1; at + reach < sorted.length; at++) if (width(at) < width(best)) best = at;
  return [item(sorted, best), item(sorted, best + reach)];
}

/** The place of each value in ascending order; equal values share the mean of their places. */
function ranksOf(values: ArrayLike<number>): readonly number[] {
  const order = Array.from(values, (_, place) => place).sort((a, b) => {
    const [x, y] = [item(values, a), item(values, b)];
    return x < y ? -1 : x > y ? 1 : 0;
  });
  const ranks = order.map(() => 0);
  for (let from = 0, to = 0; from < order.length; from = to) {
    const value = item(values, item(order, from));
    while (to < order.length && item(values, item(order, to)) === value) to++;
    for (let at = from; at < to; at++) ranks[item(order, at)] = (from + to - 1) / 2;
  }
  return ranks;
}

/** Spearman's rank correlation, −1 to 1; 0 where either doesn't vary. */
export function rankCorrelation(x: ArrayLike<number>, y: ArrayLike<number>): number {
  const [a, b] = [ranksOf(x), ranksOf(y)];
  const middle = mean(a);
  const product = (p: readonly number[], q: readonly number[]): number =>
    sumOf([...p.keys()], (at) => (item(p, at) - middle) * (item(q, at) - middle));
  const spread = product(a, a) * product(b, b);
  return spread > 0 ? product(a, b) / Math.sqrt(spread) : 0;
}
