/**
 * The core's door at run time: the catalogue and all that `src/` and the pictures use of the rest. The functions script
 * holds it and leaves it as `warmback.core`, so every export here counts in that script's size.
 */
export { CATALOGUE, COMPILED } from "./catalogue";

// Definitions.
export { folded, labelOf } from "./kernel/argument";
export type { ArgData, Args, BlockShape, ChoiceShape, Shape } from "./kernel/argument";
export { lookUp, type Catalogue } from "./kernel/catalogue";
export type { CellFunction } from "./kernel/cellFunction";
export type { Gives, SingleResult } from "./kernel/result";
export { placedArgs, type PlacedArg } from "./kernel/units";

// Definitions in words, and formulas.
export {
  argText,
  blockRows,
  defaultText,
  exampleArgs,
  formOf,
  formulaOf,
  limitsText,
  NAMESPACE,
  rawByPlace,
} from "./kernel/describe";
export { EDITION } from "./kernel/edition";
export { cite, type Source } from "./kernel/reference";

// Calls.
export { SEVERITIES, type RaisedCaution } from "./kernel/caution";
export { verdictsOf, type Verdict } from "./kernel/check";
export { admit, evaluate, type Compiled } from "./kernel/evaluate";
export { explain, type ExplainedArg, type Explanation } from "./kernel/explain";
export { isFault, type Fault } from "./kernel/fault";
export { unitText, type CellOut, type Out } from "./kernel/present";
export { fromBase, KINDS, showNumber, type System } from "./kernel/quantity";
export type { Raw, RawMatrix, RawScalar } from "./kernel/raw";
export { silent, type Step } from "./kernel/steps";
export { workingLines, type WorkingLine } from "./kernel/working";

// What pictures are drawn from.
export { afterExpansion, cycle } from "./cycle/models/cycle";
export { cycleOf } from "./cycle/models/traced";
export { balanceInputOf } from "./exchanger/models/balanceBlock";
export { bothSides } from "./exchanger/models/balanceTraced";
export { matched, ZONE_NAMES } from "./exchanger/models/zones";
export { zonesOf } from "./exchanger/models/zonesTraced";
export { FIRST_DAY, HOUR, HOURS_OF_DAY, MONTHS, firstHourOf, hoursOf } from "./pool/year/calendar";
export { admitClimate } from "./pool/year/climate";
export { yearOf } from "./pool/year/year";
export { refrigerant } from "./refrigerant/models/refrigerant";
export { saturatedState } from "./refrigerant/models/saturation";
