/**
 * Effectiveness by number of transfer units and back, for every arrangement. N = UA / smaller capacity rate, C = smaller
 * over larger capacity rate. The code covers the limits C = 0 and C = 1, where the printed forms are undefined.
 */
import { equation, symbol } from "../../kernel/define/equation";
import { decayShare, logShare } from "../surface/equations";

const N = symbol("number", "number of transfer units", 0.05, 6);
const C = symbol("fraction", "capacity ratio", 0.05, 0.95);
const e = symbol("fraction", "effectiveness", 0.01, 0.45);
const OPEN_ENDS = "capacity ratio 0 and 1 as the limits";

const gamma = (C: number): number => Math.sqrt(1 + C * C);

export const counterflowEffectiveness = equation({
  name: "Effectiveness in counterflow",
  form: "e = (1 - exp(-N * (1 - C))) / (1 - C * exp(-N * (1 - C)))",
  kind: "fraction",
  symbols: { N, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => {
    const n = x.N * decayShare(x.N * (1 - x.C));
    return n / (1 + x.C * n);
  },
});

export const parallelEffectiveness = equation({
  name: "Effectiveness in parallel flow",
  form: "e = (1 - exp(-N * (1 + C))) / (1 + C)",
  kind: "fraction",
  symbols: { N, C },
  source: "bergman2011",
  code: (x) => -Math.expm1(-x.N * (1 + x.C)) / (1 + x.C),
});

export const shellEffectiveness = equation({
  name: "Effectiveness of one shell with an even number of tube passes",
  form: "e = 2 / (1 + C + sqrt(1 + C^2) * (1 + exp(-N * sqrt(1 + C^2))) / (1 - exp(-N * sqrt(1 + C^2))))",
  kind: "fraction",
  symbols: { N, C },
  source: "bergman2011",
  code: (x) => {
    const g = gamma(x.C);
    const rise = -Math.expm1(-x.N * g);
    return (2 * rise) / ((1 + x.C) * rise + g * (2 - rise));
  },
});

export const smallerMixedEffectiveness = equation({
  name: "Effectiveness in crossflow, stream of the smaller capacity rate mixed",
  form: "e = 1 - exp(-(1 - exp(-C * N)) / C)",
  kind: "fraction",
  symbols: { N, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => -Math.expm1(-x.N * decayShare(x.C * x.N)),
});

export const largerMixedEffectiveness = equation({
  name: "Effectiveness in crossflow, stream of the larger capacity rate mixed",
  form: "e = (1 - exp(-C * (1 - exp(-N)))) / C",
  kind: "fraction",
  symbols: { N, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => {
    const rise = -Math.expm1(-x.N);
    return rise * decayShare(x.C * rise);
  },
});

export const condensingEffectiveness = equation({
  name: "Effectiveness with a condensing stream",
  form: "e = 1 - exp(-N)",
  kind: "fraction",
  symbols: { N },
  source: "bergman2011",
  code: (x) => -Math.expm1(-x.N),
});

export const counterflowUnits = equation({
  name: "Transfer units in counterflow",
  form: "N = log((1 - e * C) / (1 - e)) / (1 - C)",
  kind: "number",
  symbols: { e, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => {
    const share = x.e / (1 - x.e);
    return share * logShare(share * (1 - x.C));
  },
});

export const parallelUnits = equation({
  name: "Transfer units in parallel flow",
  form: "N = -log(1 - e * (1 + C)) / (1 + C)",
  kind: "number",
  symbols: { e, C },
  source: "bergman2011",
  code: (x) => -Math.log1p(-x.e * (1 + x.C)) / (1 + x.C),
});

export const shellUnits = equation({
  name: "Transfer units of one shell with an even number of tube passes",
  form: "N = log((2 - e * (1 + C - sqrt(1 + C^2))) / (2 - e * (1 + C + sqrt(1 + C^2)))) / sqrt(1 + C^2)",
  kind: "number",
  symbols: { e, C },
  source: "bergman2011",
  code: (x) => {
    const g = gamma(x.C);
    return Math.log1p((2 * g * x.e) / (2 - x.e * (1 + x.C + g))) / g;
  },
});

export const smallerMixedUnits = equation({
  name: "Transfer units in crossflow, stream of the smaller capacity rate mixed",
  form: "N = -log(1 + C * log(1 - e)) / C",
  kind: "number",
  symbols: { e, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => {
    const n = -Math.log1p(-x.e);
    return n * logShare(-x.C * n);
  },
});

export const largerMixedUnits = equation({
  name: "Transfer units in crossflow, stream of the larger capacity rate mixed",
  form: "N = -log(1 + log(1 - e * C) / C)",
  kind: "number",
  symbols: { e, C },
  validity: OPEN_ENDS,
  source: "bergman2011",
  code: (x) => -Math.log1p(-x.e * logShare(-x.e * x.C)),
});

export const condensingUnits = equation({
  name: "Transfer units with a condensing stream",
  form: "N = -log(1 - e)",
  kind: "number",
  symbols: { e },
  source: "bergman2011",
  code: (x) => -Math.log1p(-x.e),
});
