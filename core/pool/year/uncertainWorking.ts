/** The working of the year's uncertainty: percentiles of each input, and the outcomes of the runs. */
import type { Trace } from "../../kernel/define/steps";
import type { Runs } from "../../uncertainty/study";
import type { UncertainYear } from "./uncertainYear";

const SERIES = [
  ["Heat taken", "heat"],
  ["Warm days", "days"],
  ["Money saved", "money"],
] as const;

export function traceUncertainty({ inputs }: UncertainYear, { outcomes }: Runs, trace: Trace): void {
  for (const input of inputs)
    trace.within(`${input.label}: P10, P50 and P90`, () => {
      for (const share of [0.1, 0.5, 0.9]) input.at(share, trace);
    });
  for (const [place, [title, kind]] of SERIES.entries()) {
    const values = outcomes[place] ?? [];
    if (!values.some(Number.isNaN)) trace.series({ title, of: "year", kind, total: "mean", values });
  }
}
