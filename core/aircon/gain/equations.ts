/** Equations of a cooler condenser. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

/** Constant evaporating temperature, superheat and swept volume keep the suction gas, and so the mass flow, the same. */
export const relativeChange = equation({
  name: "Relative change",
  form: "c = b / a - 1",
  kind: "fraction",
  symbols: {
    a: symbol("enthalpy", "condensing outdoors", 2e4, 3e5),
    b: symbol("enthalpy", "condensing on the pool", 2e4, 3e5),
  },
  source: "identity",
  code: (x) => x.b / x.a - 1,
});

export const changeOfCop = equation({
  name: "Relative change of COP",
  form: "c = (1 + cq) / (1 + cw) - 1",
  kind: "fraction",
  symbols: {
    cq: symbol("fraction", "relative change of capacity", -0.3, 0.3),
    cw: symbol("fraction", "relative change of power", -0.5, 0.5),
  },
  source: "identity",
  code: (x) => (1 + x.cq) / (1 + x.cw) - 1,
});
