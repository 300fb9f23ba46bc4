/** Reads unit texts such as "BTU/(h ft^2 degF)": products, quotients, whole or broken powers, brackets, prefixes. */
import { PREFIXES, NAMED_UNITS, ZERO_POINTS } from "./unitTable";

/** Exponents of kg, m, s, A and K. */
type Dimension = readonly number[];

interface NamedUnit {
  readonly size: number;
  readonly shift: number;
  readonly dimension: Dimension;
  readonly prefixes: string;
}

/** A value in SI base units. */
export interface ValueInBase {
  readonly value: number;
  /** What a temperature on a shifted scale needs besides; 0 for a difference and for everything else. */
  readonly shift: number;
  readonly dimension: Dimension;
}

export interface UnitReader {
  /** Undefined for a unit text that can't be read. */
  read(value: number, text: string): ValueInBase | undefined;
}

const ratio = (text: string): number =>
  text
    .split("/")
    .map(Number)
    .reduce((above, below) => above / below);

const namedUnits = (): Map<string, NamedUnit> => {
  const found = new Map<string, NamedUnit>();
  for (const [dimension, groups] of NAMED_UNITS)
    for (const group of groups.split("|")) {
      const [, names = "", size = "", prefixes = ""] = /^(.*?) ([\d./e-]+) ?(\w*)$/.exec(group) ?? [];
      for (const name of names.split(" ")) {
        const shift = ratio(size) * (ZERO_POINTS[name] ?? 0);
        found.set(name, { size: ratio(size), shift, dimension, prefixes });
      }
    }
  return found;
};

/** Prefix → its power of ten, by class. */
const powersOfTen = (): ReadonlyMap<string, number> => {
  const powers = new Map([["MM MM", 6]]);
  for (const prefix of PREFIXES.split("|")) {
    const [short = "", long = "", power = ""] = prefix.split(" ");
    for (const [key, times] of [
      [`S ${short}`, 1],
      [`L ${long}`, 1],
      [`SL ${short}`, 1],
      [`SL ${long}`, 1],
      [`2 ${short}`, 2],
      [`3 ${short}`, 3],
    ] as const)
      powers.set(key, times * Number(power));
  }
  return powers;
};

const LONGEST_PREFIX = 6;

/** The unit of a word, with its prefix multiplied in. */
const unitOf = (
  word: string,
  units: ReadonlyMap<string, NamedUnit>,
  powers: ReadonlyMap<string, number>,
): NamedUnit | undefined => {
  const whole = units.get(word);
  if (whole) return whole;
  for (let at = 1; at <= Math.min(LONGEST_PREFIX, word.length - 1); at++) {
    const unit = units.get(word.slice(at));
    if (unit === undefined) continue;
    const power = powers.get(`${unit.prefixes} ${word.slice(0, at)}`);
    if (power !== undefined) return { ...unit, size: unit.size * Number(`1e${power}`) };
  }
  return undefined;
};

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?`;
/** A unit with its power, or a mark. */
const TOKEN = new RegExp(String.raw`[ \t]*(?:([a-z][a-z\d]*)(?:[ \t]*\^[ \t]*(${NUMBER}))?|([()*/]))[ \t]*`, "giy");
interface Token {
  readonly word: string;
  readonly power: number;
  readonly mark: string;
}

const tokensOf = (text: string): readonly Token[] | undefined => {
  const found = [...text.matchAll(TOKEN)];
  if (found.reduce((length, [whole]) => length + whole.length, 0) < text.length) return undefined;
  return found.map(([, word = "", power = "1", mark = ""]) => ({ word, power: Number(power), mark }));
};

/** A bracket opens before a unit and closes behind one; one sign of multiplication at most between two units. */
const WELL_FORMED = /^\(*u\)*(?:[*/]?\(*u\)*)*$/;

/** Units with their signed powers; a slash turns the unit or the bracket behind it. "1/K" is known, other numbers aren't. */
const factorsOf = (text: string): readonly (readonly [word: string, power: number])[] | undefined => {
  const inverse = text.startsWith("1/");
  const tokens = tokensOf(inverse ? text.slice(2) : text);
  if (!tokens || !WELL_FORMED.test(tokens.map(({ mark }) => mark || "u").join(""))) return undefined;
  const found: (readonly [string, number])[] = [];
  const open: number[] = [1];
  let sign = inverse ? -1 : 1;
  for (const { word, power, mark } of tokens) {
    const around = open.at(-1);
    if (around === undefined) return undefined;
    if (mark === "(") open.push(around * sign);
    if (mark === ")") open.pop();
    if (word !== "") found.push([word, around * sign * power]);
    sign = mark === "/" ? -1 : 1;
  }
  return open.length === 1 ? found : undefined;
};

/** Adds the exponents of a unit, raised to a power. */
const times = (sum: Dimension, unit: Dimension, power: number): Dimension =>
  sum.map((exponent, place) => exponent + (unit[place] ?? 0) * power);

export const sameDimension = (one: Dimension, other: Dimension): boolean =>
  one.every((exponent, place) => Math.abs(exponent - (other[place] ?? 0)) < 1e-12);

/** @param more further units, each a number of known ones */
export function unitReader(more: readonly (readonly [name: string, number: number, unit: string])[]): UnitReader {
  const units = namedUnits();
  const powers = powersOfTen();
  const read = (value: number, text: string): ValueInBase | undefined => {
    const factors = factorsOf(text);
    if (factors === undefined) return undefined;
    let found: ValueInBase = { value, shift: 0, dimension: [0, 0, 0, 0, 0] };
    for (const [word, power] of factors) {
      const unit = unitOf(word, units, powers);
      if (unit === undefined) return undefined;
      found = {
        value: found.value * unit.size ** power,
        shift: factors.length === 1 && power === 1 ? unit.shift : 0,
        dimension: times(found.dimension, unit.dimension, power),
      };
    }
    return found;
  };
  for (const [name, number, text] of more) {
    const known = read(number, text);
    if (known === undefined) throw new Error(`${name}: can't read the unit "${text}"`);
    units.set(name, { size: known.value, shift: 0, dimension: known.dimension, prefixes: "" });
  }
  return { read };
}
