/** When a temperature of the year passes its limit: how long, how far, and in which hour it is worst. */
import { us } from "../../kernel/values/quantity";
import { FIRST_DAY, HOUR, HOURS_OF_DAY, MONTHS, MONTH_OF_HOUR } from "../../numeric/calendar";
import type { Hourly, PoolYear, Year } from "./results";
import { condensingAt, coolingAt, leavingWaterAt, type WaterCurve } from "./waterCurve";

/** Greatest condensing temperature and warmest leaving water, K: as EXCHANGER.BALANCE takes them unless given. */
export const GREATEST_CONDENSING_ON_WATER = us("temperature", 130);
export const WARMEST_LEAVING_WATER = us("temperature", 104);

/** "14 Jul, 16 h": an hour of the year by its start. */
export function hourText(hour: number): string {
  const month = MONTH_OF_HOUR[hour] ?? 0;
  const day = Math.floor(hour / HOURS_OF_DAY) - (FIRST_DAY[month] ?? 0) + 1;
  return `${day} ${MONTHS[month] ?? ""}, ${hour % HOURS_OF_DAY} h`;
}

/** Time above a limit, s; the first and the worst hour, and the value of that, K. */
export interface Extreme {
  readonly time: number;
  readonly first: string;
  readonly when: string;
  readonly worst: number;
}

/** @param valueOf K in an hour; undefined where it doesn't count */
export function extremeOf(hours: number, limit: number, valueOf: (hour: number) => number | undefined): Extreme {
  let [time, first, at, worst] = [0, 0, 0, 0];
  for (let hour = 0; hour < hours; hour++) {
    const value = valueOf(hour) ?? 0;
    if (value > limit) {
      if (time === 0) first = hour;
      time += HOUR;
    }
    if (value > worst) [worst, at] = [value, hour];
  }
  return { time, first: hourText(first), when: hourText(at), worst };
}

/** The pool, left to itself or held, in which it is worse. */
const worseOf = ({ free, held }: Year, find: (pool: PoolYear) => Extreme): Extreme => {
  const [alone, kept] = [find(free.with), find(held.with)];
  return kept.worst > alone.worst ? kept : alone;
};

const during = (heat: Float64Array, hour: number): boolean => (heat[hour] ?? 0) > 0;

const isCoolAt = (curve: WaterCurve, water: number): boolean =>
  condensingAt(curve, water) <= GREATEST_CONDENSING_ON_WATER && leavingWaterAt(curve, water) <= WARMEST_LEAVING_WATER;

/** Facts of the machine on pool and tank while it runs there: condensing and leaving water beside their limits. */
export function hotFacts(year: Year) {
  const { weather, machine } = year;
  const { poolCurve, tankCurve } = machine ?? {};
  const on = (curve: typeof poolCurve, heat: Hourly, water: Hourly, of: typeof condensingAt, low: typeof poolCurve) => {
    // The low stage, where it alone meets the load, condenses cooler.
    const runs = (full: WaterCurve, hour: number, T: number): WaterCurve =>
      low && machine?.locked?.[hour] !== 1 && (machine?.load[hour] ?? 0) <= coolingAt(low, T) ? low : full;
    return (pool: PoolYear, hour: number): number => {
      const T = pool[water][hour] ?? 0;
      return curve && during(pool[heat], hour) ? of(runs(curve, hour, T), T) : 0;
    };
  };
  const { low } = machine ?? {};
  const highest = Math.max(...year.free.with.highest, ...year.held.with.highest);
  // Both rise with the water: where the warmest water passes no limit, no hour need be looked at.
  const cool = tankCurve === undefined && poolCurve !== undefined && isCoolAt(poolCurve, highest);
  const hours = cool ? 0 : weather.hours;
  const onPool = on(poolCurve, "taken", "temperature", condensingAt, low?.poolCurve);
  const onTank = on(tankCurve, "toTank", "tank", condensingAt, low?.tankCurve);
  const leaving = on(poolCurve, "taken", "temperature", leavingWaterAt, low?.poolCurve);
  const hot = worseOf(year, (pool) =>
    extremeOf(hours, GREATEST_CONDENSING_ON_WATER, (hour) => Math.max(onPool(pool, hour), onTank(pool, hour))),
  );
  const warm = worseOf(year, (pool) => extremeOf(hours, WARMEST_LEAVING_WATER, (hour) => leaving(pool, hour)));
  return {
    hotTime: hot.time,
    hottest: hot.worst,
    hottestHour: hot.when,
    hotWaterTime: warm.time,
    leavingWater: warm.worst,
    leavingWaterHour: warm.when,
  };
}

/** The pool passes its limit by a little in the hour in which the valve turns, K. */
const TURNING = us("temperature difference", 0.5);

/** Facts of a pool that is warmer than the limit at which the machine's heat goes outdoors. */
export function overLimitFacts({ inputs, weather, free }: Year) {
  const over = extremeOf(weather.hours, inputs.highLimit + TURNING, (hour) => free.with.temperature[hour]);
  return { overLimitTime: over.time, firstOver: over.first, warmestHour: over.when };
}
