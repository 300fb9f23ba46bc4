/** An exchanger whose water stops while hot gas keeps coming: lumped, at constant heat. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const Q = symbol("heat rate", "heat of the hot gas", 3000, 30000);
const UA = symbol("heat conductance", "conductance between refrigerant and water", 500, 5000);
const temperature = (description: string) => symbol("temperature", description, 290, 345);
const C = symbol("number", "heat that a kelvin takes, J/K", 5000, 60000);

/** Water 8.3171 lb a US gallon at 1 BTU/(lb °F), titanium at 0.125. */
export const stoppedCapacity = equation({
  name: "Heat capacity of the water and metal",
  form: "C = 4186.8 * (996.607 * V + 0.125 * m)",
  kind: "number",
  symbols: { V: symbol("pool volume", "water in the shell", 0.001, 0.02), m: symbol("mass", "titanium", 1, 10) },
  validity: "shell, refrigerant and stubs left out: times are on the short side",
  source: "stopFlowRows",
  code: (x) => 4186.8 * (996.607 * x.V + 0.125 * x.m),
});

export const secondsToReach = equation({
  name: "Time to a temperature",
  form: "t = C * (T - T0) / Q",
  kind: "seconds",
  symbols: { C, T: temperature("temperature to reach"), T0: temperature("at the start"), Q },
  source: "identity",
  code: (x) => (x.C * (x.T - x.T0)) / x.Q,
});

export const waterAtCutOut = equation({
  name: "Water when the cut-out trips",
  form: "T = Tx - Q / UA",
  kind: "temperature",
  symbols: { Tx: temperature("saturation at the cut-out"), Q, UA },
  validity: "condensing rides Q/UA above the water",
  source: "stopFlowRows",
  code: (x) => x.Tx - x.Q / x.UA,
});

/** A first-order sensor on a steady ramp, once it follows. */
export const sensorLag = equation({
  name: "What a sensor reads low on the ramp",
  form: "d = Q / C * tau",
  kind: "temperature difference",
  symbols: { Q, C, tau: symbol("seconds", "time constant of the sensor", 1, 60) },
  source: "identity",
  code: (x) => (x.Q / x.C) * x.tau,
});

/** Conduction alone along a stub: distance at which the wall falls from one temperature to another. */
export const hotStub = equation({
  name: "Length of stub that cools by conduction alone",
  form: "x = log((Th - Ta) / (Tc - Ta)) / sqrt(h / (k * w))",
  kind: "length",
  symbols: {
    Th: symbol("temperature", "hot end", 350, 380),
    Tc: symbol("temperature", "limit of the plastic", 325, 335),
    Ta: symbol("temperature", "air", 290, 315),
    h: symbol("film coefficient", "film outside", 5, 15),
    k: symbol("conductivity", "conductivity of the metal", 15, 400),
    w: symbol("diameter", "wall", 0.001, 0.003),
  },
  validity: "water that rises by itself in an up-leg carries heat further",
  source: "identity",
  code: (x) => Math.log((x.Th - x.Ta) / (x.Tc - x.Ta)) / Math.sqrt(x.h / (x.k * x.w)),
});
