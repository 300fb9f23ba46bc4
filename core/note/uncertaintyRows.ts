/** The uncertainty of a function's value as rows: what the runs show, and the law of propagation beside them. */
import type { GridCell } from "../kernel/define/result";
import type { Trace } from "../kernel/define/steps";
import { ascending, rankCorrelation, sampleQuantile, shortestInterval } from "../numeric/sample";
import { mean, standardDeviation } from "../numeric/series";
import { expandedUncertainty } from "../uncertainty/equations";
import {
  coverageFactor,
  endsAgree,
  firstOrder,
  leastTrials,
  numericalTolerance,
  scatterOf,
} from "../uncertainty/firstOrder";
import { refusedShare, type Runs } from "../uncertainty/study";
import type { FunctionModel } from "./uncertainty";

/** Digits of an uncertainty that mean something: two at most. */
const DIGITS = 2;

const percentText = (share: number): string => `${Number((100 * share).toPrecision(8))} %`;

/** The law of propagation beside the runs, and each input's part in it. */
function gumRows(
  model: FunctionModel,
  values: readonly number[],
  coverage: number,
  [from = 0, to = 0]: readonly number[],
  trace: Trace,
) {
  const { inputs, correlation, unit } = model;
  const { estimate, uncertainty, freedom, coefficients, contributions, together } = firstOrder(model, trace);
  const factor = coverageFactor(coverage, freedom);
  const percent = percentText(coverage);
  const expanded = trace.step(expandedUncertainty, { k: factor, u: uncertainty });
  const [low, high] = [estimate - expanded, estimate + expanded];
  const tolerance = numericalTolerance(uncertainty, DIGITS);
  const scatter = scatterOf(values, coverage);
  return [
    ["GUM estimate", estimate, unit],
    ["GUM standard uncertainty", uncertainty, unit],
    ["effective degrees of freedom", freedom === Infinity ? "infinite" : freedom, ""],
    ["coverage factor", factor, ""],
    ["GUM expanded uncertainty", expanded, unit],
    [`GUM ${percent} from`, low, unit],
    [`GUM ${percent} to`, high, unit],
    ["numerical tolerance", tolerance, unit],
    ["scatter of the runs", scatter, unit],
    ["GUM beside the runs", endsAgree(Math.max(Math.abs(low - from), Math.abs(high - to)), tolerance, scatter), ""],
    [`random trials for ${percent}`, leastTrials(coverage), ""],
    ...inputs.flatMap(({ label, unit: own }, place) => [
      [`sensitivity coefficient of ${label}`, coefficients[place] ?? 0, `${unit || 1} per ${own || 1}`],
      [`contribution of ${label}`, contributions[place] ?? 0, unit],
    ]),
    ...(correlation === undefined ? [] : [["contribution of the correlations", together, unit]]),
  ];
}

/** All rows, those of the runs first. */
export function functionRows(
  model: FunctionModel,
  likely: number,
  found: Runs,
  runs: number,
  coverage: number,
  trace: Trace,
): readonly (readonly GridCell[])[] {
  const [values = []] = found.outcomes;
  const sorted = ascending(values);
  const at = (share: number): number => sampleQuantile(sorted, share);
  const ends = [at((1 - coverage) / 2), at((1 + coverage) / 2)] as const;
  const [from, to] = shortestInterval(sorted, coverage);
  const { unit } = model;
  const percent = percentText(coverage);
  return [
    ["statistic", "value", "unit"],
    ["P10", at(0.1), unit],
    ["P50", at(0.5), unit],
    ["P90", at(0.9), unit],
    ["likely inputs", likely, unit],
    ["mean", mean(values), unit],
    ["standard deviation", standardDeviation(values), unit],
    [`${percent} from`, ends[0], unit],
    [`${percent} to`, ends[1], unit],
    [`shortest ${percent} from`, from, unit],
    [`shortest ${percent} to`, to, unit],
    ["share below 0", values.filter((value) => value < 0).length / values.length, ""],
    ["runs", runs, ""],
    ["left out", refusedShare(found, runs), ""],
    ...model.inputs.map(({ label }, place) => [
      `rank correlation of ${label}`,
      rankCorrelation(found.inputs[place] ?? [], values),
      "",
    ]),
    ...gumRows(model, values, coverage, ends, trace),
  ];
}
