/** Wilson's plot: readings of UA at several water flows split into the water's film and all the rest. Strict SI. */
import { caution } from "../kernel/define/caution";
import { equation, symbol } from "../kernel/define/equation";
import type { Trace } from "../kernel/define/steps";
import { notAvailable, valueError } from "../kernel/values/fault";
import { linearSolve } from "../numeric/linearSolve";
import { mean, sumOf } from "../numeric/series";

export const wilsonLine = equation({
  name: "Wilson's line",
  form: "U = 1 / (R + b * V^(-m))",
  kind: "heat conductance",
  symbols: {
    R: symbol("number", "resistance that doesn't change with the flow, K/W", 1e-5, 1e-3),
    b: symbol("number", "slope: resistance of the film at a flow of 1 m³/s, K/W", 1e-7, 1e-5),
    V: symbol("water flow", "water flow", 5e-4, 5e-3),
    m: symbol("number", "exponent of the flow", 0.3, 1),
  },
  source: "wilson1915",
  code: (x) => 1 / (x.R + x.b * x.V ** -x.m),
});

export interface WilsonReading {
  readonly flow: number;
  readonly conductance: number;
  readonly otherFlow?: number | undefined;
  /** Days, or a date of the sheet. */
  readonly date?: number | undefined;
}

/** Least squares of a line whose columns are given, unweighted; each column is scaled by its greatest value. */
function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]) {
  const scales = columns.map((column) => Math.max(...column.map(Math.abs)));
  const scaled = columns.map((column, place) => column.map((value) => value / (scales[place] ?? 1)));
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((all, each, row) => all + each * (b[row] ?? 0), 0);
  const matrix = () => Float64Array.from(scaled.flatMap((a) => scaled.map((b) => dot(a, b))));
  const solved = (right: readonly number[]) => {
    const answer = Float64Array.from(right);
    if (!linearSolve(matrix(), answer)) throw valueError("readings: too few different settings for this split");
    return Array.from(answer);
  };
  const coefficients = solved(scaled.map((column) => dot(column, y)));
  const modelled = y.map((_, row) =>
    scaled.reduce((all, column, place) => all + (column[row] ?? 0) * (coefficients[place] ?? 0), 0),
  );
  const left = y.reduce((all, value, row) => all + (value - (modelled[row] ?? 0)) ** 2, 0);
  const free = y.length - columns.length;
  const variance = free > 0 ? left / free : Number.NaN;
  const middle = mean(y);
  const spread = sumOf(y, (value) => (value - middle) ** 2);
  /** What a sum of coefficients takes of each reading, and its standard error by the scatter. */
  const contrast = (weights: readonly number[]) => {
    const z = solved(weights.map((weight, place) => weight / (scales[place] ?? 1)));
    const shares = y.map((_, row) =>
      scaled.reduce((all, column, place) => all + (column[row] ?? 0) * (z[place] ?? 0), 0),
    );
    return { shares, error: Math.sqrt(variance * sumOf(shares, (share) => share * share)) };
  };
  return {
    coefficients: coefficients.map((value, place) => value / (scales[place] ?? 1)),
    contrast,
    determination: spread > 0 ? 1 - left / spread : 1,
  };
}

const varies = (values: readonly number[]): boolean => Math.max(...values) > (1 + 1e-9) * Math.min(...values);

/** Least squares of 1/UA: a constant for each date, and a film's slope for each flow that varies. */
export function wilsonFit(readings: readonly WilsonReading[], exponent: number) {
  const dates = [...new Set(readings.map(({ date }) => date ?? 0))].sort((a, b) => a - b);
  const flows = readings.map(({ flow }) => flow);
  const others = readings.flatMap(({ otherFlow }) => otherFlow ?? []);
  if (others.length > 0 && others.length < readings.length)
    throw valueError("readings, other flow: is blank in some rows: give it in all of them or in none");
  const [split, twoSided] = [varies(flows), others.length > 0 && varies(others)];
  if (!split && dates.length === 1) throw valueError("readings: all at one flow: the split needs at least two");
  const film = (values: readonly number[]) => values.map((value) => value ** -exponent);
  const columns = [
    ...dates.map((date) => readings.map((each) => Number((each.date ?? 0) === date))),
    ...(split ? [film(flows)] : []),
    ...(twoSided ? [film(others)] : []),
  ];
  if (readings.length < columns.length)
    throw valueError(`readings: expected at least ${columns.length} rows for this split, got ${readings.length}`);
  const fit = leastSquares(
    columns,
    readings.map(({ conductance }) => 1 / conductance),
  );
  const weights = (...places: readonly (readonly [place: number, weight: number])[]) =>
    columns.map((_, at) => places.find(([place]) => place === at)?.[1] ?? 0);
  const last = dates.length - 1;
  const of = (place: number) => ({
    value: fit.coefficients[place] ?? 0,
    error: fit.contrast(weights([place, 1])).error,
  });
  return {
    clean: of(0),
    constant: of(last),
    slope: split ? of(last + 1) : undefined,
    other: twoSided ? of(last + (split ? 2 : 1)) : undefined,
    otherFlow: others.length > 0 ? mean(others) : undefined,
    drift:
      last > 0
        ? {
            value: (fit.coefficients[last] ?? 0) - (fit.coefficients[0] ?? 0),
            ...fit.contrast(weights([last, 1], [0, -1])),
          }
        : undefined,
    determination: fit.determination,
  };
}

/** The split at a flow and the last date. */
export function wilsonSplit(readings: readonly WilsonReading[], m: number, V: number, trace: Trace) {
  const fit = wilsonFit(readings, m);
  const b = fit.slope?.value ?? 0;
  if (fit.slope && b <= 0)
    throw notAvailable("readings: UA doesn't rise with the flow: the water's film can't be separated from the rest");
  const otherResistance = fit.other && fit.otherFlow ? fit.other.value * fit.otherFlow ** -m : 0;
  const R = fit.constant.value + otherResistance;
  if (R + b * V ** -m <= 0) throw notAvailable("flow: beyond the readings: the line gives no UA there");
  const ua = trace.step(wilsonLine, { R, b, V, m });
  const film = fit.slope && V ** m / b;
  const rest = fit.constant.value;
  return { ...fit, ua, film, rest: rest > 0 && fit.slope ? 1 / rest : undefined, otherResistance };
}

export const foulingDrift = equation({
  name: "Fouling since the first date",
  form: "Rf = A * dR",
  kind: "fouling resistance",
  symbols: {
    A: symbol("area", "area that the fouling refers to", 0.1, 20),
    dR: symbol("number", "rise of the resistance at the same flow, K/W", 1e-6, 1e-3),
  },
  source: "identity",
  code: (x) => x.A * x.dR,
});

/** Rise of the resistance since the first date, K/W, and its error: each UA's own, or the scatter's if larger. */
export function wilsonDrift(
  readings: readonly WilsonReading[],
  { drift }: ReturnType<typeof wilsonFit>,
  uaError: number,
) {
  if (drift === undefined) return undefined;
  const own = Math.hypot(...drift.shares.map((share, row) => (share * uaError) / (readings[row]?.conductance ?? 1)));
  const error = Math.max(own, Number.isFinite(drift.error) ? drift.error : 0);
  return { value: drift.value, error, found: Math.abs(drift.value) >= 2 * error };
}

const needs = { span: "number", settings: "count" } as const;

export const wilsonNarrow = caution({
  code: "EXCHANGER-WILSON-NARROW",
  severity: "Caution",
  source: "wilson1915",
  description: "The split needs flows of 1 to 2 and at least four settings.",
  needs,
  when: ({ span, settings }) => span > 1 && (span < 2 || settings < 4),
  message: ({ span, settings }) =>
    `${settings} settings over a span of 1 to ${span.toFixed(2)}: the split needs at least four over 1 to 2. Look at the errors before you use it.`,
});

export const wilsonConstant = caution({
  code: "EXCHANGER-WILSON-STEADY",
  severity: "Notice",
  standing: true,
  source: "wilson1915",
  description: "All readings at one condensing temperature, settled; repeats of a setting are not independent.",
  needs: {},
  when: () => true,
  message: () =>
    "Holds for settled readings at one condensing temperature and load: the refrigerant's film must not change. Repeats of one setting are not independent: give their mean. Fouling shows as a fall of the rest between two dates.",
});

export const wilsonDriftNone = caution({
  code: "EXCHANGER-WILSON-NO-DRIFT",
  severity: "Notice",
  source: "identity",
  description: "A drift below twice its error is none found.",
  needs: { driftFound: "yes/no" },
  when: ({ driftFound }) => !driftFound,
  message: () =>
    "The change of UA lies below twice its error: no fouling found. Read both dates at the same flow, condensing temperature and load, or wait longer.",
});
