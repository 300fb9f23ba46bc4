/** The weather of 8,760 hours at a pool: from hourly rows, or made from twelve rows of monthly means. */
import { DAYS, spreadOf } from "../../aircon/models/fullLoadHours";
import { daySpread } from "../../aircon/climate";
import { mend } from "../../kernel/fault";
import { standardAtmosphere } from "../../kernel/pressureBasis";
import type { Climate } from "./climate";
import { hourOfWarmth, hourOfWind, mainsWater } from "./sunEquations";
import { windAtWaterBy } from "../losses/wind";
import type { ShelterWord } from "../data/shelter";
import { FIRST_DAY, clearnessOfDays, cloudOfDay, cloudOfHours, orderOf, sunDay } from "./sun";
import { dewPointOver, vapourPressureAt } from "./vapourTable";
import { HOURS, MONTH_OF } from "./lossesAt";
import type { Weather } from "./surface";

/** The place of the pool. */
export interface Site {
  /** Radians; undefined where it isn't told. */
  readonly latitude: number | undefined;
  /** m */
  readonly altitude: number;
  readonly shelter: ShelterWord | number;
  /** In place of wind at 10 m and shelter, m/s. */
  readonly windAtWater: number | undefined;
  /** One or twelve, K, in place of a column of the climate; undefined: that column, else the estimate from the air. */
  readonly mains: readonly number[] | undefined;
}

const latitudeFor = (site: Site, why: string): number => {
  if (site.latitude === undefined) throw mend(`inputs: the label "latitude" is needed ${why}`);
  return site.latitude;
};

const windOf = (site: Site, wind10m: Float64Array): Float64Array => {
  if (site.windAtWater !== undefined) return new Float64Array(HOURS).fill(site.windAtWater);
  const share = windAtWaterBy(1, site.shelter);
  const wind = new Float64Array(HOURS);
  for (let hour = 0; hour < HOURS; hour++) wind[hour] = share * (wind10m[hour] ?? 0);
  return wind;
};

const meanOver = (values: Float64Array, from: number, to: number): number => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] ?? 0;
  return sum / (to - from);
};

/** Means of the twelve months of hourly values. */
export const monthlyMeans = (values: Float64Array): readonly number[] =>
  DAYS.map((days, month) => {
    const first = 24 * (FIRST_DAY[month] ?? 0);
    return meanOver(values, first, first + 24 * days);
  });

/** Mains by hour: given by one or twelve values, else the published estimate from the air's monthly means. */
const mainsOf = (given: readonly number[] | undefined, air: Float64Array): Float64Array => {
  const mains = new Float64Array(HOURS);
  if (given !== undefined) {
    for (let hour = 0; hour < HOURS; hour++) mains[hour] = given[given.length === 1 ? 0 : (MONTH_OF[hour] ?? 0)] ?? 0;
    return mains;
  }
  const means = monthlyMeans(air);
  const Tf = 1.8 * meanOver(air, 0, HOURS) - 459.67;
  const D = Math.max(...means) - Math.min(...means);
  for (let day = 0; day < 365; day++)
    mains.fill(Math.max(273.15, mainsWater.code({ Tf, D, n: day + 1 })), 24 * day, 24 * day + 24);
  return mains;
};

const hourly = ({ columns }: Climate, site: Site): Weather => {
  const air = columns.air ?? new Float64Array(HOURS);
  const sun = columns.sun ?? new Float64Array(HOURS);
  const { dewPoint: given, humidity } = columns;
  const vapour = given ? given.map(vapourPressureAt) : air.map((T, i) => (humidity?.[i] ?? 1) * vapourPressureAt(T));
  const pressure = columns.pressure ?? new Float64Array(HOURS).fill(standardAtmosphere.code({ z: site.altitude }));
  return {
    hours: HOURS,
    air,
    vapour,
    dewPoint: given ?? vapour.map(dewPointOver),
    wind: windOf(site, columns.windAt10m ?? new Float64Array(HOURS)),
    sun,
    cloud: columns.cloud ?? cloudOfHours(sun, latitudeFor(site, "where the climate has no column of cloud")),
    pressure,
    mains: site.mains === undefined && columns.mains ? columns.mains : mainsOf(site.mains, air),
  };
};

/** Steps of the days' order: warm and cold spells of six days, clear and dull days in between. */
const SPELL = 0.3719;
const CHANGE = 0.2113;

type Made = Pick<Weather, "air" | "vapour" | "dewPoint" | "sun" | "cloud">;

/** Writes one month's days into the year. */
const fillMonth = (month: number, { columns }: Climate, lat: number, sigma: number, to: Made, wind: Float64Array) => {
  const days = DAYS[month] ?? 30;
  const first = FIRST_DAY[month] ?? 0;
  const at = (values: Float64Array | undefined): number => values?.[month] ?? 0;
  const mean = at(columns.air);
  const s = daySpread.code({ T: mean, sigma, N: days });
  const middle = sunDay(first + Math.round(days / 2), lat);
  const K = middle.outside > 1e5 ? at(columns.sun) / middle.outside : 0.5;
  const clearness = clearnessOfDays(K, days);
  const warmth = orderOf(days, SPELL);
  const dullness = orderOf(days, CHANGE);
  const winds = Array.from({ length: 24 }, (_, hour) => hourOfWind.code({ m: at(columns.windAt10m), t: hour + 0.5 }));
  const shape = Array.from({ length: 24 }, (_, hour) => hourOfWarmth.code({ A: at(columns.swing), t: hour + 0.5 }));
  const full = new Float64Array(24);
  for (let day = 0; day < days; day++) {
    const share = ((warmth[day] ?? 0) + 0.5) / days;
    const dayMean = mean + s * Math.log(share / (1 - share));
    const sun = (clearness[dullness[day] ?? 0] ?? K) * middle.outside;
    const cloud = cloudOfDay(K * middle.outside, middle);
    let inverse = 0;
    for (let hour = 0; hour < 24; hour++) {
      const saturated = vapourPressureAt(dayMean + (shape[hour] ?? 0));
      full[hour] = saturated;
      inverse += 1 / saturated / 24;
    }
    // The dew point holds through the day; the mean of the humidity is then this vapour pressure times the mean of 1/ps.
    const vapour = at(columns.humidity) / inverse;
    const dewPoint = dewPointOver(vapour);
    for (let hour = 0; hour < 24; hour++) {
      const i = 24 * (first + day) + hour;
      const saturated = full[hour] ?? 0;
      to.air[i] = dayMean + (shape[hour] ?? 0);
      to.vapour[i] = Math.min(vapour, saturated);
      to.dewPoint[i] = vapour <= saturated ? dewPoint : dewPointOver(saturated);
      to.sun[i] = (sun * (middle.shares[hour] ?? 0)) / 3600;
      to.cloud[i] = cloud;
      wind[i] = winds[hour] ?? 0;
    }
  }
};

const synthetic = (climate: Climate, site: Site): Weather => {
  const lat = latitudeFor(site, "with monthly rows: it makes the hours of sun");
  const array = (): Float64Array => new Float64Array(HOURS);
  const wind = array();
  const { columns } = climate;
  const sigma = spreadOf(Array.from(columns.air ?? []));
  const made: Made = { air: array(), vapour: array(), dewPoint: array(), sun: array(), cloud: array() };
  for (let month = 0; month < 12; month++) fillMonth(month, climate, lat, sigma, made, wind);
  const { air, vapour, dewPoint, sun, cloud } = made;
  const mains = mainsOf(site.mains ?? (columns.mains && Array.from(columns.mains)), air);
  const pressure = array().fill(standardAtmosphere.code({ z: site.altitude }));
  return { hours: HOURS, air, vapour, dewPoint, wind: windOf(site, wind), sun, cloud, pressure, mains };
};

export const weatherOf = (climate: Climate, site: Site): Weather =>
  climate.monthly ? synthetic(climate, site) : hourly(climate, site);
