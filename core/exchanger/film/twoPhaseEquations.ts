/** Friction and void fraction of liquid and vapour together in a tube. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const x = symbol("fraction", "share of vapour", 0.02, 0.98);
const rl = symbol("density", "density of the liquid", 600, 1300);
const rg = symbol("density", "density of the vapour", 10, 300);

export const twoPhaseDrop = equation({
  name: "Friction drop of two phases (Müller-Steinhagen and Heck)",
  form: "dp = (A + 2 * (B - A) * x) * (1 - x)^(1/3) + B * x^3",
  kind: "pressure drop",
  symbols: {
    A: symbol("pressure drop", "drop of all the flow as liquid", 10, 5000),
    B: symbol("pressure drop", "drop of all the flow as vapour", 100, 50_000),
    x,
  },
  source: "mullerSteinhagenHeck1986",
  code: (a) => (a.A + 2 * (a.B - a.A) * a.x) * Math.cbrt(1 - a.x) + a.B * a.x ** 3,
});

export const ziviVoid = equation({
  name: "Void fraction (Zivi)",
  form: "e = 1 / (1 + (1 - x) / x * (rg / rl)^(2/3))",
  kind: "fraction",
  symbols: { x, rg, rl },
  source: "zivi1964",
  code: (a) => 1 / (1 + ((1 - a.x) / a.x) * (a.rg / a.rl) ** (2 / 3)),
});

export const rouhaniVoid = equation({
  name: "Void fraction (Rouhani and Axelsson, horizontal)",
  form: "e = x / rg / ((1 + 0.12 * (1 - x)) * (x / rg + (1 - x) / rl) + 1.18 * (1 - x) * (g * s * (rl - rg))^0.25 * pi * D^2 / (4 * m * sqrt(rl)))",
  kind: "fraction",
  symbols: {
    x,
    rg,
    rl,
    s: symbol("surface tension", "surface tension", 1e-3, 0.02),
    D: symbol("diameter", "inside diameter", 0.004, 0.03),
    m: symbol("mass flow", "flow in one tube", 1e-3, 0.1),
  },
  constants: { g: GRAVITY },
  source: "rouhaniAxelsson1970",
  code: (a) => {
    const drift =
      (1.18 * (1 - a.x) * (GRAVITY * a.s * (a.rl - a.rg)) ** 0.25 * Math.PI * a.D ** 2) / (4 * a.m * Math.sqrt(a.rl));
    return a.x / a.rg / ((1 + 0.12 * (1 - a.x)) * (a.x / a.rg + (1 - a.x) / a.rl) + drift);
  },
});

export const meanDensity = equation({
  name: "Mean density of the two phases",
  form: "rho = e * rg + (1 - e) * rl",
  kind: "density",
  symbols: { e: symbol("fraction", "void fraction", 0, 1), rg, rl },
  source: "identity",
  code: (a) => a.e * a.rg + (1 - a.e) * a.rl,
});
