/** Size, heat and turnover of a pool, and the handbook's surface rule. Strict SI. */
import { equation, symbol } from "../kernel/equation";

const L = symbol("length", "length", 0.5, 100);
const W = symbol("length", "width", 0.5, 50);
const A = symbol("area", "water surface", 1, 5000);
const V = symbol("pool volume", "volume of water", 0.5, 5000);
const U = symbol("film coefficient", "surface coefficient", 1, 300);
const Ta = symbol("temperature", "air temperature", 250, 315);
const q = symbol("heat rate", "heat into the water", 10, 1e6);

export const rectangleArea = equation({
  name: "Area of a rectangle",
  form: "A = L * W",
  gives: "area",
  takes: { L, W },
  source: "identity",
  code: (x) => x.L * x.W,
});

export const ovalArea = equation({
  name: "Area of an ellipse",
  form: "A = pi / 4 * L * W",
  gives: "area",
  takes: { L, W },
  source: "identity",
  code: (x) => (Math.PI / 4) * x.L * x.W,
});

export const kidneyArea = equation({
  name: "Area of a kidney",
  form: "A = 0.45 * (W1 + W2) * L",
  gives: "area",
  takes: { W1: W, W2: symbol("length", "second width", 0.5, 50), L },
  source: "poolTextbook",
  code: (x) => 0.45 * (x.W1 + x.W2) * x.L,
});

export const volumeOfPool = equation({
  name: "Volume by mean depth",
  form: "V = A * (d1 + d2) / 2",
  gives: "pool volume",
  takes: { A, d1: symbol("depth", "shallow end", 0.1, 5), d2: symbol("depth", "deep end", 0.1, 6) },
  source: "identity",
  code: (x) => (x.A * (x.d1 + x.d2)) / 2,
});

/** The trade's 8.33 lb/gal, kg/m³. */
export const POOL_DENSITY = (8.33 * 0.45359237) / 0.003785411784;

/** 1 BTU/(lb·°F), J/(kg·K). */
export const POOL_SPECIFIC_HEAT = 4186.8;

/** Heat capacity of a cubic metre of pool water, J/(m³·K): 8.33 lb/gal × 1 BTU/(lb·°F); 0.3 % above that at 80 °F. */
export const POOL_HEAT_CAPACITY = POOL_DENSITY * POOL_SPECIFIC_HEAT;

/** Freezing point of water, K. */
export const FREEZING = 273.15;

export const heatToRaise = equation({
  name: "Heat to raise the water",
  form: "Q = 8.33 * 0.45359237 / 0.003785411784 * 4186.8 * V * dT",
  gives: "heat",
  takes: { V, dT: symbol("temperature difference", "rise", 0.1, 50) },
  source: "poolTextbook",
  code: (x) => POOL_HEAT_CAPACITY * x.V * x.dT,
});

export const surfaceRule = equation({
  name: "Surface rule",
  form: "q = U * A * (Tw - Ta)",
  gives: "heat rate",
  takes: { U, A, Tw: symbol("temperature", "water temperature", 274, 320), Ta },
  valid: "10.5 BTU/(h·ft²·°F): wind of 3 to 5 mph; holds evaporation, convection and radiation together",
  source: "ashraePools1999",
  code: (x) => x.U * x.A * (x.Tw - x.Ta),
});

export const settlingTemperature = equation({
  name: "Temperature at which the pool settles",
  form: "T = Ta + q / (U * A)",
  gives: "temperature",
  takes: { Ta, q, U, A },
  source: { key: "ashraePools1999", where: "surface rule set equal to the heat" },
  code: (x) => x.Ta + x.q / (x.U * x.A),
});

export const timeWithoutLoss = equation({
  name: "Time to warm up",
  form: "t = Q / q",
  gives: "time",
  takes: { Q: symbol("heat", "heat to raise the water", 1e5, 1e12), q },
  source: "ashraePools1999",
  code: (x) => x.Q / x.q,
});

export const timeWithLoss = equation({
  name: "Time to warm up against the surface rule",
  form: "t = C / (U * A) * log((Ts - T1) / (Ts - T2))",
  gives: "time",
  takes: {
    C: symbol("number", "heat capacity of the pool, J/K", 1e6, 1e10),
    U,
    A,
    Ts: symbol("temperature", "temperature at which it settles", 330, 500),
    T1: symbol("temperature", "start", 274, 300),
    T2: symbol("temperature", "end", 301, 320),
  },
  source: "identity",
  code: (x) => (x.C / (x.U * x.A)) * Math.log((x.Ts - x.T1) / (x.Ts - x.T2)),
});

export const turnoverTime = equation({
  name: "Turnover",
  form: "t = V / Q",
  gives: "time",
  takes: { V, Q: symbol("water flow", "water flow", 1e-4, 0.2) },
  source: "identity",
  code: (x) => x.V / x.Q,
});

export const windAtWaterOf = equation({
  name: "Wind at the water",
  form: "v = s * v10",
  gives: "wind speed",
  takes: { s: symbol("fraction", "share", 0, 1), v10: symbol("wind speed", "wind at 10 m", 0, 30) },
  source: "isoTr12596",
  code: (x) => x.s * x.v10,
});
