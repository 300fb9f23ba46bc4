/**
 * The climate argument: 12 rows of monthly means or 8,760 rows of hours, with or without a header row that names columns in
 * any order and may carry units. Admitted here column by column: 60,000 cells one by one would cost more than the year.
 */
import { HOURS_OF_YEAR } from "../../numeric/calendar";
import { meanAndSwing } from "../../air/climateWords";
import { valueError } from "../../kernel/values/fault";
import { lookalike } from "../../kernel/call/nearest";
import { KINDS, show, showNumber, type KindName, type System } from "../../kernel/values/quantity";
import { readQuantityText } from "../../kernel/values/quantityText";
import { describeInput, sizeText, type CellMatrix, type CellScalar } from "../../kernel/values/cellInput";
import {
  HOURLY_ORDER,
  MONTHLY_ORDER,
  NAMES,
  NEEDED,
  FILE_UNITS,
  columnOf,
  ruleOf,
  type Column,
} from "./climateColumns";

export interface Climate {
  readonly monthly: boolean;
  /** In base units; a column that isn't there is missing. */
  readonly columns: Readonly<Partial<Record<Column, Float64Array>>>;
}

const MONTHLY_ROWS = 12;
const MONTHLY_COLUMNS: readonly Column[] = [...MONTHLY_ORDER, "vapourPressure", "high", "low"];
/** Nine columns, a header, and month, day and hour as weather files have them. */
export const MOST_CLIMATE_CELLS = 13 * (HOURS_OF_YEAR + 8);

interface Place {
  readonly column: Column;
  readonly at: number;
  readonly unit: string;
}

const HEADER = /^(.*?)(?:\s*[(,]\s*([^()]*(?:\([^()]*\)[^()]*)?)\)?)?$/;

/** Name and unit of a head; a name may itself end in brackets. */
function splitHead(head: string): readonly [name: string, unit: string] {
  const text = head.trim();
  const match = HEADER.exec(text);
  const name = match?.[1] ?? "";
  return columnOf(name) === undefined && columnOf(text) !== undefined ? [text, ""] : [name, (match?.[2] ?? "").trim()];
}

const KNOWN = Object.values(NAMES);

function unknownColumn(head: string, name: string): Error {
  const alike = lookalike(name, KNOWN);
  return valueError(
    `climate, header: no column "${head.slice(0, 40)}" here; ${alike === undefined ? `columns are ${KNOWN.join(", ")}` : `the nearest is "${alike}"`}`,
  );
}

const placeOf = (head: CellScalar, at: number): readonly Place[] => {
  if (head === null || head === "") return [];
  const [name, unit] = splitHead(String(head));
  const column = columnOf(name);
  if (column === undefined) throw unknownColumn(String(head), name);
  return column === "skip" ? [] : [{ column, at, unit: FILE_UNITS[unit.toLowerCase()] ?? unit }];
};

const isBlank = (cell: CellScalar | undefined): boolean => cell === null || cell === undefined || cell === "";

/** A blank cell inside a range arrives as 0 on some hosts; no weather is all 0. */
const isBlankLine = (line: readonly CellScalar[]): boolean => line.every((cell) => isBlank(cell) || cell === 0);

/** A header is a first row of words, at least one of them a column's name. */
const hasHeader = (line: readonly CellScalar[]): boolean =>
  !line.some((cell) => typeof cell === "number") &&
  line.some((cell) => typeof cell === "string" && columnOf(splitHead(cell)[0]) !== undefined);

const checkTwice = (places: readonly Place[]): readonly Place[] => {
  for (const { column } of places)
    if (places.filter((each) => each.column === column).length > 1)
      throw valueError(`climate, header: the column "${NAMES[column]}" appears twice`);
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
    if (typeof read === "string")
      throw valueError(`climate, header, ${NAMES[place.column]}: unit "${place.unit}": ${read}`);
    return read.value;
  };
  const shift = at(0);
  return [at(1) - shift, shift];
};

const refuse = (row: number, column: Column, says: string): Error =>
  valueError(`climate, row ${row}, ${NAMES[column]}: ${says}`);

const textValue = (cell: CellScalar, place: Place, kind: KindName, row: number, system: System): number => {
  const text = typeof cell === "string" ? cell.trim() : "";
  const bare = /^[-+.,\d]+$/.test(text) && place.unit !== "" ? `${text} ${place.unit}` : text;
  const read = text === "" ? "" : readQuantityText(bare, kind, system);
  if (typeof read === "string") throw refuse(row, place.column, `expected a number, got ${describeInput(cell)}`);
  return read.value;
};

const readColumn = (
  lines: CellMatrix,
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
        `must be from ${show(from, kind, system)} to ${show(to, kind, system)} (${hint}), got ${Number.isFinite(value) ? show(value, kind, system) : describeInput(cell ?? null)}`,
      );
    values[i] = value;
  }
  return values;
};

const checkColumns = (places: readonly Place[], monthly: boolean): void => {
  const has = (column: Column): boolean => places.some((place) => place.column === column);
  const extremes = has("high") && has("low");
  const inExtremes = (column: Column): boolean => extremes && (column === "air" || column === "swing");
  if (!monthly && (has("high") || has("low")))
    throw valueError('climate, header: hourly rows take "air", not "high" and "low"');
  const missing = NEEDED[monthly ? "monthly" : "hourly"].find((column) => !has(column) && !inExtremes(column));
  if (missing) throw valueError(`climate: the column "${NAMES[missing]}" is missing`);
  if (!monthly && !has("humidity") && !has("dewPoint"))
    throw valueError('climate: hourly rows need a column "humidity" or "dew point"');
};

/** Mean air and swing of twelve months by their highs and lows, where they aren't columns themselves. */
function withMeans(columns: Climate["columns"], firstRow: number): Climate["columns"] {
  const { high, low } = columns;
  if (high === undefined || low === undefined) return columns;
  const means = Array.from(high, (most, month) => meanAndSwing(most, low[month] ?? most));
  const crossed = means.findIndex(({ swing }) => swing < 0);
  if (crossed >= 0) throw refuse(firstRow + crossed, "high", "is below low");
  return {
    air: Float64Array.from(means, ({ air }) => air),
    swing: Float64Array.from(means, ({ swing }) => swing),
    ...columns,
  };
}

const filled = (matrix: CellMatrix): number => {
  let last = matrix.length;
  while (last > 0 && isBlankLine(matrix[last - 1] ?? [])) last--;
  return last;
};

/** A range's header row, if it has one, and the filled rows below it. */
export function climateLines(matrix: CellMatrix): { readonly header: CellMatrix; readonly lines: CellMatrix } {
  const first = hasHeader(matrix[0] ?? []) ? 1 : 0;
  return { header: matrix.slice(0, first), lines: matrix.slice(first, filled(matrix)) };
}

/** Admits the climate; a fault names row and column, rows counted from the top of the range. */
export const admitClimate = (matrix: CellMatrix, system: System): Climate => {
  const { header: heads, lines } = climateLines(matrix);
  const [first, header] = [heads.length, heads.length > 0];
  const monthly = lines.length === MONTHLY_ROWS;
  if (!monthly && lines.length !== HOURS_OF_YEAR)
    throw valueError(
      `climate: expected 12 rows (months) or 8,760 rows (hours)${header ? " below the header" : ""}, got ${showNumber(lines.length)}${rowsText(lines.length)}; the range has ${sizeText(matrix)}`,
    );
  const order = monthly ? MONTHLY_ORDER : HOURLY_ORDER;
  const width = Math.max(...lines.slice(0, 2).map((line) => line.length));
  const places = header
    ? checkTwice((matrix[0] ?? []).flatMap(placeOf))
    : order.slice(0, width).map((column, at) => ({ column, at, unit: "" }));
  if (!header && width > order.length)
    throw valueError(`climate: at most ${order.length} columns without a header row, got ${width}`);
  checkColumns(places, monthly);
  const used = monthly ? places.filter(({ column }) => MONTHLY_COLUMNS.includes(column)) : places;
  const columns = Object.fromEntries(
    used.map((place) => [place.column, readColumn(lines, place, monthly, first + 1, system)]),
  );
  return { monthly, columns: withMeans(columns, first + 1) };
};
