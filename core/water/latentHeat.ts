/** Heat of evaporation of water. */
import { silent, type Trace } from "../kernel/define/steps";
import {
  clapeyron,
  saturatedLiquidDensity,
  saturatedVapourDensity,
  vapourPressureOfWater,
  vapourPressureSlope,
} from "./saturation";

/** J/kg at a temperature in K, 273.16 to 647 K; within 0.1 % of IAPWS-95 up to 100 °C. */
export const latentHeatOfWater = (T: number, trace: Trace = silent): number => {
  const p = vapourPressureOfWater.code({ T });
  const dpdT = trace.step(vapourPressureSlope, { p, T });
  const rhoV = trace.step(saturatedVapourDensity, { T });
  const rhoL = trace.step(saturatedLiquidDensity, { T });
  return trace.step(clapeyron, { T, dpdT, rhoV, rhoL });
};
