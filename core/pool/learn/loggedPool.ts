/** A pool run through the hours of a log in the log's own weather. Strict SI. */
import { FIRST_DAY, HOUR, HOURS_OF_DAY, HOURS_OF_YEAR } from "../../numeric/calendar";
import { valueError } from "../../kernel/values/fault";
import type { CellMatrix } from "../../kernel/values/cellInput";
import type { System } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { mean, sumOf } from "../../numeric/series";
import { admitClimate, climateLines } from "../year/climate";
import { runPool } from "../year/hourLoop";
import type { YearInputs } from "../year/inputs";
import { setUpYear, siteOf } from "../year/setUp";
import { refuseImpossibleSun } from "../year/sunCheck";
import { weatherOf, type Weather } from "../year/weather";

export interface LogReading {
  /** s of the year from midnight of 1 January; dates of the sheet as hours. */
  readonly time: number;
  readonly water: number;
  readonly air: number;
  /** W, since the row before */
  readonly heat: number;
}

/** Numbers of hours from this on are dates: days of the sheet's calendar, in which 2 January 1900 is 2. */
const FIRST_DATE = 20_000;
/** The sheet's calendar has a 29 February 1900. */
const FALSE_DAY = 2;

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

/** Hours of the year of a date, as a year without leap day counts them: 29 February is the 28th once more. */
function hourOfDate(serial: number): number {
  let day = Math.floor(serial + 1e-9) - FALSE_DAY;
  let year = 1900;
  for (; day >= (isLeap(year) ? 366 : 365); year++) day -= isLeap(year) ? 366 : 365;
  const place = isLeap(year) && day >= (FIRST_DAY[2] ?? 59) ? day - 1 : day;
  return HOURS_OF_DAY * (place + Math.max(0, serial - Math.floor(serial + 1e-9)));
}

/** Hours of the year of each reading, from hours or dates. */
export function logHours(log: readonly LogReading[]): readonly number[] {
  const dated = (log[0]?.time ?? 0) / HOUR >= FIRST_DATE;
  const hours = log.map(({ time }) => (dated ? hourOfDate(time / HOUR) : time / HOUR));
  hours.forEach((hour, row) => {
    if (hour > HOURS_OF_YEAR) throw valueError(`log, row ${row + 1}, time: must be at most 8,760 h, or a date`);
    if (row > 0 && hour <= (hours[row - 1] ?? 0))
      throw valueError(
        `log, row ${row + 1}, time: must be later than the row before; a log over New Year is cut in two`,
      );
  });
  return hours;
}

/** The weather of the log's hours, on the hours of a year: all 8,760 rows, or those from the log's first hour on. */
export function logClimate(cells: CellMatrix, first: number, last: number, system: System) {
  const { header, lines } = climateLines(cells);
  if (lines.length === 12)
    throw valueError("climate: 12 rows of months are a typical year: give the hours that the log was taken in");
  if (lines.length === HOURS_OF_YEAR) return { climate: admitClimate(cells, system), whole: true };
  const needed = Math.ceil(last) - Math.floor(first);
  if (lines.length < needed)
    throw valueError(
      `climate: expected 8,760 rows, or ${needed} from the hour of the log's first row on, got ${lines.length}`,
    );
  const days = lines.length >= HOURS_OF_DAY ? HOURS_OF_DAY * Math.floor(lines.length / HOURS_OF_DAY) : lines.length;
  const padded = Array.from({ length: HOURS_OF_YEAR }, (_, hour) => {
    const at = hour - Math.floor(first);
    const place = at >= 0 && at < lines.length ? at : ((at % days) + days) % days;
    return lines[place] ?? [];
  });
  return { climate: admitClimate([...header, ...padded], system), whole: false };
}

/** Values of the hours at a time, each the mean of its hour. */
function between(values: Float64Array, hour: number): number {
  const at = hour - 0.5;
  const place = Math.floor(at);
  const left = values[Math.max(0, place)] ?? 0;
  const right = values[Math.min(values.length - 1, place + 1)] ?? left;
  return left + (right - left) * (at - place);
}

/** Root mean square by which the air may differ from the log's own, K: typical years are 4 and more off. */
const SAME_AIR = 2.5;

/** Refuses a climate whose air isn't the log's. */
export function checkAir(weather: Weather, log: readonly LogReading[], hours: readonly number[]): void {
  const errors = log.map(({ air }, row) => between(weather.air, hours[row] ?? 0) - air);
  const off = Math.sqrt(mean(errors.map((error) => error * error)));
  if (off > SAME_AIR)
    throw valueError(
      `climate: its air is ${quantityMark("temperature difference", off)} off that of the log: a typical year, or another clock or place; give the weather that the log was taken in`,
    );
}

export interface LoggedPool {
  /** Water at the readings, K, by the block and the start. */
  readonly model: (inputs: YearInputs, start: number) => readonly number[];
  readonly weather: Weather;
}

/** Hours of heat from the rows, W. */
function heatOfHours(log: readonly LogReading[], hours: readonly number[]): Float64Array {
  const heat = new Float64Array(HOURS_OF_YEAR);
  log.slice(1).forEach((row, i) => {
    const [from, to] = [hours[i] ?? 0, hours[i + 1] ?? 0];
    for (let hour = Math.floor(from); hour < to; hour++)
      heat[hour] = (heat[hour] ?? 0) + row.heat * (Math.min(to, hour + 1) - Math.max(from, hour));
  });
  return heat;
}

/** Sets a pool up for its log. */
export function loggedPool(
  inputs: YearInputs,
  cells: CellMatrix,
  log: readonly LogReading[],
  system: System,
): LoggedPool {
  const hours = logHours(log);
  const [first = 0, last = 0] = [hours[0], hours.at(-1)];
  const { climate, whole } = logClimate(cells, first, last, system);
  if (whole) refuseImpossibleSun(climate, inputs.latitude);
  let site = JSON.stringify(siteOf(inputs));
  let weather = weatherOf(climate, siteOf(inputs));
  checkAir(weather, log, hours);
  const heat = heatOfHours(log, hours);
  const heated = sumOf(log, (row) => row.heat) > 0;
  const [from, to] = [Math.floor(first), Math.min(HOURS_OF_YEAR, Math.ceil(last) + 1)];
  const model = (block: YearInputs, start: number): readonly number[] => {
    const own = JSON.stringify(siteOf(block));
    if (own !== site) [site, weather] = [own, weatherOf(climate, siteOf(block))];
    const { run } = setUpYear(block, weather);
    const extra = heated ? { extra: heat.map((watts) => watts / block.poolArea) } : {};
    const begin = { temperature: start, ice: 0, onPool: false, since: HOUR, tank: weather.mains[from] ?? start };
    const year = runPool({ ...run, backUp: undefined, ...extra }, begin, from, to);
    year.temperature.fill(start, 0, from);
    return hours.map((hour) => between(year.temperature, hour));
  };
  return { model, weather };
}
