/** Runs a call with ranges many times, in slices, and times them. */
import type { CellInput, Compiled } from "../../../core";
import { longStudy, STUDY_RUNS } from "../../../core/pictures";
import type { StudiedCall } from "./job";
import type { JobContext } from "./jobTable";

/** Milliseconds of a slice, and a year more: far below a fifth of a second. */
const SLICE = 30;

const count = (number: number): string => number.toLocaleString("en-US");

export async function studyCall(
  compiled: Compiled,
  args: readonly CellInput[],
  { report, yieldTurn }: JobContext,
): Promise<StudiedCall> {
  const study = longStudy(compiled, args);
  const { total, run } = study;
  const began = performance.now();
  for (let done = 0; done < total;) {
    report({ done, total, text: `${count(done)} of ${count(total)} ${run}s` });
    await yieldTurn();
    const until = performance.now() + SLICE;
    do {
      study.next();
      done++;
    } while (done < total && performance.now() < until);
  }
  const time = performance.now() - began;
  const refused = study.refused();
  const left =
    refused > 0 ? ` ${(100 * refused).toPrecision(2)} % have values outside the limits and are left out.` : "";
  const forShares = study.correlated
    ? " (no shares of the inputs: those need inputs without correlation)"
    : ` and ${count(total - STUDY_RUNS)} for the shares`;
  return {
    pictures: study.pictures(),
    shares: !study.correlated,
    summary: `${count(STUDY_RUNS)} ${run}s for the distribution${forShares} in ${(time / 1000).toPrecision(2)} s: ${(time / total).toPrecision(2)} ms each.${left}`,
  };
}
