/** Correlated inputs: which pairs belong together, whether all of them can be, and their shares in a run. */
import { normalizeKey, quantity, rows, text, type ValueOf } from "../kernel/define/argument";
import { valueError } from "../kernel/values/fault";
import { showNumber } from "../kernel/values/quantity";
import { normalQuantile, normalShare } from "../numeric/normal";
import { clamp, item } from "../numeric/series";
import type { UncertainInput } from "./ranges";

export const CORRELATIONS = rows(
  {
    label: text("a label of the ranges", 60),
    with: text("another label of the ranges", 60),
    r: quantity("number", "correlation coefficient of the two", { from: -1, to: 1 }),
  },
  "rows of label, label, correlation coefficient",
  { least: 1, most: 200 },
);

export type CorrelatedPair = ValueOf<typeof CORRELATIONS>[number];

type Matrix = readonly (readonly number[])[];

export interface Correlation {
  /** Coefficients of the inputs by place. */
  readonly matrix: Matrix;
  /** Lower triangle whose product with its transpose is the matrix. */
  readonly factor: Matrix;
}

const product = (line: readonly number[], other: readonly number[]): number =>
  line.reduce((total, each, place) => total + each * item(other, place), 0);

/** A coefficient may pass the limit that the others set by its rounding. */
const ROUNDING = 1e-6;

/** The lower triangle of a correlation matrix by Cholesky; refuses a coefficient that the ones before it leave no room for. */
function factorOf(matrix: Matrix, names: readonly string[]): Matrix {
  const factor: number[][] = [];
  for (const [i, own] of matrix.entries()) {
    const line: number[] = [];
    let left = 1;
    for (let j = 0; j < i; j++) {
      const other = item(factor, j);
      const diagonal = item(other, j);
      const shared = product(line, other);
      const room = diagonal * Math.sqrt(left);
      const r = item(own, j);
      if (Math.abs(r - shared) > room + ROUNDING)
        throw valueError(
          `correlations, ${item(names, j)} and ${item(names, i)}: can't be together with the other pairs (those not given are 0): must be from ${showNumber(shared - room)} to ${showNumber(shared + room)}, got ${showNumber(r)}`,
        );
      const part = diagonal > 0 ? clamp((r - shared) / diagonal, -Math.sqrt(left), Math.sqrt(left)) : 0;
      line.push(part);
      left = Math.max(0, left - part * part);
    }
    factor.push([...line, left > ROUNDING ** 2 ? Math.sqrt(left) : 0]);
  }
  return factor;
}

/** The correlation of inputs by pairs of labels; undefined where all of them are 0. */
export function correlationOf(
  pairs: readonly CorrelatedPair[],
  inputs: readonly UncertainInput[],
): Correlation | undefined {
  const names = inputs.map(({ label }) => label);
  const keys = names.map(normalizeKey);
  const placeOf = (label: string): number => {
    const place = keys.indexOf(normalizeKey(label));
    if (place < 0) throw valueError(`correlations: no range of "${label}"; there are ${names.join(", ")}`);
    return place;
  };
  const given = new Map<string, number>();
  const keyOf = (i: number, j: number): string => `${Math.min(i, j)} ${Math.max(i, j)}`;
  for (const { label, with: other, r } of pairs) {
    const [i, j] = [placeOf(label), placeOf(other)];
    const name = `correlations, ${label} and ${other}`;
    if (i === j) throw valueError(`${name}: needs two labels that differ`);
    const before = given.get(keyOf(i, j)) ?? r;
    if (before !== r) throw valueError(`${name}: is given twice, ${showNumber(before)} and ${showNumber(r)}`);
    given.set(keyOf(i, j), r);
  }
  const matrix = keys.map((_, i) => keys.map((__, j) => (i === j ? 1 : (given.get(keyOf(i, j)) ?? 0))));
  const factor = factorOf(matrix, names);
  return [...given.values()].some((r) => r !== 0) ? { matrix, factor } : undefined;
}

/** Shares so near to 0 and 1 are as good as them; the values there may be infinite. */
const LEAST_SHARE = 1e-12;

/** Shares of values below, correlated by their normal scores. An input without a pair keeps its own. */
export function correlatedShares(shares: readonly number[], { factor }: Correlation): readonly number[] {
  const scores = shares.map(normalQuantile);
  return factor.map((line, i) => {
    if (item(line, i) === 1) return item(shares, i);
    return clamp(normalShare(product(line, scores)), LEAST_SHARE, 1 - LEAST_SHARE);
  });
}

/** Inputs that pairs join, directly or through others, as a number for each input. */
export function joinedGroups({ matrix }: Correlation): readonly number[] {
  return matrix.reduce<readonly number[]>(
    (groups, line, i) => {
      const joined = new Set(groups.filter((_, j) => line[j] !== 0));
      return groups.map((group) => (joined.has(group) ? item(groups, i) : group));
    },
    [...matrix.keys()],
  );
}

/** The labels of correlated inputs that fit, in one text. */
export function correlatedNames<T extends { readonly label: string }>(
  inputs: readonly T[],
  correlation: Correlation | undefined,
  fits: (input: T) => boolean,
): string {
  const names = inputs.filter((input, i) => {
    const line = correlation?.matrix[i] ?? [];
    return fits(input) && line.some((r, j) => r !== 0 && j !== i);
  });
  return names.map(({ label }) => label).join(", ");
}
