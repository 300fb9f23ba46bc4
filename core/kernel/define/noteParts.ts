/**
 * What only notes read of a definition: the functions about functions, the panel and the evaluator. A plain cell's call
 * doesn't, so a build may hold these parts in a script of their own, which loads after the first cells are answered.
 */
import type { Catalogue, CellFunction } from "./cellFunction";

export const NOTE_KEYS = ["cautions", "checks", "example", "bibliography"] as const satisfies (keyof CellFunction)[];

type NoteKey = (typeof NOTE_KEYS)[number];

/** A definition's parts for notes, with the id of the function that they belong to. */
export type NoteParts = Pick<CellFunction, "id" | NoteKey>;

/** Definitions with their parts for notes. Each definition needs its own. */
export function withNoteParts(catalogue: Catalogue, all: readonly NoteParts[]): Catalogue {
  const byId = new Map(all.map((parts) => [parts.id, parts]));
  return catalogue.map((definition) => {
    const parts = byId.get(definition.id);
    if (parts === undefined) throw new Error(`${definition.id}: its cautions and checks are missing`);
    const { cautions, checks, example, bibliography } = parts;
    return { ...definition, cautions, checks, ...(example && { example }), ...(bibliography && { bibliography }) };
  });
}
