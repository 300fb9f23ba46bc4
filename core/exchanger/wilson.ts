/** Wilson's plot: readings of UA at several water flows split into the water's film and all the rest. Strict SI. */
import { caution } from "../kernel/define/caution";
import { equation, symbol } from "../kernel/define/equation";
import type { Trace } from "../kernel/define/steps";
import { notAvailable, valueError } from "../kernel/values/fault";
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

interface Reading {
  readonly flow: number;
  readonly conductance: number;
}

/** Least squares of 1/UA over flow^-exponent, unweighted. */
export function wilsonFit(readings: readonly Reading[], exponent: number) {
  const x = readings.map(({ flow }) => flow ** -exponent);
  const y = readings.map(({ conductance }) => 1 / conductance);
  const [mx, my] = [mean(x), mean(y)];
  const sxx = sumOf(x, (each) => (each - mx) ** 2);
  if (!(sxx > 1e-18 * mx * mx)) throw valueError("readings: all at one flow: the split needs at least two");
  const pairs = x.map((each, i) => [each, y[i] ?? 0] as const);
  const slope = sumOf(pairs, ([a, b]) => (a - mx) * (b - my)) / sxx;
  const constant = my - slope * mx;
  const left = sumOf(pairs, ([a, b]) => (b - constant - slope * a) ** 2);
  const free = readings.length - 2;
  const variance = free > 0 ? left / free : Number.NaN;
  const spread = sumOf(y, (each) => (each - my) ** 2);
  return {
    constant,
    slope,
    constantError: Math.sqrt(variance * (1 / readings.length + (mx * mx) / sxx)),
    slopeError: Math.sqrt(variance / sxx),
    determination: spread > 0 ? 1 - left / spread : 1,
  };
}

/** The split at a flow. */
export function wilsonSplit(readings: readonly Reading[], m: number, V: number, trace: Trace) {
  const { constant: R, slope: b, constantError, slopeError, determination } = wilsonFit(readings, m);
  if (b <= 0)
    throw notAvailable("readings: UA doesn't rise with the flow: the water's film can't be separated from the rest");
  if (R + b * V ** -m <= 0) throw notAvailable("flow: beyond the readings: the line gives no UA there");
  const ua = trace.step(wilsonLine, { R, b, V, m });
  const film = V ** m / b;
  return {
    ua,
    film,
    rest: R > 0 ? 1 / R : undefined,
    share: ua / film,
    R,
    constantError,
    slopeError: slopeError / b,
    determination,
  };
}

const needs = { span: "number", settings: "count" } as const;

export const wilsonNarrow = caution({
  code: "EXCHANGER-WILSON-NARROW",
  severity: "Caution",
  source: "wilson1915",
  description: "The split needs flows of 1 to 2 and at least four settings.",
  needs,
  when: ({ span, settings }) => span < 2 || settings < 4,
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
