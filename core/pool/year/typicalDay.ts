/** A month's typical day: means of its days by the clock's hour. */
import { DAYS, HOURS_OF_DAY, WEEKDAYS, firstHourOf } from "../../numeric/calendar";
import { NO_VALUE } from "../../kernel/define/result";
import type { Year } from "./results";

export interface TypicalHour {
  /** Start of the hour, 0 to 23. */
  readonly hour: number;
  /** K */
  readonly air: number;
  readonly poolWithout: number;
  readonly poolWith: number;
  /** W/m² on a level surface; W */
  readonly sun: number;
  readonly load: number;
  readonly heatTaken: number;
  readonly heatOutdoors: number;
  readonly backUpWithout: number;
  readonly backUpWith: number;
  readonly electricityWithout: number;
  readonly electricityWith: number;
  readonly heatToTank: number;
  /** K; none without a tank. */
  readonly tank: number | typeof NO_VALUE;
  /** W, of the machine over the pool that is held. */
  readonly electricityHeldWithout: number;
  readonly electricityHeldWith: number;
  readonly weekday: string;
}

/** The values of a year's hours, by a way to look at one place of its arrays. */
const lineOf = (
  { weather, machine, free, held }: Year,
  hour: number,
  at: (values: Float64Array | undefined) => number,
  weekday: string,
): TypicalHour => ({
  hour,
  air: at(weather.air),
  poolWithout: at(free.without.temperature),
  poolWith: at(free.with.temperature),
  sun: at(weather.sun),
  load: at(machine?.load),
  heatTaken: at(free.with.taken),
  heatOutdoors: at(free.with.outdoors),
  backUpWithout: at(held.without.backUp),
  backUpWith: at(held.with.backUp),
  electricityWithout: at(free.without.electricity),
  electricityWith: at(free.with.electricity),
  heatToTank: at(free.with.toTank),
  tank: machine?.tankCurve ? at(free.with.tank) : NO_VALUE,
  electricityHeldWithout: at(held.without.electricity),
  electricityHeldWith: at(held.with.electricity),
  weekday,
});

/** All hours of the year, counted from 0 after midnight of 1 January, a Monday. */
export function allHours(year: Year): readonly TypicalHour[] {
  return Array.from({ length: year.weather.hours }, (_, hour) =>
    lineOf(year, hour, (values) => values?.[hour] ?? 0, WEEKDAYS[Math.floor(hour / HOURS_OF_DAY) % 7] ?? ""),
  );
}

/** @param month 0 to 11 */
export function typicalDay(year: Year, month: number): readonly TypicalHour[] {
  const first = firstHourOf(month);
  const days = DAYS[month] ?? 30;
  const meanAt = (values: Float64Array | undefined, hour: number): number => {
    let sum = 0;
    for (let day = 0; day < days; day++) sum += values?.[first + HOURS_OF_DAY * day + hour] ?? 0;
    return sum / days;
  };
  return Array.from({ length: HOURS_OF_DAY }, (_, hour) =>
    lineOf(year, hour, (values) => meanAt(values, hour), NO_VALUE),
  );
}
