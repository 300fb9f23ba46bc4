/**
 * Arguments of cell functions as plain data. The builders return a record that carries its value's type, so that `work`
 * receives typed SI values. Presence is one of: required, `otherwise(value)` (a default, in base units), `optionally()`.
 */
import type { KindName } from "../values/quantity";
import type { CellMatrix } from "../values/cellInput";

export type Presence = "required" | "default" | "optional";

/** The default of an omitted argument: a base value, or one computed from the other arguments, with the words for it. */
export type Fallback<T> = T | { readonly words: string; readonly from: (args: Readonly<Record<string, unknown>>) => T };

/** Limits in base units. `usual` is not a limit: outside it a notice is raised. */
export interface Limits {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly to?: number;
  readonly usual?: readonly [number, number];
}

export interface KindByChoice {
  readonly choice: string;
  readonly kinds: Readonly<Record<string, KindName>>;
}

export interface QuantityShape extends Limits {
  readonly type: "quantity";
  readonly kind: KindName | KindByChoice;
  readonly whole?: boolean;
  /** A gauge reading: the runner converts it to absolute by the argument `basis`. */
  readonly reading?: true;
}

export interface SeveralShape extends Limits {
  readonly type: "several";
  readonly kind: KindName;
  readonly counts: readonly number[];
}

export interface ChoiceShape {
  readonly type: "choice";
  /** The name of the enumeration in the metadata. */
  readonly name: string;
  readonly words: readonly string[];
  /** Other spellings: normalised text → word. */
  readonly aliases?: Readonly<Record<string, string>>;
  /** Words that belong elsewhere: normalised text → what to do instead. */
  readonly instead?: Readonly<Record<string, string>>;
}

export interface TextShape {
  readonly type: "text";
  readonly longest: number;
}

export interface YesNoShape {
  readonly type: "yes/no";
}

export interface EitherShape {
  readonly type: "either";
  readonly choice: ChoiceShape;
  readonly quantity: QuantityShape;
}

export interface BlockShape {
  readonly type: "block";
  readonly entries: Readonly<Record<string, ArgData>>;
}

export interface RowsShape {
  readonly type: "rows";
  readonly columns: Readonly<Record<string, ArgData>>;
  readonly least: number;
  readonly most: number;
}

/** A range of any content, for long tables that a topic admits by itself. An error value in it becomes the result. */
export interface SheetShape {
  readonly type: "sheet";
  /** The most cells that it may have. */
  readonly mostCells: number;
}

export interface RepeatShape {
  readonly type: "repeat";
}

export type ScalarShape = QuantityShape | SeveralShape | ChoiceShape | TextShape | YesNoShape | EitherShape;
export type Shape = ScalarShape | BlockShape | RowsShape | SheetShape | RepeatShape;

/** An argument as the runner sees it. */
export interface ArgData {
  readonly shape: Shape;
  /** What it is, without unit and default: those are derived. */
  readonly description: string;
  readonly presence: Presence;
  readonly fallback?: Fallback<unknown>;
}

/** An argument with its value's type. */
export interface Arg<T, P extends Presence> extends ArgData {
  readonly presence: P;
  /** The same argument with a default, in base units. */
  default(value: Fallback<T>): Arg<T, "default">;
  /** The same argument, optional; `compute` gets undefined if it is left out. */
  optional(): Arg<T, "optional">;
  /** The same argument in other words. */
  describedAs(about: string): Arg<T, P>;
  /** Carries the type only; never present at run time. */
  readonly value?: T;
}

export type Args = Readonly<Record<string, ArgData>>;

export type ValueOf<A> = A extends { presence: infer P; value?: infer T }
  ? P extends "optional"
    ? Exclude<T, undefined> | undefined
    : Exclude<T, undefined>
  : never;

export type ValuesOf<A extends Args> = { readonly [K in keyof A]: ValueOf<A[K]> };

const make = <T, P extends Presence>(
  shape: Shape,
  description: string,
  presence: P,
  fallback?: Fallback<T>,
): Arg<T, P> => ({
  shape,
  description,
  presence,
  ...(fallback === undefined ? {} : { fallback }),
  default: (value) => make<T, "default">(shape, description, "default", value),
  optional: () => make<T, "optional">(shape, description, "optional"),
  describedAs: (words) => make<T, P>(shape, words, presence, fallback),
});

type QuantityOptions = Limits & { readonly whole?: boolean; readonly reading?: true };

/** A quantity: a number in the table's unit, or a text with its own unit. */
export const quantity = (
  kind: KindName | KindByChoice,
  about: string,
  limits: QuantityOptions = {},
): Arg<number, "required"> => make({ type: "quantity", kind, ...limits }, about, "required");

/** One or several quantities of a kind in one text, separated by semicolons: "12; 16 ft". */
export const several = (
  kind: KindName,
  about: string,
  counts: readonly number[],
  limits: Limits = {},
): Arg<readonly number[], "required"> => make({ type: "several", kind, counts, ...limits }, about, "required");

/** A word out of a list; case, spaces and hyphens don't matter. */
export const choice = <const W extends readonly string[]>(
  name: string,
  words: W,
  about: string,
  aliases?: Readonly<Record<string, W[number]>>,
  instead?: Readonly<Record<string, string>>,
): Arg<W[number], "required"> => {
  const more = { ...(aliases === undefined ? {} : { aliases }), ...(instead === undefined ? {} : { instead }) };
  return make({ type: "choice", name, words, ...more }, about, "required");
};

export const text = (about: string, longest = 255): Arg<string, "required"> =>
  make({ type: "text", longest }, about, "required");

export const yesNo = (about: string): Arg<boolean, "required"> => make({ type: "yes/no" }, about, "required");

/** A word out of a list, or a quantity in its place. */
export const either = <W extends string>(
  word: Arg<W, Presence>,
  amount: Arg<number, Presence>,
  about: string,
): Arg<W | number, "required"> =>
  make(
    { type: "either", choice: word.shape as ChoiceShape, quantity: amount.shape as QuantityShape },
    about,
    "required",
  );

/** A range of labels, values and (optionally) units. Keys are the labels in camel case. */
export const block = <const B extends Args>(entries: B, about: string): Arg<ValuesOf<B>, "required"> =>
  make({ type: "block", entries }, about, "required");

/** The values of a block that is left out whole: only for entries whose defaults are plain values. */
export const literalDefaults = <const B extends Args>(entries: B): ValuesOf<B> =>
  Object.fromEntries(Object.entries(entries).map(([key, { fallback }]) => [key, fallback])) as ValuesOf<B>;

/** A range of rows with named columns; a header row is optional and then sets order and units. */
export const rows = <const C extends Args>(
  columns: C,
  about: string,
  size: { readonly least: number; readonly most: number },
): Arg<readonly ValuesOf<C>[], "required"> => make({ type: "rows", columns, ...size }, about, "required");

/** A range of any content but error values; a single cell is a range of one. */
export const sheet = (about: string, mostCells: number): Arg<CellMatrix, "required"> =>
  make({ type: "sheet", mostCells }, about, "required");

/** All further arguments, as they come. For functions about functions only. */
export const repeat = (about: string): Arg<readonly unknown[], "required"> =>
  make({ type: "repeat" }, about, "required");

const toLabel = (key: string): string =>
  key
    .replace(/([a-z])([A-Z0-9])/g, "$1 $2")
    .replace(/([0-9])([a-zA-Z])/g, "$1 $2")
    .replace(/\b([A-Z])(?=[a-z])/g, (letter) => letter.toLowerCase());

/** Labels by key: the keys are those of the definitions, so their number is bounded. */
const LABELS = new Map<string, string>();

/** A key in camel case as the label that is printed: "windAt10m" → "wind at 10 m". */
export function labelOf(key: string): string {
  const known = LABELS.get(key);
  if (known !== undefined) return known;
  const label = toLabel(key);
  LABELS.set(key, label);
  return label;
}

/** Text as words and labels are compared: without case, spacing and punctuation. */
export const normalizeKey = (value: string): string => value.toLowerCase().replace(/[^\p{L}\p{N}/.]+/gu, "");
