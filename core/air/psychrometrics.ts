/**
 * Moist air, by PsychroLib. Only this module knows the package: its unit system is one setting for the whole package, fixed
 * to SI here once, and its numbers are °C. Below 0.01 °C saturation is over ice.
 */
import psychrolib from "psychrolib";

psychrolib.SetUnitSystem(psychrolib.SI);

const ZERO = 273.15;

/** The coldest dew point that the saturation equations reach, K. */
const COLDEST = ZERO - 100;

/** Vapour pressure of saturated air, Pa, at a temperature in K; 173.15 to 473.15 K. */
export const saturationPressure = (T: number): number => psychrolib.GetSatVapPres(T - ZERO);

/** The lowest vapour pressure, Pa, that has a dew point in the range of the equations. */
export const DRIEST = saturationPressure(COLDEST + 1e-9);

/** Dew point, K, below 0.01 °C the frost point, of air at T (K) that holds a vapour pressure (Pa) of DRIEST or more. */
export const dewPointAt = (T: number, vapourPressure: number): number =>
  psychrolib.GetTDewPointFromVapPres(T - ZERO, vapourPressure) + ZERO;

/** Thermodynamic wet bulb, K, within 0.001 K, of air at T (K), humidity ratio and pressure (Pa). */
export const wetBulbAt = (T: number, humidityRatio: number, pressure: number): number =>
  psychrolib.GetTWetBulbFromHumRatio(T - ZERO, humidityRatio, pressure) + ZERO;
