/** Equations of the air conditioner. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const Q = symbol("heat rate", "net cooling", 1000, 700_000);
const P = symbol("electric power", "power of the whole machine", 300, 250_000);
const Pf = symbol("electric power", "power of the outdoor fan", 0, 10_000);

/** Energy balance: the condenser rejects the room's heat and the machine's power. */
export const rejectedHeat = equation({
  name: "Heat rejected at the condenser",
  form: "Qr = Q + P - Pf",
  kind: "heat rate",
  symbols: { Q, P, Pf },
  source: "identity",
  code: (x) => x.Q + x.P - x.Pf,
});

export const powerByRating = equation({
  name: "Power by the rating",
  form: "P = Q / rating",
  kind: "electric power",
  symbols: { Q, rating: symbol("cooling rating", "cooling over power, W/W", 1, 8) },
  source: "identity",
  code: (x) => x.Q / x.rating,
});

export const coefficientOfPerformance = equation({
  name: "Coefficient of performance",
  form: "COP = Q / P",
  kind: "COP",
  symbols: { Q, P },
  source: "identity",
  code: (x) => x.Q / x.P,
});

export const scaledCooling = equation({
  name: "Cooling at the outdoor temperature",
  form: "Q = Q0 * r / r0",
  kind: "heat rate",
  symbols: {
    Q0: symbol("heat rate", "rated cooling", 1000, 700_000),
    r: symbol("number", "capacity curve here", 0.7, 1.3),
    r0: symbol("number", "capacity curve at the rating condition", 0.9, 1.1),
  },
  source: "cutler2013",
  code: (x) => (x.Q0 * x.r) / x.r0,
});

export const scaledPower = equation({
  name: "Power at the outdoor temperature",
  form: "P = P0 * (r / r0) * (e / e0)",
  kind: "electric power",
  symbols: {
    P0: symbol("electric power", "rated power", 300, 250_000),
    r: symbol("number", "capacity curve here", 0.7, 1.3),
    r0: symbol("number", "capacity curve at the rating condition", 0.9, 1.1),
    e: symbol("number", "input curve here", 0.5, 1.6),
    e0: symbol("number", "input curve at the rating condition", 0.9, 1.1),
  },
  source: "cutler2013",
  code: (x) => x.P0 * (x.r / x.r0) * (x.e / x.e0),
});

const wetBulb = symbol("temperature", "wet bulb of the air that enters the indoor coil", 287, 297);
const outdoor = symbol("temperature", "outdoor air temperature", 291, 319);

/** Cooling over rated cooling; the coefficients are for °F. */
export const capacityCurve = equation({
  name: "Capacity curve of a single-speed air conditioner",
  form: "r = 3.670270705 - 0.098652414*(1.8*Twb-459.67) + 0.000955906*(1.8*Twb-459.67)^2 + 0.006552414*(1.8*To-459.67) - 0.0000156*(1.8*To-459.67)^2 - 0.000131877*(1.8*Twb-459.67)*(1.8*To-459.67)",
  kind: "number",
  symbols: { Twb: wetBulb, To: outdoor },
  validity: "outdoors 65 to 115 °F",
  source: "cutler2013",
  code: ({ Twb, To }) => {
    const w = 1.8 * Twb - 459.67;
    const o = 1.8 * To - 459.67;
    return (
      3.670270705 - 0.098652414 * w + 0.000955906 * w * w + 0.006552414 * o - 0.0000156 * o * o - 0.000131877 * w * o
    );
  },
});

/** Power per unit of cooling over its rated value; the coefficients are for °F. */
export const inputCurve = equation({
  name: "Energy input curve of a single-speed air conditioner",
  form: "e = -3.302695861 + 0.137871531*(1.8*Twb-459.67) - 0.001056996*(1.8*Twb-459.67)^2 - 0.012573945*(1.8*To-459.67) + 0.000214638*(1.8*To-459.67)^2 - 0.000145054*(1.8*Twb-459.67)*(1.8*To-459.67)",
  kind: "number",
  symbols: { Twb: wetBulb, To: outdoor },
  validity: "outdoors 65 to 115 °F",
  source: "cutler2013",
  code: ({ Twb, To }) => {
    const w = 1.8 * Twb - 459.67;
    const o = 1.8 * To - 459.67;
    return (
      -3.302695861 + 0.137871531 * w - 0.001056996 * w * w - 0.012573945 * o + 0.000214638 * o * o - 0.000145054 * w * o
    );
  },
});

const c = (place: number, of: number) => symbol("number", `c${place} of the curve`, -of, of);

/** Cooling, or power per cooling, of a stage over its rated value; the coefficients are for °F. */
export const stageCurve = equation({
  name: "Curve of a stage",
  form: "r = c1 + c2*(1.8*Twb-459.67) + c3*(1.8*Twb-459.67)^2 + c4*(1.8*To-459.67) + c5*(1.8*To-459.67)^2 + c6*(1.8*Twb-459.67)*(1.8*To-459.67)",
  kind: "number",
  symbols: {
    Twb: wetBulb,
    To: outdoor,
    c1: c(1, 4),
    c2: c(2, 0.2),
    c3: c(3, 1e-3),
    c4: c(4, 0.02),
    c5: c(5, 3e-4),
    c6: c(6, 3e-4),
  },
  validity: "outdoors 65 to 115 °F",
  source: "cutler2013",
  code: ({ Twb, To, c1, c2, c3, c4, c5, c6 }) => {
    const w = 1.8 * Twb - 459.67;
    const o = 1.8 * To - 459.67;
    return c1 + c2 * w + c3 * w * w + c4 * o + c5 * o * o + c6 * w * o;
  },
});
