/** Every cell function, made ready once: the cells, the panel and the evaluator share definitions and memory. */
import { CATALOGUE } from "../../core/catalogue";
import { compile, type Compiled } from "../../core/kernel/evaluate";

export { CATALOGUE };

export const COMPILED: ReadonlyMap<string, Compiled> = new Map(
  CATALOGUE.map((definition) => [definition.id, compile(definition)]),
);
