/** Dates and times of a table's rows, in the forms that files have. */
import type { Time } from "./columns";

export interface Stamp {
  readonly year: number;
  /** From 1. */
  readonly month: number;
  readonly day: number;
  /** Minutes of the day, 0 to 1,440. */
  readonly minutes: number;
}

const CLOCK = /(\d{1,2})(?::(\d{2}))?(?::\d{2}(?:\.\d+)?)?\s*([ap])?\.?m?\.?/i;
const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T\s,]+(.*))?$/;
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})[-/.](\d{4}|\d{2})(?:[T\s,]+(.*))?$/;
const COMPACT = /^(\d{4})(\d{2})(\d{2})[:T\s]?(\d{2})(\d{2})$/;
const DAYS_TO_1970 = 25_569;

function minutesOf(text: string | undefined): number {
  const match = CLOCK.exec(text ?? "");
  if (!match) return 0;
  const hour = Number(match[1]);
  const half = match[3]?.toLowerCase();
  const civil = half === undefined ? hour : (hour % 12) + (half === "p" ? 12 : 0);
  return 60 * civil + Number(match[2] ?? 0);
}

function serialStamp(serial: number): Stamp {
  const date = new Date(Math.round((serial - DAYS_TO_1970) * 1440) * 60_000);
  return {
    year: date.getUTCFullYear(),
    month: date.getUTCMonth() + 1,
    day: date.getUTCDate(),
    minutes: 60 * date.getUTCHours() + date.getUTCMinutes(),
  };
}

/** A date with or without its time in one text; undefined where it is none. */
function stampOf(text: string, dayFirst: boolean): Stamp | undefined {
  const trimmed = text.trim();
  const compact = COMPACT.exec(trimmed);
  if (compact) {
    const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = compact.slice(1).map(Number);
    return { year, month, day, minutes: 60 * hour + minute };
  }
  const first = YEAR_FIRST.exec(trimmed);
  if (first)
    return { year: Number(first[1]), month: Number(first[2]), day: Number(first[3]), minutes: minutesOf(first[4]) };
  const last = YEAR_LAST.exec(trimmed);
  if (last) {
    const [a, b] = [Number(last[1]), Number(last[3])];
    const year = Number(last[4]) + ((last[4] ?? "").length === 2 ? 2000 : 0);
    return { year, month: dayFirst ? b : a, day: dayFirst ? a : b, minutes: minutesOf(last[5]) };
  }
  const serial = Number(trimmed);
  return serial > 20_000 && serial < 80_000 ? serialStamp(serial) : undefined;
}

/** Whether dates such as 13/05 put the day first; "unsure" where no row decides. */
function dayFirstIn(dates: readonly string[]): boolean | "unsure" {
  const parts = dates.flatMap((date) => {
    const match = YEAR_LAST.exec(date.trim());
    return match ? [[Number(match[1]), Number(match[3]), match[2]] as const] : [];
  });
  if (parts.some(([a]) => a > 12)) return true;
  if (parts.some(([, b]) => b > 12)) return false;
  return parts.length > 0 && (parts[0]?.[2] === "." || "unsure");
}

export type TimeColumns = Readonly<Partial<Record<Time, number>>>;

/** The stamps of rows, undefined where a row has none, and what had to be assumed. */
export function stampsOf(rows: readonly (readonly string[])[], at: TimeColumns) {
  const dateAt = at.stamp ?? at.date ?? at.time;
  const remarks: string[] = [];
  if (at.year !== undefined || (at.month !== undefined && at.day !== undefined)) {
    const cell = (row: readonly string[], place: number | undefined): number =>
      place === undefined ? 0 : Number(row[place]);
    const stamps = rows.map((row): Stamp | undefined => {
      const minutes =
        60 * cell(row, at.hour) + cell(row, at.minute) + (at.hour === undefined ? minutesOf(row[at.time ?? -1]) : 0);
      const stamp = { year: cell(row, at.year), month: cell(row, at.month), day: cell(row, at.day), minutes };
      return Number.isFinite(stamp.month + stamp.day + minutes) && stamp.month > 0 ? stamp : undefined;
    });
    return { stamps, remarks };
  }
  if (dateAt === undefined) return undefined;
  const order = dayFirstIn(rows.map((row) => row[dateAt] ?? ""));
  if (order === "unsure") remarks.push("no date tells day from month: month first was assumed");
  const apart = at.stamp === undefined && at.date !== undefined ? (at.time ?? at.hour) : undefined;
  const stamps = rows.map((row): Stamp | undefined => {
    const stamp = stampOf(row[dateAt] ?? "", order === true);
    return stamp && apart !== undefined ? { ...stamp, minutes: minutesOf(row[apart]) } : stamp;
  });
  return { stamps, remarks };
}
