/** Sums, means and bounds of numbers. */

export function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let place = 0; place < values.length; place++) total += values[place] ?? 0;
  return total;
}

/** The sum of a value of each item. */
export function sumOf<T>(items: readonly T[], value: (item: T) => number): number {
  let total = 0;
  for (const item of items) total += value(item);
  return total;
}

export function mean(values: ArrayLike<number>): number {
  return sum(values) / values.length;
}

/** Standard deviation of values about their mean, as of a whole population. */
export function standardDeviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(sumOf(values, (value) => (value - middle) ** 2) / values.length);
}

/** The nearest number from `least` to `most`. */
export function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}

/** The item at a place that is known to exist. */
export function item<T>(values: ArrayLike<T>, place: number): T {
  return values[place]!;
}
