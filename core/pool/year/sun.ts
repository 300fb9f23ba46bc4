/** Sun and cloud of the days of a year at a latitude. */
import { sunsetAngle } from "../../air/extraterrestrial";
import { HOUR, HOURS_OF_DAY } from "../../numeric/calendar";
import {
  clearSun,
  clearestDay,
  clearnessExponent,
  cloudOfSun,
  declination,
  heightOfSun,
  hourOfSun,
  sunOutside,
} from "./sunEquations";

/** Hour angle at the middle of an hour of the day, noon at 12. */
const hourAngle = (hour: number): number => ((hour + 0.5 - 12) * Math.PI) / 12;

export interface SunDay {
  /** Outside the air and below a clear sky, J/m². */
  readonly outside: number;
  readonly clear: number;
  /** Shares of the day's sun by hour; they sum to 1. */
  readonly shares: readonly number[];
}

/** The sun of a day (1 to 365) at a latitude in radians. */
export const sunDay = (day: number, lat: number): SunDay => {
  const dec = declination.code({ n: day });
  const ws = sunsetAngle.code({ lat, dec });
  const raw = Array.from({ length: HOURS_OF_DAY }, (_, hour) => {
    const w = hourAngle(hour);
    return Math.abs(w) < ws ? Math.max(0, hourOfSun.code({ ws, w })) : 0;
  });
  const sum = raw.reduce((total, share) => total + share, 0);
  const clear = raw.reduce(
    (total, _, hour) => total + HOUR * clearSun.code({ s: heightOfSun.code({ lat, dec, w: hourAngle(hour) }) }),
    0,
  );
  return { outside: sunOutside.code({ n: day, lat, dec, ws }), clear, shares: raw.map((each) => each / (sum || 1)) };
};

/** Opaque cloud, tenths, of a day whose sun is so much, J/m²; where the sun hardly rises, half the sky. */
export const cloudOfDay = (sun: number, { clear }: SunDay): number =>
  clear > 1e5 ? cloudOfSun.code({ R: sun / clear }) : 5;

/** Opaque cloud by hour from hourly sun: that of the day by day and night. */
export const cloudOfHours = (sun: Float64Array, lat: number): Float64Array => {
  const cloud = new Float64Array(sun.length);
  for (let day = 0; day < sun.length / HOURS_OF_DAY; day++) {
    let sum = 0;
    for (let hour = 0; hour < HOURS_OF_DAY; hour++) sum += HOUR * (sun[HOURS_OF_DAY * day + hour] ?? 0);
    cloud.fill(cloudOfDay(sum, sunDay(day + 1, lat)), HOURS_OF_DAY * day, HOURS_OF_DAY * (day + 1));
  }
  return cloud;
};

/** Clearness of the days of a month at evenly spread shares of its distribution, ascending; their mean is `K`. */
export const clearnessOfDays = (K: number, days: number): readonly number[] => {
  const mean = Math.min(0.75, Math.max(0.15, K));
  const Kx = clearestDay.code({ K: mean });
  const g = clearnessExponent.code({ K: mean, Kx });
  const [low, high] = [Math.exp(g * 0.05), Math.exp(g * Kx)];
  const raw = Array.from({ length: days }, (_, i) => {
    const a = (i + 0.5) / days;
    return Math.abs(g) < 1e-6 ? 0.05 + a * (Kx - 0.05) : Math.log((1 - a) * low + a * high) / g;
  });
  const got = raw.reduce((sum, each) => sum + each, 0) / days;
  return raw.map((each) => (each * K) / got);
};

/** A fixed order of the days of a month: ranks by the fractions of i × step, so that every stretch holds low and high. */
export const orderOf = (days: number, step: number): readonly number[] => {
  const fractions = Array.from({ length: days }, (_, i) => (i * step) % 1);
  const sorted = [...fractions].sort((a, b) => a - b);
  return fractions.map((each) => sorted.indexOf(each));
};
