/** Condensation inside a horizontal tube. x = share of vapour in the flow, pr = pressure over the critical one. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const x = symbol("fraction", "share of vapour", 0.05, 0.95);
const pr = symbol("fraction", "reduced pressure", 0.05, 0.85);
const h = symbol("film coefficient", "film coefficient", 100, 10_000);
const m = symbol("mass flow", "flow in one tube", 1e-3, 0.1);
const D = symbol("diameter", "inside diameter", 0.004, 0.03);
const k = symbol("conductivity", "conductivity of the liquid", 0.05, 0.6);
const Pr = symbol("number", "Prandtl number", 0.7, 12);
const rl = symbol("density", "density of the liquid", 600, 1300);
const rg = symbol("density", "density of the vapour", 10, 300);
const mul = symbol("viscosity", "viscosity of the liquid", 5e-5, 5e-4);

export const dittusBoelterFilm = equation({
  name: "Film of one phase alone (Dittus–Boelter)",
  form: "h = 0.023 * Re^0.8 * Pr^0.4 * k / D",
  kind: "film coefficient",
  symbols: {
    Re: symbol("number", "Reynolds number", 500, 2e5),
    Pr,
    k: symbol("conductivity", "conductivity", 0.01, 0.6),
    D,
  },
  source: "dittusBoelter1930",
  code: (a) => (0.023 * a.Re ** 0.8 * a.Pr ** 0.4 * a.k) / a.D,
});

export const shah1979Film = equation({
  name: "Condensing film (Shah 1979)",
  form: "h = hl * ((1 - x)^0.8 + 3.8 * x^0.76 * (1 - x)^0.04 / pr^0.38)",
  kind: "film coefficient",
  symbols: { hl: h, x, pr },
  validity: "reduced pressure 0.002 to 0.44",
  source: "shah1979",
  code: (a) => a.hl * ((1 - a.x) ** 0.8 + (3.8 * a.x ** 0.76 * (1 - a.x) ** 0.04) / a.pr ** 0.38),
});

export const shearedFilm = equation({
  name: "Film under the vapour's shear (Shah 2009)",
  form: "h = ho * (mul / (14 * mug))^(0.0058 + 0.557 * pr)",
  kind: "film coefficient",
  symbols: { ho: h, mul, mug: symbol("viscosity", "viscosity of the vapour", 9e-6, 3e-5), pr },
  validity: "reduced pressure 0.0008 to 0.9",
  source: "shah2009",
  code: (a) => a.ho * (a.mul / (14 * a.mug)) ** (0.0058 + 0.557 * a.pr),
});

export const gravityFilm = equation({
  name: "Film under gravity (Nusselt, as raised by Shah)",
  form: "h = 1.32 * (4 * m * (1 - x) / (pi * D * mul))^(-1/3) * (rl * (rl - rg) * g * k^3 / mul^2)^(1/3)",
  kind: "film coefficient",
  symbols: { m, x, D, mul, rl, rg, k },
  constants: { g: GRAVITY },
  source: "shah2009",
  code: (a) =>
    1.32 *
    Math.cbrt(
      (a.rl * (a.rl - a.rg) * GRAVITY * a.k ** 3) / a.mul ** 2 / ((4 * a.m * (1 - a.x)) / (Math.PI * a.D * a.mul)),
    ),
});

export const vapourVelocityNumber = equation({
  name: "Dimensionless velocity of the vapour",
  form: "J = x * 4 * m / (pi * D^2) / sqrt(g * D * rg * (rl - rg))",
  kind: "number",
  symbols: { x, m, D, rg, rl },
  constants: { g: GRAVITY },
  source: "shah2009",
  code: (a) => (a.x * 4 * a.m) / (Math.PI * a.D ** 2) / Math.sqrt(GRAVITY * a.D * a.rg * (a.rl - a.rg)),
});

export const shahParameter = equation({
  name: "Shah's parameter",
  form: "Z = (1 / x - 1)^0.8 * pr^0.4",
  kind: "number",
  symbols: { x, pr },
  source: "shah2009",
  code: (a) => (1 / a.x - 1) ** 0.8 * a.pr ** 0.4,
});

const Z = symbol("number", "Shah's parameter", 0, 20);

/** At this velocity number or above, shear alone governs (regime I). */
export const shearLimit = equation({
  name: "Velocity number from which shear governs",
  form: "Ja = 0.98 * (Z + 0.263)^-0.62",
  kind: "number",
  symbols: { Z },
  validity: "horizontal tubes",
  source: "shah2009",
  code: (a) => 0.98 * (a.Z + 0.263) ** -0.62,
});

/** At this velocity number or below, gravity alone governs (regime III). */
export const gravityLimit = equation({
  name: "Velocity number to which gravity governs",
  form: "Jb = 0.95 / (1.254 + 2.27 * Z^1.249)",
  kind: "number",
  symbols: { Z },
  validity: "horizontal tubes",
  source: "shah2009",
  code: (a) => 0.95 / (1.254 + 2.27 * a.Z ** 1.249),
});

export const sensibleShare = equation({
  name: "Sensible share of a condensing blend's heat",
  form: "S = x * cp * dT / dh",
  kind: "fraction",
  symbols: {
    x,
    cp: symbol("heat capacity", "heat capacity of the vapour", 700, 2500),
    dT: symbol("temperature difference", "glide", 0.5, 10),
    dh: symbol("enthalpy", "heat of condensing over the glide", 1e5, 3e5),
  },
  source: "bellGhaly1973",
  code: (a) => (a.x * a.cp * a.dT) / a.dh,
});

export const glideFilm = equation({
  name: "Film with the vapour's resistance (Silver, Bell and Ghaly)",
  form: "h = 1 / (1 / hc + S / hg)",
  kind: "film coefficient",
  symbols: {
    hc: h,
    hg: symbol("film coefficient", "film of the vapour alone", 50, 2000),
    S: symbol("fraction", "sensible share", 0, 0.2),
  },
  source: "bellGhaly1973",
  code: (a) => 1 / (1 / a.hc + a.S / a.hg),
});
