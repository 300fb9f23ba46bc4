/** Every cell function, by topic. */
import { airFunctions } from "./air";
import { airconFunctions } from "./aircon";
import { climateFunctions } from "./climate";
import { controlFunctions } from "./control";
import { costFunctions } from "./cost";
import { cycleFunctions } from "./cycle";
import { exchangerFunctions } from "./exchanger";
import { catalogueOf } from "./kernel/define/catalogue";
import { compile, type Compiled } from "./kernel/call/evaluate";
import type { Catalogue } from "./kernel/define/cellFunction";
import { lineFunctions } from "./line";
import { noteFunctions } from "./note";
import { pipeFunctions } from "./pipe";
import { poolFunctions } from "./pool";
import { pressureFunctions } from "./pressure";
import { refrigerantFunctions } from "./refrigerant";
import { sinkFunctions } from "./sink";
import { waterFunctions } from "./water";

export const CATALOGUE = catalogueOf(
  refrigerantFunctions,
  cycleFunctions,
  airconFunctions,
  poolFunctions,
  airFunctions,
  waterFunctions,
  exchangerFunctions,
  pipeFunctions,
  lineFunctions,
  pressureFunctions,
  controlFunctions,
  costFunctions,
  sinkFunctions,
  climateFunctions,
  noteFunctions,
);

function compileAll(catalogue: Catalogue): ReadonlyMap<string, Compiled> {
  return new Map(catalogue.map((definition) => [definition.id, compile(definition)]));
}

/** Every cell function by its id, compiled once: the cells and the panel share its definitions and memory. */
export const COMPILED: ReadonlyMap<string, Compiled> = /* @__PURE__ */ compileAll(CATALOGUE);
