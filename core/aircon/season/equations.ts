/** Equations of the seasonal rating. Strict SI; temperatures of bins and tests are printed in °F by the standard. */
import { equation, symbol } from "../../kernel/define/equation";

const T = symbol("temperature", "outdoor temperature of the bin", 292, 312);
const T1 = symbol("temperature", "first test", 291, 296);
const T2 = symbol("temperature", "second test", 300, 309);
const X = symbol("fraction", "share of the time at the lower capacity", 0, 1);
const C = symbol("fraction", "degradation coefficient", 0, 0.4);
const L = symbol("heat rate", "load of the bin", 1e3, 3e4);
const Qa = symbol("heat rate", "lower capacity", 1e3, 2e4);
const Qb = symbol("heat rate", "higher capacity", 3e4, 5e4);

export const binLoad = equation({
  name: "Load of the bin",
  form: "L = V * (1.8 * T - 524.67) / 30 * QA / 1.1",
  kind: "heat rate",
  symbols: { V: symbol("number", "0.93 for a variable-speed heat pump, else 1", 0.93, 1), T, QA: Qb },
  source: { key: "ahri210Code", where: "11.60, 11.61" },
  code: (x) => (((x.V * (1.8 * x.T - 524.67)) / 30) * x.QA) / 1.1,
});

export const coolingBetween = equation({
  name: "Cooling between two tests",
  form: "Q = Q1 + (Q2 - Q1) * (T - T1) / (T2 - T1)",
  kind: "heat rate",
  symbols: { Q1: Qb, Q2: Qa, T, T1, T2 },
  source: { key: "ahri210Code", where: "11.62 to 11.65" },
  code: (x) => x.Q1 + ((x.Q2 - x.Q1) * (x.T - x.T1)) / (x.T2 - x.T1),
});

export const powerBetween = equation({
  name: "Power between two tests",
  form: "P = P1 + (P2 - P1) * (T - T1) / (T2 - T1)",
  kind: "electric power",
  symbols: {
    P1: symbol("electric power", "power at the first test", 300, 9000),
    P2: symbol("electric power", "power at the second test", 300, 9000),
    T,
    T1,
    T2,
  },
  source: { key: "ahri210Code", where: "11.62 to 11.65" },
  code: (x) => x.P1 + ((x.P2 - x.P1) * (x.T - x.T1)) / (x.T2 - x.T1),
});

/** Power of a machine that starts and stops, averaged over the time. */
export const cyclingPower = equation({
  name: "Mean power while it cycles",
  form: "P = X * P0 / (1 - C * (1 - X))",
  kind: "electric power",
  symbols: { X, P0: symbol("electric power", "power while it runs", 300, 9000), C },
  source: { key: "ahri210Code", where: "11.66 to 11.69, 11.76 to 11.79" },
  code: (x) => (x.X * x.P0) / (1 - x.C * (1 - x.X)),
});

export const lowerShare = equation({
  name: "Share of the time at the lower stage",
  form: "X = (Qb - L) / (Qb - Qa)",
  kind: "fraction",
  symbols: { Qb, L: symbol("heat rate", "load of the bin", 2e4, 3e4), Qa },
  source: { key: "ahri210Code", where: "11.72" },
  code: (x) => (x.Qb - x.L) / (x.Qb - x.Qa),
});

export const stagedPower = equation({
  name: "Mean power between two stages",
  form: "P = X * Pa + (1 - X) * Pb",
  kind: "electric power",
  symbols: {
    X,
    Pa: symbol("electric power", "at the lower stage", 300, 5000),
    Pb: symbol("electric power", "at the higher stage", 300, 9000),
  },
  source: { key: "ahri210Code", where: "11.73 to 11.75" },
  code: (x) => x.X * x.Pa + (1 - x.X) * x.Pb,
});

/** Efficiency at a load between two speeds: straight over the load. */
export const ratingBetween = equation({
  name: "Rating between two speeds",
  form: "R = Ra + (Rb - Ra) * (L - Qa) / (Qb - Qa)",
  kind: "cooling rating",
  symbols: {
    Ra: symbol("cooling rating", "at the lower speed", 2, 9),
    Rb: symbol("cooling rating", "at the higher speed", 2, 9),
    L,
    Qa,
    Qb,
  },
  source: { key: "ahri210Code", where: "variable speed, 2023" },
  code: (x) => x.Ra + ((x.Rb - x.Ra) * (x.L - x.Qa)) / (x.Qb - x.Qa),
});

/** Efficiency as the parabola over the outdoor temperature through three balance points. */
export const ratingByParabola = equation({
  name: "Rating between two speeds",
  form: "R = R1*(T-Tv)*(T-T2)/((T1-Tv)*(T1-T2)) + Rv*(T-T1)*(T-T2)/((Tv-T1)*(Tv-T2)) + R2*(T-T1)*(T-Tv)/((T2-T1)*(T2-Tv))",
  kind: "cooling rating",
  symbols: {
    R1: symbol("cooling rating", "at the least speed", 2, 9),
    Rv: symbol("cooling rating", "at the intermediate speed", 2, 9),
    R2: symbol("cooling rating", "at full speed", 2, 9),
    T,
    T1: symbol("temperature", "where the least speed meets the load", 292, 295),
    Tv: symbol("temperature", "where the intermediate speed meets the load", 298, 303),
    T2: symbol("temperature", "where full speed meets the load", 308, 312),
  },
  source: { key: "ahri210Code", where: "variable speed, 2008" },
  code: ({ R1, Rv, R2, T: t, T1: a, Tv: b, T2: c }) =>
    (R1 * (t - b) * (t - c)) / ((a - b) * (a - c)) +
    (Rv * (t - a) * (t - c)) / ((b - a) * (b - c)) +
    (R2 * (t - a) * (t - b)) / ((c - a) * (c - b)),
});

export const singleSpeedRating = equation({
  name: "Seasonal rating of a single-speed machine",
  form: "R = (1 - 0.5 * C) * Q / P",
  kind: "cooling rating",
  symbols: {
    C,
    Q: symbol("heat rate", "cooling at 82 °F", 5e3, 2e4),
    P: symbol("electric power", "power there", 1e3, 5e3),
  },
  source: { key: "ahri210Code", where: "11.55, 11.56" },
  code: (x) => ((1 - 0.5 * x.C) * x.Q) / x.P,
});

export const seasonalRating = equation({
  name: "Seasonal rating",
  form: "R = Q / E",
  kind: "cooling rating",
  symbols: {
    Q: symbol("heat rate", "cooling, mean of the bins by their hours", 2e3, 2e4),
    E: symbol("electric power", "power, mean of the bins by their hours", 500, 5e3),
  },
  source: "ahri210Code",
  code: (x) => x.Q / x.E,
});
