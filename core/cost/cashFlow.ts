/** Figures of a series of yearly cash flows, money in positive, the first of them now. */
import { bracketedRoot } from "../numeric/root";
import { sumOf } from "../numeric/series";

/** Present value of flows at a rate. */
export function presentValueOf(flows: readonly number[], rate: number): number {
  return flows.reduce((total, flow, year) => total + flow / (1 + rate) ** year, 0);
}

/** Years until the discounted sum first reaches zero, interpolated inside the year; undefined if it never does. */
export function firstCrossing(flows: readonly number[], rate: number): number | undefined {
  let total = 0;
  for (const [year, flow] of flows.entries()) {
    const part = flow / (1 + rate) ** year;
    // Nothing paid now is no crossing yet: what follows decides.
    if (total + part >= 0 && (year > 0 || flow > 0))
      return total === 0 ? Math.max(0, year - 1) : year - 1 - total / part;
    total += part;
  }
  return undefined;
}

/** The year from which the discounted sum stays at zero or above; undefined if it ends below. */
export function lastingFrom(flows: readonly number[], rate: number): number | undefined {
  let total = 0;
  let from: number | undefined;
  for (const [year, flow] of flows.entries()) {
    total += flow / (1 + rate) ** year;
    if (total < 0) from = undefined;
    else from ??= year;
  }
  return from;
}

/** Logarithms of 1 + rate that are looked at: rates of -99 % to 2,000 %. */
const [LEAST, MOST, STEPS] = [Math.log(0.01), Math.log(21), 600];

/** The rate at which the flows are worth nothing; undefined where none or several do. */
export function internalRate(flows: readonly number[]): number | undefined {
  const value = (x: number): number => presentValueOf(flows, Math.expm1(x));
  const roots: number[] = [];
  for (let i = 0; i < STEPS && roots.length < 2; i++) {
    const [a, b] = [i, i + 1].map((step) => LEAST + ((MOST - LEAST) * step) / STEPS) as [number, number];
    // A root on the border counts once.
    if (value(a) === 0) continue;
    const root = bracketedRoot(value, a, b);
    if (root.found) roots.push(root.x);
  }
  const [only] = roots;
  return roots.length === 1 && only !== undefined ? Math.expm1(only) : undefined;
}

/** Modified internal rate: gains put out and losses financed at one rate; undefined without both. */
export function modifiedRate(flows: readonly number[], rate: number): number | undefined {
  const n = flows.length - 1;
  const part = (sign: number): number =>
    sumOf([...flows.entries()], ([year, flow]) => Math.max(0, sign * flow) / (1 + rate) ** year);
  const [gains, losses] = [part(1) * (1 + rate) ** n, part(-1)];
  return gains > 0 && losses > 0 && n > 0 ? (gains / losses) ** (1 / n) - 1 : undefined;
}
