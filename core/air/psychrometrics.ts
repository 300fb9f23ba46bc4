/** Saturation, dew point and wet bulb of moist air (ASHRAE Fundamentals 2017, chapter 1). Below 0.01 °C over ice. */
import { bracketedRoot } from "../numeric/root";

const ZERO = 273.15;
const TRIPLE_POINT = ZERO + 0.01;

/** The coldest dew point that the saturation equations reach, K. */
const COLDEST = ZERO - 100;

/** Natural logarithm of the vapour pressure over ice and over water, equations 5 and 6 (Hyland and Wexler 1983). */
const overIce = (T: number): number =>
  -5.6745359e3 / T +
  6.3925247 +
  T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
  4.1635019 * Math.log(T);

const overWater = (T: number): number =>
  -5.8002206e3 / T + 1.3914993 + T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) + 6.5459673 * Math.log(T);

const logPressure = (T: number): number => (T <= TRIPLE_POINT ? overIce(T) : overWater(T));

/** Vapour pressure of saturated air, Pa, at a temperature in K; 173.15 to 473.15 K. */
export function saturationPressure(T: number): number {
  return Math.exp(logPressure(T));
}

/** The lowest vapour pressure, Pa, that has a dew point in the range of the equations. */
export const DRIEST = saturationPressure(COLDEST + 1e-9);

/** Dew point, K, below 0.01 °C the frost point, of air at T (K) that holds a vapour pressure (Pa) of DRIEST or more. */
export function dewPointAt(T: number, vapourPressure: number): number {
  const wanted = Math.log(vapourPressure);
  if (wanted >= logPressure(T)) return T;
  const root = bracketedRoot((x) => logPressure(x) - wanted, COLDEST, T, { tolerance: 1e-9 });
  return root.found ? root.x : COLDEST;
}

/** Mass of vapour per mass of dry air, from a vapour pressure and a pressure. */
const VAPOUR_TO_AIR = 0.621945;

/** Least humidity ratio: drier air gets the wet bulb of this one. */
const LEAST_RATIO = 1e-7;

/** Humidity ratio by dry and wet bulb, K, and pressure, Pa: equations 33 (water) and 35 (ice), in °C. */
function ratioByWetBulb(dryBulb: number, wetBulb: number, pressure: number): number {
  const [t, tw, pw] = [dryBulb - ZERO, wetBulb - ZERO, saturationPressure(wetBulb)];
  const saturated = (VAPOUR_TO_AIR * pw) / (pressure - pw);
  return tw >= 0
    ? ((2501 - 2.326 * tw) * saturated - 1.006 * (t - tw)) / (2501 + 1.86 * t - 4.186 * tw)
    : ((2830 - 0.24 * tw) * saturated - 1.006 * (t - tw)) / (2830 + 1.86 * t - 2.1 * tw);
}

/** K; bisection, since the ice and water curves differ at 0 °C. */
const CLOSE = 1e-6;

/** Thermodynamic wet bulb, K, of air at T (K), humidity ratio and pressure (Pa). */
export function wetBulbAt(T: number, humidityRatio: number, pressure: number): number {
  const W = Math.max(humidityRatio, LEAST_RATIO);
  let high = T;
  let low = dewPointAt(T, Math.max(DRIEST, (pressure * W) / (VAPOUR_TO_AIR + W)));
  while (high - low > CLOSE) {
    const middle = (low + high) / 2;
    if (ratioByWetBulb(T, middle, pressure) > W) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
