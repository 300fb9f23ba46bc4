/** Equations of a compressor's map: the polynomial in the map's own units, the corrections strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const C = (place: number, of: number) => symbol("number", `C${place} of the map`, -of, of);

export const mapPolynomial = equation({
  name: "Ten-coefficient polynomial of a compressor",
  form: "X = C1 + C2*S + C3*D + C4*S^2 + C5*S*D + C6*D^2 + C7*S^3 + C8*D*S^2 + C9*S*D^2 + C10*D^3",
  kind: "number",
  symbols: {
    S: symbol("number", "suction dew temperature, °F or °C", 30, 55),
    D: symbol("number", "discharge dew temperature, °F or °C", 80, 140),
    C1: C(1, 600),
    C2: C(2, 20),
    C3: C(3, 50),
    C4: C(4, 0.3),
    C5: C(5, 0.5),
    C6: C(6, 0.5),
    C7: C(7, 1e-3),
    C8: C(8, 3e-3),
    C9: C(9, 4e-3),
    C10: C(10, 3e-3),
  },
  validity: "inside the maker's envelope",
  source: "ahri540",
  code: ({ S, D, C1, C2, C3, C4, C5, C6, C7, C8, C9, C10 }) =>
    C1 +
    C2 * S +
    C3 * D +
    C4 * S * S +
    C5 * S * D +
    C6 * D * D +
    C7 * S ** 3 +
    C8 * D * S * S +
    C9 * S * D * D +
    C10 * D ** 3,
});

const m0 = symbol("mass flow", "flow by the map", 0.01, 1);
const rho0 = symbol("density", "suction gas at the map's superheat", 5, 50);

export const flowAtSuperheat = equation({
  name: "Flow away from the map's superheat",
  form: "m = m0 * (1 + 0.75 * (rho / rho0 - 1))",
  kind: "mass flow",
  symbols: { m0, rho: symbol("density", "suction gas", 5, 50), rho0 },
  validity: "hermetic compressors: the gas is warmed before it is compressed",
  source: "dabiriRice1981",
  code: (x) => x.m0 * (1 + 0.75 * (x.rho / x.rho0 - 1)),
});

export const powerAtSuperheat = equation({
  name: "Power away from the map's superheat",
  form: "P = P0 * (m / m0) * (w / w0)",
  kind: "electric power",
  symbols: {
    P0: symbol("electric power", "power by the map", 500, 50_000),
    m: symbol("mass flow", "flow", 0.01, 1),
    m0,
    w: symbol("enthalpy", "isentropic rise", 1e4, 6e4),
    w0: symbol("enthalpy", "isentropic rise at the map's superheat", 1e4, 6e4),
  },
  source: "dabiriRice1981",
  code: (x) => x.P0 * (x.m / x.m0) * (x.w / x.w0),
});

export const efficiencyOfMap = equation({
  name: "Isentropic efficiency that the map means",
  form: "e = m * w / P",
  kind: "fraction",
  symbols: {
    m: symbol("mass flow", "flow", 0.01, 1),
    w: symbol("enthalpy", "isentropic rise", 1e4, 6e4),
    P: symbol("electric power", "power", 500, 50_000),
  },
  source: "identity",
  code: (x) => (x.m * x.w) / x.P,
});
