/** Refrigerant held in condensers, lines and a receiver. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const rhoV = symbol("density", "saturated vapour", 20, 250);
const rhoL = symbol("density", "saturated liquid", 700, 1200);

/** Mean over the qualities 1 to 0, evenly spread along the coil. */
export const meanVoid = equation({
  name: "Mean void fraction of the condensing part (Zivi)",
  form: "A = 1 / (1 - (rhoV/rhoL)^(2/3)) + (rhoV/rhoL)^(2/3) * log((rhoV/rhoL)^(2/3)) / (1 - (rhoV/rhoL)^(2/3))^2",
  kind: "fraction",
  symbols: { rhoV, rhoL },
  validity: "quality falling evenly along the coil",
  source: "zivi1964",
  code: (x) => {
    const r = (x.rhoV / x.rhoL) ** (2 / 3);
    return 1 / (1 - r) + (r * Math.log(r)) / (1 - r) ** 2;
  },
});

const share = (about: string) => symbol("fraction", about, 0, 0.5);

export const condenserHoldUp = equation({
  name: "Refrigerant in a running condenser",
  form: "m = V * (g * rhoG + l * rhoS + (1 - g - l) * (A * rhoV + (1 - A) * rhoL))",
  kind: "mass",
  symbols: {
    V: symbol("vessel volume", "refrigerant volume of the condenser", 5e-4, 0.05),
    g: share("share filled with superheated gas"),
    rhoG: symbol("density", "superheated gas", 20, 200),
    l: share("share filled with subcooled liquid"),
    rhoS: symbol("density", "subcooled liquid", 700, 1250),
    A: symbol("fraction", "mean void fraction", 0.5, 0.99),
    rhoV,
    rhoL,
  },
  source: "identity",
  code: (x) => x.V * (x.g * x.rhoG + x.l * x.rhoS + (1 - x.g - x.l) * (x.A * x.rhoV + (1 - x.A) * x.rhoL)),
});

export const massInVolume = equation({
  name: "Refrigerant in a volume of one phase",
  form: "m = rho * V",
  kind: "mass",
  symbols: {
    rho: symbol("density", "density", 5, 1300),
    V: symbol("vessel volume", "volume", 5e-4, 0.05),
  },
  source: "identity",
  code: (x) => x.rho * x.V,
});

export const needDifference = equation({
  name: "Pool mode less outdoor mode",
  form: "d = mp - mo",
  kind: "mass",
  symbols: {
    mp: symbol("mass", "need of these parts in pool mode", 0.1, 20),
    mo: symbol("mass", "need of these parts in outdoor mode", 0.1, 20),
  },
  source: "identity",
  code: (x) => x.mp - x.mo,
});

export const receiverVolume = equation({
  name: "Receiver that holds the difference",
  form: "V = abs(d) / (fill * rho)",
  kind: "vessel volume",
  symbols: {
    d: symbol("mass", "difference between the modes", -5, 5),
    fill: symbol("fraction", "most filling", 0.5, 0.9),
    rho: symbol("density", "liquid at the warmest temperature", 600, 1200),
  },
  source: "receiverPractice",
  code: (x) => Math.abs(x.d) / (x.fill * x.rho),
});
