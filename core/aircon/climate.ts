/** Equations of equivalent full-load hours from monthly mean temperatures. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

const T = symbol("temperature", "mean temperature of the month", 263, 313);
const s = symbol("temperature difference", "scale of the days' spread", 0.5, 3);
const N = symbol("count", "days of the month", 28, 31);

/** Scale of the logistic distribution of the daily means about the month's mean, K. */
export const daySpread = equation({
  name: "Spread of daily mean temperatures",
  form: "s = (1.45 - 0.029 * (T - 273.15) + 0.0664 * sigma) * sqrt(N) / 3.396",
  kind: "temperature difference",
  symbols: {
    T,
    sigma: symbol("temperature difference", "standard deviation of the 12 monthly means", 0, 15),
    N,
  },
  source: "erbs1983",
  code: (x) => ((1.45 - 0.029 * (x.T - 273.15) + 0.0664 * x.sigma) * Math.sqrt(x.N)) / 3.396,
});

/** Mean over a month's days of the degrees by which they are warmer than a base, K. */
export const meanExcess = equation({
  name: "Mean degrees above a base",
  form: "E = s * log1p(exp((T - Tb) / s))",
  kind: "temperature difference",
  symbols: { T, Tb: symbol("temperature", "base temperature", 283, 318), s },
  source: "erbs1983",
  code: (x) => x.s * Math.log1p(Math.exp((x.T - x.Tb) / x.s)),
});

/** Mean load as a share of full load: none at the balance temperature, rising linearly to full at design, full above. */
export const meanLoad = equation({
  name: "Mean share of full load",
  form: "L = (Eb - Ed) / (Td - Tb)",
  kind: "fraction",
  symbols: {
    Eb: symbol("temperature difference", "mean degrees above the balance temperature", 0, 20),
    Ed: symbol("temperature difference", "mean degrees above the design temperature", 0, 2),
    Td: symbol("temperature", "design temperature outdoors", 304, 320),
    Tb: symbol("temperature", "balance temperature", 283, 298),
  },
  source: "commonPractice",
  code: (x) => (x.Eb - x.Ed) / (x.Td - x.Tb),
});

export const fullLoadTime = equation({
  name: "Equivalent full-load time",
  form: "t = 86400 * N * L",
  kind: "time",
  symbols: { N, L: symbol("fraction", "mean share of full load", 0, 1) },
  source: "identity",
  code: (x) => 86_400 * x.N * x.L,
});
