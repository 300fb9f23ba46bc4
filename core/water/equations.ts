/** Properties of liquid water at atmospheric pressure. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

const T = symbol("temperature", "water temperature", 273.16, 373.15);

/** Density of air-free water at 1 atm, kg/m³; 0 to 150 °C. */
export const densityOfWater = equation({
  name: "Density of water",
  form: "rho = (999.83952 + 16.945176*(T-273.15) - 7.9870401e-3*(T-273.15)^2 - 46.170461e-6*(T-273.15)^3 + 105.56302e-9*(T-273.15)^4 - 280.54253e-12*(T-273.15)^5) / (1 + 16.87985e-3*(T-273.15))",
  kind: "density",
  symbols: { T },
  validity: "0 to 150 °C at 1 atm",
  source: "kell1975",
  code: ({ T: K }) => {
    const t = K - 273.15;
    const over =
      999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
    return over / (1 + 16.87985e-3 * t);
  },
});

/** Dynamic viscosity of water at 0.1 MPa, Pa·s; −20 to 110 °C, within 1 %. */
export const viscosityOfWater = equation({
  name: "Viscosity of water",
  form: "mu = 1e-6 * (280.68*(T/300)^-1.9 + 511.45*(T/300)^-7.7 + 61.131*(T/300)^-19.6 + 0.45903*(T/300)^-40)",
  kind: "viscosity",
  symbols: { T },
  validity: "253 to 383 K at 0.1 MPa",
  source: "iapwsSr6",
  code: ({ T: K }) => {
    const t = K / 300;
    return 1e-6 * (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40);
  },
});

/** Specific gas constant of water in the IAPWS formulations, J/(kg·K). */
const GAS_CONSTANT = 461.51805;

/** Isobaric heat capacity of water at 0.1 MPa, J/(kg·K); −20 to 110 °C, within 0.1 %. */
export const heatCapacityOfWater = equation({
  name: "Heat capacity of water",
  form: "cp = -R * (-8.983025854 + T/10 * (20 * -1.661470539e5 * (10/(593-T))^6 + 30 * 2.708781640e6 * (10/(593-T))^7 + 56 * -1.557191544e8 * (10/(593-T))^9 + 6 * -0.8237426256 * (10/(T-232))^4 + 12 * 1.908956353 * (10/(T-232))^5 + 20 * -2.017597384 * (10/(T-232))^6 + 30 * 0.8546361348 * (10/(T-232))^7))",
  kind: "heat capacity",
  symbols: { T },
  constants: { R: GAS_CONSTANT },
  validity: "253 to 383 K at 0.1 MPa",
  source: "iapwsSr6",
  code: ({ T: K }) => {
    const a = 10 / (593 - K);
    const b = 10 / (K - 232);
    const fromAbove = a ** 6 * (20 * -1.661470539e5 + a * (30 * 2.70878164e6 + a * a * 56 * -1.557191544e8));
    const fromBelow =
      b ** 4 * (6 * -0.8237426256 + b * (12 * 1.908956353 + b * (20 * -2.017597384 + b * 30 * 0.8546361348)));
    return -GAS_CONSTANT * (-8.983025854 + (K / 10) * (fromAbove + fromBelow));
  },
});

/** Thermal conductivity of water at 0.1 MPa, W/(m·K); 0 to 110 °C, within 1.5 %. */
export const conductivityOfWater = equation({
  name: "Thermal conductivity of water",
  form: "k = 1.6630*(T/300)^-1.15 - 1.7781*(T/300)^-3.4 + 1.1567*(T/300)^-6 - 0.432115*(T/300)^-7.6",
  kind: "conductivity",
  symbols: { T },
  validity: "273 to 383 K at 0.1 MPa",
  source: "iapwsSr6",
  code: ({ T: K }) => {
    const t = K / 300;
    return 1.663 * t ** -1.15 - 1.7781 * t ** -3.4 + 1.1567 * t ** -6 - 0.432115 * t ** -7.6;
  },
});
