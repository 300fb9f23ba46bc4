/** Water vapour over ice. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

/** Triple point of water: K, Pa. */
export const TRIPLE = { T: 273.16, p: 611.657 } as const;

/** Sublimation pressure, Pa; 50 to 273.16 K, within 0.05 % above 190 K. */
export const sublimationPressure = equation({
  name: "Sublimation pressure of ice",
  form: "p = pt * exp(Tt/T * (-21.2144006*(T/Tt)^0.00333333333 + 27.3203819*(T/Tt)^1.20666667 - 6.10598130*(T/Tt)^1.70333333))",
  kind: "pressure",
  symbols: { T: symbol("temperature", "temperature of the ice", 190, 273.16) },
  constants: { Tt: TRIPLE.T, pt: TRIPLE.p },
  validity: "50 to 273.16 K",
  source: "iapwsR14",
  code: ({ T }) => {
    const t = T / TRIPLE.T;
    const sum = -21.2144006 * t ** 0.00333333333 + 27.3203819 * t ** 1.20666667 - 6.1059813 * t ** 1.70333333;
    return TRIPLE.p * Math.exp(sum / t);
  },
});
