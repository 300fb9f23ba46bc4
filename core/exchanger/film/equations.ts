/** Films of one phase in a straight tube. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const Pr = symbol("number", "Prandtl number", 0.7, 12);
const D = symbol("diameter", "inside diameter", 0.004, 0.03);

export const prandtl = equation({
  name: "Prandtl number",
  form: "Pr = mu * cp / k",
  kind: "number",
  symbols: {
    mu: symbol("viscosity", "viscosity", 1e-5, 1.5e-3),
    cp: symbol("heat capacity", "heat capacity", 700, 4300),
    k: symbol("conductivity", "conductivity", 0.01, 0.7),
  },
  source: "identity",
  code: (x) => (x.mu * x.cp) / x.k,
});

export const tubeReynolds = equation({
  name: "Reynolds number in a tube",
  form: "Re = 4 * m / (pi * D * mu)",
  kind: "number",
  symbols: {
    m: symbol("mass flow", "flow in one tube", 1e-3, 0.1),
    D,
    mu: symbol("viscosity", "viscosity", 1e-5, 1.5e-3),
  },
  source: "identity",
  code: (x) => (4 * x.m) / (Math.PI * x.D * x.mu),
});

export const filmOfNusselt = equation({
  name: "Film coefficient of a Nusselt number",
  form: "h = Nu * k / D",
  kind: "film coefficient",
  symbols: {
    Nu: symbol("number", "Nusselt number", 3, 400),
    k: symbol("conductivity", "conductivity of the fluid", 0.01, 0.7),
    D,
  },
  source: "identity",
  code: (x) => (x.Nu * x.k) / x.D,
});

/** Tube flow is laminar up to here, and turbulent from the next. */
export const LAMINAR_LIMIT = 2300;
export const TURBULENT_LIMIT = 4000;

export const laminarNusselt = equation({
  name: "Laminar Nusselt number with thermal entry (Hausen)",
  form: "Nu = 3.66 + 0.0668 * (D / L * Re * Pr) / (1 + 0.04 * (D / L * Re * Pr)^(2/3))",
  kind: "number",
  symbols: {
    D,
    L: symbol("length", "length of the tube", 1, 30),
    Re: symbol("number", "Reynolds number", 100, LAMINAR_LIMIT),
    Pr,
  },
  validity: "Re to 2,300, wall of one temperature",
  source: "hausen1943",
  code: (x) => {
    const gz = (x.D / x.L) * x.Re * x.Pr;
    return 3.66 + (0.0668 * gz) / (1 + 0.04 * gz ** (2 / 3));
  },
});

export const smoothFriction = equation({
  name: "Darcy friction factor of a smooth tube (Petukhov)",
  form: "f = (0.79 * log(Re) - 1.64)^-2",
  kind: "number",
  symbols: { Re: symbol("number", "Reynolds number", 3000, 5e6) },
  validity: "Re 3,000 to 5,000,000",
  source: "gnielinski1976",
  code: (x) => (0.79 * Math.log(x.Re) - 1.64) ** -2,
});

export const gnielinskiNusselt = equation({
  name: "Turbulent Nusselt number (Gnielinski)",
  form: "Nu = f / 8 * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f / 8) * (Pr^(2/3) - 1))",
  kind: "number",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.009, 0.05),
    Re: symbol("number", "Reynolds number", 2300, 5e5),
    Pr,
  },
  validity: "Re 2,300 to 5,000,000, Pr 0.5 to 2,000; long tube",
  source: "gnielinski1976",
  code: (x) => ((x.f / 8) * (x.Re - 1000) * x.Pr) / (1 + 12.7 * Math.sqrt(x.f / 8) * (x.Pr ** (2 / 3) - 1)),
});

export const transitionalNusselt = equation({
  name: "Nusselt number between laminar and turbulent flow",
  form: "Nu = Nl + (Nt - Nl) * (Re - Ra) / (Rb - Ra)",
  kind: "number",
  symbols: {
    Nl: symbol("number", "laminar, at the end of laminar flow", 3, 30),
    Nt: symbol("number", "turbulent, where turbulence is full", 10, 100),
    Re: symbol("number", "Reynolds number", 2300, 22_000),
    Ra: symbol("number", "end of laminar flow", 2000, 10_000),
    Rb: symbol("number", "start of full turbulence", 12_000, 22_000),
  },
  source: { key: "gnielinski1986", where: "coils; straight tubes by Gnielinski 2013" },
  code: (x) => x.Nl + ((x.Nt - x.Nl) * (x.Re - x.Ra)) / (x.Rb - x.Ra),
});

export const liquidWallFactor = equation({
  name: "Correction for the wall's temperature, liquids",
  form: "K = (Pr / Pw)^0.11",
  kind: "number",
  symbols: { Pr, Pw: symbol("number", "Prandtl number at the wall", 0.7, 12) },
  validity: "ratio 0.05 to 20",
  source: "gnielinski2013",
  code: (x) => (x.Pr / x.Pw) ** 0.11,
});

export const frictionDrop = equation({
  name: "Friction drop in a tube",
  form: "dp = f * L / D * 8 * m^2 / (pi^2 * rho * D^4)",
  kind: "pressure drop",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.009, 0.1),
    L: symbol("length", "length of the tube", 0.1, 30),
    D,
    m: symbol("mass flow", "flow in one tube", 1e-3, 0.1),
    rho: symbol("density", "density", 10, 1200),
  },
  source: "darcyWeisbach",
  code: (x) => (((x.f * x.L) / x.D) * 8 * x.m ** 2) / (Math.PI ** 2 * x.rho * x.D ** 4),
});
