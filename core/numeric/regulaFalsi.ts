/** A function's end values, if already known. */
export interface Bracket {
  readonly from: number;
  readonly to: number;
  readonly fromValue: number;
  readonly toValue: number;
}

/**
 * Root between two ends of opposite sign by the Illinois variant of regula falsi
 * (M. Dowell, P. Jarratt (1971) BIT 11:168-174).
 *
 * @param tolerance width in x at which the search ends
 * @throws if the ends don't differ in sign
 */
export function regulaFalsi(f: (x: number) => number, ends: Bracket, tolerance: number, mostPasses = 100): number {
  let [a, b, fa, fb] = [ends.from, ends.to, ends.fromValue, ends.toValue];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new Error("regula falsi: the ends must differ in sign");
  for (let pass = 0; pass < mostPasses; pass++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (fx === 0 || Math.abs(x - b) < tolerance) return x;
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = x;
    fb = fx;
    if (Math.abs(b - a) < tolerance) return b;
  }
  return b;
}
