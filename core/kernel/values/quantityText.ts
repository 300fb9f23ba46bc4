/**
 * Texts that carry their own unit: "105 degF", "12 m", "1 1/2 in", 3' 6". The unit texts that we print ourselves are
 * tried first, then trade spellings (unitWords.ts) and the units of unitTable.ts.
 */
import { own } from "./own";
import { feetAndInches, leadingNumber, plainMarks, type NumberRefusal } from "./numberText";
import { KINDS, us, type KindName, type System, type Unit } from "./quantity";
import { sameDimension, unitReader, type ValueInBase } from "./unitText";
import { TRADE, spelled } from "../unitWords";

/** A value in base units and, for a pressure with its own basis, that basis. */
export interface ReadQuantity {
  readonly value: number;
  readonly basis?: "gauge" | "absolute";
}

const lazily = <T>(build: () => T): (() => T) => {
  let built: T | undefined;
  return () => (built ??= build());
};

const units = lazily(() => unitReader(TRADE));

const printed = (kind: KindName, rest: string): Unit | undefined => {
  const { US, SI } = KINDS[kind];
  const wanted = rest.replace(/\s+/g, " ");
  return [US, SI].find((each) => each.text !== "" && each.text === wanted);
};

/** Temperature differences: letters and degrees of scale only. */
const DIFFERENCES: Readonly<Record<string, number>> = { degF: 5 / 9, F: 5 / 9, degC: 1, C: 1, K: 1, degR: 5 / 9 };
/** Letters that stand for a unit of one kind alone: 105 F, a thermistor of 10k. */
const LETTERS: Readonly<Partial<Record<KindName, Readonly<Record<string, string>>>>> = {
  temperature: { F: "degF", C: "degC" },
  resistance: { K: "kohm" },
};

const PRESSURE_BASIS = /^(psi|bar|kPa|Pa|MPa)\s*\(?([ga]|abs|gauge|absolute)\)?$/i;

/** "W/m²·K" and "BTU/h-ft²-°F" have one slash and mean all that is behind it; "W/mK" is no thousandth of a kelvin. */
const otherReadings = (text: string): readonly string[] => {
  const split = text.replace(/\bmK\b/g, "m K");
  const below = split.replace(/^([^/()]+)\/([^/()]+)$/, "$1/($2)");
  return [split, below].filter((each) => each !== text);
};

/** A number of a unit, where that has the wanted dimension. */
const readAs = (number: number, text: string, wanted: ValueInBase | undefined): ValueInBase | undefined => {
  const read = units().read(number, text);
  return read && wanted && sameDimension(read.dimension, wanted.dimension) ? read : undefined;
};

const byUnit = (kind: KindName, number: number, rest: string, base = KINDS[kind].base): number | NumberRefusal => {
  const wanted = units().read(1, base);
  const read = [rest, ...otherReadings(rest)].reduce<ValueInBase | undefined>(
    (found, text) => found ?? readAs(number, text, wanted),
    undefined,
  );
  if (read === undefined)
    return units().read(number, rest) === undefined
      ? `can't read the unit "${rest}"`
      : `"${rest}" is not a unit of ${kind}`;
  return kind === "temperature" ? read.value + read.shift : read.value;
};

const pressureText = (number: number, rest: string): ReadQuantity | undefined => {
  const match = PRESSURE_BASIS.exec(rest);
  if (!match) return undefined;
  const unit = (match[1] ?? "").toLowerCase();
  const factor = { psi: KINDS.pressure.US.factor, bar: 1e5, kpa: 1e3, pa: 1, mpa: 1e6 }[unit];
  if (factor === undefined) return undefined;
  return { value: number * factor, basis: /^a/i.test(match[2] ?? "") ? "absolute" : "gauge" };
};

/** Units of kinds that have no dimension: text → factor. Anything else is refused. */
const DIMENSIONLESS: Readonly<Partial<Record<KindName, Readonly<Record<string, number>>>>> = {
  "humidity ratio": { "%": 0.01, "g/kg": 0.001, "gr/lb": 1 / 7000, "lb/lb": 1, "kg/kg": 1 },
  "yearly rate": { "%": 0.01, "%/year": 0.01, "% a year": 0.01 },
  years: { y: 1, yr: 1, years: 1, a: 1 },
  "flow coefficient": { cv: KINDS["flow coefficient"].US.factor, kv: 1 },
  "gas flow coefficient": { cv: KINDS["gas flow coefficient"].US.factor, kv: 1 },
  fraction: { "%": 0.01 },
  "relative humidity": { "%": 0.01 },
  number: { "%": 0.01 },
  COP: {},
  count: {},
  money: {},
};

/** A hundredth of the currency, as prices of electricity are often quoted; C and P are currencies of their own. */
const CENTS = /^(?:¢|c|p|[Cc]ts?|[Cc]ents?|[Pp]ence)$/;
/** Thousands and millions of a currency: no price here is quoted so. */
const MULTIPLES = /^[kM](?:\p{Sc}|[A-Z]{3})$/u;
/** The sign in front of a price or an amount goes; that of cents goes behind it. */
const withoutSign = (text: string): string => text.replace(/^¢\s*([\d.,]+)/, "$1 ¢").replace(/^\p{Sc}\s*/u, "");

const CURRENCY = /^(?:\p{Sc}|[A-Z]{3})$/u;

const withoutDimension = (kind: KindName, number: number, rest: string): ReadQuantity | NumberRefusal => {
  const factor = own(DIMENSIONLESS[kind], rest.toLowerCase().replace(/^(?:percent|pct|% ?rh)$/, "%"));
  if (factor !== undefined) return { value: number * factor };
  if (kind === "money" && CENTS.test(rest)) return { value: number / 100 };
  if (kind === "money" && CURRENCY.test(rest)) return { value: number };
  const { text } = KINDS[kind].US;
  return text === ""
    ? `${kind === "number" ? "a number" : kind} takes no unit, got "${rest}"`
    : `"${rest}" is not a unit of ${kind}, such as ${text}`;
};

/** Money texts: a currency in front of a price's slash doesn't matter ("1.2 $/therm" is 1.2 per therm), cents do. */
const pricePer = (kind: KindName, number: number, rest: string): number | NumberRefusal => {
  const slashed = rest.replace(/(?:^|\s)\s*per\s+/i, "/");
  const [, currency = "", per] = /^([^\d\s/]{0,8})\s*\/\s*(.+)$/u.exec(slashed) ?? [];
  if (per === undefined || MULTIPLES.test(currency)) return `expected a price such as "${KINDS[kind].US.text}"`;
  const amount = byUnit(kind, 1, spelled(per), KINDS[kind].base.replace("1/", ""));
  if (typeof amount === "string") return amount;
  return (CENTS.test(currency) ? number / 100 : number) / amount;
};

/** "kWh/(m²·day)" and "MJ/m²/d" without their day: the kind is energy of one day. */
const ofOneDay = (words: string): string => words.replace(/(?:\s*[/*]\s*|\s+)(?:days?|d)\b/i, "");

/** Of water at 60 °F, N/m³: a head given as a pressure counts as a column of it, 2.309 ft for a psi. */
const WEIGHT_OF_WATER = 999.016 * 9.80665;

/** A head in ft or m of water, or as a pressure that water exerts; m. */
const headText = (number: number, words: string): number | NumberRefusal => {
  const plain = words.replace(/H2O$|\s*(?:of\s+)?head$/i, "");
  const asHead = byUnit("head", number, plain);
  const asPressure = typeof asHead === "string" ? byUnit("head", number, plain, "Pa") : 0;
  return typeof asHead === "string" && typeof asPressure === "number" ? asPressure / WEIGHT_OF_WATER : asHead;
};

/** "8 lb 4 oz" in pounds; undefined where the text isn't of that form. */
const poundsAndOunces = (text: string): number | undefined => {
  const match = /^(\d+)\s*lbs?\.?\s+(\d+(?:\.\d+)?)\s*oz\.?$/i.exec(text);
  return match ? Number(match[1]) + Number(match[2]) / 16 : undefined;
};

const DECIMAL_COMMA = /^[+-]?\d*,\d/;

/** The unit reader would take a number inside a unit as a factor. */
const SECOND_NUMBER = /^[.,'+-]?\d/;

/**
 * Reads a text as a quantity of a kind; a bare number has the system's unit. Returns base units, or a refusal that says
 * what was expected (without the argument's name).
 */
export const readQuantityText = (text: string, kind: KindName, system: System): ReadQuantity | NumberRefusal => {
  const plain = plainMarks(text);
  const bare = kind === "money" || kind.startsWith("price") ? withoutSign(plain) : plain;
  const inches = KINDS[kind].base === "m" ? feetAndInches(bare) : undefined;
  if (inches !== undefined) return typeof inches === "string" ? inches : { value: us("diameter", inches) };
  const pounds = kind === "mass" ? poundsAndOunces(bare) : undefined;
  if (pounds !== undefined) return { value: us("mass", pounds) };
  const start = leadingNumber(bare);
  if (typeof start === "string") return start;
  if (system === "US" && DECIMAL_COMMA.test(bare)) return "a comma is no decimal mark in US units: write a point";
  const { number } = start;
  // "4-ton"
  const rest = start.rest.trim().replace(/^-\s*(?=[a-z])/i, "");
  const units = KINDS[kind];
  const unit = rest === "" ? units[system] : printed(kind, rest);
  if (unit) return { value: (number + unit.shift) * unit.factor };
  if (SECOND_NUMBER.test(rest)) return `a second number follows ${number}: "${rest}"`;
  if (units.base === "" && kind !== "cooling rating") return withoutDimension(kind, number, rest);
  if (kind.startsWith("price")) return wrapped(pricePer(kind, number, rest));
  const pressure = kind === "pressure" ? pressureText(number, rest) : undefined;
  if (pressure) return pressure;
  const words = spelled(rest);
  const scale = kind === "temperature difference" ? own(DIFFERENCES, words) : undefined;
  if (scale !== undefined) return { value: number * scale };
  if (kind === "cooling rating") return coolingRating(number, words);
  if (kind === "head") return wrapped(headText(number, words));
  if (kind === "daily sun") return wrapped(byUnit(kind, number, ofOneDay(words)));
  return wrapped(byUnit(kind, number, own(LETTERS[kind], words.toUpperCase()) ?? words));
};

const wrapped = (value: number | NumberRefusal): ReadQuantity | NumberRefusal =>
  typeof value === "string" ? value : { value };

const coolingRating = (number: number, words: string): ReadQuantity | NumberRefusal => {
  if (/^EER$|^BTU\s*\/\s*\(?W\s*[*]?\s*h\)?$/i.test(words))
    return { value: number * KINDS["cooling rating"].US.factor };
  return /^COP$|^W\s*\/\s*W$/.test(words) ? { value: number } : `"${words}" is not a unit of cooling rating`;
};
