/** Hours of a year as they are read from a file: one array a quantity, missing values NaN. */
import { FIRST_DAY, HOURS_OF_DAY, hoursOf } from "../../../core";

export const HOURS = 8760;

/** °C, °C, a fraction, m/s at the file's height, W/m², opaque tenths, kPa. */
export const QUANTITIES = ["air", "dewPoint", "humidity", "wind", "sun", "cloud", "pressure"] as const;
export type Quantity = (typeof QUANTITIES)[number];

/** What is believed of a value; beyond it it counts as missing. */
const RANGES: Readonly<Record<Quantity, readonly [number, number]>> = {
  air: [-70, 70],
  dewPoint: [-75, 70],
  humidity: [0, 1.1],
  wind: [0, 60],
  sun: [-10, 1600],
  cloud: [0, 10],
  pressure: [31, 120],
};

export interface Place {
  readonly station: string;
  /** Degrees, north and east positive. */
  readonly latitude: number | undefined;
  readonly longitude: number | undefined;
  /** m */
  readonly altitude: number | undefined;
  /** Hours that the file's standard time is ahead of universal time. */
  readonly utc: number | undefined;
  readonly source: string;
  /** The years that the rows are of; "" where the file names none. */
  readonly period: string;
}

export type Hours = Readonly<Partial<Record<Quantity, Float64Array>>>;

/** A file as read, before anything is judged or filled. */
export interface WeatherFile extends Place {
  readonly hours: Hours;
  /** What the reader saw and did. */
  readonly remarks: readonly string[];
  /** Whether stamps on the hour may be starts as well as ends. */
  readonly stampsUnsure?: boolean;
  /** Hours without sun above the air by the file's own column, where it has one. */
  readonly night?: Uint8Array;
}

export const emptyHours = (): Float64Array => new Float64Array(HOURS).fill(Number.NaN);

/** A value in its range; NaN otherwise. Sun just below nothing is nothing, humidity just above 1 is 1. */
export function believed(quantity: Quantity, value: number): number {
  const [from, to] = RANGES[quantity];
  if (!(value >= from && value <= to)) return Number.NaN;
  if (quantity === "sun") return Math.max(0, value);
  return quantity === "humidity" ? Math.min(1, value) : value;
}

/** The hour of the year, from 0, of a month and day from 1 and the hour of the day from 0; undefined on 29 February and on no day. */
export function hourOfYear(month: number, day: number, hour: number): number | undefined {
  const days = hoursOf(month - 1) / HOURS_OF_DAY;
  if (!(month >= 1 && month <= 12 && day >= 1 && day <= days && hour >= 0 && hour <= HOURS_OF_DAY)) return undefined;
  return (HOURS_OF_DAY * ((FIRST_DAY[month - 1] ?? 0) + day - 1) + Math.floor(hour)) % HOURS;
}

/** Years as a range of text: "7 years from 1976 to 2005". */
export function yearsText(years: ReadonlySet<number>): string {
  const known = [...years].filter((year) => year > 1800 && year < 2200);
  if (known.length === 0) return "";
  const [first, last] = [Math.min(...known), Math.max(...known)];
  return known.length === 1 ? `of ${first}` : `months of ${known.length} years from ${first} to ${last}`;
}

/** A cell's number; NaN where it is none. */
export const cellNumber = (cell: string | undefined): number =>
  cell === undefined || cell.trim() === "" ? Number.NaN : Number(cell);

/** A number, or undefined where it is none. */
export const given = (cell: string | undefined): number | undefined => {
  const value = cellNumber(cell);
  return Number.isFinite(value) ? value : undefined;
};
