/** Every cell function, by topic. The only thing of the core that src/ imports for calculation. */
import { air } from "./air";
import { aircon } from "./aircon";
import { control } from "./control";
import { cost } from "./cost";
import { cycle } from "./cycle";
import { exchanger } from "./exchanger";
import { catalogueOf } from "./kernel/catalogue";
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
