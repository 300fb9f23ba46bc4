/** Pipes whose losses are r q² or r q, and networks of them. */
import type { Grid, GridLink } from "../../core/numeric/gradientNetwork";

export interface Pipe extends GridLink {
  /** Head lost is r q |q| for a power of 2, r q for 1. */
  readonly r: number;
  readonly power: 1 | 2;
}

export const pipe = (from: number, to: number, r: number, rest: Partial<Pipe> = {}): Pipe => ({
  from,
  to,
  r,
  power: 2,
  shut: false,
  oneWay: false,
  lift: 0,
  start: 0.01,
  ...rest,
});

export const grid = (
  links: readonly Pipe[],
  fixed: readonly (number | undefined)[],
  demand?: readonly number[],
): Grid<Pipe> => ({
  links,
  fixed,
  demand: demand ?? fixed.map(() => 0),
  loss: ({ r, power, lift }, q, into) => {
    into.h = (power === 2 ? r * q * Math.abs(q) : r * q) - lift;
    into.g = power === 2 ? 2 * r * Math.max(Math.abs(q), 1e-9) : r;
  },
});
