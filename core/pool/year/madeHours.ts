/** The hours of a year made from twelve rows of monthly means, by published shapes of day and month. */
import { standardDeviation, sumOf } from "../../numeric/series";
import { DAYS, FIRST_DAY, HOUR, HOURS_OF_DAY, HOURS_OF_YEAR, firstHourOf } from "../../numeric/calendar";
import { daySpread } from "../../aircon/climate";
import type { Climate } from "./climate";
import { clearnessOfDays, cloudOfDay, orderOf, sunDay } from "./sun";
import { hourOfWarmth, hourOfWind } from "./sunEquations";
import { dewPointOver, vapourPressureAt } from "./vapourTable";

/** Steps of the days' order: warm and cold spells of six days, clear and dull days in between. */
const SPELL = 0.3719;
const CHANGE = 0.2113;

/** The hours that are made; units as of the weather, but the wind is that at 10 m. */
type Made = Readonly<Record<"air" | "vapour" | "dewPoint" | "wind" | "sun" | "cloud", Float64Array>>;

/** A day by the hour: air less the day's mean, K; wind at 10 m, m/s; shares of the day's sun. */
interface DayShape {
  readonly warmth: readonly number[];
  readonly wind: readonly number[];
  readonly sun: readonly number[];
}

const byHour = (of: (t: number) => number): readonly number[] =>
  Array.from({ length: HOURS_OF_DAY }, (_, hour) => of(hour + 0.5));

/** Means of one day: air, K; humidity; opaque cloud, tenths; and its sun, J/m². */
interface MadeDay {
  readonly air: number;
  readonly humidity: number;
  readonly cloud: number;
  readonly sun: number;
}

/** Saturation by the hour of a day, Pa, and the mean of its inverse. */
function saturationOf(air: number, warmth: readonly number[]) {
  let inverse = 0;
  const saturated = new Float64Array(HOURS_OF_DAY);
  for (let hour = 0; hour < HOURS_OF_DAY; hour++) {
    const pressure = vapourPressureAt(air + (warmth[hour] ?? 0));
    saturated[hour] = pressure;
    inverse += 1 / pressure / HOURS_OF_DAY;
  }
  return { saturated, inverse };
}

/** Writes one day into the year from its first hour on; the dew point holds through the day. */
function fillDay(first: number, day: MadeDay, shape: DayShape, to: Made): void {
  const { saturated, inverse } = saturationOf(day.air, shape.warmth);
  // The mean of the day's humidity is this vapour pressure times the mean of 1/ps.
  const vapour = day.humidity / inverse;
  const dewPoint = dewPointOver(vapour);
  for (let hour = 0; hour < HOURS_OF_DAY; hour++) {
    const i = first + hour;
    const most = saturated[hour] ?? 0;
    to.air[i] = day.air + (shape.warmth[hour] ?? 0);
    to.vapour[i] = Math.min(vapour, most);
    to.dewPoint[i] = vapour <= most ? dewPoint : dewPointOver(most);
    to.wind[i] = shape.wind[hour] ?? 0;
    to.sun[i] = (day.sun * (shape.sun[hour] ?? 0)) / HOUR;
    to.cloud[i] = day.cloud;
  }
}

/** Writes one month's days into the year: their means spread about the month's, in a fixed order. */
function fillMonth(month: number, { columns }: Climate, lat: number, sigma: number, to: Made): void {
  const days = DAYS[month] ?? 30;
  const at = (values: Float64Array | undefined): number => values?.[month] ?? 0;
  const mean = at(columns.air);
  const s = daySpread.code({ T: mean, sigma, N: days });
  const middle = sunDay((FIRST_DAY[month] ?? 0) + Math.round(days / 2), lat);
  const K = middle.outside > 1e5 ? at(columns.sun) / middle.outside : 0.5;
  const clearness = clearnessOfDays(K, days);
  const warmth = orderOf(days, SPELL);
  const dullness = orderOf(days, CHANGE);
  const cloud = cloudOfDay(K * middle.outside, middle);
  const shape: DayShape = {
    warmth: byHour((t) => hourOfWarmth.code({ A: at(columns.swing), t })),
    wind: byHour((t) => hourOfWind.code({ m: at(columns.windAt10m), t })),
    sun: middle.shares,
  };
  const airs = warmth.map((rank) => {
    const share = (rank + 0.5) / days;
    return mean + s * Math.log(share / (1 - share));
  });
  // All days share one humidity: the month's own, or that which gives its mean vapour pressure.
  const { vapourPressure } = columns;
  const humidity = vapourPressure
    ? (days * at(vapourPressure)) / sumOf(airs, (air) => 1 / saturationOf(air, shape.warmth).inverse)
    : at(columns.humidity);
  for (const [day, air] of airs.entries()) {
    const sun = (clearness[dullness[day] ?? 0] ?? K) * middle.outside;
    const first = firstHourOf(month) + HOURS_OF_DAY * day;
    fillDay(first, { air, humidity, cloud, sun }, shape, to);
  }
}

/** @param lat latitude in radians */
export function hoursFromMonths(climate: Climate, lat: number): Made {
  const array = (): Float64Array => new Float64Array(HOURS_OF_YEAR);
  const sigma = standardDeviation(Array.from(climate.columns.air ?? []));
  const made = { air: array(), vapour: array(), dewPoint: array(), wind: array(), sun: array(), cloud: array() };
  for (let month = 0; month < 12; month++) fillMonth(month, climate, lat, sigma, made);
  return made;
}
