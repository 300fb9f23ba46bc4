/** Years that differ in one input: each begins where the last one ended. */
import { silent, type Trace } from "../../kernel/steps";
import type { Climate } from "../climate";
import { beginOf, yearOf, type Begin, type Year } from "./year";
import type { YearInputs } from "./yearSetUp";

export const spreadOver = (varied: readonly YearInputs[], climate: Climate, trace: Trace = silent): readonly Year[] => {
  let begin: Begin | undefined;
  return varied.map((inputs, place) => {
    const year = trace.within(`Value ${place + 1}`, () => yearOf(inputs, climate, begin, place === 0 ? trace : silent));
    begin = beginOf(year);
    return year;
  });
};
