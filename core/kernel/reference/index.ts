/**
 * The bibliography. Every equation, table, caution and check names a key of it; an unknown key doesn't compile.
 * Entries stand by subject in reference/; add new ones there.
 */
import { airAndWaterSources } from "./airAndWater";
import { controlSources } from "./control";
import { generalSources } from "./general";
import { moneySources } from "./money";
import { pipeSources } from "./pipe";
import { poolSources } from "./pool";
import { pressureSources } from "./pressure";
import { refrigerationSources } from "./refrigeration";
import { sinkSources } from "./sink";
import { exchangerSources } from "./exchanger";
import type { SourceEntry } from "./entry";

const TABLE = {
  ...generalSources,
  ...airAndWaterSources,
  ...poolSources,
  ...pipeSources,
  ...exchangerSources,
  ...refrigerationSources,
  ...moneySources,
  ...controlSources,
  ...sinkSources,
  ...pressureSources,
};

export type SourceKey = keyof typeof TABLE;

/** A source, with the place in it where that helps. */
export type Source = SourceKey | { readonly key: SourceKey; readonly where: string };

export const REFERENCES: Readonly<Record<SourceKey, SourceEntry>> = TABLE;

export const referenceOf = (source: Source): SourceEntry =>
  REFERENCES[typeof source === "string" ? source : source.key];

/** A source as one line: short name and place. */
export const cite = (source: Source): string => {
  const short = referenceOf(source).short;
  return typeof source === "string" ? short : `${short}, ${source.where}`;
};
