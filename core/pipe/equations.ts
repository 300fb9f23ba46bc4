/** Equations of flow in straight pipe. Strict SI. */
import { equation, relation, symbol } from "../kernel/define/equation";
import { GRAVITY } from "../numeric/constants";

const D = symbol("diameter", "bore", 0.01, 0.3);
const Q = symbol("water flow", "water flow", 1e-5, 0.05);
const v = symbol("velocity", "mean velocity", 0.05, 5);
const L = symbol("length", "length of pipe", 0.1, 300);

export const meanVelocity = equation({
  name: "Mean velocity",
  form: "v = 4 * Q / (pi * D^2)",
  kind: "velocity",
  symbols: { Q, D },
  source: "identity",
  code: (x) => (4 * x.Q) / (Math.PI * x.D ** 2),
});

export const reynolds = equation({
  name: "Reynolds number",
  form: "Re = rho * v * D / mu",
  kind: "number",
  symbols: {
    rho: symbol("density", "density of the water", 950, 1001),
    v,
    D,
    mu: symbol("viscosity", "viscosity of the water", 2e-4, 1.8e-3),
  },
  source: "identity",
  code: (x) => (x.rho * x.v * x.D) / x.mu,
});

/** Flow counts as laminar below this Reynolds number. */
export const LAMINAR_REYNOLDS_LIMIT = 2040;

export const laminarFriction = equation({
  name: "Darcy friction factor, laminar",
  form: "f = 64 / Re",
  kind: "number",
  symbols: { Re: symbol("number", "Reynolds number", 10, LAMINAR_REYNOLDS_LIMIT) },
  validity: "Re below 2,040",
  source: "darcyWeisbach",
  code: (x) => 64 / x.Re,
});

export const colebrook = relation({
  name: "Colebrook",
  form: "1 / sqrt(f) = -2 * log10(k / (3.7 * D) + 2.51 / (Re * sqrt(f)))",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.008, 0.08),
    k: symbol("diameter", "roughness of the wall", 1e-7, 1e-4),
    D,
    Re: symbol("number", "Reynolds number", LAMINAR_REYNOLDS_LIMIT, 1e7),
  },
  validity: "turbulent flow",
  source: "colebrook1939",
  left: (x) => 1 / Math.sqrt(x.f),
  right: (x) => -2 * Math.log10(x.k / (3.7 * x.D) + 2.51 / (x.Re * Math.sqrt(x.f))),
});

export const darcyWeisbach = equation({
  name: "Darcy–Weisbach",
  form: "h = f * L / D * v^2 / (2 * g)",
  kind: "head",
  symbols: { f: symbol("number", "Darcy friction factor", 0.008, 0.1), L, D, v },
  constants: { g: GRAVITY },
  source: "darcyWeisbach",
  code: (x) => ((x.f * x.L) / x.D) * (x.v ** 2 / (2 * GRAVITY)),
});

/** ft of head per 100 ft by the US form (gpm, in), written in metres and m³/s. */
export const hazenWilliams = equation({
  name: "Hazen–Williams",
  form: "h = L / 100 * 0.2083 * (100 / C)^1.852 * (Q / 6.30901964e-5)^1.852 / (D / 0.0254)^4.8655",
  kind: "head",
  symbols: { L, C: symbol("number", "coefficient C", 100, 160), Q, D },
  validity: "water near 60 °F in turbulent flow",
  source: "hazenWilliams",
  code: (x) =>
    ((x.L / 100) * 0.2083 * (100 / x.C) ** 1.852 * (x.Q / 6.30901964e-5) ** 1.852) / (x.D / 0.0254) ** 4.8655,
});

export const boreByWall = equation({
  name: "Bore by the minimum wall",
  form: "D = Do - 2 * w",
  kind: "diameter",
  symbols: {
    Do: symbol("diameter", "outside diameter", 0.02, 0.25),
    w: symbol("diameter", "minimum wall", 0.002, 0.02),
  },
  source: "identity",
  code: (x) => x.Do - 2 * x.w,
});

const Qp = symbol("water flow", "water flow", 1e-4, 0.05);
const H = symbol("head", "head", 1, 60);
const rho = symbol("density", "density of the water", 950, 1001);

export const pumpPowerEquation = equation({
  name: "Power of a pump",
  form: "P = rho * g * Q * H / e",
  kind: "electric power",
  symbols: { rho, Q: Qp, H, e: symbol("fraction", "efficiency", 0.1, 1) },
  constants: { g: GRAVITY },
  source: "hydraulicsTexts",
  code: (x) => (x.rho * GRAVITY * x.Q * x.H) / x.e,
});

export const suctionHead = equation({
  name: "Net positive suction head available",
  form: "N = (pa - pv) / (rho * g) - z - hs",
  kind: "head",
  symbols: {
    pa: symbol("pressure", "pressure of the air on the water", 6e4, 1.05e5),
    pv: symbol("pressure", "vapour pressure of the water", 600, 2e4),
    rho,
    z: symbol("head", "water surface below the pump", -3, 5),
    hs: symbol("head", "head lost in the suction line", 0, 3),
  },
  constants: { g: GRAVITY },
  source: "hydraulicsTexts",
  code: (x) => (x.pa - x.pv) / (x.rho * GRAVITY) - x.z - x.hs,
});

export const deratedPressure = equation({
  name: "Derated pressure",
  form: "p = p73 * s",
  kind: "pressure drop",
  symbols: {
    p73: symbol("pressure drop", "rating at 73 °F", 1e6, 6e6),
    s: symbol("fraction", "share left at the temperature", 0.2, 1),
  },
  source: "plasticsManual",
  code: (x) => x.p73 * x.s,
});

/** 0.360 in per 10 °F and 100 ft, as a coefficient per K. */
export const PVC_EXPANSION = (0.36 / 12 / 100 / 10) * 1.8;

export const expansionOf = equation({
  name: "Thermal expansion",
  form: "dL = a * L * dT",
  kind: "expansion",
  symbols: { L, dT: symbol("temperature difference", "rise of temperature", -40, 60) },
  constants: { a: PVC_EXPANSION },
  source: "plasticsManual",
  code: (x) => PVC_EXPANSION * x.L * x.dT,
});
