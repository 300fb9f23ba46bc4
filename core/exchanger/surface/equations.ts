/** Equations of mean difference, conductance, wall and water side. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const difference = (about: string, from = 1, to = 80) => symbol("temperature difference", about, from, to);

const F = symbol("fraction", "correction factor", 0.5, 1);
const dTm = difference("log mean difference");
const Q = symbol("heat rate", "heat", 500, 500_000);

/** ln(1 + x)/x, and 1 at x = 0. */
export const logShare = (x: number): number => (x === 0 ? 1 : Math.log1p(x) / x);

/** (1 − exp(−x))/x, and 1 at x = 0. */
export const decayShare = (x: number): number => (x === 0 ? 1 : -Math.expm1(-x) / x);

export const endDifference = equation({
  name: "Difference at an end",
  form: "dT = Th - Tc",
  kind: "temperature difference",
  symbols: {
    Th: symbol("temperature", "hot stream at this end", 310, 400),
    Tc: symbol("temperature", "cold stream at this end", 273, 305),
  },
  source: "identity",
  code: (x) => x.Th - x.Tc,
});

/** Stable where the ends are nearly equal: ln(1 + x) instead of the logarithm of a ratio near 1. */
export const logMeanDifference = equation({
  name: "Log mean temperature difference",
  form: "dTm = (dT1 - dT2) / log(dT1 / dT2)",
  kind: "temperature difference",
  symbols: { dT1: difference("difference at one end"), dT2: difference("difference at the other end") },
  validity: "both positive; equal ends give their difference",
  source: "bergman2011",
  code: ({ dT1, dT2 }) => {
    const small = Math.min(dT1, dT2);
    return small / logShare((Math.max(dT1, dT2) - small) / small);
  },
});

export const dutyOfConductance = equation({
  name: "Duty",
  form: "Q = UA * F * dTm",
  kind: "heat rate",
  symbols: { UA: symbol("heat conductance", "conductance", 50, 50_000), F, dTm },
  source: "bergman2011",
  code: (x) => x.UA * x.F * x.dTm,
});

export const conductanceForDuty = equation({
  name: "Conductance for a duty",
  form: "UA = Q / (F * dTm)",
  kind: "heat conductance",
  symbols: { Q, F, dTm },
  source: "bergman2011",
  code: (x) => x.Q / (x.F * x.dTm),
});

export const areaForDuty = equation({
  name: "Area for a duty",
  form: "A = Q / (U * F * dTm)",
  kind: "area",
  symbols: { Q, U: symbol("film coefficient", "overall coefficient", 50, 5000), F, dTm },
  source: "bergman2011",
  code: (x) => x.Q / (x.U * x.F * x.dTm),
});

const Do = symbol("diameter", "outside diameter", 0.015, 0.05);
const Di = symbol("diameter", "inside diameter", 0.005, 0.0145);
const h = symbol("film coefficient", "film coefficient", 50, 20_000);
const Rf = symbol("fouling resistance", "fouling resistance", 0, 1e-3);

export const insideDiameter = equation({
  name: "Inside diameter of the tube",
  form: "Di = Do - 2 * w",
  kind: "diameter",
  symbols: { Do, w: symbol("diameter", "wall thickness", 2e-4, 3e-3) },
  source: "identity",
  code: (x) => x.Do - 2 * x.w,
});

/** Resistances refer to the outside area, m²·K/W. */
export const outsideFilmResistance = equation({
  name: "Resistance of the outside film",
  form: "Ro = 1 / h",
  kind: "fouling resistance",
  symbols: { h },
  source: "bergman2011",
  code: (x) => 1 / x.h,
});

export const wallResistance = equation({
  name: "Resistance of the wall, on the outside area",
  form: "Rw = Do * log(Do / Di) / (2 * k)",
  kind: "fouling resistance",
  symbols: { Do, Di, k: symbol("conductivity", "conductivity of the wall", 10, 400) },
  source: "bergman2011",
  code: (x) => (x.Do * Math.log(x.Do / x.Di)) / (2 * x.k),
});

export const insideFilmResistance = equation({
  name: "Resistance of the inside film, on the outside area",
  form: "Ri = Do / Di / h",
  kind: "fouling resistance",
  symbols: { Do, Di, h },
  source: "bergman2011",
  code: (x) => x.Do / x.Di / x.h,
});

export const insideFoulingResistance = equation({
  name: "Resistance of the inside fouling, on the outside area",
  form: "Rfi = Rf * Do / Di",
  kind: "fouling resistance",
  symbols: { Rf, Do, Di },
  source: "bergman2011",
  code: (x) => (x.Rf * x.Do) / x.Di,
});

const R = (about: string) => symbol("fouling resistance", about, 1e-5, 2e-3);

export const totalResistance = equation({
  name: "Total resistance",
  form: "Rt = Ri + Rfi + Rw + Rfo + Ro",
  kind: "fouling resistance",
  symbols: {
    Ri: R("inside film"),
    Rfi: R("inside fouling"),
    Rw: R("wall"),
    Rfo: R("outside fouling"),
    Ro: R("outside film"),
  },
  source: "bergman2011",
  code: (x) => x.Ri + x.Rfi + x.Rw + x.Rfo + x.Ro,
});

export const shareOfResistance = equation({
  name: "Share of the total resistance",
  form: "s = R / Rt",
  kind: "fraction",
  symbols: { R: R("this resistance"), Rt: symbol("fouling resistance", "total", 1e-4, 5e-3) },
  source: "identity",
  code: (x) => x.R / x.Rt,
});

export const overallCoefficient = equation({
  name: "Overall coefficient on the outside area",
  form: "U = 1 / Rt",
  kind: "film coefficient",
  symbols: { Rt: symbol("fouling resistance", "total", 1e-4, 5e-3) },
  source: "bergman2011",
  code: (x) => 1 / x.Rt,
});
