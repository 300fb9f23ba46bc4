/** Crossflow with both streams unmixed. */
import { sum } from "../../numeric/series";

/** Shares of a Poisson distribution of mean x above 0, 1, …, most: all terms positive, so nothing cancels. */
const poissonTails = (x: number, most: number): Float64Array => {
  const mode = Math.min(Math.floor(x), most);
  const share = new Float64Array(most + 1);
  share[mode] = 1;
  for (let m = mode; m > 0; m--) share[m - 1] = ((share[m] ?? 0) * m) / x;
  for (let m = mode; m < most; m++) share[m + 1] = ((share[m] ?? 0) * x) / (m + 1);
  const total = sum(share);
  const tails = new Float64Array(most + 1);
  let tail = 0;
  for (let m = most; m >= 0; m--) {
    tails[m] = tail / total;
    tail += share[m] ?? 0;
  }
  return tails;
};

/**
 * Effectiveness of crossflow with both streams unmixed, by Mason's series (1955):
 * e = 1/(C N) Σ P(n, N) P(n, C N) with P(n, x) = 1 − exp(−x) Σ_{m≤n} x^m/m!.
 *
 * @param N transfer units on the smaller capacity rate, 0 to 1,000
 * @param C capacity ratio, 0 to 1
 */
export const unmixedEffectiveness = (N: number, C: number): number => {
  const x = C * N;
  if (x < 1e-12) return -Math.expm1(-N);
  const most = Math.ceil(N + 12 * Math.sqrt(N) + 40);
  const tailsOfN = poissonTails(N, most);
  const tailsOfCN = poissonTails(x, most);
  let product = 0;
  for (let n = 0; n <= most; n++) product += (tailsOfN[n] ?? 0) * (tailsOfCN[n] ?? 0);
  return product / x;
};
