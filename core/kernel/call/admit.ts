/** Admits one scalar argument: raw value in, base value out, or a fault that names argument, rule, limit and input. */
import type {
  ArgData,
  ChoiceShape,
  EitherShape,
  KindByChoice,
  Limits,
  QuantityShape,
  ScalarShape,
  SeveralShape,
} from "../define/argument";
import { normalizeKey } from "../define/argument";
import { valueError } from "../values/fault";
import { lookalike } from "./nearest";
import { KINDS, show, toBase, type KindName, type System } from "../values/quantity";
import { own } from "../values/own";
import { plainMarks } from "../values/numberText";
import { readQuantityText, type ReadQuantity } from "../values/quantityText";
import { describeInput, refuseErrorText, type CellScalar } from "../values/cellInput";

/** What admission needs besides the value. */
export interface AdmitContext {
  readonly system: System;
  /** The place of the argument `units`, for the message when its word is in another argument. */
  readonly unitsPlace: string;
  /** Arguments admitted before this one. */
  readonly before: Readonly<Record<string, unknown>>;
}

/** A pressure with its own basis ("120 psia") keeps it until the runner converts readings to absolute. */
export type Admitted = number | string | boolean | readonly number[] | ReadQuantity;

export const isReadQuantity = (value: unknown): value is ReadQuantity =>
  typeof value === "object" && value !== null && "basis" in value;

export const isBlank = (raw: unknown): raw is null | "" => raw === null || raw === "";

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** "8th": the place of an argument in words. */
export const placeText = (place: number): string => ORDINALS[place - 1] ?? `${place}th`;

const UNIT_WORDS = new Set(["us", "si"]);

const refuseUnitWord = (name: string, expected: string, raw: string, context: AdmitContext): void => {
  if (context.unitsPlace !== "" && UNIT_WORDS.has(raw.trim().toLowerCase()))
    throw valueError(`${name}: expected ${expected}, got "${raw}": units is the ${context.unitsPlace} argument`);
};

export const kindOf = (kind: KindName | KindByChoice, before: Readonly<Record<string, unknown>>): KindName => {
  if (typeof kind === "string") return kind;
  const word = String(before[kind.choice]);
  return own(kind.kinds, word) ?? own(kind.kinds, normalizeKey(word)) ?? "number";
};

const hint = (kind: KindName): string =>
  kind === "relative humidity" || kind === "fraction"
    ? " (a fraction: type 60% or 0.6)"
    : kind === "yearly rate"
      ? " (a fraction: type 3% or 0.03)"
      : "";

/** No real input is larger in base units; powers and products of smaller values stay finite. */
const BEYOND = 1e18;

/** Share of a limit by which unit conversion may miss it. */
const ROUNDING = 1e-9;
const slack = (limit: number): number => ROUNDING * Math.abs(limit);

const isWithin = (value: number, { above, from, below, to }: Limits): boolean =>
  (above === undefined || value > above) &&
  (from === undefined || value >= from - slack(from)) &&
  (below === undefined || value < below) &&
  (to === undefined || value <= to + slack(to));

/** Checks limits in base units. */
export const checkLimits = (value: number, kind: KindName, limits: Limits, name: string, system: System): void => {
  if (isWithin(value, limits)) return;
  const { above, from, below, to } = limits;
  const blank = value === 0 && ((above ?? -1) >= 0 || (from ?? -1) > 0) && KINDS[kind][system].shift === 0;
  const got = blank ? "blank or zero" : show(value, kind, system);
  if (above !== undefined && !(value > above))
    throw valueError(`${name}: must be above ${show(above, kind, system)}, got ${got}`);
  if (from !== undefined && !(value >= from - slack(from)))
    throw valueError(`${name}: must be at least ${show(from, kind, system)}, got ${got}`);
  if (below !== undefined && !(value < below))
    throw valueError(`${name}: must be below ${show(below, kind, system)}${hint(kind)}, got ${got}`);
  if (to !== undefined && !(value <= to + slack(to)))
    throw valueError(`${name}: must be at most ${show(to, kind, system)}${hint(kind)}, got ${got}`);
};

/**
 * Whether 0 can't be meant for an argument: it is a word, or 0 in the cell's unit is outside its limits. Some hosts pass a
 * blank cell as 0.
 */
export const zeroIsImpossible = ({ shape }: ArgData, { before, system }: AdmitContext): boolean => {
  if (shape.type === "choice") return own(shape.aliases ?? {}, "0") === undefined;
  if (shape.type === "either" || shape.type === "text") return true;
  if (shape.type !== "quantity") return false;
  return !isWithin(toBase(0, KINDS[kindOf(shape.kind, before)][system]), shape);
};

const expectedQuantity = (kind: KindName, system: System): string => {
  const { text } = KINDS[kind][system];
  return text === "" ? `a number (${kind})` : `${kind} in ${text}`;
};

const admitQuantity = (
  shape: QuantityShape,
  raw: CellScalar,
  name: string,
  context: AdmitContext,
): number | ReadQuantity => {
  const kind = kindOf(shape.kind, context.before);
  const read = typeof raw === "number" ? toBase(raw, KINDS[kind][context.system]) : readText(kind, raw, name, context);
  const value = typeof read === "number" ? read : read.value;
  // The unit's factor may make a finite number infinite: the limit below refuses it.
  if (!Number.isFinite(value) && !Number.isFinite(raw))
    throw valueError(`${name}: expected a finite number, got ${describeInput(raw)}`);
  if (Math.abs(value) > BEYOND)
    throw valueError(
      `${name}: must be at most ${show(BEYOND, kind, context.system)} in size, got ${describeInput(raw)}`,
    );
  if (shape.whole === true && Math.abs(value - Math.round(value)) > 1e-9)
    throw valueError(`${name}: must be a whole number, got ${describeInput(raw)}`);
  checkLimits(value, kind, shape, name, context.system);
  return read;
};

const readText = (kind: KindName, raw: CellScalar, name: string, context: AdmitContext): number | ReadQuantity => {
  const expected = expectedQuantity(kind, context.system);
  if (typeof raw !== "string") throw valueError(`${name}: expected ${expected}, got ${describeInput(raw)}`);
  refuseUnitWord(name, expected, raw, context);
  const read = readQuantityText(raw, kind, context.system);
  if (typeof read === "string") throw valueError(`${name}: expected ${expected}, got ${describeInput(raw)}: ${read}`);
  return read.basis === undefined ? read.value : read;
};

const admitSeveral = (shape: SeveralShape, raw: CellScalar, name: string, context: AdmitContext): readonly number[] => {
  const parts = typeof raw === "string" ? raw.split(";") : [raw];
  const unit = typeof raw === "string" ? (/[^\d\s.,/+-][^;\d]*/u.exec(raw.split(";").at(-1) ?? "")?.[0] ?? "") : "";
  if (!shape.counts.includes(parts.length))
    throw valueError(`${name}: expected ${shape.counts.join(" or ")} values parted by ";", got ${parts.length}`);
  const one: QuantityShape = { ...shape, type: "quantity" };
  return parts.map((part) => {
    const own = typeof part === "string" && !/[^\d\s.,/+-]/u.test(part) ? `${part.trim()} ${unit}`.trim() : part;
    const value = admitQuantity(one, typeof own === "string" ? own.trim() : own, name, context);
    return typeof value === "number" ? value : value.value;
  });
};

const spellings = new WeakMap<ChoiceShape, ReadonlyMap<string, string>>();

const spellingsOf = (shape: ChoiceShape): ReadonlyMap<string, string> => {
  let map = spellings.get(shape);
  if (!map) {
    map = new Map([
      ...Object.entries(shape.aliases ?? {}).map(([text, word]) => [normalizeKey(text), word] as const),
      ...shape.words.map((word) => [normalizeKey(word), word] as const),
      // Exact words are found without normalizing, which costs more than everything else here.
      ...shape.words.map((word) => [word, word] as const),
    ]);
    spellings.set(shape, map);
  }
  return map;
};

/** The allowed words as a list: "a", "b" or "c". */
export const wordsText = (words: readonly string[]): string => {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length < 2 ? quoted.join("") : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1) ?? ""}`;
};

/** The word that a raw value means; undefined if none. */
export const matchWord = (shape: ChoiceShape, raw: CellScalar): string | undefined => {
  if (typeof raw !== "string" && !(typeof raw === "number" && raw >= 0)) return undefined;
  const known = spellingsOf(shape);
  const text = String(raw);
  return known.get(text) ?? known.get(normalizeKey(text)) ?? known.get(normalizeKey(plainMarks(text)));
};

/** What to do about a word that belongs elsewhere. */
const insteadOf = ({ instead = {} }: ChoiceShape, raw: CellScalar): string | undefined => {
  const key = normalizeKey(String(raw));
  return Object.hasOwn(instead, key) ? instead[key] : undefined;
};

/** A list of words this short needs no suggestion. */
const FEW = 2;

/** Advice on an unknown word, after a colon; "" if there is none. */
const adviceOn = (shape: ChoiceShape, raw: CellScalar): string => {
  const near = typeof raw === "string" && shape.words.length > FEW ? lookalike(raw, shape.words) : undefined;
  const advice = insteadOf(shape, raw) ?? (near === undefined ? undefined : `the nearest is "${near}"`);
  return advice === undefined ? "" : `: ${advice}`;
};

const admitChoice = (shape: ChoiceShape, raw: CellScalar, name: string, context: AdmitContext): string => {
  const word = matchWord(shape, raw);
  if (word !== undefined) return word;
  if (typeof raw === "string") refuseUnitWord(name, wordsText(shape.words), raw, context);
  throw valueError(`${name}: expected ${wordsText(shape.words)}, got ${describeInput(raw)}${adviceOn(shape, raw)}`);
};

const admitEither = (
  shape: EitherShape,
  raw: CellScalar,
  name: string,
  context: AdmitContext,
): string | number | ReadQuantity => {
  const word = typeof raw === "string" ? matchWord(shape.choice, raw) : undefined;
  if (word !== undefined) return word;
  const expected = `${wordsText(shape.choice.words)}, or ${expectedQuantity(kindOf(shape.quantity.kind, context.before), context.system)}`;
  const advice = insteadOf(shape.choice, raw);
  if (advice !== undefined) throw valueError(`${name}: expected ${expected}, got ${describeInput(raw)}: ${advice}`);
  if (typeof raw === "number" || (typeof raw === "string" && /^\s*[-+.\d]/.test(raw)))
    return admitQuantity(shape.quantity, raw, name, context);
  if (typeof raw === "string") refuseUnitWord(name, expected, raw, context);
  throw valueError(`${name}: expected ${expected}, got ${describeInput(raw)}${adviceOn(shape.choice, raw)}`);
};

const YES: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  "1": true,
  false: false,
  no: false,
  "0": false,
};

const admitYesNo = (raw: CellScalar, name: string): boolean => {
  const answer = typeof raw === "boolean" ? raw : own(YES, normalizeKey(String(raw)));
  if (answer === undefined) throw valueError(`${name}: expected TRUE or FALSE, got ${describeInput(raw)}`);
  return answer;
};

const admitText = (longest: number, raw: CellScalar, name: string): string => {
  if (typeof raw === "number" && !Number.isFinite(raw))
    throw valueError(`${name}: expected a text, got ${describeInput(raw)}`);
  const value = String(raw);
  if (value.length > longest) throw valueError(`${name}: may have at most ${longest} characters, got ${value.length}`);
  return value;
};

/** Admits a scalar that is not blank. */
export const admitScalar = (shape: ScalarShape, raw: CellScalar, name: string, context: AdmitContext): Admitted => {
  refuseErrorText(raw, name);
  switch (shape.type) {
    case "quantity":
      return admitQuantity(shape, raw, name, context);
    case "several":
      return admitSeveral(shape, raw, name, context);
    case "choice":
      return admitChoice(shape, raw, name, context);
    case "either":
      return admitEither(shape, raw, name, context);
    case "yes/no":
      return admitYesNo(raw, name);
    case "text":
      return admitText(shape.longest, raw, name);
  }
};
