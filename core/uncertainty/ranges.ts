/** The ranges argument: what each uncertain input may be. */
import { choice, normalizeKey, quantity, rows, text, type ValueOf } from "../kernel/define/argument";
import { valueError } from "../kernel/values/fault";
import { fromBase, KINDS, showNumber, type KindName, type System } from "../kernel/values/quantity";
import { readQuantityText } from "../kernel/values/quantityText";
import { silent, type Trace } from "../kernel/define/steps";
import { normalQuantile } from "../numeric/normal";
import { studentTable } from "../numeric/student";
import { SOBOL_DIMENSIONS } from "../numeric/sobol";
import { TENTH, logNormalAt, normalAt, rectangularAt, triangularAt } from "./equations";

const DISTRIBUTIONS = ["rectangular", "triangular", "normal", "log-normal"] as const;

/** Two dimensions of the sequence for each: shares need a second sample. */
const MOST_RANGES = SOBOL_DIMENSIONS / 2;

const value = (about: string) => quantity("number", about);

const COLUMNS = {
  label: text("label or argument that is uncertain", 60),
  distribution: choice("Distribution", DISTRIBUTIONS, "its distribution", {
    uniform: "rectangular",
    Gaussian: "normal",
  }),
  low: value("least value, or P10 of normal and log-normal"),
  likely: value("likeliest value of triangular; else the middle").optional(),
  high: value("greatest value, or P90 of normal and log-normal"),
  unit: text("unit of the three; left out: that of the call", 40).optional(),
};

const COUNT = { least: 1, most: MOST_RANGES };

export const RANGES = rows(COLUMNS, "rows of label, distribution, low, likely, high, unit", COUNT);

export const RANGES_WITH_FREEDOM = rows(
  { ...COLUMNS, freedom: value("degrees of freedom of the uncertainty, from 1; left out: infinite").optional() },
  "rows of label, distribution, low, likely, high, unit, degrees of freedom",
  COUNT,
);

export type UncertainRange = ValueOf<typeof RANGES>[number] & { readonly freedom?: number | undefined };

/** An uncertain input: its values in the unit of the call. */
export interface UncertainInput {
  readonly label: string;
  /** Likeliest of a triangular distribution, else the middle. */
  readonly likely: number;
  readonly mean: number;
  /** Standard deviation: the input's standard uncertainty. */
  readonly deviation: number;
  /** Degrees of freedom of it. */
  readonly freedom: number;
  readonly unit: string;
  /** The value that a share of values lies below. */
  at(share: number, trace?: Trace): number;
}

/** Of the width: a likely value this far from the middle of a distribution without a skew is refused. */
const OFF_MIDDLE = 0.05;

/** Low, likely and high in the unit of the call. */
function inCallUnit(range: UncertainRange, kind: KindName, system: System, name: string) {
  const { unit = "" } = range;
  if (unit === "") return range;
  const convert = (number: number): number => {
    const read = readQuantityText(`${number} ${unit}`, kind, system);
    if (typeof read === "string") throw valueError(`${name}, unit: ${read}`);
    return fromBase(read.value, KINDS[kind][system]);
  };
  const { likely } = range;
  return {
    low: convert(range.low),
    high: convert(range.high),
    likely: likely === undefined ? undefined : convert(likely),
  };
}

type Values = Pick<UncertainRange, "low" | "likely" | "high">;

/** What every input has, whatever its distribution. */
type Common = Pick<UncertainInput, "label" | "freedom" | "unit">;

/** The input of a triangular distribution. */
function triangular(common: Common, { low: L, likely: M, high: H }: Values, name: string): UncertainInput {
  if (M === undefined || M < L || M > H)
    throw valueError(
      `${name}, likely: must be from low to high, ${showNumber(L)} to ${showNumber(H)}, got ${M === undefined ? "blank" : showNumber(M)}`,
    );
  const deviation = Math.sqrt(((M - L) ** 2 + (M - L) * (H - M) + (H - M) ** 2) / 18);
  const at: UncertainInput["at"] = (u, trace = silent) => trace.step(triangularAt, { L, M, H, u }, common.label);
  return { ...common, likely: M, mean: (L + M + H) / 3, deviation, at };
}

/** The degrees of freedom of a range. */
function freedomOf({ freedom = 0 }: UncertainRange, name: string): number {
  // Some hosts pass a blank as 0.
  if (freedom !== 0 && !(freedom >= 1))
    throw valueError(`${name}, freedom: must be 1 or more, or blank for infinite, got ${showNumber(freedom)}`);
  return freedom || Infinity;
}

/** Mean and standard deviation of a distribution without a peak of its own. */
function momentsOf({ distribution }: UncertainRange, L: number, H: number, middle: number) {
  if (distribution === "rectangular") return { mean: middle, deviation: (H - L) / Math.sqrt(12) };
  if (distribution === "normal") return { mean: middle, deviation: (H - L) / (2 * TENTH) };
  const square = (Math.log(H / L) / (2 * TENTH)) ** 2;
  const mean = middle * Math.exp(square / 2);
  return { mean, deviation: mean * Math.sqrt(Math.expm1(square)) };
}

/**
 * The input that a range describes, checked.
 *
 * @param name the row, for messages
 */
function inputOf(range: UncertainRange, kind: KindName, system: System, name: string): UncertainInput {
  const { label, distribution } = range;
  const values = inCallUnit(range, kind, system, name);
  const { low: L, high: H, likely: M } = values;
  if (!(H > L)) throw valueError(`${name}, high: must be above low, ${showNumber(L)}, got ${showNumber(H)}`);
  const freedom = freedomOf(range, name);
  const common = { label, freedom, unit: KINDS[kind][system].text };
  if (distribution === "triangular") return triangular(common, values, name);
  const skewed = distribution === "log-normal";
  if (skewed && !(L > 0 && kind !== "temperature"))
    throw valueError(
      `${name}, low: a log-normal distribution needs ${kind === "temperature" ? "a quantity with a true zero, not a temperature" : `values above 0, got ${showNumber(L)}`}`,
    );
  const middle = skewed ? Math.sqrt(L * H) : (L + H) / 2;
  const off = skewed ? Math.log((M ?? middle) / middle) / Math.log(H / L) : ((M ?? middle) - middle) / (H - L);
  // Some hosts pass a blank as 0.
  if (!(Math.abs(off) <= OFF_MIDDLE) && M !== 0)
    throw valueError(
      `${name}, likely: a ${distribution} distribution from ${showNumber(L)} to ${showNumber(H)} has its middle at ${showNumber(middle)}, got ${showNumber(M ?? 0)}; leave it out or take triangular`,
    );
  const moments = momentsOf(range, L, H, middle);
  const student = distribution === "normal" && freedom < Infinity ? studentTable(freedom) : undefined;
  const at = (u: number, trace: Trace = silent): number => {
    if (student) return middle + moments.deviation * student(u);
    if (distribution === "rectangular") return trace.step(rectangularAt, { L, H, u }, label);
    return trace.step(skewed ? logNormalAt : normalAt, { L, H, z: normalQuantile(u) }, label);
  };
  return { ...common, ...moments, likely: middle, at };
}

/** The inputs of all ranges. `kindOf` names the kind of a label, or refuses it. */
export function uncertainInputs(
  ranges: readonly UncertainRange[],
  kindOf: (label: string, name: string) => KindName,
  system: System,
): readonly UncertainInput[] {
  return ranges.map((range, place) => {
    const name = `ranges, ${range.label}`;
    const key = normalizeKey(range.label);
    if (ranges.findIndex(({ label }) => normalizeKey(label) === key) < place)
      throw valueError(`${name}: appears twice`);
    return inputOf(range, kindOf(range.label, name), system, name);
  });
}
