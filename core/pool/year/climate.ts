/**
 * The climate argument: 12 rows of monthly means or 8,760 rows of hours, with or without a header row that names columns in
 * any order and may carry units. Admitted here column by column: 60,000 cells one by one would cost more than the year.
 */
import { folded } from "../../kernel/argument";
import { mend } from "../../kernel/fault";
import { nearest } from "../../kernel/nearest";
import { KINDS, show, showNumber, type KindName, type System } from "../../kernel/quantity";
import { readQuantityText } from "../../kernel/quantityText";
import { came, sizeText, type RawMatrix, type RawScalar } from "../../kernel/raw";
import { HOURS_OF_YEAR } from "./calendar";

export type Column = "air" | "swing" | "humidity" | "dewPoint" | "windAt10m" | "sun" | "cloud" | "pressure" | "mains";

export interface Climate {
  readonly monthly: boolean;
  /** In base units; a column that isn't there is missing. */
  readonly columns: Readonly<Partial<Record<Column, Float64Array>>>;
}

const MONTHLY_ROWS = 12;
/** Nine columns, a header, and month, day and hour as weather files have them. */
export const MOST_CLIMATE_CELLS = 13 * (HOURS_OF_YEAR + 8);

const NAMES: Readonly<Record<Column, string>> = {
  air: "air",
  swing: "swing",
  humidity: "humidity",
  dewPoint: "dew point",
  windAt10m: "wind at 10 m",
  sun: "sun",
  cloud: "cloud",
  pressure: "pressure",
  mains: "mains",
};

const HEADS = new Map<string, Column | "skip">([
  ...(Object.keys(NAMES) as Column[]).map((key) => [folded(NAMES[key]), key] as const),
  ...(["airtemperature", "meanair", "drybulb", "temperature"] as const).map((head) => [head, "air"] as const),
  ...(["dailyswing", "temperatureswing"] as const).map((head) => [head, "swing"] as const),
  ...(["meanhumidity", "relativehumidity"] as const).map((head) => [head, "humidity"] as const),
  ...(["wind", "windspeed", "wind10m"] as const).map((head) => [head, "windAt10m"] as const),
  ...(["sunperday", "dailysun", "globalhorizontal", "sunaday"] as const).map((head) => [head, "sun"] as const),
  ...(["cloudtenths", "opaquecloud"] as const).map((head) => [head, "cloud"] as const),
  ...(["mainswater", "mainstemperature"] as const).map((head) => [head, "mains"] as const),
  ...(["month", "day", "hour"] as const).map((head) => [head, "skip"] as const),
]);

/** In the order that stands without a header. */
const MONTHLY_ORDER: readonly Column[] = ["air", "swing", "humidity", "windAt10m", "sun", "mains"];
const HOURLY_ORDER: readonly Column[] = ["air", "humidity", "windAt10m", "sun", "cloud", "pressure"];

interface Rule {
  readonly kind: KindName;
  /** In base units, both ends allowed. */
  readonly from: number;
  readonly to: number;
  readonly hint: string;
}

const degC = (value: number): number => value + 273.15;

/** Beyond any weather; what lies outside was typed in another unit or is a mark for missing data. */
const RULES: Readonly<Record<Column, Rule>> = {
  air: { kind: "temperature", from: degC(-60), to: degC(60), hint: "another unit, or a mark for missing data?" },
  swing: { kind: "temperature difference", from: 0, to: 40, hint: "a mean daily maximum less minimum" },
  humidity: { kind: "relative humidity", from: 0.005, to: 1, hint: "a fraction: type 60% or 0.6" },
  dewPoint: { kind: "temperature", from: degC(-75), to: degC(40), hint: "another unit, or missing data?" },
  windAt10m: { kind: "wind speed", from: 0, to: 60, hint: "another unit, or a mark for missing data?" },
  sun: { kind: "irradiance", from: 0, to: 1500, hint: "on a level surface; another unit?" },
  cloud: { kind: "number", from: 0, to: 10, hint: "opaque cloud in tenths of the sky" },
  pressure: { kind: "pressure", from: 45_000, to: 110_000, hint: "pressure of the air at the place; another unit?" },
  mains: { kind: "temperature", from: degC(0), to: degC(50), hint: "temperature of the mains; another unit?" },
};

const DAILY_SUN: Rule = { kind: "daily sun", from: 0, to: 4.7e7, hint: "of a day on a level surface; another unit?" };

const ruleOf = (column: Column, monthly: boolean): Rule => (column === "sun" && monthly ? DAILY_SUN : RULES[column]);

/** Units as weather files write them. */
const UNIT_WORDS: Readonly<Record<string, string>> = {
  "wh/m2": "W/m²",
  "wh/m²": "W/m²",
  "w/m2": "W/m²",
  "kwh/m2": "kWh/(m²·day)",
  "kwh/m²": "kWh/(m²·day)",
  "kwh/m2/day": "kWh/(m²·day)",
  "kwh/m²/day": "kWh/(m²·day)",
  "kwh/(m2 day)": "kWh/(m²·day)",
  "btu/ft2/day": "BTU/(ft²·day)",
  tenths: "",
  fraction: "",
};

interface Place {
  readonly column: Column;
  readonly at: number;
  readonly unit: string;
}

const HEADER = /^(.*?)(?:\s*[(,]\s*([^()]*(?:\([^()]*\)[^()]*)?)\)?)?$/;

const placeOf = (head: RawScalar, at: number): readonly Place[] => {
  if (head === null || head === "") return [];
  const match = HEADER.exec(String(head).trim());
  const column = HEADS.get(folded(match?.[1] ?? ""));
  if (column === undefined)
    throw mend(
      `climate, header: no column "${String(head).slice(0, 40)}" here; the nearest is "${nearest(String(match?.[1] ?? ""), Object.values(NAMES))}"`,
    );
  const unit = (match?.[2] ?? "").trim();
  return column === "skip" ? [] : [{ column, at, unit: UNIT_WORDS[unit.toLowerCase()] ?? unit }];
};

const isBlank = (cell: RawScalar | undefined): boolean => cell === null || cell === undefined || cell === "";

/** A blank cell inside a range arrives as 0 on some hosts; no weather is all 0. */
const isBlankLine = (line: readonly RawScalar[]): boolean => line.every((cell) => isBlank(cell) || cell === 0);

/** A header is a first row of words, at least one of them a column's name. */
const hasHeader = (line: readonly RawScalar[]): boolean =>
  !line.some((cell) => typeof cell === "number") &&
  line.some((cell) => typeof cell === "string" && HEADS.has(folded(HEADER.exec(cell.trim())?.[1] ?? "")));

const checkTwice = (places: readonly Place[]): readonly Place[] => {
  for (const { column } of places)
    if (places.filter((each) => each.column === column).length > 1)
      throw mend(`climate, header: the column "${NAMES[column]}" stands twice`);
  return places;
};

const rowsText = (rows: number): string => {
  if (rows === 8784) return " (a leap year: leave out 29 February)";
  return rows > 8000 && rows < HOURS_OF_YEAR ? " (hours are missing)" : "";
};

/** A number of one unit in base units: value × factor + shift. */
const lineOf = (place: Place, kind: KindName, system: System): readonly [number, number] => {
  if (place.unit === "") {
    const unit = KINDS[kind][system];
    return [unit.factor, unit.shift * unit.factor];
  }
  const at = (number: number): number => {
    const read = readQuantityText(`${number} ${place.unit}`, kind, system);
    if (typeof read === "string") throw mend(`climate, header, ${NAMES[place.column]}: unit "${place.unit}": ${read}`);
    return read.value;
  };
  const shift = at(0);
  return [at(1) - shift, shift];
};

const refuse = (row: number, column: Column, says: string): Error =>
  mend(`climate, row ${row}, ${NAMES[column]}: ${says}`);

const textValue = (cell: RawScalar, place: Place, kind: KindName, row: number, system: System): number => {
  const text = typeof cell === "string" ? cell.trim() : "";
  const bare = /^[-+.,\d]+$/.test(text) && place.unit !== "" ? `${text} ${place.unit}` : text;
  const read = text === "" ? "" : readQuantityText(bare, kind, system);
  if (typeof read === "string") throw refuse(row, place.column, `expected a number, got ${came(cell)}`);
  return read.value;
};

const readColumn = (
  lines: RawMatrix,
  place: Place,
  monthly: boolean,
  firstRow: number,
  system: System,
): Float64Array => {
  const { kind, from, to, hint } = ruleOf(place.column, monthly);
  const [factor, shift] = lineOf(place, kind, system);
  const values = new Float64Array(lines.length);
  for (let i = 0; i < lines.length; i++) {
    const cell = lines[i]?.[place.at];
    const row = firstRow + i;
    if (isBlank(cell)) throw refuse(row, place.column, "is blank");
    const value = typeof cell === "number" ? cell * factor + shift : textValue(cell ?? null, place, kind, row, system);
    if (!(value >= from - 1e-9 && value <= to + 1e-9))
      throw refuse(
        row,
        place.column,
        `must be from ${show(from, kind, system)} to ${show(to, kind, system)} (${hint}), got ${Number.isFinite(value) ? show(value, kind, system) : came(cell ?? null)}`,
      );
    values[i] = value;
  }
  return values;
};

const NEEDED = {
  monthly: ["air", "swing", "humidity", "windAt10m", "sun"],
  hourly: ["air", "windAt10m", "sun"],
} as const satisfies Readonly<Record<string, readonly Column[]>>;

const checkColumns = (places: readonly Place[], monthly: boolean): void => {
  const has = (column: Column): boolean => places.some((place) => place.column === column);
  const missing = NEEDED[monthly ? "monthly" : "hourly"].find((column) => !has(column));
  if (missing) throw mend(`climate: the column "${NAMES[missing]}" is missing`);
  if (!monthly && !has("humidity") && !has("dewPoint"))
    throw mend('climate: hourly rows need a column "humidity" or "dew point"');
};

const filled = (matrix: RawMatrix): number => {
  let last = matrix.length;
  while (last > 0 && isBlankLine(matrix[last - 1] ?? [])) last--;
  return last;
};

/** Admits the climate; a fault names row and column, rows counted from the top of the range. */
export const admitClimate = (matrix: RawMatrix, system: System): Climate => {
  const header = hasHeader(matrix[0] ?? []);
  const first = header ? 1 : 0;
  const lines = matrix.slice(first, filled(matrix));
  const monthly = lines.length === MONTHLY_ROWS;
  if (!monthly && lines.length !== HOURS_OF_YEAR)
    throw mend(
      `climate: expected 12 rows (months) or 8,760 rows (hours) ${header ? "below the header" : ""}, got ${showNumber(lines.length)}${rowsText(lines.length)}; the range has ${sizeText(matrix)}`,
    );
  const order = monthly ? MONTHLY_ORDER : HOURLY_ORDER;
  const width = Math.max(...lines.slice(0, 2).map((line) => line.length));
  const places = header
    ? checkTwice((matrix[0] ?? []).flatMap(placeOf))
    : order.slice(0, width).map((column, at) => ({ column, at, unit: "" }));
  if (!header && width > order.length)
    throw mend(`climate: at most ${order.length} columns without a header row, got ${width}`);
  checkColumns(places, monthly);
  const used = monthly ? places.filter(({ column }) => MONTHLY_ORDER.includes(column)) : places;
  const columns = Object.fromEntries(
    used.map((place) => [place.column, readColumn(lines, place, monthly, first + 1, system)]),
  );
  return { monthly, columns };
};
