/** Equations of moist air. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

export const partialPressure = equation({
  name: "Vapour pressure of moist air",
  form: "pv = phi * ps",
  kind: "pressure",
  symbols: {
    phi: symbol("relative humidity", "relative humidity", 0, 1),
    ps: symbol("pressure", "vapour pressure of saturated air", 3, 26_000),
  },
  source: "ashraePsychrometrics",
  code: ({ phi, ps }) => phi * ps,
});

/** Mass of vapour per mass of dry air. */
export const humidityRatioEquation = equation({
  name: "Humidity ratio",
  form: "W = 0.621945 * pv / (p - pv)",
  kind: "humidity ratio",
  symbols: {
    pv: symbol("pressure", "vapour pressure", 0, 26_000),
    p: symbol("pressure", "pressure of the air", 54_000, 108_000),
  },
  source: "ashraePsychrometrics",
  code: ({ pv, p }) => (0.621945 * pv) / (p - pv),
});
