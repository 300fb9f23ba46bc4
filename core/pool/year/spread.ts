/** Years that differ in one input: each begins where the last one ended. */
import { silent, type Trace } from "../../kernel/steps";
import type { Climate } from "./climate";
import type { YearInputs } from "./inputs";
import type { Year } from "./results";
import { siteOf } from "./setUp";
import type { Weather } from "./weather";
import { beginOf, weatherAt, yearIn, type Begin } from "./year";

const sameSite = (a: YearInputs, b: YearInputs): boolean => JSON.stringify(siteOf(a)) === JSON.stringify(siteOf(b));

export const spreadOver = (varied: readonly YearInputs[], climate: Climate, trace: Trace = silent): readonly Year[] => {
  let begin: Begin | undefined;
  let made: { readonly inputs: YearInputs; readonly weather: Weather } | undefined;
  return varied.map((inputs, place) => {
    const weather = made && sameSite(made.inputs, inputs) ? made.weather : weatherAt(inputs, climate);
    made = { inputs, weather };
    const year = trace.within(`Value ${place + 1}`, () => yearIn(inputs, weather, begin, place === 0 ? trace : silent));
    begin = beginOf(year);
    return year;
  });
};
