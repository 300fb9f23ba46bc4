/** Admits a single label of an input block, for functions that vary it. */
import {
  normalizeKey,
  labelOf,
  type Arg,
  type Args,
  type BlockShape,
  type Presence,
  type ScalarShape,
} from "../define/argument";
import { admitScalar, isReadQuantity } from "./admit";
import { valueError } from "../values/fault";
import { nearest } from "./nearest";
import type { System } from "../values/quantity";
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
