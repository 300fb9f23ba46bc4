/** Rows of any interval put into the hours of a year. */
import { HOURS, emptyHours, hourOfYear } from "./hours";
import type { Stamp } from "./stamps";

/** An hour needs this share of its readings. */
const ENOUGH = 0.75;
const DAY = 1440;

export interface PlacedRows {
  /** The hour of each row; undefined where it has none or isn't of the year taken. */
  readonly at: readonly (number | undefined)[];
  /** Readings that an hour should have. */
  readonly perHour: number;
  /** Stamps on the full hour from 0 to 23 may be starts as well as ends. */
  readonly unsure: boolean;
  /** Hours from universal time, where the rows were shifted to the place's own. */
  readonly utc: number | undefined;
}

/** Minutes since an epoch; only differences count. */
const momentOf = ({ year, month, day, minutes }: Stamp): number => Date.UTC(year, month - 1, day) / 60_000 + minutes;

/** The most frequent step between different moments, minutes, in whatever order their rows are. */
function intervalOf(moments: readonly number[]): number {
  const counts = new Map<number, number>();
  const sorted = Float64Array.from(moments).sort();
  for (const [place, moment] of sorted.entries()) {
    const step = moment - (sorted[place - 1] ?? moment);
    if (step > 0) counts.set(step, (counts.get(step) ?? 0) + 1);
  }
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 60;
}

/** The last 365 days, where hours of the same date come from several years. */
function lastYear(stamps: readonly (Stamp | undefined)[], remarks: string[]): (stamp: Stamp) => boolean {
  const yearOf = new Map<number, number>();
  let overlaps = false;
  let last = Number.NEGATIVE_INFINITY;
  for (const stamp of stamps) {
    if (!stamp) continue;
    last = Math.max(last, momentOf(stamp));
    // Midnight ends the day before.
    if (stamp.minutes === 0) continue;
    const date = 100 * stamp.month + stamp.day;
    overlaps ||= (yearOf.get(date) ?? stamp.year) !== stamp.year;
    yearOf.set(date, stamp.year);
  }
  if (!overlaps) return () => true;
  remarks.push("more than a year: its last 365 days were taken");
  return (stamp) => momentOf(stamp) > last - 365 * DAY;
}

export function placeStamps(
  stamps: readonly (Stamp | undefined)[],
  { universal, longitude }: { readonly universal: boolean; readonly longitude: number | undefined },
  remarks: string[],
): PlacedRows {
  const known = stamps.filter((stamp) => stamp !== undefined);
  if (known.length === 0) throw new Error("no row has a date that can be read");
  const moments = known.map(momentOf);
  const interval = intervalOf(moments);
  if (interval > 60) throw new Error(`rows are ${interval} minutes apart: at least one an hour is needed`);
  const twice = known.length - new Set(moments).size;
  if (twice > 0) remarks.push(`${twice} times appear twice: their mean was taken`);
  const onHour = interval === 60 && known.every(({ minutes }) => minutes % 60 === 0);
  const ends = known.some(({ minutes }) => minutes === DAY);
  const kept = lastYear(stamps, remarks);
  const utc = universal && longitude !== undefined ? Math.round(longitude / 15) : undefined;
  if (utc !== undefined && utc !== 0) remarks.push(`stamps in universal time, shifted by ${utc} h to the place's own`);
  const leap = known.filter(({ month, day }) => month === 2 && day === 29).length;
  if (leap > 0) remarks.push(`29 February left out (${leap} rows)`);
  const at = stamps.map((stamp) => {
    if (!stamp || !kept(stamp) || (stamp.month === 2 && stamp.day === 29)) return undefined;
    const start = hourOfYear(stamp.month, stamp.day, 0);
    // The hour before the stamp; a stamp inside the hour of hourly rows is of that hour.
    const hour = interval === 60 && !onHour ? Math.floor(stamp.minutes / 60) : Math.ceil(stamp.minutes / 60) - 1;
    return start === undefined ? undefined : (start + hour + (utc ?? 0) + HOURS) % HOURS;
  });
  const lost = stamps.length - known.length;
  if (lost > 0) remarks.push(`${lost} rows have no date and were passed over`);
  return { at, perHour: 60 / interval, unsure: onHour && !ends, utc };
}

/** Means of the rows of each hour; NaN where too few have a value. */
export function byHour(values: readonly number[], { at, perHour }: PlacedRows): Float64Array {
  const sums = new Float64Array(HOURS);
  const counts = new Float64Array(HOURS);
  values.forEach((value, row) => {
    const hour = at[row];
    if (hour === undefined || Number.isNaN(value)) return;
    sums[hour] = (sums[hour] ?? 0) + value;
    counts[hour] = (counts[hour] ?? 0) + 1;
  });
  return emptyHours().map((none, hour) => {
    const count = counts[hour] ?? 0;
    return count >= ENOUGH * perHour && count > 0 ? (sums[hour] ?? 0) / count : none;
  });
}
