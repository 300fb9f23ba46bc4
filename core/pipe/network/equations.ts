/** Equations of the whole loop: components, system curve, pump. Strict SI. */
import { equation, relation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const Q = symbol("water flow", "water flow", 1e-4, 0.02);
const Qk = symbol("water flow", "flow at which the head is known", 1e-3, 0.02);

export const flowOneBlocked = equation({
  name: "Flow through each open cover, one blocked",
  form: "q = Q / (n - 1)",
  kind: "water flow",
  symbols: {
    Q: symbol("water flow", "flow of the pump", 1e-4, 0.05),
    n: symbol("count", "covers in parallel", 2, 8),
  },
  source: "vgbAct",
  code: (x) => x.Q / (x.n - 1),
});

export const openAreaVelocity = equation({
  name: "Velocity through a cover",
  form: "v = q / A",
  kind: "velocity",
  symbols: {
    q: symbol("water flow", "flow through the cover", 1e-4, 0.05),
    A: symbol("area", "open area of the cover", 0.002, 0.1),
  },
  source: "identity",
  code: (x) => x.q / x.A,
});

export const knownLoss = equation({
  name: "Loss known at another flow",
  form: "h = n * hk * (Q / Qk)^2",
  kind: "head",
  symbols: {
    n: symbol("count", "number of such components", 1, 10),
    hk: symbol("head", "head lost at the known flow", 0.05, 10),
    Q,
    Qk,
  },
  validity: "turbulent flow through an unchanged component",
  source: "hydraulicsTexts",
  code: (x) => x.n * x.hk * (x.Q / x.Qk) ** 2,
});

/** Cv is the flow in gpm of water at 60 °F (999.016 kg/m³) that loses 1 psi. */
export const flowCoefficientLoss = equation({
  name: "Loss by flow coefficient",
  form: "h = n * 6894.757293168 / (999.016 * g) * (Q / 6.30901964e-5 / Cv)^2",
  kind: "head",
  symbols: {
    n: symbol("count", "number of such valves", 1, 10),
    Q,
    Cv: symbol("number", "flow coefficient, gpm at 1 psi", 2, 400),
  },
  constants: { g: GRAVITY },
  source: "hydraulicsTexts",
  code: (x) => ((x.n * 6894.757293168) / (999.016 * GRAVITY)) * (x.Q / 6.30901964e-5 / x.Cv) ** 2,
});

export const lossCoefficientOf = equation({
  name: "Loss coefficient of a head",
  form: "K = h * 2 * g / v^2",
  kind: "number",
  symbols: { h: symbol("head", "head lost", 0.01, 20), v: symbol("velocity", "mean velocity", 0.1, 4) },
  constants: { g: GRAVITY },
  source: "darcyWeisbach",
  code: (x) => (x.h * 2 * GRAVITY) / x.v ** 2,
});

export const curveCoefficient = equation({
  name: "Coefficient of the system curve",
  form: "k = h / Q^2",
  kind: "system curve",
  symbols: { h: symbol("head", "head lost", 0.01, 30), Q },
  validity: "near this flow: friction of smooth pipe rises by less than the square",
  source: "hydraulicsTexts",
  code: (x) => x.h / x.Q ** 2,
});

const part = (about: string) => symbol("head", about, 0.01, 30);

/** The final check of a loop's working. */
export const sidesAddUp = relation({
  name: "Suction and return make the total",
  form: "H = hs + hr",
  symbols: { H: part("head of all rows"), hs: part("head of the suction rows"), hr: part("head of the return rows") },
  source: "identity",
  left: (x) => x.H,
  right: (x) => x.hs + x.hr,
});

const Hs = symbol("head", "static head", -2, 5);
const Hk = symbol("head", "total head at the known flow", 6, 30);

export const systemHead = equation({
  name: "Head that the system takes",
  form: "H = Hs + (Hk - Hs) * (Q / Qk)^2",
  kind: "head",
  symbols: { Hs, Hk, Q, Qk },
  source: "hydraulicsTexts",
  code: (x) => x.Hs + (x.Hk - x.Hs) * (x.Q / x.Qk) ** 2,
});

export const flowOfOnePump = equation({
  name: "Flow of one pump at the curve's own speed",
  form: "q = Q / (s * n)",
  kind: "water flow",
  symbols: {
    Q,
    s: symbol("number", "speed, as a share of the curve's", 0.3, 1.2),
    n: symbol("count", "pumps in parallel", 1, 2),
  },
  validity: "affinity law: flow by speed",
  source: "hydraulicsTexts",
  code: (x) => x.Q / (x.s * x.n),
});

export const pumpCurveSpan = equation({
  name: "Pump curve between two of its points",
  form: "Hp = (1 - t)^2 * ((1 + 2 * t) * H0 + t * w * m0) + t^2 * ((3 - 2 * t) * H1 - (1 - t) * w * m1)",
  kind: "head",
  symbols: {
    t: symbol("fraction", "place between the points", 0, 1),
    w: symbol("water flow", "flow between the points", 1e-4, 0.005),
    H0: symbol("head", "head at the left point", 10, 30),
    H1: symbol("head", "head at the right point", 5, 20),
    m0: symbol("number", "slope at the left point, s/m²", -5000, -100),
    m1: symbol("number", "slope at the right point, s/m²", -9000, -100),
  },
  validity: "monotone cubic: never above or below the points",
  source: "fritschCarlson1980",
  code: (x) =>
    (1 - x.t) ** 2 * ((1 + 2 * x.t) * x.H0 + x.t * x.w * x.m0) +
    x.t ** 2 * ((3 - 2 * x.t) * x.H1 - (1 - x.t) * x.w * x.m1),
});

export const pumpMeetsSystem = relation({
  name: "Pump and system meet",
  form: "c * s^2 * Hp = Hs + (Hk - Hs) * (Q / Qk)^2",
  symbols: {
    c: symbol("count", "pumps in series", 1, 2),
    s: symbol("number", "speed, as a share of the curve's", 0.3, 1.2),
    Hp: symbol("head", "head of one pump at its own speed", 5, 30),
    Hs,
    Hk,
    Q,
    Qk,
  },
  validity: "affinity law: head by the square of speed",
  source: "hydraulicsTexts",
  left: (x) => x.c * x.s ** 2 * x.Hp,
  right: (x) => x.Hs + (x.Hk - x.Hs) * (x.Q / x.Qk) ** 2,
});
