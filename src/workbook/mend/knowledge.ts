/** What repairs need to know of our functions. */
import { placedArgs, type Catalogue, type CellFunction } from "../../../core";

export interface MendKnowledge {
  readonly known: ReadonlySet<string>;
  /** The function gives one value, never a table. */
  isSingle(id: string): boolean;
  /** The most arguments that the function takes; undefined where there is no limit. */
  mostArguments(id: string): number | undefined;
}

const isRepeated = (definition: CellFunction): boolean =>
  Object.values(definition.args).some(({ shape }) => shape.type === "repeat");

export function mendKnowledge(catalogue: Catalogue): MendKnowledge {
  const definitions = new Map(catalogue.map((definition) => [definition.id, definition]));
  return {
    known: new Set(definitions.keys()),
    isSingle: (id) => ["quantity", "word"].includes(definitions.get(id)?.returns.type ?? ""),
    mostArguments(id) {
      const definition = definitions.get(id);
      return definition === undefined || isRepeated(definition) ? undefined : placedArgs(definition).length;
    },
  };
}
