/** Gas through a valve, by the sizing equations of control valves. Strict SI; Kv in m³/h at 1 bar. */
import { equation, relation, symbol } from "../../kernel/define/equation";

const Kv = symbol("gas flow coefficient", "flow coefficient", 0.5, 15);
const P1 = symbol("pressure", "absolute pressure at the inlet", 5e5, 4e6);
const rho = symbol("density", "density at the inlet", 20, 150);
const g = symbol("number", "cp/cv of the ideal gas", 1.05, 1.4);
const xT = symbol("number", "critical pressure ratio of the valve", 0.5, 0.8);
const x = symbol("number", "drop over inlet pressure", 0.001, 0.3);

export const valveFlow = relation({
  name: "Mass flow through the valve",
  form: "W = 3.16 * Kv * (1 - x / (3 * g / 1.4 * xT)) * sqrt(x * P1 / 1000 * rho) / 3600",
  symbols: { W: symbol("mass flow", "mass flow", 0.01, 0.2), Kv, x, g, xT, P1, rho },
  validity: "gas, no fittings around the valve, below choked flow",
  source: "iec60534",
  left: ({ W }) => W,
  right: (v) =>
    (3.16 * v.Kv * (1 - v.x / (((3 * v.g) / 1.4) * v.xT)) * Math.sqrt(((v.x * v.P1) / 1000) * v.rho)) / 3600,
});

export const valveExpansion = equation({
  name: "Expansion factor",
  form: "Y = 1 - x / (3 * g / 1.4 * xT)",
  kind: "number",
  symbols: { x, g, xT },
  source: "iec60534",
  code: (v) => 1 - v.x / (((3 * v.g) / 1.4) * v.xT),
});

/** At x = g/1.4 · xT the expansion factor is 2/3. */
export const valveChoked = equation({
  name: "Choked flow",
  form: "W = 3.16 * Kv * 2 / 3 * sqrt(g / 1.4 * xT * P1 / 1000 * rho) / 3600",
  kind: "mass flow",
  symbols: { Kv, g, xT, P1, rho },
  source: "iec60534",
  code: (v) => (((3.16 * v.Kv * 2) / 3) * Math.sqrt((((v.g / 1.4) * v.xT * v.P1) / 1000) * v.rho)) / 3600,
});

export const valvePressureDrop = equation({
  name: "Pressure drop of the valve",
  form: "dp = x * P1",
  kind: "pressure drop",
  symbols: { x, P1 },
  source: "identity",
  code: (v) => v.x * v.P1,
});
