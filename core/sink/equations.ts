/** Equations of hot water, space heat and refrigeration racks. Strict SI. */
import { equation, relation, symbol } from "../kernel/define/equation";

/** Hot water as in the published method: 8.2938 lb/gal and 1.000743 BTU/(lb·°F), in J/(m³·K). */
export const HOT_WATER = (8.2938 * 0.45359237 * 1.000743 * 4186.8) / 0.003785411784;

const heat = symbol("heat rate", "heat", 1000, 200_000);
const Ts = symbol("temperature", "water supplied", 305, 325);
const Tr = symbol("temperature", "room", 288, 298);

export const hotWaterHeat = equation({
  name: "Heat in hot water",
  form: "E = c * V * (Th - Tc)",
  kind: "heat",
  symbols: {
    V: symbol("daily draw", "hot water drawn in a day", 0.05, 20),
    Th: symbol("temperature", "warmed to", 300, 340),
    Tc: symbol("temperature", "cold water", 275, 299),
  },
  constants: { c: HOT_WATER },
  source: "lblHotWater",
  code: (x) => HOT_WATER * x.V * (x.Th - x.Tc),
});

export const tankSurface = equation({
  name: "Surface of an upright tank",
  form: "A = pi * (k + 0.5) * (4 * V / (pi * k)) ^ (2 / 3)",
  kind: "area",
  symbols: {
    V: symbol("daily draw", "volume", 0.05, 20),
    k: symbol("number", "height in diameters", 1, 3),
  },
  source: "identity",
  code: (x) => Math.PI * (x.k + 0.5) * ((4 * x.V) / (Math.PI * x.k)) ** (2 / 3),
});

/** Least insulation required of storage tanks, R-12.5, m²·K/W. */
export const TANK_RESISTANCE = 12.5 * 0.17611;

export const capacityRate = equation({
  name: "Capacity rate",
  form: "C = rho * cp * V",
  kind: "heat conductance",
  symbols: {
    rho: symbol("density", "density", 1, 1000),
    cp: symbol("heat capacity", "heat capacity", 1000, 4200),
    V: symbol("water flow", "flow", 1e-4, 1),
  },
  source: "identity",
  code: (x) => x.rho * x.cp * x.V,
});

export const coilCapacity = equation({
  name: "Heat of an air coil",
  form: "Q = e * C * (Ts - Tr)",
  kind: "heat rate",
  symbols: {
    e: symbol("fraction", "effectiveness", 0.3, 0.9),
    C: symbol("heat conductance", "lesser of the two streams", 100, 20_000),
    Ts,
    Tr,
  },
  source: "bergman2011",
  code: (x) => x.e * x.C * (x.Ts - x.Tr),
});

export const streamAfter = equation({
  name: "Temperature of a stream after the coil or floor",
  form: "T2 = T1 + s * Q / C",
  kind: "temperature",
  symbols: {
    T1: symbol("temperature", "before", 288, 325),
    s: symbol("number", "1 where it is warmed, -1 where it is cooled", -1, 1),
    Q: heat,
    C: symbol("heat conductance", "capacity rate", 2000, 40_000),
  },
  source: "identity",
  code: (x) => x.T1 + (x.s * x.Q) / x.C,
});

export const floorHeat = equation({
  name: "Heat from a warm floor",
  form: "Q = 8.92 * A * (Tf - Tr)^1.1",
  kind: "heat rate",
  symbols: {
    A: symbol("area", "heated floor", 5, 500),
    Tf: symbol("temperature", "floor surface", 299, 306),
    Tr: symbol("temperature", "room", 288, 298),
  },
  source: "en1264",
  code: (x) => 8.92 * x.A * (x.Tf - x.Tr) ** 1.1,
});

export const floorBalance = relation({
  name: "Floor surface",
  form: "8.92 * (Tf - Tr)^1.1 * R = Ts - 8.92 * A * (Tf - Tr)^1.1 / (2 * C) - Tf",
  symbols: {
    Tf: symbol("temperature", "floor surface", 299, 306),
    Tr: symbol("temperature", "room", 288, 298),
    R: symbol("fouling resistance", "from the mean water to the floor surface", 0.05, 0.3),
    Ts,
    A: symbol("area", "heated floor", 5, 100),
    C: symbol("heat conductance", "capacity rate", 2000, 40_000),
  },
  source: "en1264",
  left: (x) => 8.92 * (x.Tf - x.Tr) ** 1.1 * x.R,
  right: (x) => x.Ts - (8.92 * x.A * (x.Tf - x.Tr) ** 1.1) / (2 * x.C) - x.Tf,
});

const load = symbol("heat rate", "refrigeration", 1000, 500_000);
const factor = symbol("number", "heat rejected per refrigeration", 1.05, 1.7);

export const heatRejected = equation({
  name: "Heat rejected",
  form: "Q = qm * fm + ql * fl",
  kind: "heat rate",
  symbols: { qm: load, fm: factor, ql: load, fl: factor },
  source: "heatRejectionFactors",
  code: (x) => x.qm * x.fm + x.ql * x.fl,
});

export const compressorHeat = equation({
  name: "Compressor power that becomes heat",
  form: "P = qm * (fm - 1) + ql * (fl - 1)",
  kind: "electric power",
  symbols: { qm: load, fm: factor, ql: load, fl: factor },
  validity: "suction-cooled: motor input; open: shaft power",
  source: "identity",
  code: (x) => x.qm * (x.fm - 1) + x.ql * (x.fl - 1),
});

export const shareOfHeat = equation({
  name: "Share of the heat",
  form: "Qs = s * Q",
  kind: "heat rate",
  symbols: { s: symbol("fraction", "share", 0, 1), Q: heat },
  source: "identity",
  code: (x) => x.s * x.Q,
});

export const penaltyByRule = equation({
  name: "More power for a higher condensing temperature, by rule",
  form: "dP = P * r * dT / 0.5555555555555556",
  kind: "electric power",
  symbols: {
    P: symbol("electric power", "compressor power", 500, 200_000),
    r: symbol("fraction", "share per °F", 0.005, 0.02),
    dT: symbol("temperature difference", "increase of the condensing temperature", 0, 20),
  },
  validity: "disputed: 0.5 to 2 % per °F",
  source: "ornlReclaim2011",
  code: (x) => (x.P * x.r * x.dT) / 0.5555555555555556,
});
