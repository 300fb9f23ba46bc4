/** The steady cycle of a two-position control. Strict SI. */
import { silent, type Trace } from "../kernel/define/steps";
import { bracketedRoot } from "../numeric/root";
import { cycleCloses } from "./cyclingEquations";

/** Seconds on, by the band and the sensor alone. `rise` and `fall` in K/s, `tau` in s, `band` in K. */
export function steadyCycle(rise: number, fall: number, tau: number, band: number, trace: Trace = silent): number {
  // A sensor whose lag hides in the shortest rise counts as none.
  const shortest = band / rise;
  if (tau < 1e-6 * shortest) return shortest;
  const at = (t1: number) => ({ r: rise, t1, f: fall, tau, t0: (t1 * rise) / fall, b: band });
  const longest = shortest + (tau * (rise + fall)) / rise;
  const { x } = bracketedRoot((t1) => cycleCloses.left(at(t1)) - band, shortest, longest * (1 + 1e-9), {
    tolerance: 1e-12 * longest,
  });
  trace.relation(cycleCloses, at(x));
  return x;
}
