/** Equations of the water side and of a condenser held at a least condensing temperature. Strict SI. */
import { equation, relation, symbol } from "../../kernel/define/equation";
import { decayShare } from "../surface/equations";

const V = symbol("water flow", "water flow", 1e-5, 0.05);
const rho = symbol("density", "density of the water", 950, 1001);
const cp = symbol("heat capacity", "heat capacity of the water", 4170, 4230);
const Q = symbol("heat rate", "heat", 500, 500_000);
const dT = symbol("temperature difference", "rise of the water", 0.5, 40);
const C = symbol("heat conductance", "capacity rate of the water", 50, 200_000);
const UA = symbol("heat conductance", "conductance", 50, 50_000);

export const capacityRateOfWater = equation({
  name: "Capacity rate of the water",
  form: "C = V * rho * cp",
  kind: "heat conductance",
  symbols: { V, rho, cp },
  source: "identity",
  code: (x) => x.V * x.rho * x.cp,
});

export const riseOfWater = equation({
  name: "Rise of the water",
  form: "dT = Q / C",
  kind: "temperature difference",
  symbols: { Q, C },
  source: "identity",
  code: (x) => x.Q / x.C,
});

export const flowForRise = equation({
  name: "Water flow for a rise",
  form: "V = Q / (rho * cp * dT)",
  kind: "water flow",
  symbols: { Q, rho, cp, dT },
  source: "identity",
  code: (x) => x.Q / (x.rho * x.cp * x.dT),
});

export const dutyOfWater = equation({
  name: "Heat taken up by the water",
  form: "Q = C * dT",
  kind: "heat rate",
  symbols: { C, dT },
  source: "identity",
  code: (x) => x.C * x.dT,
});

export const unitsOfCondenser = equation({
  name: "Transfer units",
  form: "N = UA / C",
  kind: "number",
  symbols: { UA, C },
  source: "bergman2011",
  code: (x) => x.UA / x.C,
});

export const condensingForDuty = equation({
  name: "Condensing temperature for a duty",
  form: "Tc = Tw + Q / (C * (1 - exp(-N)))",
  kind: "temperature",
  symbols: {
    Tw: symbol("temperature", "entering water", 274, 320),
    Q,
    C,
    N: symbol("number", "transfer units", 0.1, 5),
  },
  source: "bergman2011",
  code: (x) => x.Tw + x.Q / (x.C * -Math.expm1(-x.N)),
});

export const heldCondenser = relation({
  name: "Transfer units that hold a condensing temperature",
  form: "(1 - exp(-N)) / N = Q / (UA * (Tl - Tw))",
  symbols: {
    N: symbol("number", "transfer units at the cut flow", 0.1, 20),
    Q,
    UA,
    Tl: symbol("temperature", "least condensing temperature", 322, 335),
    Tw: symbol("temperature", "entering water", 274, 320),
  },
  source: "bergman2011",
  left: (x) => decayShare(x.N),
  right: (x) => x.Q / (x.UA * (x.Tl - x.Tw)),
});

/** The rest of the resistance, refrigerant film and wall, stays constant. */
export const conductanceAtFlow = equation({
  name: "Conductance at the cut flow",
  form: "UA = U0 / (1 - s + s * (Vf / V)^0.6)",
  kind: "heat conductance",
  symbols: {
    U0: symbol("heat conductance", "conductance at full flow", 50, 50_000),
    s: symbol("fraction", "share of the resistance on the water side", 0, 1),
    Vf: symbol("water flow", "full flow", 2e-3, 0.05),
    V,
  },
  validity: "water across tubes: its film varies with about the 0.6th power of the flow",
  source: "commonPractice",
  code: (x) => x.U0 / (1 - x.s + x.s * (x.Vf / x.V) ** 0.6),
});

export const bypassShare = equation({
  name: "Bypass share",
  form: "b = 1 - V / Vf",
  kind: "fraction",
  symbols: {
    V: symbol("water flow", "through the exchanger", 1e-5, 1e-3),
    Vf: symbol("water flow", "full flow", 2e-3, 0.05),
  },
  source: "identity",
  code: (x) => 1 - x.V / x.Vf,
});

export const leavingWater = equation({
  name: "Leaving water",
  form: "To = Tw + Q / C",
  kind: "temperature",
  symbols: { Tw: symbol("temperature", "entering water", 274, 320), Q, C },
  source: "identity",
  code: (x) => x.Tw + x.Q / x.C,
});
