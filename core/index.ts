/**
 * The core's door at run time: the catalogue and all that `src/` and the pictures use of the rest. The functions script
 * holds it and leaves it as `warmback.core`, so every export here counts in that script's size.
 */
export { CATALOGUE, COMPILED } from "./catalogue";

// Definitions.
export { normalizeKey, labelOf } from "./kernel/define/argument";
export type { ArgData, Args, BlockShape, ChoiceShape, Shape } from "./kernel/define/argument";
export { lookUp } from "./kernel/define/catalogue";
export type { Catalogue, CellFunction } from "./kernel/define/cellFunction";
export type { ResultShape, SingleResult } from "./kernel/define/result";
export { withNoteParts, type NoteParts } from "./kernel/define/noteParts";
export { placedArgs, type PlacedArg } from "./kernel/define/unitsArgument";

// Definitions in words, and formulas.
export {
  argText,
  blockRows,
  defaultText,
  exampleArgs,
  signatureOf,
  formulaOf,
  limitsText,
  NAMESPACE,
  rawByPlace,
} from "./kernel/explain/describe";
export { EDITION } from "./kernel/edition";
export { cite, type Source } from "./kernel/reference";

// Calls.
export { SEVERITIES, type RaisedCaution } from "./kernel/define/caution";
export { runCheck, type CheckResult } from "./kernel/explain/check";
export { admit, evaluate, type Compiled } from "./kernel/call/evaluate";
export { boundedMemo, type Memo } from "./kernel/call/memo";
export { explain, type ExplainedArg, type Explanation } from "./kernel/explain/explain";
export { isFault, notAvailable, type Fault } from "./kernel/values/fault";
export { unitText, type CellOut, type Out } from "./kernel/call/present";
export {
  basisOf,
  readableCell,
  readableCells,
  readableUnit,
  resultUnit,
  type ShownBasis,
} from "./kernel/explain/readable";
export { fromBase, KINDS, readableNumber, showNumber, type KindName, type System } from "./kernel/values/quantity";
export type { CellInput, CellMatrix, CellScalar } from "./kernel/values/cellInput";
export { UNFINISHED } from "./kernel/define/slice";
export { silent, type Step } from "./kernel/define/steps";
export { workingLines, type WorkingLine } from "./kernel/explain/working";

// What pictures are drawn from.
export { afterExpansion, solveCycle } from "./cycle/cycle";
export { cycleOf } from "./cycle/working";
export { balanceInputOf } from "./exchanger/balance/fromBlock";
export { bothSides } from "./exchanger/balance/bothSides";
export { matchStreams, ZONE_NAMES } from "./exchanger/zones/zones";
export { zonesOf } from "./exchanger/zones/working";
export { FIRST_DAY, HOUR, HOURS_OF_DAY, MONTHS, firstHourOf, hoursOf } from "./numeric/calendar";
export { loopLines } from "./pipe/network/loop";
export { readNetwork, solveNetwork } from "./pipe/network/network";
export { networkLines } from "./pipe/network/networkTable";
export { admitClimate } from "./pool/year/climate";
export { findingsOf } from "./pool/year/plausibility";
export { vapourPressureAt } from "./pool/year/vapourTable";
export { withMapUnits } from "./pool/year/sharedYear";
export { yearOf } from "./pool/year/year";
export { loadRefrigerant } from "./refrigerant/refrigerant";
export { saturatedState } from "./refrigerant/saturation/saturation";

// What long studies of uncertain inputs are made from.
export { functionNamed } from "./note/args";
export { functionModel, runsFor } from "./note/uncertainty";
export { uncertaintyOptions } from "./note/uncertaintyOptions";
export { ascending, rankCorrelation } from "./numeric/sample";
export { uncertainRuns } from "./pool/year/uncertainRuns";
export { OUTCOMES, uncertainYear } from "./pool/year/uncertainYear";
export { knownRuns } from "./uncertainty/knownRuns";
export { addRun, computeInto, noRuns, percentilesOf, valuesOfRun } from "./uncertainty/study";
