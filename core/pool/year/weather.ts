/** The weather of 8,760 hours at a pool: from hourly rows, or made from twelve rows of monthly means. */
import { DAYS, HOURS_OF_DAY, HOURS_OF_YEAR, MONTH_OF_HOUR, firstHourOf, hoursOf } from "../../numeric/calendar";
import { valueError } from "../../kernel/values/fault";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import type { Climate } from "./climate";
import { mainsWater } from "./sunEquations";
import { windAtWaterBy } from "../losses/wind";
import { FREEZING } from "../equations";
import type { ShelterWord } from "../data/shelter";
import { hoursFromMonths } from "./madeHours";
import { cloudOfHours } from "./sun";
import { dewPointOver, vapourPressureAt } from "./vapourTable";

/** Weather of the hours of a year, each value holding through its hour. */
export interface Weather {
  readonly hours: number;
  /** K */
  readonly air: Float64Array;
  /** Vapour pressure of the air, Pa. */
  readonly vapour: Float64Array;
  /** K */
  readonly dewPoint: Float64Array;
  /** At the water, m/s. */
  readonly wind: Float64Array;
  /** On a level surface, W/m². */
  readonly sun: Float64Array;
  /** Opaque cloud, tenths. */
  readonly cloud: Float64Array;
  /** Pa */
  readonly pressure: Float64Array;
  /** Mains water, K. */
  readonly mains: Float64Array;
}

/** The place of the pool. */
export interface Site {
  /** Radians; undefined where it isn't given. */
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
  if (site.latitude === undefined) throw valueError(`inputs: the label "latitude" is needed ${why}`);
  return site.latitude;
};

export const windOf = (site: Site, wind10m: Float64Array): Float64Array => {
  if (site.windAtWater !== undefined) return new Float64Array(HOURS_OF_YEAR).fill(site.windAtWater);
  const share = windAtWaterBy(1, site.shelter);
  const wind = new Float64Array(HOURS_OF_YEAR);
  for (let hour = 0; hour < HOURS_OF_YEAR; hour++) wind[hour] = share * (wind10m[hour] ?? 0);
  return wind;
};

const meanOver = (values: Float64Array, from: number, to: number): number => {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i] ?? 0;
  return sum / (to - from);
};

/** Means of the twelve months of hourly values. */
export const monthlyMeans = (values: Float64Array): readonly number[] =>
  DAYS.map((_, month) => {
    const first = firstHourOf(month);
    return meanOver(values, first, first + hoursOf(month));
  });

/** Mains by hour: given by one or twelve values, else the published estimate from the air's monthly means. */
const mainsOf = (given: readonly number[] | undefined, air: Float64Array): Float64Array => {
  const mains = new Float64Array(HOURS_OF_YEAR);
  if (given !== undefined) {
    for (let hour = 0; hour < HOURS_OF_YEAR; hour++)
      mains[hour] = given[given.length === 1 ? 0 : (MONTH_OF_HOUR[hour] ?? 0)] ?? 0;
    return mains;
  }
  const means = monthlyMeans(air);
  const Tf = 1.8 * meanOver(air, 0, HOURS_OF_YEAR) - 459.67;
  const D = Math.max(...means) - Math.min(...means);
  for (let day = 0; day < 365; day++)
    mains.fill(
      Math.max(FREEZING, mainsWater.code({ Tf, D, n: day + 1 })),
      HOURS_OF_DAY * day,
      HOURS_OF_DAY * (day + 1),
    );
  return mains;
};

const weatherFromHours = ({ columns }: Climate, site: Site): Weather => {
  const air = columns.air ?? new Float64Array(HOURS_OF_YEAR);
  const sun = columns.sun ?? new Float64Array(HOURS_OF_YEAR);
  const { dewPoint: given, humidity, vapourPressure } = columns;
  const vapour =
    vapourPressure ??
    (given ? given.map(vapourPressureAt) : air.map((T, i) => (humidity?.[i] ?? 1) * vapourPressureAt(T)));
  const pressure =
    columns.pressure ?? new Float64Array(HOURS_OF_YEAR).fill(standardAtmosphere.code({ z: site.altitude }));
  return {
    hours: HOURS_OF_YEAR,
    air,
    vapour,
    dewPoint: given ?? vapour.map(dewPointOver),
    wind: windOf(site, columns.windAt10m ?? new Float64Array(HOURS_OF_YEAR)),
    sun,
    cloud: columns.cloud ?? cloudOfHours(sun, latitudeFor(site, "where the climate has no column of cloud")),
    pressure,
    mains: site.mains === undefined && columns.mains ? columns.mains : mainsOf(site.mains, air),
  };
};

const weatherFromMonths = (climate: Climate, site: Site): Weather => {
  const lat = latitudeFor(site, "with monthly rows: it makes the hours of sun");
  const { columns } = climate;
  const made = hoursFromMonths(climate, lat);
  return {
    ...made,
    hours: HOURS_OF_YEAR,
    wind: windOf(site, made.wind),
    pressure: new Float64Array(HOURS_OF_YEAR).fill(standardAtmosphere.code({ z: site.altitude })),
    mains: mainsOf(site.mains ?? (columns.mains && Array.from(columns.mains)), made.air),
  };
};

export const weatherOf = (climate: Climate, site: Site): Weather =>
  climate.monthly ? weatherFromMonths(climate, site) : weatherFromHours(climate, site);
