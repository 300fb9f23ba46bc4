/** Savings proven from records, and their uncertainty, by the measures of ASHRAE Guideline 14. */
import { equation, symbol } from "../kernel/define/equation";
import type { Trace } from "../kernel/define/steps";
import { notAvailable } from "../kernel/values/fault";
import { studentQuantile } from "../numeric/student";
import { mean, sum, sumOf } from "../numeric/series";

export const INTERVALS = ["month", "day", "hour"] as const;
export type Interval = (typeof INTERVALS)[number];

export interface Point {
  readonly measured: number;
  readonly modelled: number;
}

/** From this autocorrelation on the effective number of points counts. */
const CORRELATED = 0.5;

const n = symbol("count", "points before", 12, 9000);
const p = symbol("count", "parameters of the model", 1, 6);

export const effectivePoints = equation({
  name: "Effective number of points",
  form: "k = n * (1 - rho) / (1 + rho)",
  kind: "count",
  symbols: { n, rho: symbol("number", "autocorrelation of neighbours", 0, 0.95) },
  source: "guideline14",
  code: (x) => (x.n * (1 - x.rho)) / (1 + x.rho),
});

export const savingUncertainty = equation({
  name: "Uncertainty of a saving, as a share of it",
  form: "U = a * t * CV / F * sqrt((n - p) / (k - p) * (1 + 2 / k) / m)",
  kind: "fraction",
  symbols: {
    a: symbol("number", "factor of the interval", 0.9, 1.7),
    t: symbol("number", "Student's t", 1, 3),
    CV: symbol("fraction", "coefficient of variation of the root mean square error", 0.01, 0.5),
    F: symbol("fraction", "saving as a share of what the model expects", 0.05, 0.9),
    n,
    p,
    k: symbol("number", "effective number of points", 8, 9000),
    m: symbol("count", "points after", 1, 9000),
  },
  source: "guideline14",
  code: (x) => ((x.a * x.t * x.CV) / x.F) * Math.sqrt((((x.n - x.p) / (x.k - x.p)) * (1 + 2 / x.k)) / x.m),
});

/** Sun and Baltazar's factor; `months` are those of the record after. */
function intervalFactor(interval: Interval, months: number): number {
  if (interval === "hour") return 1.26;
  const [a, b, c] = interval === "day" ? [-0.00024, 0.03535, 1.00286] : [-0.00022, 0.03306, 0.94054];
  return a * months * months + b * months + c;
}

const PER_MONTH: Readonly<Record<Interval, number>> = { month: 1, day: 365 / 12, hour: 730 };

/** Errors of a model beside what was measured; measured less modelled. */
export function fitErrors(points: readonly Point[], parameters: number) {
  const errors = points.map(({ measured, modelled }) => measured - modelled);
  const count = points.length;
  const middle = mean(points.map(({ measured }) => measured));
  const squares = sumOf(errors, (error) => error * error);
  const average = mean(errors);
  const spread = sumOf(errors, (error) => (error - average) ** 2);
  const products = errors.slice(1).reduce((all, error, i) => all + (error - average) * ((errors[i] ?? 0) - average), 0);
  return {
    bias: sum(errors) / ((count - parameters) * middle),
    variation: Math.sqrt(squares / (count - parameters)) / middle,
    error: Math.sqrt(squares / count),
    autocorrelation: spread > 0 ? products / spread : 0,
  };
}

export interface Record14 {
  readonly interval: Interval;
  readonly count: number;
  readonly parameters: number;
  readonly after: number;
  readonly months?: number;
  readonly variation: number;
  readonly share: number;
  readonly autocorrelation: number;
  readonly confidence: number;
}

/** Uncertainty of a saving as a share of it. */
export function savingUncertaintyOf(given: Record14, trace: Trace) {
  const { count: points, parameters, after, autocorrelation: rho } = given;
  const k = rho >= CORRELATED ? trace.step(effectivePoints, { n: points, rho }) : points;
  if (k - parameters < 1)
    throw notAvailable(
      `before: only ${k.toFixed(1)} of ${points} points count as independent (autocorrelation ${rho.toFixed(2)}): at least one more than the ${parameters} parameters is needed`,
    );
  const t = studentQuantile(given.confidence, k - parameters);
  const months = given.months ?? after / PER_MONTH[given.interval];
  const a = intervalFactor(given.interval, months);
  const { variation: CV, share: F } = given;
  return {
    k,
    t,
    U: trace.step(savingUncertainty, { a, t, CV, F: Math.abs(F), n: points, p: parameters, k, m: after }),
  };
}
