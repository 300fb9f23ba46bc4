/** The normal distribution of mean 0 and deviation 1. */

const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** The share of values below x, by its power series. */
export function normalShare(x: number): number {
  let [sum, term] = [x, x];
  for (let n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) sum += term *= (x * x) / n;
  return 0.5 + density(x) * sum;
}

/** The value that a share of values, above 0 and below 1, lies below. */
export function normalQuantile(share: number): number {
  if (share > 0.5) return -normalQuantile(1 - share);
  // Abramowitz and Stegun 26.2.23, then two steps of Newton.
  const t = Math.sqrt(-2 * Math.log(share));
  let x = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let step = 0; step < 2; step++) x -= (normalShare(x) - share) / density(x);
  return x;
}
