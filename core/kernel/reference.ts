/**
 * The bibliography. Every equation, table, caution and check names a key of it; an unknown key doesn't compile.
 * Entries stand by subject in reference/; add new ones there.
 */
import { airAndWater } from "./reference/airAndWater";
import { control } from "./reference/control";
import { general } from "./reference/general";
import { money } from "./reference/money";
import { pipe } from "./reference/pipe";
import { pool } from "./reference/pool";
import { refrigeration } from "./reference/refrigeration";
import { sink } from "./reference/sink";
import { exchanger } from "./reference/exchanger";
import type { Reference } from "./reference/entry";

const TABLE = {
  ...general,
  ...airAndWater,
  ...pool,
  ...pipe,
  ...exchanger,
  ...refrigeration,
  ...money,
  ...control,
  ...sink,
};

export type SourceKey = keyof typeof TABLE;

/** A source, with the place in it where that helps. */
export type Source = SourceKey | { readonly key: SourceKey; readonly where: string };

export const REFERENCES: Readonly<Record<SourceKey, Reference>> = TABLE;

export const referenceOf = (source: Source): Reference => REFERENCES[typeof source === "string" ? source : source.key];

/** A source as one line: short name and place. */
export const cite = (source: Source): string => {
  const short = referenceOf(source).short;
  return typeof source === "string" ? short : `${short}, ${source.where}`;
};
