/** Geometry and water side of a helical coil in a cylindrical shell. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const Do = symbol("diameter", "outside diameter of the tube", 0.008, 0.03);
const L = symbol("length", "length of one tube", 2, 60);
const Dc = symbol("diameter", "coil diameter, centre to centre", 0.15, 0.5);
const p = symbol("diameter", "pitch between neighbouring turns", 0.01, 0.06);
const Ds = symbol("diameter", "inside diameter of the shell", 0.56, 0.8);
const Dk = symbol("diameter", "diameter of the closed core", 0, 0.1);
const N = symbol("count", "tubes in parallel", 1, 6);
const H = symbol("length", "height of the coil", 0.1, 2);
const T = (about: string) => symbol("temperature", about, 275, 340);

export const coilArea = equation({
  name: "Outside area of the coil",
  form: "A = pi * Do * L * N",
  kind: "area",
  symbols: { Do, L, N },
  source: "identity",
  code: (x) => Math.PI * x.Do * x.L * x.N,
});

/** The helices of parallel tubes interleave: each climbs N pitches a turn. */
export const turnsOf = equation({
  name: "Turns of one tube",
  form: "n = L / sqrt((pi * Dc)^2 + (N * p)^2)",
  kind: "number",
  symbols: { L, Dc, N, p },
  source: "identity",
  code: (x) => x.L / Math.hypot(Math.PI * x.Dc, x.N * x.p),
});

export const coilHeight = equation({
  name: "Height of the coil",
  form: "H = n * N * p",
  kind: "length",
  symbols: { n: symbol("number", "turns of one tube", 2, 60), N, p },
  source: "identity",
  code: (x) => x.n * x.N * x.p,
});

export const freeArea = equation({
  name: "Free area of the shell past the coil's ring",
  form: "A = pi / 4 * (Ds^2 - Dk^2) - pi * Dc * Do",
  kind: "area",
  symbols: { Ds, Dk, Dc, Do },
  source: "identity",
  code: (x) => (Math.PI / 4) * (x.Ds ** 2 - x.Dk ** 2) - Math.PI * x.Dc * x.Do,
});

export const shellVelocity = equation({
  name: "Water velocity past the coil",
  form: "v = V / A",
  kind: "velocity",
  symbols: {
    V: symbol("water flow", "water", 1e-4, 0.02),
    A: symbol("area", "free area", 0.01, 0.4),
  },
  source: "identity",
  code: (x) => x.V / x.A,
});

/** Free volume over the area that the water touches: coil, shell and core. */
export const hydraulicDiameter = equation({
  name: "Hydraulic diameter of the shell with its coil",
  form: "Dh = (pi * (Ds^2 - Dk^2) * H - pi * Do^2 * L * N) / (pi * (Ds + Dk) * H + pi * Do * L * N)",
  kind: "diameter",
  symbols: {
    Ds,
    Dk,
    H: symbol("length", "height of the coil", 0.8, 3),
    Do: symbol("diameter", "outside diameter of the tube", 0.008, 0.02),
    L: symbol("length", "length of one tube", 2, 40),
    N: symbol("count", "tubes in parallel", 1, 3),
  },
  source: "identity",
  code: (x) => ((x.Ds ** 2 - x.Dk ** 2) * x.H - x.Do ** 2 * x.L * x.N) / ((x.Ds + x.Dk) * x.H + x.Do * x.L * x.N),
});

export const shellDrop = equation({
  name: "Friction drop of the water along the coil",
  form: "dp = f * H / Dh * rho * v^2 / 2",
  kind: "pressure drop",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.01, 0.2),
    H,
    Dh: symbol("diameter", "hydraulic diameter", 0.02, 0.3),
    rho: symbol("density", "density of the water", 960, 1001),
    v: symbol("velocity", "water velocity", 0.01, 3),
  },
  source: "darcyWeisbach",
  code: (x) => ((x.f * x.H) / x.Dh) * ((x.rho * x.v ** 2) / 2),
});

/** Each turn counts as one row of tubes across the flow. */
export const turnsDrop = equation({
  name: "Drop of the water across the turns",
  form: "dp = 0.3 * n * N * rho * v^2 / 2",
  kind: "pressure drop",
  symbols: {
    n: symbol("number", "turns of one tube", 1, 60),
    N: symbol("count", "tubes in parallel", 1, 3),
    rho: symbol("density", "density of the water", 960, 1001),
    v: symbol("velocity", "water velocity", 0.01, 3),
  },
  validity: "0.2 to 0.4 a turn in wide gaps, from memory: small compared with the ports",
  source: "commonPractice",
  code: (x) => 0.3 * x.n * x.N * ((x.rho * x.v ** 2) / 2),
});

export const portsDrop = equation({
  name: "Drop of the water in its ports",
  form: "dp = (1 + 0.5) * rho * (4 * V / (pi * D^2))^2 / 2",
  kind: "pressure drop",
  symbols: {
    rho: symbol("density", "density of the water", 960, 1001),
    V: symbol("water flow", "water flow", 1e-4, 0.02),
    D: symbol("diameter", "bore of a port", 0.02, 0.1),
  },
  validity: "one velocity head into the shell, half of one out of it",
  source: "hydraulicsTexts",
  code: (x) => 1.5 * ((x.rho * ((4 * x.V) / (Math.PI * x.D ** 2)) ** 2) / 2),
});

export const surfaceDifference = equation({
  name: "Surface over water",
  form: "d = dTm * Ro / Rt",
  kind: "temperature difference",
  symbols: {
    dTm: symbol("temperature difference", "mean difference", 1, 60),
    Ro: symbol("fouling resistance", "outside film", 1e-4, 2e-3),
    Rt: symbol("fouling resistance", "total", 2e-3, 1e-2),
  },
  source: "identity",
  code: (x) => (x.dTm * x.Ro) / x.Rt,
});

export const filmTemperature = equation({
  name: "Mean of surface and water",
  form: "Tf = Tw + d / 2",
  kind: "temperature",
  symbols: { Tw: T("water"), d: symbol("temperature difference", "surface over water", 0, 40) },
  source: "identity",
  code: (x) => x.Tw + x.d / 2,
});

export const expansionOfWater = equation({
  name: "Thermal expansion of water",
  form: "b = (ra - rb) / (2 * rho)",
  kind: "expansion coefficient",
  symbols: {
    ra: symbol("density", "density 1 K below", 998, 1001),
    rb: symbol("density", "density 1 K above", 960, 997),
    rho: symbol("density", "density", 960, 1001),
  },
  validity: "central difference over 2 K",
  source: "kell1975",
  code: (x) => (x.ra - x.rb) / (2 * x.rho),
});

export const marginOfArea = equation({
  name: "Margin of the area",
  form: "m = A / An - 1",
  kind: "fraction",
  symbols: { A: symbol("area", "area given", 0.5, 20), An: symbol("area", "area needed", 0.5, 20) },
  source: "identity",
  code: (x) => x.A / x.An - 1,
});

export const boreVelocity = equation({
  name: "Velocity in a tube",
  form: "v = 4 * m / (pi * rho * D^2)",
  kind: "velocity",
  symbols: {
    m: symbol("mass flow", "flow in one tube", 1e-3, 0.1),
    rho: symbol("density", "density", 10, 1200),
    D: symbol("diameter", "inside diameter", 0.004, 0.03),
  },
  source: "identity",
  code: (x) => (4 * x.m) / (Math.PI * x.rho * x.D ** 2),
});
