/** The calendar of a year that is no leap year, and the units of time in seconds. */

/** s */
export const HOUR = 3600;
/** s */
export const DAY = 86_400;
export const HOURS_OF_DAY = 24;
export const HOURS_OF_YEAR = 8760;

export const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

export const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

/** Days of each month. */
export const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** First day of each month, counted from 0. */
export const FIRST_DAY: readonly number[] = DAYS.map((_, month) =>
  DAYS.slice(0, month).reduce<number>((before, days) => before + days, 0),
);

/** The month, 0 to 11, of each hour. */
export const MONTH_OF_HOUR: Uint8Array = Uint8Array.from(
  DAYS.flatMap((days, month) => Array.from({ length: HOURS_OF_DAY * days }, () => month)),
);

/** First hour of a month, 0 to 11. */
export const firstHourOf = (month: number): number => HOURS_OF_DAY * (FIRST_DAY[month] ?? 0);

/** Hours of a month, 0 to 11. */
export const hoursOf = (month: number): number => HOURS_OF_DAY * (DAYS[month] ?? 0);
