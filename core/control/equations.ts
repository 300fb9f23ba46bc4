/** Equations of thermistors. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

/** Resistance at 25 °C of parts sold as "10k", ohm. */
export const R25 = 10_000;

const R = symbol("resistance", "resistance", 500, 400_000);
const T = symbol("temperature", "temperature", 233.15, 373.15);
const beta = symbol("number", "beta value, K", 2000, 6000);
const A = symbol("number", "first constant of the curve", 1.02e-3, 1.14e-3);
const B = symbol("number", "second constant of the curve", 2.33e-4, 2.4e-4);
const C = symbol("number", "third constant of the curve", 0.87e-7, 1.57e-7);

export const steinhartTemperature = equation({
  name: "Steinhart–Hart",
  form: "T = 1 / (A + B * log(R) + C * log(R)^3)",
  kind: "temperature",
  symbols: { R, A, B, C },
  source: "steinhartHart1968",
  code: (x) => {
    const l = Math.log(x.R);
    return 1 / (x.A + x.B * l + x.C * l ** 3);
  },
});

/** The cubic in ln R solved in closed form. */
export const steinhartHalfConstant = equation({
  name: "Half of the cubic's constant term",
  form: "x = (A - 1 / T) / (2 * C)",
  kind: "number",
  symbols: { T, A, C },
  source: "steinhartHart1968",
  code: (x) => (x.A - 1 / x.T) / (2 * x.C),
});

export const steinhartResistance = equation({
  name: "Steinhart–Hart, solved for the resistance",
  form: "R = exp(cbrt(sqrt((B / (3 * C))^3 + x^2) - x) - cbrt(sqrt((B / (3 * C))^3 + x^2) + x))",
  kind: "resistance",
  symbols: { x: symbol("number", "half of the cubic's constant term", -18_000, -8000), B, C },
  source: "steinhartHart1968",
  code: ({ x, B, C }) => {
    const y = Math.sqrt((B / (3 * C)) ** 3 + x ** 2);
    return Math.exp(Math.cbrt(y - x) - Math.cbrt(y + x));
  },
});

export const betaTemperature = equation({
  name: "Beta equation",
  form: "T = 1 / (1 / 298.15 + log(R / R25) / beta)",
  kind: "temperature",
  symbols: { R: symbol("resistance", "resistance", 700, 200_000), beta },
  constants: { R25 },
  source: "betaEquation",
  code: (x) => 1 / (1 / 298.15 + Math.log(x.R / R25) / x.beta),
});

export const betaResistance = equation({
  name: "Beta equation, solved for the resistance",
  form: "R = R25 * exp(beta * (1 / T - 1 / 298.15))",
  kind: "resistance",
  symbols: { T, beta },
  constants: { R25 },
  source: "betaEquation",
  code: (x) => R25 * Math.exp(x.beta * (1 / x.T - 1 / 298.15)),
});
