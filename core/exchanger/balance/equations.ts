/** Equations of a machine that settles between its evaporator and its condenser. Strict SI. */
import { equation, relation, symbol } from "../../kernel/define/equation";

const temperature = (about: string, from: number, to: number) => symbol("temperature", about, from, to);
const heat = (about: string) => symbol("heat rate", about, 1e3, 5e5);
const Te = temperature("evaporating (dew)", 265, 288);
const Twb = temperature("air entering the evaporator, wet bulb", 290, 300);
const rho = symbol("density", "suction gas", 5, 50);
const V = symbol("air flow", "volume swept per second", 1e-3, 0.1);
const m = symbol("mass flow", "refrigerant", 1e-2, 2);
const r = symbol("number", "pressure ratio", 1.5, 6);
const n = symbol("number", "exponent of the re-expanding gas, at the rating", 1, 1.3);

export const evaporatorLine = equation({
  name: "Cooling of the evaporator",
  form: "Q = Qr * (Twb - Te) / (Twr - Ter)",
  kind: "heat rate",
  symbols: {
    Qr: heat("cooling at the rating"),
    Twb,
    Te,
    Twr: temperature("wet bulb at the rating", 290, 300),
    Ter: temperature("evaporating at the rating", 265, 288),
  },
  validity: "coil of constant effectiveness on the entering wet bulb",
  source: "stoeckerJones1982",
  code: (x) => (x.Qr * (x.Twb - x.Te)) / (x.Twr - x.Ter),
});

export const heatArriving = equation({
  name: "Heat that reaches the pool",
  form: "Q = Qr - Ql - Qp",
  kind: "heat rate",
  symbols: { Qr: heat("heat rejected"), Ql: heat("lost by the line"), Qp: heat("lost by the pipes") },
  validity: "condensing settles as if all heat reached the exchanger: a little high",
  source: "identity",
  code: (x) => x.Qr - x.Ql - x.Qp,
});

export const volumetricEfficiencyAt = equation({
  name: "Volumetric efficiency away from the rating",
  form: "e = 1 - (1 - e0) * (r^(1 / n) - 1) / (r0^(1 / n) - 1)",
  kind: "fraction",
  symbols: {
    e0: symbol("fraction", "volumetric efficiency at the rating", 0.7, 1),
    r,
    r0: symbol("number", "pressure ratio at the rating", 2, 4),
    n,
  },
  validity: "the loss is gas that re-expands from a constant clearance",
  source: "stoeckerJones1982",
  code: (x) => 1 - ((1 - x.e0) * (x.r ** (1 / x.n) - 1)) / (x.r0 ** (1 / x.n) - 1),
});

export const efficiencyByPower = equation({
  name: "Efficiency of the compressor, from its power at the rating",
  form: "eta = Q / (c * P)",
  kind: "fraction",
  symbols: {
    Q: heat("cooling of the evaporator"),
    c: symbol("COP", "COP of a loss-free compressor there", 3, 12),
    P: symbol("electric power", "power less the fans'", 1e3, 1e5),
  },
  source: "identity",
  code: (x) => x.Q / (x.c * x.P),
});

export const sweptVolume = equation({
  name: "Swept volume per second, from the rating",
  form: "V = Q / (e * rho * q)",
  kind: "air flow",
  symbols: {
    Q: heat("cooling at the rating"),
    e: symbol("fraction", "volumetric efficiency", 0.6, 1),
    rho,
    q: symbol("enthalpy", "cooling", 1e5, 2.5e5),
  },
  source: "identity",
  code: (x) => x.Q / (x.e * x.rho * x.q),
});

export const pumpedFlow = equation({
  name: "Refrigerant that the compressor moves",
  form: "m = V * e * rho",
  kind: "mass flow",
  symbols: { V, e: symbol("fraction", "volumetric efficiency", 0.6, 1), rho },
  source: "identity",
  code: (x) => x.V * x.e * x.rho,
});

/** Heat into the water per kelvin from its entering temperature to the mean condensing temperature. */
export const effectiveConductance = equation({
  name: "Heat taken per kelvin over the entering water",
  form: "G = C * (1 - exp(-UA / C))",
  kind: "heat conductance",
  symbols: {
    C: symbol("heat conductance", "capacity rate of the water", 500, 50_000),
    UA: symbol("heat conductance", "conductance", 50, 50_000),
  },
  validity: "condensing at one temperature",
  source: "bergman2011",
  code: (x) => x.C * -Math.expm1(-x.UA / x.C),
});

/** The inverse: the UA with which a balance of given UA finds the same heat. */
export const conductanceOfHeat = equation({
  name: "Conductance for this heat at one condensing temperature",
  form: "UA = -C * log(1 - Q / (C * (Tm - Tw)))",
  kind: "heat conductance",
  symbols: {
    C: symbol("heat conductance", "capacity rate of the water", 5000, 50_000),
    Q: symbol("heat rate", "heat into the water", 1e3, 4e4),
    Tm: temperature("mean condensing temperature", 310, 330),
    Tw: temperature("water entering", 275, 300),
  },
  validity: "water leaves below the mean condensing temperature",
  source: "bergman2011",
  code: (x) => -x.C * Math.log1p(-x.Q / (x.C * (x.Tm - x.Tw))),
});

export const coilConductance = equation({
  name: "Heat taken per kelvin over the outdoor air",
  form: "G = Q / (Tm - To)",
  kind: "heat conductance",
  symbols: {
    Q: heat("heat rejected at the rating"),
    Tm: temperature("mean condensing temperature at the rating", 315, 330),
    To: temperature("outdoor air at the rating", 295, 312),
  },
  validity: "the temperature difference is proportional to the heat",
  source: "commonPractice",
  code: (x) => x.Q / (x.Tm - x.To),
});

export const dischargePressure = equation({
  name: "Pressure at the compressor",
  form: "Pd = Pc + dp",
  kind: "pressure",
  symbols: {
    Pc: symbol("pressure", "condensing pressure at the exchanger, absolute", 1e6, 4e6),
    dp: symbol("pressure drop", "lost by hot-gas line and valve", 1e3, 3e5),
  },
  validity: "the gas keeps its enthalpy in line and valve",
  source: "identity",
  code: (x) => x.Pc + x.dp,
});

export const settledHeat = relation({
  name: "Heat rejected equals heat taken up",
  form: "m * qc = G * (Tm - Ts)",
  symbols: {
    m,
    qc: symbol("enthalpy", "heat rejected", 1.5e5, 3e5),
    G: symbol("heat conductance", "heat taken per kelvin", 100, 50_000),
    Tm: temperature("mean condensing temperature", 300, 330),
    Ts: temperature("fluid entering the condenser", 275, 299),
  },
  source: "identity",
  left: (x) => x.m * x.qc,
  right: (x) => x.G * (x.Tm - x.Ts),
});

export const changeOfHeat = equation({
  name: "Relative change from outdoors to pool",
  form: "c = b / a - 1",
  kind: "fraction",
  symbols: { a: heat("on the outdoor coil"), b: heat("on the pool") },
  source: "identity",
  code: (x) => x.b / x.a - 1,
});
