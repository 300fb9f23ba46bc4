/** Balances of the vapour-compression cycle. Strict SI, by mass of refrigerant. */
import { equation, symbol } from "../kernel/define/equation";

const h1 = symbol("enthalpy", "suction gas", 3.8e5, 4.4e5);
const h2 = symbol("enthalpy", "discharge gas", 4.5e5, 5.2e5);
const h3 = symbol("enthalpy", "liquid leaving the condenser", 2e5, 2.8e5);

export const compressorWork = equation({
  name: "Compressor work",
  form: "w = (h2s - h1) / e",
  kind: "enthalpy",
  symbols: {
    h2s: symbol("enthalpy", "discharge gas at the suction's entropy", 4.5e5, 5e5),
    h1,
    e: symbol("fraction", "isentropic efficiency", 0.4, 1),
  },
  source: "identity",
  code: (x) => (x.h2s - x.h1) / x.e,
});

export const dischargeEnthalpy = equation({
  name: "Discharge enthalpy",
  form: "h2 = h1 + w",
  kind: "enthalpy",
  symbols: { h1, w: symbol("enthalpy", "compressor work", 2e4, 1e5) },
  source: "identity",
  code: (x) => x.h1 + x.w,
});

export const coolingOf = equation({
  name: "Cooling",
  form: "q = h1 - h3",
  kind: "enthalpy",
  symbols: { h1, h3 },
  source: "identity",
  code: (x) => x.h1 - x.h3,
});

export const rejectedOf = equation({
  name: "Heat rejected",
  form: "qc = h2 - h3",
  kind: "enthalpy",
  symbols: { h2, h3 },
  source: "identity",
  code: (x) => x.h2 - x.h3,
});

const q = symbol("enthalpy", "cooling", 1e5, 2.5e5);
const qc = symbol("enthalpy", "heat rejected", 1.5e5, 3e5);

export const copOf = equation({
  name: "COP of the compressor",
  form: "COP = q / w",
  kind: "COP",
  symbols: { q, w: symbol("enthalpy", "compressor work", 2e4, 1e5) },
  source: "identity",
  code: (x) => x.q / x.w,
});

export const factorOf = equation({
  name: "Heat rejected per cooling",
  form: "F = qc / q",
  kind: "number",
  symbols: { qc, q },
  source: "identity",
  code: (x) => x.qc / x.q,
});

export const massFlowOf = equation({
  name: "Refrigerant mass flow",
  form: "m = Q / q",
  kind: "mass flow",
  symbols: { Q: symbol("heat rate", "cooling", 1e3, 1e6), q },
  source: "identity",
  code: (x) => x.Q / x.q,
});

export const shareOf = equation({
  name: "Share of the heat rejected",
  form: "s = (ha - hb) / qc",
  kind: "fraction",
  symbols: {
    ha: symbol("enthalpy", "enthalpy where the part begins", 4e5, 5e5),
    hb: symbol("enthalpy", "enthalpy where the part ends", 2e5, 4e5),
    qc,
  },
  source: "identity",
  code: (x) => (x.ha - x.hb) / x.qc,
});

export const heatOfFlow = equation({
  name: "Heat or work of the flow",
  form: "Q = m * q",
  kind: "heat rate",
  symbols: {
    m: symbol("mass flow", "refrigerant", 1e-2, 2),
    q: symbol("enthalpy", "by mass of refrigerant", 2e4, 3e5),
  },
  source: "identity",
  code: (x) => x.m * x.q,
});
