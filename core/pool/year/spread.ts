/** Totals of years that differ in one input: each begins where the last one ended, and runs only what the input touches. */
import { silent, type Trace } from "../../kernel/define/steps";
import type { CellMatrix } from "../../kernel/values/cellInput";
import type { System } from "../../kernel/values/quantity";
import type { Climate } from "./climate";
import type { YearInputs } from "./inputs";
import { totalOfYear, type YearRow } from "./monthlyTable";
import type { Year } from "./results";
import { siteOf } from "./setUp";
import { sharedYear, withMapUnits } from "./sharedYear";
import { untouchedBy } from "./touched";
import { beginOf, weatherAt, yearIn } from "./year";

const sameSite = (a: YearInputs, b: YearInputs): boolean => JSON.stringify(siteOf(a)) === JSON.stringify(siteOf(b));

/** The year of other inputs, after an earlier one in the same climate. */
function yearAfter(last: Year, inputs: YearInputs, climate: Climate): Year {
  const weather = sameSite(last.inputs, inputs) ? last.weather : weatherAt(inputs, climate);
  return yearIn(inputs, weather, beginOf(last), untouchedBy(inputs, last));
}

/** One total for each block; only the last year is held while they run. */
export function spreadOver(
  varied: readonly YearInputs[],
  cells: CellMatrix,
  system: System,
  trace: Trace = silent,
): readonly YearRow[] {
  let climate: Climate | undefined;
  let last: Year | undefined;
  return varied.map((inputs, place) =>
    trace.within(`Value ${place + 1}`, () => {
      if (last === undefined || climate === undefined)
        ({ year: last, climate } = sharedYear(inputs, cells, system, trace));
      else last = yearAfter(last, withMapUnits(inputs, system), climate);
      return totalOfYear(last);
    }),
  );
}
