/** Admits a single label of an input block, for functions that vary it. */
import {
  normalizeKey,
  labelOf,
  type Arg,
  type Args,
  type BlockShape,
  type Presence,
  type ScalarShape,
  type Shape,
} from "../define/argument";
import { admitScalar, isReadQuantity, kindOf } from "./admit";
import { valueError } from "../values/fault";
import { nearest } from "./nearest";
import type { KindName, System } from "../values/quantity";
import { quoteText, type CellScalar } from "../values/cellInput";

const entriesOf = (block: Arg<unknown, Presence>): Args => (block.shape as BlockShape).entries;

/** The key that a label of a block names; the refusal of an unknown label names the nearest. */
export const labelKey = (block: Arg<unknown, Presence>, label: string, name: string): string => {
  const keys = Object.keys(entriesOf(block));
  const key = keys.find((each) => normalizeKey(each) === normalizeKey(label));
  if (key === undefined)
    throw valueError(
      `${name}: no label ${quoteText(label)} in the block; the nearest is "${nearest(label, keys.map(labelOf))}"`,
    );
  return key;
};

/** Admits a raw value as the block does under that label; `before` holds the block's values. */
export const admitLabel = (
  block: Arg<unknown, Presence>,
  key: string,
  raw: CellScalar,
  name: string,
  system: System,
  before: Readonly<Record<string, unknown>>,
): unknown => {
  const arg = entriesOf(block)[key];
  if (arg === undefined || raw === null || raw === "") throw valueError(`${name}: is blank`);
  const value = admitScalar(arg.shape as ScalarShape, raw, name, { system, unitsPlace: "", before });
  return isReadQuantity(value) ? value.value : value;
};

/** The kind of a scalar's number; a word, a text and several values are refused. */
export const numberKind = (shape: Shape, name: string, before: Readonly<Record<string, unknown>>): KindName => {
  const number = shape.type === "either" ? shape.quantity : shape;
  if (number.type === "several" && number.counts.includes(1)) return number.kind;
  if (number.type !== "quantity") throw valueError(`${name}: takes no single number, so it has no range`);
  return kindOf(number.kind, before);
};

/** The kind of a label's number; `before` holds the block's values. */
export const labelKind = (
  block: Arg<unknown, Presence>,
  label: string,
  name: string,
  before: Readonly<Record<string, unknown>>,
): KindName => {
  const arg = entriesOf(block)[labelKey(block, label, name)];
  if (arg === undefined) throw valueError(`${name}: no such label`);
  return numberKind(arg.shape, name, before);
};
