/** The calendar of a year that is no leap year, and the units of time that the year's loops count in. */
import { DAYS } from "../../aircon/models/fullLoadHours";

/** s */
export const HOUR = 3600;
/** s */
export const DAY = 86_400;
export const HOURS_OF_DAY = 24;
export const HOURS_OF_YEAR = 8760;

export const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** First day of each month, counted from 0. */
export const FIRST_DAY: readonly number[] = DAYS.map((_, month) =>
  DAYS.slice(0, month).reduce<number>((sum, days) => sum + days, 0),
);

/** The month, 0 to 11, of each hour. */
export const MONTH_OF_HOUR: Uint8Array = Uint8Array.from(
  DAYS.flatMap((days, month) => Array.from({ length: HOURS_OF_DAY * days }, () => month)),
);

/** First hour of a month, 0 to 11. */
export const firstHourOf = (month: number): number => HOURS_OF_DAY * (FIRST_DAY[month] ?? 0);

/** Hours of a month, 0 to 11. */
export const hoursOf = (month: number): number => HOURS_OF_DAY * (DAYS[month] ?? 0);
