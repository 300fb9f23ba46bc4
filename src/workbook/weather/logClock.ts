/** The clock of a logger: order, interval, gaps, hours that daylight saving lost or doubled. */
import type { Stamp } from "./stamps";

const DAY = 1440;
/** Days from Excel's first date to 1970. */
const DAYS_TO_1970 = 25_569;

/** Minutes since 1970 by the logger's own clock. */
export const minutesOf = ({ year, month, day, minutes }: Stamp): number =>
  Date.UTC(year, month - 1, day) / 60_000 + minutes;

/** A moment as a spreadsheet stores it: days and their parts. */
export const serialOf = (minutes: number): number => Number((minutes / DAY + DAYS_TO_1970).toFixed(6));

/** "2024-07-01 14:05" */
export const momentText = (minutes: number): string =>
  new Date(minutes * 60_000).toISOString().slice(0, 16).replace("T", " ");

/** "90 minutes", "5 hours", "3.2 days" */
export function spanText(minutes: number): string {
  if (minutes < 120) return `${Math.round(minutes)} minutes`;
  return minutes < 2 * DAY
    ? `${Number((minutes / 60).toFixed(1))} hours`
    : `${Number((minutes / DAY).toFixed(1))} days`;
}

export interface LogClock {
  /** Rows in the order of time, each with its moment; rows of one moment stay in their order. */
  readonly order: readonly { readonly row: number; readonly at: number }[];
  /** The usual step between rows, minutes. */
  readonly interval: number;
  readonly faults: readonly string[];
}

function usualStep(times: readonly number[]): number {
  const counts = new Map<number, number>();
  for (let i = 1; i < times.length; i++) {
    const step = (times[i] ?? 0) - (times[i - 1] ?? 0);
    if (step > 0) counts.set(step, (counts.get(step) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 60;
}

/** A clock that shows each half day alike: no hour from 13 on, and times that start again at noon. */
function refuseHalfDays(stamps: readonly Stamp[]): void {
  const late = stamps.some(({ minutes }) => minutes >= 13 * 60);
  const back = stamps.filter(({ minutes, day }, at) => {
    const before = stamps[at - 1];
    return before?.day === day && before.minutes - minutes > 6 * 60;
  });
  if (!late && back.length >= 2)
    throw new Error(
      "no time is later than 12:59, and times start again within a day: a 12-hour clock without AM and PM. Export the log with 24 hours",
    );
}

const sameClock = (at: number, from: readonly number[], months: readonly number[]): boolean => {
  const date = new Date(at * 60_000);
  return months.includes(date.getUTCMonth()) && from.includes(date.getUTCHours());
};

/** Weeks in which clocks of either hemisphere are put forward or back. */
const MONTHS_OF_CHANGE = [2, 3, 8, 9, 10];

function gapFaults(times: readonly number[], interval: number): readonly string[] {
  const gaps = times.flatMap((at, place) => {
    const length = at - (times[place - 1] ?? at);
    return length > 1.5 * interval ? [{ from: times[place - 1] ?? at, length }] : [];
  });
  if (gaps.length === 0) return [];
  const longest = gaps.reduce((a, b) => (b.length > a.length ? b : a));
  const faults = [
    `${gaps.length} ${gaps.length === 1 ? "gap" : "gaps"} in the time, the longest ${spanText(longest.length)} from ${momentText(longest.from)}: left blank, not filled`,
  ];
  const spring = gaps.find(
    ({ from, length }) => length === 60 + interval && sameClock(from, [0, 1, 2], MONTHS_OF_CHANGE),
  );
  if (spring !== undefined)
    faults.push(`one hour is missing from ${momentText(spring.from)}: a clock put forward for daylight saving?`);
  return faults;
}

/** @throws Error where the times can't be put in order */
export function clockOf(stamps: readonly (Stamp | undefined)[]): LogClock {
  const known = stamps.filter((stamp) => stamp !== undefined);
  if (known.length < 2) throw new Error("fewer than two rows have a time that can be read");
  refuseHalfDays(known);
  const rows = stamps.flatMap((stamp, row) => (stamp === undefined ? [] : [{ row, at: minutesOf(stamp) }]));
  const times = rows.map(({ at }) => at);
  const faults: string[] = [];
  if (rows.length < stamps.length) faults.push(`${stamps.length - rows.length} rows have no time and were passed over`);
  const backward = rows.filter(({ at }, place) => at < (times[place - 1] ?? at));
  const falling = backward.length > rows.length / 2;
  const order = [...rows].sort((a, b) => a.at - b.at || a.row - b.row);
  if (falling) faults.push("newest first: put in the order of time");
  else if (backward.length > 0) {
    const [first] = backward;
    const before = times[rows.findIndex((one) => one === first) - 1] ?? 0;
    const autumn =
      first !== undefined && before - first.at <= 60 && sameClock(first.at, [0, 1, 2, 3], MONTHS_OF_CHANGE);
    faults.push(
      `times go back ${backward.length} ${backward.length === 1 ? "time" : "times"}, first by ${spanText(before - (first?.at ?? 0))} to ${momentText(first?.at ?? 0)}${autumn ? ": a clock put back after daylight saving?" : ""}`,
    );
  }
  const sorted = order.map(({ at }) => at);
  const twice = sorted.filter((at, place) => place > 0 && at === sorted[place - 1]).length;
  if (twice > 0) faults.push(`${twice} times appear twice: their mean was taken`);
  const interval = usualStep(sorted);
  return { order, interval, faults: [...faults, ...gapFaults(sorted, interval)] };
}
