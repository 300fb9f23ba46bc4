/** Runs of a calculation with uncertain inputs, and what they show. */
import { isFault, notAvailable, type Fault } from "../kernel/values/fault";
import { sobolAt } from "../numeric/sobol";
import { ascending, sampleQuantile } from "../numeric/sample";
import { item } from "../numeric/series";
import { correlatedShares, type Correlation } from "./correlation";
import type { UncertainInput } from "./ranges";

/** A calculation of outcomes from uncertain inputs. */
export interface UncertainModel {
  readonly inputs: readonly UncertainInput[];
  readonly correlation?: Correlation | undefined;
  /** Outcomes at values of the inputs; one that can't be had is NaN. Throws a fault where values are refused. */
  compute(values: readonly number[]): readonly number[];
}

/** Runs that gave a result: values of each input and of each outcome. Refused runs are counted. */
export interface Runs {
  readonly inputs: readonly number[][];
  readonly outcomes: readonly number[][];
  refused: number;
  fault?: Fault;
}

/** The most runs that may be refused, as a share. */
const MOST_REFUSED = 0.1;

/** The values of a run's inputs: always the same for its number. A second sample is independent of the first. */
export function valuesOfRun({ inputs, correlation }: UncertainModel, run: number, second = false): readonly number[] {
  const free = inputs.map((_, place) => sobolAt(run, second ? inputs.length + place : place));
  const shares = correlation === undefined ? free : correlatedShares(free, correlation);
  return inputs.map((input, place) => input.at(item(shares, place)));
}

export function likelyValues({ inputs }: UncertainModel): readonly number[] {
  return inputs.map(({ likely }) => likely);
}

/** No runs yet, of a model with so many outcomes. */
export function noRuns({ inputs }: UncertainModel, outcomes: number): Runs {
  return { inputs: inputs.map(() => []), outcomes: Array.from({ length: outcomes }, () => []), refused: 0 };
}

/** The outcomes at values; undefined, and counted, where they are refused. */
export function computeInto(
  model: UncertainModel,
  values: readonly number[],
  into: Runs,
): readonly number[] | undefined {
  try {
    return model.compute(values);
  } catch (thrown) {
    if (!isFault(thrown)) throw thrown;
    into.refused++;
    into.fault ??= thrown;
    return undefined;
  }
}

/** Adds one run. */
export function addRun(model: UncertainModel, run: number, into: Runs): void {
  const values = valuesOfRun(model, run);
  const found = computeInto(model, values, into);
  if (found === undefined) return;
  for (const [place, value] of values.entries()) into.inputs[place]?.push(value);
  for (const [place, value] of found.entries()) into.outcomes[place]?.push(value);
}

/** The share of refused runs; too many are refused themselves, with the reason of the first. */
export function refusedShare({ refused, fault }: Runs, runs: number): number {
  if (refused > MOST_REFUSED * runs)
    throw notAvailable(
      `ranges: ${refused} of ${runs} runs have values that are refused; narrow the ranges. The first: ${fault?.message ?? ""}`,
    );
  return refused / runs;
}

const PERCENTILES = [0.1, 0.5, 0.9] as const;

/** P10, P50 and P90. */
export function percentilesOf(values: readonly number[]): readonly number[] {
  const sorted = ascending(values);
  return PERCENTILES.map((share) => sampleQuantile(sorted, share));
}
