/** Values of the distributions: by share u of values below, or by z of the normal distribution. */
import { equation, symbol } from "../kernel/define/equation";

/** A tenth of a normal distribution lies more than so many deviations above its mean. */
export const TENTH = 1.2815515655446004;

const LOW = symbol("number", "low", 1, 2);
const HIGH = symbol("number", "high", 4, 5);
const SHARE = symbol("fraction", "share of values below", 0.01, 0.99);
const NORMAL = symbol("number", "value of the normal distribution at that share", -3, 3);

export const rectangularAt = equation({
  name: "Rectangular distribution",
  form: "x = L + u * (H - L)",
  symbols: { L: LOW, H: HIGH, u: SHARE },
  kind: "number",
  source: "jcgm101",
  code: ({ L, H, u }) => L + u * (H - L),
});

export const triangularAt = equation({
  name: "Triangular distribution",
  form: "x = u * (H - L) < M - L ? L + sqrt(u * (H - L) * (M - L)) : H - sqrt((1 - u) * (H - L) * (H - M))",
  symbols: { L: LOW, M: symbol("number", "likely", 2, 4), H: HIGH, u: SHARE },
  kind: "number",
  source: "jcgm101",
  code: ({ L, M, H, u }) =>
    u * (H - L) < M - L ? L + Math.sqrt(u * (H - L) * (M - L)) : H - Math.sqrt((1 - u) * (H - L) * (H - M)),
});

export const normalAt = equation({
  name: "Normal distribution by its P10 and P90",
  form: "x = (L + H) / 2 + z * (H - L) / (2 * t)",
  symbols: { L: LOW, H: HIGH, z: NORMAL },
  constants: { t: TENTH },
  kind: "number",
  source: "identity",
  code: ({ L, H, z }) => (L + H) / 2 + (z * (H - L)) / (2 * TENTH),
});

export const logNormalAt = equation({
  name: "Log-normal distribution by its P10 and P90",
  form: "x = sqrt(L * H) * (H / L)^(z / (2 * t))",
  symbols: { L: LOW, H: HIGH, z: NORMAL },
  constants: { t: TENTH },
  kind: "number",
  source: "identity",
  code: ({ L, H, z }) => Math.sqrt(L * H) * (H / L) ** (z / (2 * TENTH)),
});

const CONTRIBUTION = symbol("number", "sensitivity coefficient times standard uncertainty", -5, 5);

export const pairVariance = equation({
  name: "What a correlation adds to the variance",
  form: "v = 2 * r * p * q",
  symbols: { r: symbol("number", "correlation coefficient", -1, 1), p: CONTRIBUTION, q: CONTRIBUTION },
  kind: "number",
  source: { key: "jcgm100", where: "5.2.2" },
  code: ({ r, p, q }) => 2 * r * p * q,
});

export const lawOfPropagation = equation({
  name: "Law of propagation of uncertainty",
  form: "u = sqrt(S + V)",
  symbols: {
    S: symbol("number", "sum of the squared contributions", 5, 9),
    V: symbol("number", "sum of what the correlations add", -4, 9),
  },
  kind: "number",
  source: { key: "jcgm100", where: "5.1.2, 5.2.2" },
  code: ({ S, V }) => Math.sqrt(S + V),
});

export const expandedUncertainty = equation({
  name: "Expanded uncertainty",
  form: "U = k * u",
  symbols: {
    k: symbol("number", "coverage factor", 0.6, 13),
    u: symbol("number", "standard uncertainty", 0.1, 5),
  },
  kind: "number",
  source: { key: "jcgm100", where: "6.2.1" },
  code: ({ k, u }) => k * u,
});
