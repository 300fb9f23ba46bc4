/** Equations of gauge readings. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

const Tl = symbol("temperature", "line temperature", 250, 350);

export const superheatOf = equation({
  name: "Superheat",
  form: "dT = Tl - Td",
  kind: "temperature difference",
  symbols: { Tl, Td: symbol("temperature", "dew temperature at the pressure read", 240, 330) },
  source: "identity",
  code: (x) => x.Tl - x.Td,
});

export const subcoolingOf = equation({
  name: "Subcooling",
  form: "dT = Tb - Tl",
  kind: "temperature difference",
  symbols: { Tb: symbol("temperature", "bubble temperature at the pressure read", 240, 330), Tl },
  source: "identity",
  code: (x) => x.Tb - x.Tl,
});

export const glideOf = equation({
  name: "Glide",
  form: "dT = Td - Tb",
  kind: "temperature difference",
  symbols: {
    Td: symbol("temperature", "dew temperature", 240, 330),
    Tb: symbol("temperature", "bubble temperature", 240, 330),
  },
  source: "identity",
  code: (x) => x.Td - x.Tb,
});

export const latentOf = equation({
  name: "Latent heat",
  form: "L = hd - hb",
  kind: "enthalpy",
  symbols: {
    hd: symbol("enthalpy", "enthalpy at the dew point", 3e5, 5e5),
    hb: symbol("enthalpy", "enthalpy at the bubble point", 1e5, 3e5),
  },
  source: "identity",
  code: (x) => x.hd - x.hb,
});

export const enthalpyAbove = equation({
  name: "Enthalpy over the US zero",
  form: "hus = h - h0",
  kind: "enthalpy",
  symbols: {
    h: symbol("enthalpy", "enthalpy over the IIR zero", 1e5, 5e5),
    h0: symbol("enthalpy", "that of saturated liquid at −40 °F", 1e5, 1.6e5),
  },
  source: "identity",
  code: (x) => x.h - x.h0,
});

export const entropyAbove = equation({
  name: "Entropy over the US zero",
  form: "sus = s - s0",
  kind: "entropy",
  symbols: {
    s: symbol("entropy", "entropy over the IIR zero", 500, 2500),
    s0: symbol("entropy", "that of saturated liquid at −40 °F", 500, 900),
  },
  source: "identity",
  code: (x) => x.s - x.s0,
});

const massShare = (which: string) => symbol("fraction", `mass fraction of the ${which} component`, 0, 1);
const potential = (which: string) => symbol("number", `warming potential of the ${which} component`, 0, 4500);

/** A blend of up to four components; shares that are missing are 0. */
export const warmingByMass = equation({
  name: "Warming potential by mass",
  form: "GWP = w1 * g1 + w2 * g2 + w3 * g3 + w4 * g4",
  kind: "number",
  symbols: {
    w1: massShare("first"),
    g1: potential("first"),
    w2: massShare("second"),
    g2: potential("second"),
    w3: massShare("third"),
    g3: potential("third"),
    w4: massShare("fourth"),
    g4: potential("fourth"),
  },
  source: "identity",
  code: (x) => x.w1 * x.g1 + x.w2 * x.g2 + x.w3 * x.g3 + x.w4 * x.g4,
});
