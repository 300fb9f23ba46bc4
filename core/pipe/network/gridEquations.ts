/** Equations of a network's links and nodes. Strict SI; a flow coefficient is in m³/h at 1 bar. */
import { equation, relation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const Q = symbol("water flow", "water flow", 1e-4, 0.02);
const x = symbol("fraction", "opening", 0.05, 1);
const Kvs = symbol("flow coefficient", "flow coefficient, fully open", 2, 200);
const head = (description: string) => symbol("head", description, 0.5, 30);

export const hazenWilliamsMetric = equation({
  name: "Hazen–Williams, metric form",
  form: "h = 10.67 * L * Q^1.852 / (C^1.852 * D^4.871)",
  kind: "head",
  symbols: {
    L: symbol("length", "length of pipe", 1, 100),
    Q,
    C: symbol("number", "coefficient C", 100, 160),
    D: symbol("diameter", "bore", 0.01, 0.3),
  },
  validity: "water near 60 °F in turbulent flow",
  source: "hazenWilliams",
  code: (s) => (10.67 * s.L * s.Q ** 1.852) / (s.C ** 1.852 * s.D ** 4.871),
});

export const linearOpening = equation({
  name: "Flow coefficient at an opening, linear",
  form: "Kv = Kvs * x",
  kind: "flow coefficient",
  symbols: { Kvs, x },
  source: "valveTexts",
  code: (s) => s.Kvs * s.x,
});

export const equalPercentageOpening = equation({
  name: "Flow coefficient at an opening, equal percentage",
  form: "Kv = Kvs * R^(x - 1)",
  kind: "flow coefficient",
  symbols: { Kvs, R: symbol("number", "rangeability", 20, 60), x },
  validity: "above the least controllable opening; shut is shut",
  source: "valveTexts",
  code: (s) => s.Kvs * s.R ** (s.x - 1),
});

export const quickOpening = equation({
  name: "Flow coefficient at an opening, quick opening",
  form: "Kv = Kvs * sqrt(x)",
  kind: "flow coefficient",
  symbols: { Kvs, x },
  source: "valveTexts",
  code: (s) => s.Kvs * Math.sqrt(s.x),
});

export const valveLoss = equation({
  name: "Head lost in a valve",
  form: "h = 1e5 / (1000 * g) * (3600 * Q / Kv)^2",
  kind: "head",
  symbols: { Q, Kv: symbol("flow coefficient", "flow coefficient", 2, 200) },
  constants: { g: GRAVITY },
  source: "valveTexts",
  code: (s) => (1e5 / (1000 * GRAVITY)) * ((3600 * s.Q) / s.Kv) ** 2,
});

export const partLoss = equation({
  name: "Head lost in a part, known at another flow",
  form: "h = hk * (s * Q / Qk + (1 - s) * (Q / Qk)^n)",
  kind: "head",
  symbols: {
    hk: head("head lost at the known flow"),
    s: symbol("fraction", "share that rises straight with flow", 0, 1),
    Q,
    Qk: symbol("water flow", "flow at which the head is known", 1e-3, 0.02),
    n: symbol("number", "exponent", 1.4, 2),
  },
  source: "hydraulicsTexts",
  code: (s) => s.hk * ((s.s * s.Q) / s.Qk + (1 - s.s) * (s.Q / s.Qk) ** s.n),
});

export const exponentOfTwo = equation({
  name: "Exponent of two points of a curve",
  form: "n = log(h2 / h1) / log(Q2 / Q1)",
  kind: "number",
  symbols: {
    h1: head("head lost at the first flow"),
    h2: head("head lost at the second flow"),
    Q1: symbol("water flow", "first flow", 1e-3, 5e-3),
    Q2: symbol("water flow", "second flow", 6e-3, 0.02),
  },
  source: "identity",
  code: (s) => Math.log(s.h2 / s.h1) / Math.log(s.Q2 / s.Q1),
});

export const pumpAtSpeed = equation({
  name: "Head of a pump at a speed",
  form: "H = w^2 * H0 + w * b * Q - c * Q^2",
  kind: "head",
  symbols: {
    w: symbol("number", "speed, as a share of the curve's", 0.3, 1.2),
    H0: head("head at no flow"),
    b: symbol("pump slope", "slope at no flow", -2000, 0),
    Q,
    c: symbol("system curve", "fall with the flow squared", 1e4, 1e6),
  },
  validity: "affinity laws",
  source: "epanet22",
  code: (s) => s.w ** 2 * s.H0 + s.w * s.b * s.Q - s.c * s.Q ** 2,
});

export const gaugePressure = equation({
  name: "Gauge pressure at a node",
  form: "p = rho * g * (H - z)",
  kind: "pressure drop",
  symbols: {
    rho: symbol("density", "density of the water", 950, 1001),
    H: head("total head"),
    z: symbol("head", "height", -3, 8),
  },
  constants: { g: GRAVITY },
  source: "identity",
  code: (s) => s.rho * GRAVITY * (s.H - s.z),
});

/** The energy balance of a link; over any ring of links the differences add up to nothing. */
export const linkBalance = relation({
  name: "The difference of heads is what the link loses",
  form: "Hi - Hj = h",
  symbols: { Hi: head("total head where it begins"), Hj: head("total head where it ends"), h: head("head lost") },
  source: "identity",
  left: (s) => s.Hi - s.Hj,
  right: (s) => s.h,
});

export const nodeBalance = relation({
  name: "As much flows in as out",
  form: "Qin = Qout",
  symbols: { Qin: Q, Qout: Q },
  source: "identity",
  left: (s) => s.Qin,
  right: (s) => s.Qout,
});

export const efficiencyAtSpeed = equation({
  name: "Efficiency at another speed, at the similar point",
  form: "e2 = 1 - (1 - e1) * (1 / w)^0.1",
  kind: "fraction",
  symbols: {
    e1: symbol("fraction", "efficiency at the curve's speed", 0.2, 0.9),
    w: symbol("number", "speed, as a share of the curve's", 0.3, 1.2),
  },
  validity: "Sarbu and Borza; losses of motor and drive fall less",
  source: "sarbuBorza",
  code: (x) => 1 - (1 - x.e1) * (1 / x.w) ** 0.1,
});
