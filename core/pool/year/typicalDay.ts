/** A month's typical day: means of its days by the clock's hour. */
import { NO_VALUE } from "../../kernel/result";
import { DAYS } from "../../aircon/models/fullLoadHours";
import { HOURS_OF_DAY, firstHourOf } from "./calendar";
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
}

/** @param month 0 to 11 */
export function typicalDay({ weather, machine, free, held }: Year, month: number): readonly TypicalHour[] {
  const first = firstHourOf(month);
  const days = DAYS[month] ?? 30;
  const meanAt = (values: Float64Array | undefined, hour: number): number => {
    let sum = 0;
    for (let day = 0; day < days; day++) sum += values?.[first + HOURS_OF_DAY * day + hour] ?? 0;
    return sum / days;
  };
  return Array.from({ length: HOURS_OF_DAY }, (_, hour) => ({
    hour,
    air: meanAt(weather.air, hour),
    poolWithout: meanAt(free.without.temperature, hour),
    poolWith: meanAt(free.with.temperature, hour),
    sun: meanAt(weather.sun, hour),
    load: meanAt(machine?.load, hour),
    heatTaken: meanAt(free.with.taken, hour),
    heatOutdoors: meanAt(free.with.outdoors, hour),
    backUpWithout: meanAt(held.without.backUp, hour),
    backUpWith: meanAt(held.with.backUp, hour),
    electricityWithout: meanAt(free.without.electricity, hour),
    electricityWith: meanAt(free.with.electricity, hour),
    heatToTank: meanAt(free.with.toTank, hour),
    tank: machine?.tankCurve ? meanAt(free.with.tank, hour) : NO_VALUE,
  }));
}
