/**
 * Years of the last few blocks, shared by POOL.YEAR, POOL.HOURS and POOL.SPREAD: twelve typical days cost one run. A constant
 * of this module like the memos of `compile`, for those belong to one function each. Bounded; a hit is compared in full, and
 * a year depends on its arguments only, so no call can tell whether another came before.
 */
import { boundedMemo } from "../../kernel/call/memo";
import { silent, type Trace } from "../../kernel/define/steps";
import type { CellMatrix } from "../../kernel/values/cellInput";
import type { System } from "../../kernel/values/quantity";
import { admitClimate, type Climate } from "./climate";
import type { YearInputs } from "./inputs";
import type { Year } from "./results";
import { runLabels } from "./touched";
import { refuseImpossibleWeather } from "./weatherCheck";
import { yearOf } from "./year";
import { traceYear } from "./working";

export interface SharedYear {
  readonly year: Year;
  readonly climate: Climate;
}

/** A year holds some 4 MB. */
const YEARS = boundedMemo<SharedYear>({ entries: 4, cells: 500_000 });

/** A map without units of its own has those of the call. */
export const withMapUnits = (inputs: YearInputs, system: System): YearInputs =>
  inputs.mapFlow === undefined ? inputs : { ...inputs, mapUnits: inputs.mapUnits ?? system };

/** The year of a block in a climate as the cell holds it. */
export function sharedYear(given: YearInputs, climate: CellMatrix, system: System, trace: Trace = silent): SharedYear {
  const inputs = withMapUnits(given, system);
  const found = YEARS.getOrCompute("year", [runLabels(inputs), climate, system], () => {
    const admitted = admitClimate(climate, system);
    const found = yearOf(inputs, admitted);
    refuseImpossibleWeather(admitted, inputs.latitude, system);
    return { year: found, climate: admitted };
  });
  // Prices may differ from those of the call that made it.
  const year = { ...found.year, inputs };
  if (trace.on) traceYear(year, trace);
  return { ...found, year };
}
