/** Convection, sky radiation, ground, make-up water and sun of an outdoor pool. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";
import { POOL_SPECIFIC_HEAT } from "../equations";

const A = symbol("area", "area", 1, 5000);
const Tw = symbol("temperature", "water temperature", 273.16, 322);
const Ta = symbol("temperature", "air temperature", 235, 325);
const v = symbol("wind speed", "wind at the water", 0, 15);

/** Psychrometric constant of a water surface at 101.325 kPa, Pa/K: 0.0101 inHg/°F. */
const BOWEN = 61.5646;
/** Stefan–Boltzmann constant, W/(m²·K⁴) (CODATA 2018). */
const STEFAN = 5.670374419e-8;
/** Emissivity of a water surface. */
const WATER_EMISSIVITY = 0.95;

/** Film coefficient of convection from that of evaporation: no ratio, so none of 0/0 at equal vapour pressures. */
export const bowenFilm = equation({
  name: "Film coefficient by Bowen",
  form: "h = k * Y * 61.5646 * p / 101325",
  kind: "film coefficient",
  symbols: {
    k: symbol("number", "transfer coefficient of evaporation, kg/(s·m²·Pa)", 1e-9, 5e-7),
    Y: symbol("enthalpy", "latent heat", 2.35e6, 2.51e6),
    p: symbol("pressure", "pressure of the air", 54_000, 108_000),
  },
  source: "bowen1926",
  code: (x) => (x.k * x.Y * BOWEN * x.p) / 101_325,
});

export const windFilm = equation({
  name: "Film coefficient by wind",
  form: "h = 3.1 + 4.1 * v",
  kind: "film coefficient",
  symbols: { v },
  validity: "wind at the water 0 to 5 m/s",
  source: "czarnecki1978",
  code: (x) => 3.1 + 4.1 * x.v,
});

export const convection = equation({
  name: "Convection",
  form: "q = h * A * (Tw - Ta)",
  kind: "heat rate",
  symbols: { h: symbol("film coefficient", "film coefficient", 0, 100), A, Tw, Ta },
  source: "identity",
  code: (x) => x.h * x.A * (x.Tw - x.Ta),
});

export const evaporationHeat = equation({
  name: "Heat of evaporation",
  form: "q = m * Y",
  kind: "heat rate",
  symbols: {
    m: symbol("mass flow", "evaporation", -0.1, 5),
    Y: symbol("enthalpy", "latent heat", 2.35e6, 2.51e6),
  },
  source: "identity",
  code: (x) => x.m * x.Y,
});

/** Dew point counted over 273 K, as printed. */
export const skyEmissivity = equation({
  name: "Emissivity of the sky",
  form: "es = (0.787 + 0.764 * log(Td / 273)) * (1 + 0.0224 * N - 0.0035 * N^2 + 0.00028 * N^3)",
  kind: "fraction",
  symbols: {
    Td: symbol("temperature", "dew point", 230, 310),
    N: symbol("number", "opaque cloud, tenths", 0, 10),
  },
  source: "clarkAllen1978",
  code: (x) => (0.787 + 0.764 * Math.log(x.Td / 273)) * (1 + x.N * (0.0224 + x.N * (-0.0035 + x.N * 0.00028))),
});

/** The hidden share of the sky radiates as a black body at the air's temperature. */
export const skyRadiation = equation({
  name: "Radiation to sky and surroundings",
  form: "q = A * 0.95 * sigma * (Tw^4 - (f + (1 - f) * es) * Ta^4)",
  kind: "heat rate",
  symbols: {
    A,
    Tw,
    Ta,
    f: symbol("fraction", "share of the sky hidden", 0, 1),
    es: symbol("fraction", "emissivity of the sky", 0.6, 1.05),
  },
  constants: { sigma: STEFAN },
  source: { key: "clarkAllen1978", where: "sky; emissivity of water 0.95" },
  code: (x) => x.A * WATER_EMISSIVITY * STEFAN * (x.Tw ** 4 - (x.f + (1 - x.f) * x.es) * x.Ta ** 4),
});

export const skyTemperature = equation({
  name: "Temperature of a black body that radiates as the sky does",
  form: "Ts = Ta * (f + (1 - f) * es)^0.25",
  kind: "temperature",
  symbols: {
    Ta,
    f: symbol("fraction", "share of the sky hidden", 0, 1),
    es: symbol("fraction", "emissivity of the sky", 0.6, 1.05),
  },
  source: "clarkAllen1978",
  code: (x) => x.Ta * (x.f + (1 - x.f) * x.es) ** 0.25,
});

/** Floor and the four walls of a square pool of that surface. */
export const groundArea = equation({
  name: "Area towards the ground (square plan)",
  form: "Ag = A + 4 * sqrt(A) * d",
  kind: "area",
  symbols: { A, d: symbol("depth", "mean depth", 0.3, 6) },
  source: "identity",
  code: (x) => x.A + 4 * Math.sqrt(x.A) * x.d,
});

export const groundLoss = equation({
  name: "Loss to the ground",
  form: "q = U * A * (Tw - Tg)",
  kind: "heat rate",
  symbols: {
    U: symbol("film coefficient", "coefficient of walls and floor", 0, 20),
    A,
    Tw,
    Tg: symbol("temperature", "ground temperature", 265, 305),
  },
  source: "identity",
  code: (x) => x.U * x.A * (x.Tw - x.Tg),
});

const m = (about: string) => symbol("mass flow", about, 0, 1);

export const makeUpMass = equation({
  name: "Make-up water",
  form: "m = max(me + ms + mb + ml - mr, 0)",
  kind: "mass flow",
  symbols: { me: m("evaporation"), ms: m("splash"), mb: m("backwash"), ml: m("leak"), mr: m("rain") },
  source: "identity",
  code: (x) => Math.max(x.me + x.ms + x.mb + x.ml - x.mr, 0),
});

export const makeUpHeat = equation({
  name: "Heat of make-up water and rain",
  form: "q = 4186.8 * (m * (Tw - Tm) + mr * (Tw - Ta))",
  kind: "heat rate",
  symbols: { m: m("make-up water"), mr: m("rain"), Tw, Tm: symbol("temperature", "mains water", 274, 305), Ta },
  source: "energyPlusPool",
  code: (x) => POOL_SPECIFIC_HEAT * (x.m * (x.Tw - x.Tm) + x.mr * (x.Tw - x.Ta)),
});

export const sunAbsorbed = equation({
  name: "Sun absorbed",
  form: "q = A * G / 86400 * a * (1 - s)",
  kind: "heat rate",
  symbols: {
    A,
    G: symbol("daily sun", "sun on a level surface in a day", 0, 3.2e7),
    a: symbol("fraction", "share absorbed", 0, 1),
    s: symbol("fraction", "share shaded", 0, 1),
  },
  source: "nrelPools",
  code: (x) => ((x.A * x.G) / 86_400) * x.a * (1 - x.s),
});

/** What a cover leaves of a loss: covered share of the surface × share of the day × cut while in place. */
export const coverReduction = equation({
  name: "Reduction by a cover",
  form: "r = c * t * f",
  kind: "fraction",
  symbols: {
    c: symbol("fraction", "share of the surface covered", 0, 1),
    t: symbol("fraction", "share of the time covered", 0, 1),
    f: symbol("fraction", "cut while in place", 0, 1),
  },
  source: "energyPlusPool",
  code: (x) => x.c * x.t * x.f,
});
