/** Many runs of a call with ranges, one at a time: the distribution first, then what the shares of the inputs need. */
import { addRun, computeInto, noRuns, valuesOfRun, type Compiled } from "../index";
import type { Runs } from "../uncertainty/study";
import { distributionPictures, rankPictures, sharePictures } from "./distribution";
import type { PictureChoice } from "./picture";
import { sharesOf, type SharePair } from "./shares";
import { uncertainCall, type UncertainCall } from "./uncertainCall";

/** Runs of the distribution, and pairs of points for the shares. */
export const STUDY_RUNS = 2048;
const PAIRS = 256;

interface LongStudy {
  readonly total: number;
  /** What a run is: "year". */
  readonly run: string;
  /** Makes one more run. */
  next(): void;
  /** What came of it. */
  pictures(): readonly PictureChoice[];
  refused(): number;
  /** Whether inputs are correlated: then there are no shares. */
  readonly correlated: boolean;
}

interface OpenPair {
  readonly first: readonly number[] | undefined;
  readonly others: (readonly number[] | undefined)[];
}

/** A pair's outcomes at one place; undefined where one of its runs was refused. */
function pairAt({ first, others }: OpenPair, outcome: number): SharePair | undefined {
  const [second, ...mixed] = others.map((values) => values?.[outcome] ?? NaN);
  const pair = { first: first?.[outcome] ?? NaN, second: second ?? NaN, mixed };
  return [pair.first, pair.second, ...mixed].every(Number.isFinite) ? pair : undefined;
}

/** A payback that never comes has no variance: such an outcome has no shares. */
function sharesByOutcome({ outcomes }: UncertainCall, runs: Runs, pairs: readonly OpenPair[]) {
  return outcomes.map((_, outcome) =>
    runs.outcomes[outcome]?.every(Number.isFinite) === true
      ? sharesOf(pairs.map((pair) => pairAt(pair, outcome)).filter((pair) => pair !== undefined))
      : [],
  );
}

/** Starts a study of a call. Throws the fault of a refused one. */
export function longStudy(compiled: Compiled, args: readonly unknown[]): LongStudy {
  const call = uncertainCall(compiled, args);
  const { model, outcomes, run } = call;
  const runs = noRuns(model, outcomes.length);
  const inPair = model.inputs.length + 1;
  const pairs: OpenPair[] = [];
  let done = 0;

  /** The run's values, and those of the second sample. */
  const mixedValues = (pair: number, place: number): readonly number[] => {
    const [first, second] = [valuesOfRun(model, pair), valuesOfRun(model, pair, true)];
    return place === 0 ? second : first.map((value, at) => (at === place - 1 ? (second[at] ?? value) : value));
  };

  function distributionRun(): void {
    const before = runs.refused;
    addRun(model, done, runs);
    if (done >= PAIRS) return;
    const first = runs.refused > before ? undefined : runs.outcomes.map((values) => values.at(-1) ?? NaN);
    pairs.push({ first, others: [] });
  }

  function shareRun(): void {
    const [pair, place] = [Math.floor((done - STUDY_RUNS) / inPair), (done - STUDY_RUNS) % inPair];
    const counted = { ...runs };
    pairs[pair]?.others.push(computeInto(model, mixedValues(pair, place), counted));
  }

  // Shares in the variance need independent inputs.
  const shares = model.correlation === undefined ? PAIRS * inPair : 0;

  return {
    total: STUDY_RUNS + shares,
    run,
    next() {
      if (done < STUDY_RUNS) distributionRun();
      else shareRun();
      done++;
    },
    pictures: () => [
      ...distributionPictures(call, runs),
      ...rankPictures(call, runs),
      ...(shares > 0 ? sharePictures(call, sharesByOutcome(call, runs, pairs)) : []),
    ],
    correlated: model.correlation !== undefined,
    refused: () => runs.refused / STUDY_RUNS,
  };
}
