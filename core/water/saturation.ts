/** Water at saturation, from the triple point to the critical point. Strict SI. */
import { equation, symbol } from "../kernel/define/equation";

/** Critical temperature, pressure and density of water. */
const CRITICAL = { T: 647.096, p: 22.064e6, rho: 322 } as const;

const T = symbol("temperature", "temperature at saturation", 273.16, 373.15);

/** Vapour pressure over liquid water, Pa; 273.16 to 647.096 K, within 0.03 %. */
export const vapourPressureOfWater = equation({
  name: "Vapour pressure of water",
  form: "p = pc * exp(Tc/T * (-7.85951783*(1-T/Tc) + 1.84408259*(1-T/Tc)^1.5 - 11.7866497*(1-T/Tc)^3 + 22.6807411*(1-T/Tc)^3.5 - 15.9618719*(1-T/Tc)^4 + 1.80122502*(1-T/Tc)^7.5))",
  kind: "pressure",
  symbols: { T },
  constants: { Tc: CRITICAL.T, pc: CRITICAL.p },
  validity: "273.16 to 647.096 K, over liquid water",
  source: "iapwsSr1",
  code: ({ T: K }) => {
    const theta = 1 - K / CRITICAL.T;
    const root = Math.sqrt(theta);
    const sum =
      theta *
      (-7.85951783 +
        root * 1.84408259 +
        theta * theta * (-11.7866497 + root * 22.6807411 - 15.9618719 * theta) +
        1.80122502 * root * theta ** 6);
    return CRITICAL.p * Math.exp((CRITICAL.T / K) * sum);
  },
});

/** Slope of the vapour pressure over temperature, Pa/K: the derivative of the equation above. */
export const vapourPressureSlope = equation({
  name: "Slope of the vapour pressure",
  form: "dpdT = -p/T * (log(p/pc) - 7.85951783 + 1.5*1.84408259*(1-T/Tc)^0.5 - 3*11.7866497*(1-T/Tc)^2 + 3.5*22.6807411*(1-T/Tc)^2.5 - 4*15.9618719*(1-T/Tc)^3 + 7.5*1.80122502*(1-T/Tc)^6.5)",
  kind: "number",
  symbols: { p: symbol("pressure", "vapour pressure", 600, 102_000), T },
  constants: { Tc: CRITICAL.T, pc: CRITICAL.p },
  validity: "273.16 to 647.096 K",
  source: "iapwsSr1",
  code: ({ p, T: K }) => {
    const theta = 1 - K / CRITICAL.T;
    const root = Math.sqrt(theta);
    const sum =
      -7.85951783 +
      1.5 * 1.84408259 * root +
      theta * theta * (-3 * 11.7866497 + 3.5 * 22.6807411 * root - 4 * 15.9618719 * theta) +
      7.5 * 1.80122502 * root * theta ** 6;
    return (-p / K) * (Math.log(p / CRITICAL.p) + sum);
  },
});

/** Density of liquid water at saturation, kg/m³. */
export const saturatedLiquidDensity = equation({
  name: "Density of saturated liquid water",
  form: "rhoL = rhoc * (1 + 1.99274064*(1-T/Tc)^(1/3) + 1.09965342*(1-T/Tc)^(2/3) - 0.510839303*(1-T/Tc)^(5/3) - 1.75493479*(1-T/Tc)^(16/3) - 45.5170352*(1-T/Tc)^(43/3) - 6.7469445e5*(1-T/Tc)^(110/3))",
  kind: "density",
  symbols: { T },
  constants: { Tc: CRITICAL.T, rhoc: CRITICAL.rho },
  validity: "273.16 to 647.096 K",
  source: "iapwsSr1",
  code: ({ T: K }) => {
    const c = Math.cbrt(1 - K / CRITICAL.T);
    const sum =
      1.99274064 * c +
      1.09965342 * c ** 2 -
      0.510839303 * c ** 5 -
      1.75493479 * c ** 16 -
      45.5170352 * c ** 43 -
      6.7469445e5 * c ** 110;
    return CRITICAL.rho * (1 + sum);
  },
});

/** Density of water vapour at saturation, kg/m³. */
export const saturatedVapourDensity = equation({
  name: "Density of saturated water vapour",
  form: "rhoV = rhoc * exp(-2.0315024*(1-T/Tc)^(1/3) - 2.6830294*(1-T/Tc)^(2/3) - 5.38626492*(1-T/Tc)^(4/3) - 17.2991605*(1-T/Tc)^3 - 44.7586581*(1-T/Tc)^(37/6) - 63.9201063*(1-T/Tc)^(71/6))",
  kind: "density",
  symbols: { T },
  constants: { Tc: CRITICAL.T, rhoc: CRITICAL.rho },
  validity: "273.16 to 647.096 K",
  source: "iapwsSr1",
  code: ({ T: K }) => {
    const theta = 1 - K / CRITICAL.T;
    const c = Math.cbrt(theta);
    const sum =
      -2.0315024 * c -
      2.6830294 * c ** 2 -
      5.38626492 * c ** 4 -
      17.2991605 * theta ** 3 -
      44.7586581 * theta ** (37 / 6) -
      63.9201063 * theta ** (71 / 6);
    return CRITICAL.rho * Math.exp(sum);
  },
});

/** Heat of evaporation by Clausius and Clapeyron, J/kg. */
export const clapeyron = equation({
  name: "Latent heat by Clausius–Clapeyron",
  form: "h = T * dpdT * (1/rhoV - 1/rhoL)",
  kind: "enthalpy",
  symbols: {
    T,
    dpdT: symbol("number", "slope of the vapour pressure, Pa/K", 40, 3700),
    rhoV: symbol("density", "density of the vapour", 0.004, 0.6),
    rhoL: symbol("density", "density of the liquid", 950, 1000),
  },
  source: "identity",
  code: (x) => x.T * x.dpdT * (1 / x.rhoV - 1 / x.rhoL),
});
