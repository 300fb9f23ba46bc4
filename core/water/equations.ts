/** Properties of liquid water at atmospheric pressure. Strict SI. */
import { equation, symbol } from "../kernel/equation";

const T = symbol("temperature", "water temperature", 273.16, 373.15);

/** Density of air-free water at 1 atm, kg/m³; 0 to 150 °C. */
export const densityOfWater = equation({
  name: "Density of water",
  form: "rho = (999.83952 + 16.945176*(T-273.15) - 7.9870401e-3*(T-273.15)^2 - 46.170461e-6*(T-273.15)^3 + 105.56302e-9*(T-273.15)^4 - 280.54253e-12*(T-273.15)^5) / (1 + 16.87985e-3*(T-273.15))",
  gives: "density",
  takes: { T },
  valid: "0 to 150 °C at 1 atm",
  source: "kell1975",
  code: ({ T: K }) => {
    const t = K - 273.15;
    const over =
      999.83952 +
      t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return over / (1 + 16.87985e-3 * t);
  },
});

/** Dynamic viscosity of water at 0.1 MPa, Pa·s; −20 to 110 °C, within 1 %. */
export const viscosityOfWater = equation({
  name: "Viscosity of water",
  form: "mu = 1e-6 * (280.68*(T/300)^-1.9 + 511.45*(T/300)^-7.7 + 61.131*(T/300)^-19.6 + 0.45903*(T/300)^-40)",
  gives: "viscosity",
  takes: { T },
  valid: "253 to 383 K at 0.1 MPa",
  source: "iapwsSr6",
  code: ({ T: K }) => {
    const t = K / 300;
    return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
  },
});
