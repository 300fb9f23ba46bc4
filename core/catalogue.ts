/** Every cell function, by topic. */
import { air } from "./air";
import { aircon } from "./aircon";
import { control } from "./control";
import { cost } from "./cost";
import { cycle } from "./cycle";
import { exchanger } from "./exchanger";
import { catalogueOf } from "./kernel/catalogue";
import { compile, type Compiled } from "./kernel/evaluate";
import { line } from "./line";
import { note } from "./note";
import { pipe } from "./pipe";
import { pool } from "./pool";
import { refrigerant } from "./refrigerant";
import { sink } from "./sink";
import { water } from "./water";

export const CATALOGUE = catalogueOf(
  refrigerant,
  cycle,
  aircon,
  pool,
  air,
  water,
  exchanger,
  pipe,
  line,
  control,
  cost,
  sink,
  note,
);

/** Every cell function by its id, compiled once: the cells and the panel share its definitions and memory. */
export const COMPILED: ReadonlyMap<string, Compiled> = new Map(
  CATALOGUE.map((definition) => [definition.id, compile(definition)]),
);
