/** Equations of the cost of heat and of payback. Strict SI; money without unit. */
import { equation, symbol } from "../kernel/define/equation";

const H = symbol("heat", "heat into the water", 0, 1e12);
const eta = symbol("number", "heat per energy bought", 0.2, 15);

export const energyBought = equation({
  name: "Energy bought",
  form: "E = H / eta",
  kind: "heat",
  symbols: { H, eta },
  source: "identity",
  code: (x) => x.H / x.eta,
});

export const costByEnergy = equation({
  name: "Cost of energy sold by energy",
  form: "C = E * price",
  kind: "money",
  symbols: { E: symbol("heat", "energy bought", 0, 1e12), price: symbol("price of electricity", "price", 0, 1e-6) },
  source: "identity",
  code: (x) => x.E * x.price,
});

export const costByVolume = equation({
  name: "Cost of fuel sold by volume",
  form: "C = E / content * price",
  kind: "money",
  symbols: {
    E: symbol("heat", "energy bought", 0, 1e12),
    content: symbol("number", "energy content of the fuel, J/m³", 5e9, 4e10),
    price: symbol("price of liquid fuel", "price", 0, 3000),
  },
  source: "identity",
  code: (x) => (x.E / x.content) * x.price,
});

export const carbonDioxide = equation({
  name: "Carbon dioxide",
  form: "m = E * factor",
  kind: "carbon dioxide",
  symbols: {
    E: symbol("heat", "energy bought", 0, 1e12),
    factor: symbol("number", "carbon dioxide for the energy bought, kg/J", 4e-8, 1.3e-7),
  },
  source: "identity",
  code: (x) => x.E * x.factor,
});

const q = symbol("number", "yearly growth over discounting", 0.7, 1.2);
const n = symbol("years", "years", 1, 60);

export const yearlyRatio = equation({
  name: "Yearly growth over discounting",
  form: "q = (1 + e) / (1 + d)",
  kind: "number",
  symbols: {
    e: symbol("yearly rate", "escalation", -0.2, 0.3),
    d: symbol("yearly rate", "discount rate", 0, 0.5),
  },
  source: "nistHandbook135",
  code: (x) => (1 + x.e) / (1 + x.d),
});

/** Present value of a yearly saving of 1 at today's prices, paid at each year's end (UPV*; UPV without escalation). */
export const presentValueFactor = equation({
  name: "Uniform present value factor",
  form: "F = q == 1 ? n : q * (1 - q^n) / (1 - q)",
  kind: "number",
  symbols: { q, n },
  source: "nistHandbook135",
  code: (x) => (x.q === 1 ? x.n : (-x.q * Math.expm1(x.n * Math.log(x.q))) / (1 - x.q)),
});

export const netPresentValue = equation({
  name: "Net present value",
  form: "NPV = S * F - u * U - R * P - C",
  kind: "money",
  symbols: {
    S: symbol("money", "yearly saving at today's prices", -1e5, 1e6),
    F: symbol("number", "present value factor of the saving", 0, 100),
    u: symbol("money", "yearly upkeep", 0, 1e5),
    U: symbol("number", "present value factor of the upkeep", 0, 60),
    R: symbol("money", "replacement", 0, 1e6),
    P: symbol("number", "present value factor of its year", 0, 1),
    C: symbol("money", "cost now", 0, 1e7),
  },
  source: "nistHandbook135",
  code: (x) => x.S * x.F - x.u * x.U - x.R * x.P - x.C,
});

export const simplePayback = equation({
  name: "Simple payback",
  form: "y = C / S",
  kind: "years",
  symbols: { C: symbol("money", "cost now", 1, 1e7), S: symbol("money", "yearly saving", 1, 1e6) },
  source: "nistHandbook135",
  code: (x) => x.C / x.S,
});

/** The years n at which the present value factor equals cost over saving: its closed form, solved for n. */
export const discountedPayback = equation({
  name: "Discounted payback",
  form: "y = q == 1 ? r : log(1 - r * (1 - q) / q) / log(q)",
  kind: "years",
  symbols: { r: symbol("number", "cost over yearly saving", 0.1, 2), q },
  source: "nistHandbook135",
  code: (x) => (x.q === 1 ? x.r : Math.log1p((-x.r * (1 - x.q)) / x.q) / Math.log(x.q)),
});

/** Present value of 1 at today's prices, paid once at the end of year n (SPV). */
export const singleFactor = equation({
  name: "Single present value factor",
  form: "F = q^n",
  kind: "number",
  symbols: { q, n },
  source: "nistHandbook135",
  code: (x) => x.q ** x.n,
});

export const midYearFactor = equation({
  name: "Uniform present value factor, paid at mid-year",
  form: "F = U / sqrt(q)",
  kind: "number",
  symbols: { U: symbol("number", "factor of payments at the years' ends", 0, 60), q },
  source: "nistHandbook135",
  code: (x) => x.U / Math.sqrt(x.q),
});

export const capitalRecovery = equation({
  name: "Capital recovery factor",
  form: "A = 1 / U",
  kind: "number",
  symbols: { U: symbol("number", "uniform present value factor", 0.5, 60) },
  source: "nistHandbook135",
  code: (x) => 1 / x.U,
});

export const savingsRatio = equation({
  name: "Savings-to-investment ratio",
  form: "SIR = S / I",
  kind: "number",
  symbols: {
    S: symbol("money", "present value of operating savings", -1e6, 1e6),
    I: symbol("money", "present value of extra investment, replacements and residual values inside", 1, 1e6),
  },
  source: "nistHandbook135",
  code: (x) => x.S / x.I,
});

export const adjustedRate = equation({
  name: "Adjusted internal rate of return",
  form: "r = (1 + d) * SIR^(1 / n) - 1",
  kind: "yearly rate",
  symbols: {
    d: symbol("yearly rate", "discount rate", 0, 0.5),
    SIR: symbol("number", "savings-to-investment ratio", 0, 20),
    n,
  },
  source: "nistHandbook135",
  code: (x) => (1 + x.d) * x.SIR ** (1 / x.n) - 1,
});

const GWP = symbol("number", "100-year warming potential", 1, 4500);
const m = symbol("mass", "charge", 0.1, 100);

export const leakWarming = equation({
  name: "Warming of leaks",
  form: "W = GWP * a * m * n",
  kind: "carbon dioxide",
  symbols: { GWP, a: symbol("fraction", "leaked in a year", 0, 1), m, n },
  source: "totalWarming",
  code: (x) => x.GWP * x.a * x.m * x.n,
});

export const endOfLifeWarming = equation({
  name: "Warming of what isn't recovered",
  form: "W = GWP * m * (1 - r)",
  kind: "carbon dioxide",
  symbols: { GWP, m, r: symbol("fraction", "recovered", 0, 1) },
  source: "totalWarming",
  code: (x) => x.GWP * x.m * (1 - x.r),
});

export const energyWarming = equation({
  name: "Warming of electricity",
  form: "W = E / 3600000 * b * n",
  kind: "carbon dioxide",
  symbols: {
    E: symbol("electric energy", "electricity of a year", 0, 1e12),
    b: symbol("number", "carbon dioxide, kg/kWh", 0, 1.5),
    n,
  },
  source: "totalWarming",
  code: (x) => (x.E / 3_600_000) * x.b * x.n,
});
