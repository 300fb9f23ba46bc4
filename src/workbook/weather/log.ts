/** Reads a logger's file over any time: pool, air and whatever else it has, as rows of equal steps. Gaps stay blank. */
import { scaleOf, unitOf, type Word } from "./columns";
import { QUANTITIES, believed, type Quantity } from "./hours";
import { clockOf, momentText, serialOf, spanText, type LogClock } from "./logClock";
import { sensorFaults, type LoggedSensor } from "./logSensors";
import { stampsOf } from "./stamps";
import {
  MOST_PRELUDE,
  SEPARATORS,
  headerAt,
  isNumber,
  isQuantity,
  placeIn,
  rowsBelow,
  cellReading,
  type Header,
} from "./table";

type Cell = string | number;

export interface LogRows {
  readonly station: string;
  readonly source: string;
  /** "2024-07-01 00:00 to 2024-07-08 00:00, readings every 5 minutes, here the means of hours" */
  readonly period: string;
  readonly faults: readonly string[];
  /** A header and rows: the time as a spreadsheet's date first. */
  readonly rows: readonly (readonly Cell[])[];
  readonly hasWater: boolean;
}

const SHOWN: Readonly<Record<Quantity | "water", readonly [head: string, decimals: number]>> = {
  water: ["water (°C)", 3],
  air: ["air (°C)", 3],
  dewPoint: ["dew point (°C)", 3],
  humidity: ["humidity", 4],
  wind: ["wind (m/s)", 3],
  sun: ["sun (W/m²)", 1],
  cloud: ["cloud (tenths)", 2],
  pressure: ["pressure (kPa)", 3],
};

/** Logs longer than this are cut to their last year. */
const MOST_ROWS = 8784;
const HOUR = 60;
const ENOUGH = 0.75;

const TIMES: ReadonlySet<Word> = new Set<Word>(["date", "time", "stamp", "month"]);

/** The first line that names a time and a quantity. */
function findHeader(lines: readonly string[]): Header | undefined {
  for (const [at, text] of lines.slice(0, MOST_PRELUDE).entries())
    for (const separator of SEPARATORS) {
      const header = headerAt(text, at, separator);
      const words = [...header.words.keys()];
      if (words.some((word) => TIMES.has(word)) && words.some((word) => word === "water" || isQuantity(word)))
        return header;
    }
  return undefined;
}

const decimalsOf = (cells: readonly string[]): number =>
  Math.max(0, ...cells.slice(0, 500).map((cell) => /\.(\d+)$/.exec(cell)?.[1]?.length ?? 0));

function known(
  quantity: Quantity | "water",
  at: number,
  header: Header,
  rows: readonly (readonly string[])[],
  units: readonly string[] | undefined,
  faults: string[],
): LoggedSensor {
  const kind = quantity === "water" ? "air" : quantity;
  const raw = rows.map((row) => cellReading(row[at], kind));
  const title = header.heads[at] ?? "";
  const unit = unitOf(title) || (units?.[at] ?? "");
  const { factor, shift, unit: name, guessed } = scaleOf(kind, unit, raw.filter(Number.isFinite));
  if (guessed && name !== "") faults.push(`${title}: no unit, taken as ${name}`);
  const values = raw.map((value) => believed(kind, factor * value + shift));
  const lost = raw.filter((value, row) => Number.isFinite(value) && Number.isNaN(values[row])).length;
  if (lost > 0) faults.push(`${title}: ${lost} readings are beyond what can be believed and were left blank`);
  const [head] = SHOWN[quantity];
  return {
    head,
    quantity,
    values,
    decimals: decimalsOf(rows.map((row) => row[at] ?? "")) - Math.round(Math.log10(factor)),
  };
}

/** Columns of numbers that no quantity of weather names keep their own head and numbers. */
function sensorsOf(
  header: Header,
  { rows, units }: ReturnType<typeof rowsBelow>,
  faults: string[],
): readonly LoggedSensor[] {
  const places = new Map<number, Quantity | "water">();
  for (const quantity of ["water", ...QUANTITIES] as const) {
    const at = header.words.get(quantity) ?? (quantity === "cloud" ? header.words.get("total") : undefined);
    if (at !== undefined && !places.has(at)) places.set(at, quantity);
  }
  const taken = new Set(
    [...header.words].filter(([word]) => word !== "water" && !isQuantity(word)).map(([, at]) => at),
  );
  return header.heads.flatMap((head, at): LoggedSensor[] => {
    const quantity = places.get(at);
    if (quantity !== undefined) return [known(quantity, at, header, rows, units, faults)];
    const cells = rows.map((row) => row[at] ?? "");
    const numbers = cells.filter(isNumber).length;
    if (taken.has(at) || head === "" || /^#|^(no|nr|record|index)\.?$/i.test(head) || numbers < rows.length / 2)
      return [];
    const values = cells.map((cell) => cellReading(cell, "air"));
    return [{ head, quantity: undefined, values, decimals: decimalsOf(cells) }];
  });
}

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** Rows of equal steps: means over the time before each stamp, blank where too little is there. */
function evenRows({ order, interval }: LogClock, sensors: readonly LoggedSensor[]) {
  const step = Math.max(HOUR, interval);
  const slot = (at: number): number => Math.ceil(Number((at / step).toFixed(6)));
  const [first, last] = [slot(order[0]?.at ?? 0), slot(order.at(-1)?.at ?? 0)];
  const from = Math.max(first, last - MOST_ROWS + 1);
  const inSlots = new Map<number, number[]>();
  for (const { row, at } of order) {
    const rows = inSlots.get(slot(at));
    if (rows === undefined) inSlots.set(slot(at), [row]);
    else rows.push(row);
  }
  const wanted = ENOUGH * Math.max(1, step / interval);
  const rows = Array.from({ length: last - from + 1 }, (_, place): readonly Cell[] => {
    const within = inSlots.get(from + place) ?? [];
    const means = sensors.map(({ values, quantity, decimals }): Cell => {
      const there = within.map((row) => values[row] ?? Number.NaN).filter((value) => !Number.isNaN(value));
      if (there.length < Math.min(wanted, step / interval)) return "";
      const digits = quantity === undefined ? Math.min(6, decimals + 2) : SHOWN[quantity][1];
      return rounded(there.reduce((a, b) => a + b, 0) / there.length, digits);
    });
    return [serialOf((from + place) * step), ...means];
  });
  // The first hour often has its last reading only.
  const begin = rows.findIndex((row) => row.slice(1).some((cell) => cell !== ""));
  return { rows: rows.slice(Math.max(0, begin)), step, cut: from - first };
}

/** @throws Error that says what the file lacks */
export function readLog(lines: readonly string[]): LogRows {
  const header = findHeader(lines);
  if (header === undefined)
    throw new Error("no EPW, no TMY3, and no line that names a time and a temperature or another quantity of weather");
  const below = rowsBelow(lines, header);
  const stamps = stampsOf(below.rows, Object.fromEntries(header.words));
  if (stamps === undefined) throw new Error("the table has no column of dates");
  const clock = clockOf(stamps.stamps);
  const faults = [...stamps.remarks, ...clock.faults];
  const sensors = sensorsOf(header, below, faults);
  faults.push(...sensors.flatMap((sensor) => sensorFaults(sensor, clock)));
  const { rows, step, cut } = evenRows(clock, sensors);
  if (cut > 0) faults.push(`more than a year: its last ${spanText(MOST_ROWS * step)} were taken`);
  const [from, to] = [clock.order[0]?.at ?? 0, clock.order.at(-1)?.at ?? 0];
  const means = step > clock.interval ? ", here the means of the hour before each time" : "";
  const { station, source } = placeIn(lines, header);
  return {
    station,
    source: source.replace("table of weather", "logger's table"),
    period: `${momentText(from)} to ${momentText(to)}, readings every ${spanText(clock.interval)}${means}`,
    faults,
    rows: [["time", ...sensors.map(({ head }) => head)], ...rows],
    hasWater: sensors.some(({ quantity }) => quantity === "water"),
  };
}
