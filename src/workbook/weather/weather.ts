/** Reads a weather file: recognised, checked, gaps filled, as the rows that POOL.YEAR takes. No host, no network. */
import { admitClimate, findingsOf, hoursOf, MONTHS, vapourPressureAt } from "../../../core";
import { isEpw, readEpw } from "./epw";
import { fillGaps } from "./fill";
import { QUANTITIES, type Hours, type Place, type Quantity, type WeatherFile } from "./hours";
import { faultsOf, sunLate } from "./judge";
import { readTable } from "./table";

type Cell = string | number;

export interface WeatherRows extends Place {
  /** What was found, left out and filled, one sentence each. */
  readonly faults: readonly string[];
  /** A header and 12 or 8,760 rows in SI units. */
  readonly rows: readonly (readonly Cell[])[];
}

interface Shown {
  readonly head: string;
  readonly quantity: Quantity;
  readonly decimals: number;
}

/** Columns of hourly rows. */
const HOURLY: readonly Shown[] = [
  { head: "air (°C)", quantity: "air", decimals: 2 },
  { head: "humidity", quantity: "humidity", decimals: 4 },
  { head: "dew point (°C)", quantity: "dewPoint", decimals: 2 },
  { head: "wind at 10 m (m/s)", quantity: "wind", decimals: 3 },
  { head: "sun (W/m²)", quantity: "sun", decimals: 1 },
  { head: "cloud", quantity: "cloud", decimals: 2 },
  { head: "pressure (kPa)", quantity: "pressure", decimals: 3 },
];

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

function hourlyRows(hours: Hours): readonly (readonly Cell[])[] {
  const columns = HOURLY.filter(({ quantity }) => hours[quantity] !== undefined);
  const count = hours.air?.length ?? 0;
  return [
    columns.map(({ head }) => head),
    ...Array.from({ length: count }, (_, hour) =>
      columns.map(({ quantity, decimals }) => rounded(hours[quantity]?.[hour] ?? 0, decimals)),
    ),
  ];
}

const MONTHLY = [
  "month",
  "air (°C)",
  "swing (K)",
  "humidity",
  "wind at 10 m (m/s)",
  "sun (kWh/(m²·day))",
  "vapour pressure (kPa)",
];

const mean = (values: Float64Array): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Mean of each day's highest less lowest hour. */
function swingOf(air: Float64Array): number {
  const days = air.length / 24;
  let total = 0;
  for (let day = 0; day < days; day++) {
    const hours = air.subarray(24 * day, 24 * (day + 1));
    total += Math.max(...hours) - Math.min(...hours);
  }
  return total / days;
}

/** Vapour pressure, kPa: by the dew point, else by the humidity. */
function vapourOf({ air, dewPoint, humidity }: Hours): Float64Array {
  const saturated = (T: number): number => vapourPressureAt(T + 273.15) / 1000;
  if (dewPoint) return dewPoint.map(saturated);
  return (air ?? new Float64Array(0)).map((T, hour) => (humidity?.[hour] ?? 1) * saturated(T));
}

function monthlyRows(hours: Hours): readonly (readonly Cell[])[] {
  const { air, humidity, wind, sun } = hours;
  const vapour = vapourOf(hours);
  const moist =
    humidity ?? vapour.map((e, hour) => Math.min(1, (1000 * e) / vapourPressureAt((air?.[hour] ?? 0) + 273.15)));
  let first = 0;
  const rows = MONTHS.map((month, place) => {
    const [from, to] = [first, first + hoursOf(place)];
    first = to;
    const part = (values: Float64Array | undefined): Float64Array =>
      (values ?? new Float64Array(to)).subarray(from, to);
    return [
      month,
      rounded(mean(part(air)), 2),
      rounded(swingOf(part(air)), 2),
      rounded(mean(part(moist)), 4),
      rounded(mean(part(wind)), 3),
      rounded((24 * mean(part(sun))) / 1000, 4),
      rounded(mean(part(vapour)), 4),
    ];
  });
  return [MONTHLY, ...rows];
}

/** Hours without gaps, and what was filled. */
function fillAll(file: WeatherFile) {
  const faults: string[] = [];
  const entries = QUANTITIES.flatMap((quantity): [Quantity, Float64Array][] => {
    const values = file.hours[quantity];
    if (values === undefined) return [];
    const { values: whole, fault } = fillGaps(quantity, values);
    if (fault !== undefined) faults.push(fault);
    return whole === undefined ? [] : [[quantity, whole]];
  });
  return { hours: Object.fromEntries(entries) as Hours, faults };
}

/** Stamps on the full hour are starts where that sets the sun right. */
function settled(file: WeatherFile): WeatherFile {
  if (file.stampsUnsure !== true) return file;
  const { sun } = file.hours;
  const late =
    sun &&
    sunLate(
      file,
      sun.map((each) => (Number.isNaN(each) ? 0 : each)),
    );
  const starts = late !== undefined && Math.abs(late + 1) < 0.4;
  if (!starts) {
    const why = late === undefined ? "the sun can't decide it without position and time zone" : "the sun agrees";
    return { ...file, remarks: [...file.remarks, `stamps on the hour were taken as its end: ${why}`] };
  }
  const moved = (values: Float64Array): Float64Array =>
    values.map((_, hour) => values[(hour + values.length - 1) % values.length] ?? 0);
  const hours = Object.fromEntries(Object.entries(file.hours).map(([quantity, values]) => [quantity, moved(values)]));
  return { ...file, hours, remarks: [...file.remarks, "stamps on the hour are its start, by the sun"] };
}

const SEPARATE = /centre of the sun|dew point/;

/** What CLIMATE.CHECK finds unlikely or impossible in the rows, but for what was said already. */
function unlikely(rows: readonly (readonly Cell[])[], latitude: number | undefined): readonly string[] {
  if (latitude === undefined) return ["the latitude is missing: the sun was not compared with that above the air"];
  try {
    return findingsOf(admitClimate(rows, "SI"), latitude, "SI")
      .filter(({ check, verdict }) => verdict !== "fine" && !SEPARATE.test(check))
      .map(
        ({ check, where, found, expected, verdict, meaning }) =>
          `${check} (${where}): ${found}, ${verdict}; stations show ${expected}; ${meaning}`,
      );
  } catch (fault) {
    return [fault instanceof Error ? fault.message : String(fault)];
  }
}

const NEEDED = [
  ["air", "temperature of the air"],
  ["sun", "sun on a level surface"],
  ["wind", "wind"],
] as const;

/**
 * @param text the file's text
 * @param hourly 8,760 rows in place of twelve
 * @throws Error that says what the file lacks
 */
export function readWeather(text: string, hourly: boolean): WeatherRows {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const file = settled(isEpw(lines) ? readEpw(lines) : readTable(lines));
  const { hours, faults: gaps } = fillAll(file);
  const whole = { ...file, hours };
  const missing: string[] = NEEDED.filter(([quantity]) => hours[quantity] === undefined).map(([, name]) => name);
  if (hours.humidity === undefined && hours.dewPoint === undefined) missing.push("humidity or dew point");
  if (missing.length > 0)
    throw new Error([`${missing.join(", ")}: missing for a year`, ...file.remarks, ...gaps].join(". "));
  const rows = hourly ? hourlyRows(hours) : monthlyRows(hours);
  const sky = hours.cloud ? [] : ["no cloud: POOL.YEAR finds it from the sun"];
  const faults = [...file.remarks, ...gaps, ...sky, ...faultsOf(whole), ...unlikely(hourlyRows(hours), file.latitude)];
  const { station, latitude, longitude, altitude, utc, source, period } = file;
  return { station, latitude, longitude, altitude, utc, source, period, faults, rows };
}
