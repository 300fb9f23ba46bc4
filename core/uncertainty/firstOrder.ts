/** The law of propagation of uncertainty, to first order, and whether the runs bear it out. */
import { normalQuantile } from "../numeric/normal";
import { ascending, sampleQuantile } from "../numeric/sample";
import { item, mean, standardDeviation, sumOf } from "../numeric/series";
import { studentQuantile } from "../numeric/student";
import type { UncertainModel } from "./study";

/** The step of a derivative, as a share of the input's standard uncertainty. */
const STEP = 0.01;

/** The effective degrees of freedom of a sum, by Welch and Satterthwaite. */
export function effectiveFreedom(contributions: readonly number[], freedoms: readonly number[]): number {
  const variance = sumOf(contributions, (each) => each ** 2);
  const below = sumOf([...contributions.keys()], (at) => item(contributions, at) ** 4 / item(freedoms, at));
  return below > 0 ? variance ** 2 / below : Infinity;
}

/** Student's factor for the degrees of freedom, cut to a whole number. */
export function coverageFactor(confidence: number, freedom: number): number {
  return freedom === Infinity
    ? normalQuantile((1 + confidence) / 2)
    : studentQuantile(confidence, Math.floor(freedom * (1 + 1e-9)));
}

/** Half a unit of the last of the digits that an uncertainty is stated with. */
export function numericalTolerance(uncertainty: number, digits: number): number {
  const power = Number(uncertainty.toExponential(digits - 1).split("e")[1]);
  return uncertainty > 0 ? 10 ** (power - digits + 1) / 2 : 0;
}

/** The fewest random trials for an interval. */
export function leastTrials(confidence: number): number {
  return Math.round(1e4 / (1 - confidence));
}

/** What the law says of a model with one outcome. */
export function firstOrder({ inputs, compute }: UncertainModel) {
  const means = inputs.map((input) => input.mean);
  const outcome = (place = 0, step = 0): number =>
    item(compute(means.map((value, at) => (at === place ? value + step : value))), 0);
  const coefficients = inputs.map(({ deviation }, place) => {
    const step = STEP * deviation;
    const across = (width: number): number => outcome(place, width) - outcome(place, -width);
    return (8 * across(step) - across(2 * step)) / (12 * step);
  });
  const contributions = inputs.map(({ deviation }, place) => Math.abs(item(coefficients, place)) * deviation);
  return {
    estimate: outcome(),
    uncertainty: Math.hypot(...contributions),
    freedom: effectiveFreedom(
      contributions,
      inputs.map(({ freedom }) => freedom),
    ),
    coefficients,
    contributions,
  };
}

/** How many parts the runs are cut into to see how far they scatter. */
const BLOCKS = 8;

/** Twice the standard deviation of the mean over blocks of runs: the greatest of mean, spread and both ends. */
export function scatterOf(values: readonly number[], confidence: number): number {
  const size = Math.floor(values.length / BLOCKS);
  const blocks = Array.from({ length: BLOCKS }, (_, block) => {
    const part = values.slice(block * size, (block + 1) * size);
    const sorted = ascending(part);
    const ends = [(1 - confidence) / 2, (1 + confidence) / 2].map((share) => sampleQuantile(sorted, share));
    return [mean(part), standardDeviation(part), ...ends];
  });
  const spreads = [0, 1, 2, 3].map((which) => standardDeviation(blocks.map((block) => item(block, which))));
  return (2 * Math.max(...spreads)) / Math.sqrt(BLOCKS);
}

/** Whether both ends of the law's interval agree with those of the runs. */
export function endsAgree(apart: number, tolerance: number, scatter: number): string {
  if (apart + scatter <= tolerance) return "agrees";
  return apart - scatter > tolerance ? "differs" : "too few runs to tell";
}
