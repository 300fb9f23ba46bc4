/** Gauge and absolute pressures: the standard atmosphere and the conversion of readings. */
import { either, choice, quantity } from "./argument";
import { equation, symbol } from "./equation";

/** Standard sea-level pressure, Pa. Gauge readings count over it unless an altitude is given. */
export const STANDARD_PRESSURE = 101_325;

/** Pressure of the standard atmosphere in the troposphere, to 11 km. */
export const standardAtmosphere = equation({
  name: "Pressure of the standard atmosphere",
  form: "p = p0 * (1 - 2.25577e-5 * z)^5.25588",
  kind: "pressure",
  symbols: { z: symbol("altitude", "altitude above sea level", -300, 5000) },
  constants: { p0: STANDARD_PRESSURE },
  validity: "-5,000 to 11,000 m",
  source: "standardAtmosphere1976",
  code: ({ z }) => STANDARD_PRESSURE * (1 - 2.25577e-5 * z) ** 5.25588,
});

/** How a pressure reading counts: "gauge" over 101.325 kPa, "absolute", or gauge over the atmosphere at an altitude. */
export const BASIS = either(
  choice("PressureBasis", ["gauge", "absolute"], "how the pressure counts", {
    abs: "absolute",
    psia: "absolute",
    "bar a": "absolute",
    "kPa a": "absolute",
    psig: "gauge",
    "bar g": "gauge",
    "kPa g": "gauge",
  }),
  quantity("altitude", "altitude above sea level", { from: -500, to: 9000 }),
  "gauge (over 101.325 kPa), absolute, or an altitude with its unit for gauge over the air there",
).default("gauge");

/** What a gauge shows at an absolute pressure. */
export const gaugeReading = equation({
  name: "Gauge reading over the air's pressure",
  form: "pg = p - p0",
  kind: "pressure",
  symbols: {
    p: symbol("pressure", "absolute pressure", 1e5, 5e6),
    p0: symbol("pressure", "pressure of the air that the gauge counts from", 3e4, 110_000),
  },
  source: "identity",
  code: ({ p, p0 }) => p - p0,
});

/** The pressure that a gauge reading counts from, Pa: 0 for absolute readings. */
export const gaugeZero = (basis: unknown): number => {
  if (basis === "absolute") return 0;
  return typeof basis === "number" ? standardAtmosphere.code({ z: basis }) : STANDARD_PRESSURE;
};
