/** Water outside a tube, across the flow or across gravity. Strict SI; lengths are the tube's outside diameter. */
import { equation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const Pr = symbol("number", "Prandtl number", 3, 13);
const D = symbol("diameter", "outside diameter", 0.005, 0.05);
const rho = symbol("density", "density of the water", 960, 1001);
const mu = symbol("viscosity", "viscosity of the water", 3e-4, 1.8e-3);

export const crossReynolds = equation({
  name: "Reynolds number across a tube",
  form: "Re = rho * v * D / mu",
  kind: "number",
  symbols: { rho, v: symbol("velocity", "water velocity between tube and shell", 0.01, 3), D, mu },
  source: "identity",
  code: (x) => (x.rho * x.v * x.D) / x.mu,
});

export const rayleigh = equation({
  name: "Rayleigh number",
  form: "Ra = g * b * dT * D^3 * rho^2 / mu^2 * Pr",
  kind: "number",
  symbols: {
    b: symbol("expansion coefficient", "expansion of the water, 1/K", 5e-5, 7e-4),
    dT: symbol("temperature difference", "wall over water", 0.5, 40),
    D,
    rho,
    mu,
    Pr,
  },
  constants: { g: GRAVITY },
  source: "identity",
  code: (x) => ((GRAVITY * x.b * x.dT * x.D ** 3 * x.rho ** 2) / x.mu ** 2) * x.Pr,
});

export const forcedNusselt = equation({
  name: "Nusselt number of a cylinder in crossflow (Churchill and Bernstein)",
  form: "Nu = 0.3 + 0.62 * Re^0.5 * Pr^(1/3) / (1 + (0.4 / Pr)^(2/3))^0.25 * (1 + (Re / 282000)^0.625)^0.8",
  kind: "number",
  symbols: { Re: symbol("number", "Reynolds number", 10, 2e5), Pr },
  validity: "Re · Pr above 0.2, properties at the mean of wall and water",
  source: "churchillBernstein1977",
  code: (x) =>
    0.3 +
    ((0.62 * Math.sqrt(x.Re) * Math.cbrt(x.Pr)) / (1 + (0.4 / x.Pr) ** (2 / 3)) ** 0.25) *
      (1 + (x.Re / 282000) ** 0.625) ** 0.8,
});

export const naturalNusselt = equation({
  name: "Nusselt number of a horizontal cylinder in still water (Churchill and Chu)",
  form: "Nu = (0.6 + 0.387 * Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))^2",
  kind: "number",
  symbols: { Ra: symbol("number", "Rayleigh number", 10, 1e10), Pr },
  validity: "Ra 1e-5 to 1e12, properties at the mean of wall and water",
  source: "churchillChu1975",
  code: (x) => (0.6 + (0.387 * x.Ra ** (1 / 6)) / (1 + (0.559 / x.Pr) ** (9 / 16)) ** (8 / 27)) ** 2,
});

export const mixedNusselt = equation({
  name: "Nusselt number of forced and natural flow together",
  form: "Nu = (Nf^4 + Nn^4)^(1/4)",
  kind: "number",
  symbols: { Nf: symbol("number", "forced", 3, 300), Nn: symbol("number", "natural", 1, 100) },
  validity: "flow across or along the buoyancy, not against it",
  source: "mixedConvectionTexts",
  code: (x) => (x.Nf ** 4 + x.Nn ** 4) ** 0.25,
});
