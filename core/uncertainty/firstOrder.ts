/** The law of propagation of uncertainty, to first order, and whether the runs bear it out. */
import { normalQuantile } from "../numeric/normal";
import { ascending, sampleQuantile } from "../numeric/sample";
import { item, mean, standardDeviation, sumOf } from "../numeric/series";
import { studentQuantile } from "../numeric/student";
import { silent, type Trace } from "../kernel/define/steps";
import { joinedGroups } from "./correlation";
import { lawOfPropagation, pairVariance } from "./equations";
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

/** Law of propagation over signed contributions, and what the correlations add to the variance. */
function combined({ inputs, correlation }: UncertainModel, signed: readonly number[], trace: Trace) {
  if (correlation === undefined) return { uncertainty: Math.hypot(...signed), added: 0 };
  let added = 0;
  for (const [i, line] of correlation.matrix.entries())
    for (const [j, r] of line.slice(0, i).entries())
      if (r !== 0)
        added += trace.step(
          pairVariance,
          { r, p: item(signed, i), q: item(signed, j) },
          `${item(inputs, j).label} and ${item(inputs, i).label}`,
        );
  const S = sumOf(signed, (each) => each ** 2);
  // A perfect correlation may take all of it away, but for rounding.
  return { uncertainty: trace.step(lawOfPropagation, { S, V: Math.max(-S, added) }), added };
}

/**
 * Effective degrees of freedom. Welch and Satterthwaite's sum takes independent contributions only: inputs that hang
 * together count as one, with the least degrees of freedom among them.
 */
function freedomOf(model: UncertainModel, signed: readonly number[]): number {
  const { inputs, correlation } = model;
  const groups = correlation === undefined ? [...inputs.keys()] : joinedGroups(correlation);
  const parts = [...new Set(groups)].map((group) => ({
    contribution: combined(
      model,
      signed.map((each, place) => (groups[place] === group ? each : 0)),
      silent,
    ).uncertainty,
    freedom: Math.min(...inputs.filter((_, place) => groups[place] === group).map(({ freedom }) => freedom)),
  }));
  return effectiveFreedom(
    parts.map(({ contribution }) => contribution),
    parts.map(({ freedom }) => freedom),
  );
}

/** What the law says of a model with one outcome. */
export function firstOrder(model: UncertainModel, trace: Trace = silent) {
  const { inputs, compute } = model;
  const means = inputs.map((input) => input.mean);
  const outcome = (place = 0, step = 0): number =>
    item(compute(means.map((value, at) => (at === place ? value + step : value))), 0);
  const coefficients = inputs.map(({ deviation }, place) => {
    const step = STEP * deviation;
    const across = (width: number): number => outcome(place, width) - outcome(place, -width);
    return (8 * across(step) - across(2 * step)) / (12 * step);
  });
  const signed = inputs.map(({ deviation }, place) => item(coefficients, place) * deviation);
  const { uncertainty, added } = combined(model, signed, trace);
  return {
    estimate: outcome(),
    uncertainty,
    freedom: freedomOf(model, signed),
    coefficients,
    contributions: signed.map(Math.abs),
    /** The square root of what the correlations add to the variance; negative where they take from it. */
    together: Math.sign(added) * Math.sqrt(Math.abs(added)),
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
