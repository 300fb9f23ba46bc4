/** The columns of the climate: their names, units and limits. */
import { normalizeKey } from "../../kernel/define/argument";
import { climateWord, type ClimateWord } from "../../air/climateWords";
import type { KindName } from "../../kernel/values/quantity";

export type Column =
  | "air"
  | "high"
  | "low"
  | "swing"
  | "humidity"
  | "dewPoint"
  | "vapourPressure"
  | "windAt10m"
  | "sun"
  | "cloud"
  | "pressure"
  | "mains";

export const NAMES: Readonly<Record<Column, string>> = {
  air: "air",
  high: "high",
  low: "low",
  swing: "swing",
  humidity: "humidity",
  dewPoint: "dew point",
  vapourPressure: "vapour pressure",
  windAt10m: "wind at 10 m",
  sun: "sun",
  cloud: "cloud",
  pressure: "pressure",
  mains: "mains",
};

/** Columns that are passed over. */
const PASSED_OVER: ReadonlySet<string> = new Set(["month", "day", "hour", "station", "distance"]);

const COLUMNS: Readonly<Partial<Record<ClimateWord, Column>>> = {
  "dew point": "dewPoint",
  "vapour pressure": "vapourPressure",
  wind: "windAt10m",
};

/** The column that a head names, without its unit; undefined where it is none. */
export function columnOf(head: string): Column | "skip" | undefined {
  if (PASSED_OVER.has(normalizeKey(head))) return "skip";
  const word = climateWord(head);
  return word && (COLUMNS[word] ?? (word as Column));
}

/** The order of the columns where there is no header. */
export const MONTHLY_ORDER: readonly Column[] = ["air", "swing", "humidity", "windAt10m", "sun", "mains"];
export const HOURLY_ORDER: readonly Column[] = ["air", "humidity", "windAt10m", "sun", "cloud", "pressure"];

interface Rule {
  readonly kind: KindName;
  /** In base units, both ends allowed. */
  readonly from: number;
  readonly to: number;
  readonly hint: string;
}

const degC = (value: number): number => value + 273.15;

const AIR: Rule = {
  kind: "temperature",
  from: degC(-60),
  to: degC(60),
  hint: "another unit, or a mark for missing data?",
};

/** Beyond any weather; what lies outside was typed in another unit or is a mark for missing data. */
const RULES: Readonly<Record<Column, Rule>> = {
  air: AIR,
  high: AIR,
  low: AIR,
  swing: { kind: "temperature difference", from: 0, to: 40, hint: "a mean daily maximum less minimum" },
  humidity: { kind: "relative humidity", from: 0.005, to: 1, hint: "a fraction: type 60% or 0.6" },
  dewPoint: { kind: "temperature", from: degC(-75), to: degC(40), hint: "another unit, or missing data?" },
  vapourPressure: { kind: "pressure", from: 1, to: 8000, hint: "of the water in the air; another unit?" },
  windAt10m: { kind: "wind speed", from: 0, to: 60, hint: "another unit, or a mark for missing data?" },
  sun: { kind: "irradiance", from: 0, to: 1500, hint: "on a level surface; another unit?" },
  cloud: { kind: "number", from: 0, to: 10, hint: "opaque cloud in tenths of the sky" },
  pressure: { kind: "pressure", from: 45_000, to: 110_000, hint: "pressure of the air at the place; another unit?" },
  mains: { kind: "temperature", from: degC(0), to: degC(50), hint: "temperature of the mains; another unit?" },
};

const DAILY_SUN: Rule = { kind: "daily sun", from: 0, to: 4.7e7, hint: "of a day on a level surface; another unit?" };

export const ruleOf = (column: Column, monthly: boolean): Rule =>
  column === "sun" && monthly ? DAILY_SUN : RULES[column];

/** Units as weather files write them. */
export const FILE_UNITS: Readonly<Record<string, string>> = {
  "wh/m2": "W/m²",
  "wh/m²": "W/m²",
  tenths: "",
  fraction: "",
};

/** Columns that a climate must have. */
export const NEEDED = {
  monthly: ["air", "swing", "humidity", "windAt10m", "sun"],
  hourly: ["air", "windAt10m", "sun"],
} as const satisfies Readonly<Record<string, readonly Column[]>>;
