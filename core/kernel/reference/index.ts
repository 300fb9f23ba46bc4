/**
 * The bibliography. Every equation, table, caution and check names a key of it; an unknown key doesn't compile.
 * Entries stand by subject in reference/; add new ones there.
 */
import { airAndWater } from "./airAndWater";
import { control } from "./control";
import { general } from "./general";
import { money } from "./money";
import { pipe } from "./pipe";
import { pool } from "./pool";
import { refrigeration } from "./refrigeration";
import { sink } from "./sink";
import { exchanger } from "./exchanger";
import type { Reference } from "./entry";

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
