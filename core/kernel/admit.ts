/** Admission of one scalar argument: raw value in, base value out, or a fault that names argument, rule, limit and what came. */
import type {
  ChoiceShape,
  EitherShape,
  KindByChoice,
  Limits,
  QuantityShape,
  ScalarShape,
  SeveralShape,
} from "./argument";
import { folded } from "./argument";
import { mend } from "./fault";
import { lookalike } from "./nearest";
import { KINDS, show, toBase, type KindName, type System } from "./quantity";
import { plainMarks } from "./numberText";
import { readQuantityText, type ReadQuantity } from "./quantityText";
import { came, passErrors, type RawScalar } from "./raw";

/** What admission knows besides the value. */
export interface Desk {
  readonly system: System;
  /** Where the argument `units` stands, for the message when its word lands elsewhere. */
  readonly unitsPlace: string;
  /** Arguments admitted before this one. */
  readonly before: Readonly<Record<string, unknown>>;
}

/** A pressure read with its own basis ("120 psia") keeps it until the runner turns readings to absolute. */
export type Admitted = number | string | boolean | readonly number[] | ReadQuantity;

export const isReadQuantity = (value: unknown): value is ReadQuantity =>
  typeof value === "object" && value !== null && "basis" in value;

export const isBlank = (raw: unknown): raw is null | "" => raw === null || raw === "";

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** "8th": the place of an argument in words. */
export const placeText = (place: number): string => ORDINALS[place - 1] ?? `${place}th`;

const UNIT_WORDS = new Set(["us", "si"]);

const refuseUnitWord = (name: string, expected: string, raw: string, desk: Desk): void => {
  if (desk.unitsPlace !== "" && UNIT_WORDS.has(raw.trim().toLowerCase()))
    throw mend(`${name}: expected ${expected}, got "${raw}": units is the ${desk.unitsPlace} argument`);
};

export const kindOf = (kind: KindName | KindByChoice, before: Readonly<Record<string, unknown>>): KindName => {
  if (typeof kind === "string") return kind;
  return kind.kinds[String(before[kind.choice])] ?? "number";
};

const hint = (kind: KindName): string =>
  kind === "relative humidity" || kind === "fraction"
    ? " (a fraction: type 60% or 0.6)"
    : kind === "yearly rate"
      ? " (a fraction: type 3% or 0.03)"
      : "";

/**
 * Beyond this size in base units nothing that is meant lies, and powers and products of what lies within it stay finite.
 */
const BEYOND = 1e18;

/** Share of a limit by which rounding of units may miss it. */
const ROUNDING = 1e-9;
const slack = (limit: number): number => ROUNDING * Math.abs(limit);

/** Checks limits in base units. */
export const checkLimits = (value: number, kind: KindName, limits: Limits, name: string, system: System): void => {
  const { above, from, below, to } = limits;
  const within =
    (above === undefined || value > above) &&
    (from === undefined || value >= from - slack(from)) &&
    (below === undefined || value < below) &&
    (to === undefined || value <= to + slack(to));
  if (within) return;
  const blank = value === 0 && ((above ?? -1) >= 0 || (from ?? -1) > 0) && KINDS[kind][system].shift === 0;
  const got = blank ? "blank or zero" : show(value, kind, system);
  if (above !== undefined && !(value > above))
    throw mend(`${name}: must be above ${show(above, kind, system)}, got ${got}`);
  if (from !== undefined && !(value >= from - slack(from)))
    throw mend(`${name}: must be at least ${show(from, kind, system)}, got ${got}`);
  if (below !== undefined && !(value < below))
    throw mend(`${name}: must be below ${show(below, kind, system)}${hint(kind)}, got ${got}`);
  if (to !== undefined && !(value <= to + slack(to)))
    throw mend(`${name}: must be at most ${show(to, kind, system)}${hint(kind)}, got ${got}`);
};

const expectedQuantity = (kind: KindName, system: System): string => {
  const { text } = KINDS[kind][system];
  return text === "" ? `a number (${kind})` : `${kind} in ${text}`;
};

const admitQuantity = (shape: QuantityShape, raw: RawScalar, name: string, desk: Desk): number | ReadQuantity => {
  const kind = kindOf(shape.kind, desk.before);
  const read = typeof raw === "number" ? toBase(raw, KINDS[kind][desk.system]) : readText(kind, raw, name, desk);
  const value = typeof read === "number" ? read : read.value;
  // A finite number may leave the numbers by its unit's factor: it is told its limit below.
  if (!Number.isFinite(value) && !Number.isFinite(raw))
    throw mend(`${name}: expected a finite number, got ${came(raw)}`);
  if (Math.abs(value) > BEYOND)
    throw mend(`${name}: must be at most ${show(BEYOND, kind, desk.system)} in size, got ${came(raw)}`);
  if (shape.whole === true && Math.abs(value - Math.round(value)) > 1e-9)
    throw mend(`${name}: must be a whole number, got ${came(raw)}`);
  checkLimits(value, kind, shape, name, desk.system);
  return read;
};

const readText = (kind: KindName, raw: RawScalar, name: string, desk: Desk): number | ReadQuantity => {
  const expected = expectedQuantity(kind, desk.system);
  if (typeof raw !== "string") throw mend(`${name}: expected ${expected}, got ${came(raw)}`);
  refuseUnitWord(name, expected, raw, desk);
  const read = readQuantityText(raw, kind, desk.system);
  if (typeof read === "string") throw mend(`${name}: expected ${expected}, got ${came(raw)}: ${read}`);
  return read.basis === undefined ? read.value : read;
};

const admitSeveral = (shape: SeveralShape, raw: RawScalar, name: string, desk: Desk): readonly number[] => {
  const parts = typeof raw === "string" ? raw.split(";") : [raw];
  const unit = typeof raw === "string" ? (/[^\d\s.,/+-][^;\d]*/u.exec(raw.split(";").at(-1) ?? "")?.[0] ?? "") : "";
  if (!shape.counts.includes(parts.length))
    throw mend(`${name}: expected ${shape.counts.join(" or ")} values parted by ";", got ${parts.length}`);
  const one: QuantityShape = { ...shape, type: "quantity" };
  return parts.map((part) => {
    const own = typeof part === "string" && !/[^\d\s.,/+-]/u.test(part) ? `${part.trim()} ${unit}`.trim() : part;
    const value = admitQuantity(one, typeof own === "string" ? own.trim() : own, name, desk);
    return typeof value === "number" ? value : value.value;
  });
};

const spellings = new WeakMap<ChoiceShape, ReadonlyMap<string, string>>();

const spellingsOf = (shape: ChoiceShape): ReadonlyMap<string, string> => {
  let map = spellings.get(shape);
  if (!map) {
    map = new Map([
      ...Object.entries(shape.aliases ?? {}).map(([text, word]) => [folded(text), word] as const),
      ...shape.words.map((word) => [folded(word), word] as const),
      // As they stand they are found without folding, which costs more than all else here.
      ...shape.words.map((word) => [word, word] as const),
    ]);
    spellings.set(shape, map);
  }
  return map;
};

/** The right words, shortened where there are many. */
export const wordsText = (words: readonly string[]): string => {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1) ?? ""}`;
};

/** The word that a raw value means, undefined where it means none. */
export const wordMeant = (shape: ChoiceShape, raw: RawScalar): string | undefined => {
  if (typeof raw !== "string" && !(typeof raw === "number" && raw >= 0)) return undefined;
  const known = spellingsOf(shape);
  const text = String(raw);
  return known.get(text) ?? known.get(folded(text)) ?? known.get(folded(plainMarks(text)));
};

/** What to do about a word that belongs elsewhere. */
const insteadOf = ({ instead = {} }: ChoiceShape, raw: RawScalar): string | undefined => {
  const key = folded(String(raw));
  return Object.hasOwn(instead, key) ? instead[key] : undefined;
};

/** A list of words this short needs no suggestion. */
const FEW = 2;

/** Advice on a word that isn't known, behind a colon; "" where there is nothing to say. */
const adviceOn = (shape: ChoiceShape, raw: RawScalar): string => {
  const near = typeof raw === "string" && shape.words.length > FEW ? lookalike(raw, shape.words) : undefined;
  const advice = insteadOf(shape, raw) ?? (near === undefined ? undefined : `the nearest is "${near}"`);
  return advice === undefined ? "" : `: ${advice}`;
};

const admitChoice = (shape: ChoiceShape, raw: RawScalar, name: string, desk: Desk): string => {
  const word = wordMeant(shape, raw);
  if (word !== undefined) return word;
  if (typeof raw === "string") refuseUnitWord(name, wordsText(shape.words), raw, desk);
  throw mend(`${name}: expected ${wordsText(shape.words)}, got ${came(raw)}${adviceOn(shape, raw)}`);
};

const admitEither = (shape: EitherShape, raw: RawScalar, name: string, desk: Desk): string | number | ReadQuantity => {
  const word = typeof raw === "string" ? wordMeant(shape.choice, raw) : undefined;
  if (word !== undefined) return word;
  const expected = `${wordsText(shape.choice.words)}, or ${expectedQuantity(kindOf(shape.quantity.kind, desk.before), desk.system)}`;
  const advice = insteadOf(shape.choice, raw);
  if (advice !== undefined) throw mend(`${name}: expected ${expected}, got ${came(raw)}: ${advice}`);
  if (typeof raw === "number" || (typeof raw === "string" && /^\s*[-+.\d]/.test(raw)))
    return admitQuantity(shape.quantity, raw, name, desk);
  if (typeof raw === "string") refuseUnitWord(name, expected, raw, desk);
  throw mend(`${name}: expected ${expected}, got ${came(raw)}${adviceOn(shape.choice, raw)}`);
};

const YES: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  "1": true,
  false: false,
  no: false,
  "0": false,
};

const admitYesNo = (raw: RawScalar, name: string): boolean => {
  const answer = typeof raw === "boolean" ? raw : YES[folded(String(raw))];
  if (answer === undefined) throw mend(`${name}: expected TRUE or FALSE, got ${came(raw)}`);
  return answer;
};

const admitText = (longest: number, raw: RawScalar, name: string): string => {
  const value = String(raw);
  if (value.length > longest) throw mend(`${name}: may have at most ${longest} characters, got ${value.length}`);
  return value;
};

/** Admits a scalar that is not blank. */
export const admitScalar = (shape: ScalarShape, raw: RawScalar, name: string, desk: Desk): Admitted => {
  passErrors(raw, name);
  switch (shape.type) {
    case "quantity":
      return admitQuantity(shape, raw, name, desk);
    case "several":
      return admitSeveral(shape, raw, name, desk);
    case "choice":
      return admitChoice(shape, raw, name, desk);
    case "either":
      return admitEither(shape, raw, name, desk);
    case "yes/no":
      return admitYesNo(raw, name);
    case "text":
      return admitText(shape.longest, raw, name);
  }
};
