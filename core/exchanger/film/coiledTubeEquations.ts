/** Flow and heat transfer in a helical coil (Schmidt). d = inside diameter over mean coil diameter. */
import { equation, symbol } from "../../kernel/define/equation";

const d = symbol("fraction", "inside diameter over coil diameter", 0.005, 0.15);
const f = symbol("number", "Darcy friction factor of the straight tube", 0.009, 0.06);
const LAMINAR = symbol("number", "Reynolds number", 200, 6000);

/** Coil flow is fully turbulent from this Reynolds number. */
export const COIL_TURBULENT_LIMIT = 22_000;

export const criticalReynolds = equation({
  name: "Critical Reynolds number in a coil",
  form: "Rc = 2300 * (1 + 8.6 * d^0.45)",
  kind: "number",
  symbols: { d },
  source: "schmidt1967",
  code: (x) => 2300 * (1 + 8.6 * x.d ** 0.45),
});

export const coilLaminarNusselt = equation({
  name: "Laminar Nusselt number in a coil",
  form: "Nu = 3.65 + 0.08 * (1 + 0.8 * d^0.9) * Re^(0.5 + 0.2903 * d^0.194) * Pr^(1/3)",
  kind: "number",
  symbols: { d, Re: LAMINAR, Pr: symbol("number", "Prandtl number", 0.7, 12) },
  validity: "Re from 100 to the critical one",
  source: "schmidt1967",
  code: (x) => 3.65 + 0.08 * (1 + 0.8 * x.d ** 0.9) * x.Re ** (0.5 + 0.2903 * x.d ** 0.194) * Math.cbrt(x.Pr),
});

export const coilTurbulentFactor = equation({
  name: "Gain of heat transfer by the coil, turbulent",
  form: "K = 1 + 3.6 * (1 - d) * d^0.8",
  kind: "number",
  symbols: { d },
  validity: "Re from 22,000",
  source: "schmidt1967",
  code: (x) => 1 + 3.6 * (1 - x.d) * x.d ** 0.8,
});

export const coilLaminarFriction = equation({
  name: "Darcy friction factor in a coil, laminar",
  form: "fc = 64 / Re * (1 + 0.14 * d^0.97 * Re^(1 - 0.644 * d^0.312))",
  kind: "number",
  symbols: { d, Re: LAMINAR },
  validity: "Re below the critical one",
  source: "schmidt1967",
  code: (x) => (64 / x.Re) * (1 + 0.14 * x.d ** 0.97 * x.Re ** (1 - 0.644 * x.d ** 0.312)),
});

export const coilLowFriction = equation({
  name: "Darcy friction factor in a coil, Re below 22,000",
  form: "fc = f * (1 + 28800 / Re * d^0.62)",
  kind: "number",
  symbols: { d, f, Re: symbol("number", "Reynolds number", 3000, COIL_TURBULENT_LIMIT) },
  validity: "Re from the critical one to 22,000",
  source: "schmidt1967",
  code: (x) => x.f * (1 + (28800 / x.Re) * x.d ** 0.62),
});

export const coilHighFriction = equation({
  name: "Darcy friction factor in a coil, Re from 22,000",
  form: "fc = f * (1 + 0.0823 * (1 + d) * d^0.53 * Re^0.25)",
  kind: "number",
  symbols: { d, f, Re: symbol("number", "Reynolds number", COIL_TURBULENT_LIMIT, 150_000) },
  validity: "Re 22,000 to 150,000",
  source: "schmidt1967",
  code: (x) => x.f * (1 + 0.0823 * (1 + x.d) * x.d ** 0.53 * x.Re ** 0.25),
});
