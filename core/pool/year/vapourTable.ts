/**
 * Vapour pressure over liquid water and its slope, from a table of the equation of state: an hourly year asks for them some
 * 100,000 times. Below 0 °C the equation is carried on: dew points of weather stations count over liquid water.
 */
import { vapourPressureOfWater, vapourPressureSlope } from "../../water/saturation";

const COLDEST = 193.15;
const WARMEST = 343.15;
const STEP = 0.25;
const POINTS = Math.round((WARMEST - COLDEST) / STEP) + 1;

const VALUES = Float64Array.from({ length: POINTS }, (_, i) => vapourPressureOfWater.code({ T: COLDEST + i * STEP }));
const SLOPES = VALUES.map((p, i) => vapourPressureSlope.code({ p, T: COLDEST + i * STEP }));

const placeOf = (T: number): number => Math.min(POINTS - 2, Math.max(0, Math.floor((T - COLDEST) / STEP)));

/** Vapour pressure, Pa, at 193 to 343 K: cubic between the points, within 1e-6 of the equation of state. */
export const vapourPressureAt = (T: number): number => {
  const i = placeOf(T);
  const t = (T - COLDEST) / STEP - i;
  const s = 1 - t;
  const left = (1 + 2 * t) * (VALUES[i] ?? 0) + t * STEP * (SLOPES[i] ?? 0);
  const right = (1 + 2 * s) * (VALUES[i + 1] ?? 0) - s * STEP * (SLOPES[i + 1] ?? 0);
  return s * s * left + t * t * right;
};

/** Slope of the vapour pressure, Pa/K: a straight line between the points, within 1.5e-4. */
export function vapourSlopeAt(T: number): number {
  const i = placeOf(T);
  const t = (T - COLDEST) / STEP - i;
  return (1 - t) * (SLOPES[i] ?? 0) + t * (SLOPES[i + 1] ?? 0);
}

/** Dew point, K, over liquid water, of a vapour pressure in Pa. */
export const dewPointOver = (p: number): number => {
  let low = 0;
  let high = POINTS - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((VALUES[middle] ?? 0) <= p) low = middle;
    else high = middle;
  }
  const [p0, p1] = [VALUES[low] ?? 1, VALUES[high] ?? 1];
  // ln p over 1/T is all but straight within a step.
  const [x0, x1] = [1 / (COLDEST + low * STEP), 1 / (COLDEST + high * STEP)];
  return 1 / (x0 + ((x1 - x0) * Math.log(p / p0)) / Math.log(p1 / p0));
};
