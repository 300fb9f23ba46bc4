/** Correction factor of the mean difference, shells in series with an even number of tube passes each. */
import { equation, symbol } from "../../kernel/define/equation";
import { decayShare } from "../surface/equations";

const R = symbol("number", "ratio of the temperature changes", 0.05, 0.95);
const n = symbol("number", "transfer units in counterflow, one shell", 0.02, 2);

export const temperatureEffectiveness = equation({
  name: "Temperature effectiveness",
  form: "P = (To - Ti) / D",
  kind: "fraction",
  symbols: {
    To: symbol("temperature", "warmer end of the stream that changes more", 320, 340),
    Ti: symbol("temperature", "colder end of the stream that changes more", 280, 310),
    D: symbol("temperature difference", "difference of the entering streams", 65, 90),
  },
  source: "bergman2011",
  code: (x) => (x.To - x.Ti) / x.D,
});

export const changeRatio = equation({
  name: "Ratio of the temperature changes, smaller over larger",
  form: "R = a / b",
  kind: "number",
  symbols: {
    a: symbol("temperature difference", "smaller change", 1, 20),
    b: symbol("temperature difference", "larger change", 20, 60),
  },
  source: "bergman2011",
  code: (x) => x.a / x.b,
});

export const unitsPerShell = equation({
  name: "Transfer units of one of the shells in series",
  form: "n = N / S",
  kind: "number",
  symbols: {
    N: symbol("number", "transfer units in counterflow, all shells", 0.05, 6),
    S: symbol("count", "shell passes", 1, 6),
  },
  source: "fakheri2003",
  code: (x) => x.N / x.S,
});

export const effectivenessPerShell = equation({
  name: "Temperature effectiveness of one shell",
  form: "e = (1 - exp(-n * (1 - R))) / (1 - R * exp(-n * (1 - R)))",
  kind: "fraction",
  symbols: { n, R },
  validity: "R = 1 as the limit",
  source: "fakheri2003",
  code: (x) => {
    const change = x.n * decayShare(x.n * (1 - x.R));
    return change / (1 + x.R * change);
  },
});

export const correctionFactor = equation({
  name: "Correction factor",
  form: "F = n / Ns",
  kind: "fraction",
  symbols: { n, Ns: symbol("number", "transfer units that the shell really needs", 2, 6) },
  source: "fakheri2003",
  code: (x) => x.n / x.Ns,
});
