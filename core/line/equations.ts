/** Equations of refrigerant lines and commissioning. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";
import { FAHRENHEIT_ZERO, GRAVITY } from "../numeric/constants";

const D = symbol("diameter", "bore", 0.004, 0.06);

export const tubeBore = equation({
  name: "Bore of the tube",
  form: "D = Do - 2 * w",
  kind: "diameter",
  symbols: {
    Do: symbol("diameter", "outside diameter", 0.006, 0.07),
    w: symbol("diameter", "wall", 0.0007, 0.0021),
  },
  source: "identity",
  code: (x) => x.Do - 2 * x.w,
});

export const lineChargeEquation = equation({
  name: "Liquid in the line",
  form: "m = rho * pi / 4 * D^2 * L",
  kind: "mass",
  symbols: {
    rho: symbol("density", "density of the liquid", 500, 1400),
    D,
    L: symbol("length", "length of the line", 0.1, 100),
  },
  source: "identity",
  code: (x) => x.rho * (Math.PI / 4) * x.D ** 2 * x.L,
});

/** Dry nitrogen in a closed system: absolute pressure follows absolute temperature. */
export const gasPressure = equation({
  name: "Gas at constant volume",
  form: "p2 = p1 * T2 / T1",
  kind: "pressure",
  symbols: {
    p1: symbol("pressure", "absolute pressure then", 2e5, 5e6),
    T1: symbol("temperature", "temperature then", 255, 320),
    T2: symbol("temperature", "temperature now", 255, 320),
  },
  source: "identity",
  code: (x) => (x.p1 * x.T2) / x.T1,
});

const WB = symbol("temperature", "indoor wet bulb", 283, 300);
const DB = symbol("temperature", "outdoor dry bulb", 290, 320);

/** The trade's rule in °F, (3 WB − 80 − DB)/2, on absolute temperatures. */
export const targetSuperheatEquation = equation({
  name: "Target superheat, fixed orifice",
  form: "dT = (3 * (WB - T0) - 80 * 5 / 9 - (DB - T0)) / 2",
  kind: "temperature difference",
  symbols: { WB, DB },
  constants: { T0: FAHRENHEIT_ZERO },
  source: "targetSuperheatNotes",
  code: (x) => (3 * (x.WB - FAHRENHEIT_ZERO) - (80 * 5) / 9 - (x.DB - FAHRENHEIT_ZERO)) / 2,
});

const rho = symbol("density", "density of the fluid in the line", 2, 1400);
const L = symbol("length", "equivalent length: straight and fittings", 0.1, 200);

export const lineVelocity = equation({
  name: "Velocity",
  form: "v = 4 * m / (rho * pi * D^2)",
  kind: "velocity",
  symbols: { m: symbol("mass flow", "refrigerant mass flow", 0.005, 1), rho, D },
  source: "identity",
  code: (x) => (4 * x.m) / (x.rho * Math.PI * x.D ** 2),
});

export const lineReynolds = equation({
  name: "Reynolds number",
  form: "Re = rho * v * D / mu",
  kind: "number",
  symbols: {
    rho,
    v: symbol("velocity", "velocity", 0.1, 30),
    D,
    mu: symbol("viscosity", "dynamic viscosity", 8e-6, 3e-4),
  },
  source: "identity",
  code: (x) => (x.rho * x.v * x.D) / x.mu,
});

export const lineFriction = equation({
  name: "Pressure lost by friction",
  form: "dp = f * L / D * rho * v^2 / 2",
  kind: "pressure drop",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.008, 0.08),
    L,
    D,
    rho,
    v: symbol("velocity", "velocity", 0.1, 30),
  },
  source: "darcyWeisbach",
  code: (x) => ((x.f * x.L) / x.D) * ((x.rho * x.v ** 2) / 2),
});

export const columnPressure = equation({
  name: "Pressure of the column",
  form: "dp = rho * g * z",
  kind: "pressure drop",
  symbols: { rho, z: symbol("length", "rise of the line", -30, 30) },
  constants: { g: GRAVITY },
  source: "identity",
  code: (x) => x.rho * GRAVITY * x.z,
});

/** Flow reversal of an oil film in a riser: the dimensionless vapour velocity is 0.85². */
export const leastRiserFlow = equation({
  name: "Least mass flow that carries oil up",
  form: "m = 0.85^2 * pi / 4 * D^2 * sqrt(g * D * rho * (rhoOil - rho))",
  kind: "mass flow",
  symbols: {
    D,
    rho: symbol("density", "density of the gas", 2, 200),
    rhoOil: symbol("density", "density of the oil", 880, 1000),
  },
  constants: { g: GRAVITY },
  validity: "vertical gas lines; known to about 10 %",
  source: "jacobs1976",
  code: (x) => 0.85 ** 2 * (Math.PI / 4) * x.D ** 2 * Math.sqrt(GRAVITY * x.D * x.rho * (x.rhoOil - x.rho)),
});

export const coolingOfFlow = equation({
  name: "Cooling that a mass flow gives",
  form: "Q = m * q",
  kind: "heat rate",
  symbols: {
    m: symbol("mass flow", "refrigerant mass flow", 0.001, 1),
    q: symbol("enthalpy", "cooling by mass", 8e4, 3e5),
  },
  source: "identity",
  code: (x) => x.m * x.q,
});
