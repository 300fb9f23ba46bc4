import { HOURS_OF_DAY, MONTHS, hoursOf } from "../index";

/** "1 Jan" to "31 Dec". */
export const DAY_NAMES: readonly string[] = MONTHS.flatMap((name, month) =>
  Array.from({ length: hoursOf(month) / HOURS_OF_DAY }, (_, day) => `${String(day + 1)} ${name}`),
);
