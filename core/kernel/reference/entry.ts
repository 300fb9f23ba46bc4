/** One entry of the bibliography. */
export interface SourceEntry {
  /** As a working shows it: authors and year. */
  readonly short: string;
  /** The full citation. */
  readonly full: string;
  /**
   * How far the source was seen: "opened" (the text itself), "copied" (quoted by an opened text, named in `full`),
   * "memory" (not opened), "rule" (an identity or a practice of the trade, no print).
   */
  readonly seen: "opened" | "copied" | "memory" | "rule";
}

/** The keys of an entry's citation: a working shows the short name alone. */
export const CITATION_KEYS = ["full", "seen"] as const satisfies (keyof SourceEntry)[];

/** Checks that every entry is complete and keeps its keys as literal types. */
export const sourceEntries = <const T extends Readonly<Record<string, SourceEntry>>>(entries: T): T => entries;
