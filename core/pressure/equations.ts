/** Pressures that hold. Strict SI; pressures are differences over the air unless they say absolute. */
import { equation, symbol } from "../kernel/define/equation";
import { us } from "../kernel/values/quantity";

const S = symbol("pressure drop", "allowable stress", 2e7, 1e8);
const E = symbol("fraction", "joint efficiency", 0.6, 1);
const t = symbol("diameter", "least wall", 5e-4, 2e-3);
const D = symbol("diameter", "greatest outside diameter", 6e-3, 0.06);
const Y = 0.4;

export const tubeRating = equation({
  name: "Rated pressure of the tube",
  form: "P = 2 * S * E * t / (D - 2 * y * t)",
  kind: "pressure drop",
  symbols: { S, E, t, D },
  constants: { y: Y },
  validity: "ductile metals below 900 °F, pressure inside, no allowance for corrosion, threads or bends",
  source: "pipingCode",
  code: (x) => (2 * x.S * x.E * x.t) / (x.D - 2 * Y * x.t),
});

export const tubeWall = equation({
  name: "Least wall of the tube",
  form: "t = P * D / (2 * (S * E + P * y))",
  kind: "diameter",
  symbols: { P: symbol("pressure drop", "pressure", 1e6, 6e6), D, S, E },
  constants: { y: Y },
  validity: "ductile metals below 900 °F, pressure inside, no allowance for corrosion, threads or bends",
  source: "pipingCode",
  code: (x) => (x.P * x.D) / (2 * (x.S * x.E + x.P * Y)),
});

const THIRTY = us("temperature difference", 30);
const FIFTEEN = us("temperature difference", 15);

export const airCooledDesign = equation({
  name: "Design temperature of an air-cooled high side",
  form: "T = max(Ta + d, T0)",
  kind: "temperature",
  symbols: { Ta: symbol("temperature", "summer dry bulb", 290, 330) },
  constants: { d: THIRTY, T0: us("temperature", 122) },
  source: "ashrae15Pressure",
  code: (x) => Math.max(x.Ta + THIRTY, us("temperature", 122)),
});

export const waterCooledDesign = equation({
  name: "Design temperature of a water-cooled high side",
  form: "T = max(Tw + d, T0)",
  kind: "temperature",
  symbols: { Tw: symbol("temperature", "leaving water", 290, 330) },
  constants: { d: FIFTEEN, T0: us("temperature", 104) },
  source: "ashrae15Pressure",
  code: (x) => Math.max(x.Tw + FIFTEEN, us("temperature", 104)),
});

export const waterCooledDesignEN = equation({
  name: "Design temperature of a water-cooled high side",
  form: "T = Tw + 8",
  kind: "temperature",
  symbols: { Tw: symbol("temperature", "leaving water", 290, 330) },
  source: "en378Pressure",
  code: (x) => x.Tw + 8,
});

/** lb/min over ft², in kg/s over m². */
const POUND_A_MINUTE = us("mass flow", 60) / us("area", 1);

export const reliefCapacity = equation({
  name: "Least relief capacity, as air",
  form: "C = k * f * n * D * L",
  kind: "relief flow",
  symbols: {
    f: symbol("number", "relief factor of the refrigerant", 0.5, 3),
    n: symbol("number", "2.5 with combustibles near, else 1", 1, 2.5),
    D: symbol("length", "outside diameter of the vessel", 0.05, 2),
    L: symbol("length", "length of the vessel", 0.1, 5),
  },
  constants: { k: POUND_A_MINUTE },
  source: "reliefTable",
  code: (x) => POUND_A_MINUTE * x.f * x.n * x.D * x.L,
});

export const strengthTest = equation({
  name: "Strength test with gas",
  form: "p = 1.1 * P",
  kind: "pressure drop",
  symbols: { P: symbol("pressure drop", "design pressure", 1e6, 6e6) },
  source: "testLimits",
  code: (x) => 1.1 * x.P,
});
