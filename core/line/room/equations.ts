/** Charge of a mildly flammable refrigerant in a room. Strict SI; the numbers of the standard carry units. */
import { equation, symbol } from "../../kernel/define/equation";

const LFL = symbol("concentration", "lower flammability limit", 0.25, 0.4);
const h0 = symbol("length", "release height", 0.6, 2.2);
const A = symbol("area", "floor area", 5, 100);
const H = symbol("length", "height of the room that counts", 1.8, 2.5);
const m = symbol("mass", "charge of the whole system", 1, 30);

const UNVENTILATED = { key: "iec60335", where: "GG.2" } as const;

export const roomLimitByArea = equation({
  name: "Charge limit by floor area",
  form: "m = 2.5 * LFL^1.25 * h0 * sqrt(A)",
  kind: "mass",
  symbols: { LFL, h0, A },
  validity: "class 2L refrigerants",
  source: UNVENTILATED,
  code: (x) => 2.5 * x.LFL ** 1.25 * x.h0 * Math.sqrt(x.A),
});

export const roomLimitByVolume = equation({
  name: "Charge limit by three quarters of the flammable volume",
  form: "m = 0.75 * LFL * h0 * A",
  kind: "mass",
  symbols: { LFL, h0, A },
  validity: "class 2L refrigerants",
  source: UNVENTILATED,
  code: (x) => 0.75 * x.LFL * x.h0 * x.A,
});

export const chargeWithoutArea = equation({
  name: "Charge up to which no floor area is required",
  form: "m = 6 * V * LFL",
  kind: "mass",
  symbols: { LFL },
  constants: { V: 1 },
  source: { key: "iec60335", where: "GG.2 (m1 = 6 m³ · LFL)" },
  code: (x) => 6 * x.LFL,
});

export const chargeCeiling = equation({
  name: "Most charge without ventilation",
  form: "m = 52 * V * LFL",
  kind: "mass",
  symbols: { LFL },
  constants: { V: 1 },
  source: { key: "iec60335", where: "GG.2 (m2 = 52 m³ · LFL)" },
  code: (x) => 52 * x.LFL,
});

export const chargeOfScope = equation({
  name: "Most charge that the standard covers",
  form: "m = 260 * V * LFL",
  kind: "mass",
  symbols: { LFL },
  constants: { V: 1 },
  source: { key: "iec60335", where: "GG.2 (m3 = 260 m³ · LFL)" },
  code: (x) => 260 * x.LFL,
});

/** With circulation H is at most 2.2 m; the effective dispersal volume takes the whole ceiling. */
export const halfFlammable = equation({
  name: "Charge limit by half the flammable volume",
  form: "m = 0.5 * LFL * H * A",
  kind: "mass",
  symbols: { LFL, H, A },
  validity: "class 2L; with circulation the area of all rooms that the duct serves",
  source: "manualR454B",
  code: (x) => 0.5 * x.LFL * x.H * x.A,
});

export const leastAreaByFormula = equation({
  name: "Least floor area by the formula",
  form: "A = (m / (2.5 * LFL^1.25 * h0))^2",
  kind: "area",
  symbols: { m, LFL, h0 },
  validity: "class 2L refrigerants",
  source: UNVENTILATED,
  code: (x) => (x.m / (2.5 * x.LFL ** 1.25 * x.h0)) ** 2,
});

export const leastAreaByVolume = equation({
  name: "Least floor area by that volume",
  form: "A = m / (0.75 * LFL * h0)",
  kind: "area",
  symbols: { m, LFL, h0 },
  validity: "class 2L refrigerants",
  source: UNVENTILATED,
  code: (x) => x.m / (0.75 * x.LFL * x.h0),
});

export const leastAreaWithCirculation = equation({
  name: "Least floor area with circulation",
  form: "A = m / (0.5 * LFL * H)",
  kind: "area",
  symbols: { m, LFL, H },
  validity: "class 2L; the area of all rooms that the duct serves",
  source: "manualR454B",
  code: (x) => x.m / (0.5 * x.LFL * x.H),
});

/** A leak of the whole charge in four minutes, diluted to half the flammability limit. */
export const leastCirculation = equation({
  name: "Least circulation",
  form: "Q = 30 * m / LFL / 3600",
  kind: "air flow",
  symbols: { m, LFL },
  validity: "class 2L; 3600 seconds an hour",
  source: "commonPractice",
  code: (x) => (30 * x.m) / x.LFL / 3600,
});

export const concentrationLimit = equation({
  name: "Charge by the refrigerant concentration limit",
  form: "m = RCL * H * A",
  kind: "mass",
  symbols: { RCL: symbol("concentration", "refrigerant concentration limit", 0.04, 0.09), H, A },
  source: "ashrae15Volume",
  code: (x) => x.RCL * x.H * x.A,
});
