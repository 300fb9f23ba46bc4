/** Equations of heat lost from pipes in air and in the ground. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const number = (description: string, from: number, to: number) => symbol("number", description, from, to);
const Pr = number("Prandtl number", 0.68, 0.74);
const film = (description: string) => symbol("film coefficient", description, 1, 50);

export const stillAirNusselt = equation({
  name: "Nusselt number of a level cylinder in still air",
  form: "Nu = (0.60 + 0.387 * Ra^(1/6) / (1 + (0.559/Pr)^(9/16))^(8/27))^2",
  kind: "number",
  symbols: { Ra: number("Rayleigh number", 1e2, 1e9), Pr },
  validity: "Ra up to 1e12",
  source: "churchillChu1975",
  code: (x) => (0.6 + (0.387 * x.Ra ** (1 / 6)) / (1 + (0.559 / x.Pr) ** (9 / 16)) ** (8 / 27)) ** 2,
});

export const windNusselt = equation({
  name: "Nusselt number of a cylinder across the wind",
  form: "Nu = 0.3 + 0.62 * Re^0.5 * Pr^(1/3) / (1 + (0.4/Pr)^(2/3))^0.25 * (1 + (Re/282000)^(5/8))^0.8",
  kind: "number",
  symbols: { Re: number("Reynolds number", 10, 1e6), Pr },
  validity: "Re Pr above 0.2",
  source: "churchillBernstein1977",
  code: (x) =>
    0.3 +
    ((0.62 * Math.sqrt(x.Re) * x.Pr ** (1 / 3)) / (1 + (0.4 / x.Pr) ** (2 / 3)) ** 0.25) *
      (1 + (x.Re / 282000) ** (5 / 8)) ** 0.8,
});

export const mixedFilm = equation({
  name: "Still air and wind together",
  form: "h = (hn^4 + hf^4)^(1/4)",
  kind: "film coefficient",
  symbols: { hn: film("still air"), hf: film("wind") },
  validity: "exponent from memory (form of ASTM C680)",
  source: "commonPractice",
  code: (x) => (x.hn ** 4 + x.hf ** 4) ** 0.25,
});

export const radiationFilm = equation({
  name: "Film coefficient of radiation",
  form: "h = e * 5.670374419e-8 * (Ts^2 + Ta^2) * (Ts + Ta)",
  kind: "film coefficient",
  symbols: {
    e: symbol("fraction", "emissivity", 0.05, 1),
    Ts: symbol("temperature", "surface", 260, 380),
    Ta: symbol("temperature", "air and surroundings", 250, 320),
  },
  source: "identity",
  code: (x) => x.e * 5.670374419e-8 * (x.Ts ** 2 + x.Ta ** 2) * (x.Ts + x.Ta),
});

/** K m/W of a layer. */
export const layerResistance = equation({
  name: "Resistance of a layer, a metre of pipe",
  form: "R = log(Do / Di) / (2 * pi * k)",
  kind: "number",
  symbols: {
    Do: symbol("diameter", "outside", 0.05, 0.2),
    Di: symbol("diameter", "inside", 0.02, 0.049),
    k: symbol("conductivity", "conductivity", 0.03, 0.5),
  },
  source: "identity",
  code: (x) => Math.log(x.Do / x.Di) / (2 * Math.PI * x.k),
});

export const groundResistance = equation({
  name: "Resistance of the ground, a metre of pipe",
  form: "R = acosh(2 * z / D) / (2 * pi * k)",
  kind: "number",
  symbols: {
    z: symbol("depth", "depth to the pipe's centre", 0.2, 2),
    D: symbol("diameter", "outside diameter", 0.02, 0.2),
    k: symbol("conductivity", "conductivity of the ground", 0.3, 2.5),
  },
  validity: "steady, one pipe alone: early losses are larger for weeks",
  source: "conductionTexts",
  code: (x) => Math.acosh((2 * x.z) / x.D) / (2 * Math.PI * x.k),
});

export const coolingAlongPipe = equation({
  name: "Temperature at the end of the pipe",
  form: "To = Ta + (Ti - Ta) * exp(-L * G / W)",
  kind: "temperature",
  symbols: {
    Ta: symbol("temperature", "air or ground", 260, 310),
    Ti: symbol("temperature", "at the start", 290, 350),
    L: symbol("length", "length", 1, 100),
    G: number("loss a metre and K, W/(m K)", 0.1, 5),
    W: symbol("heat conductance", "flow times heat capacity", 50, 20000),
  },
  source: "conductionTexts",
  code: (x) => x.Ta + (x.Ti - x.Ta) * Math.exp((-x.L * x.G) / x.W),
});
