/** A set of cell functions and what can be asked of it. */
import type { Catalogue, CellFunction } from "./cellFunction";

/** Accepts the names of topics' lists and answers one catalogue in that order. */
export const catalogueOf = (...topics: readonly Catalogue[]): Catalogue => topics.flat();

/** A function by its id in any case, with or without the namespace; undefined where there is none. */
export const lookUp = (catalogue: Catalogue, name: string): CellFunction | undefined => {
  const id = name
    .trim()
    .toUpperCase()
    .replace(/^=?(WARMBACK\.)?/, "")
    .replace(/\(.*$/, "");
  return catalogue.find((each) => each.id === id);
};
