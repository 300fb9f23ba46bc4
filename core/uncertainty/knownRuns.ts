/**
 * Runs of the last few calls, shared by the cells of a sheet and by what explains them; also those that a slice left
 * unfinished. A constant of this module like that of `sharedYear`: bounded, a hit is compared in full, and the runs depend
 * on the arguments only.
 */
import { boundedMemo } from "../kernel/call/memo";
import { UNFINISHED, type IsSliceOver } from "../kernel/define/slice";
import { addRun, likelyValues, noRuns, type Runs, type UncertainModel } from "./study";

interface OpenRuns {
  /** The model that began goes on: its years begin where the last ones ended. */
  readonly model: UncertainModel;
  readonly likely: readonly number[];
  readonly into: Runs;
  done: number;
}

const KNOWN = boundedMemo<OpenRuns>({ entries: 4, cells: 500_000 });

export interface WantedRuns {
  readonly model: UncertainModel;
  readonly runs: number;
  readonly outcomes: number;
  readonly isSliceOver?: IsSliceOver | undefined;
}

interface KnownRuns {
  /** The outcomes at the likely inputs. */
  readonly likely: readonly number[];
  readonly found: Runs;
}

/**
 * The runs of a model made from these arguments. Throws `UNFINISHED` after the run in which the slice is over.
 * @param id what the arguments belong to
 */
export function knownRuns(
  id: string,
  args: readonly unknown[],
  { model, runs, outcomes, isSliceOver }: WantedRuns,
): KnownRuns {
  const open = KNOWN.getOrCompute(id, [...args, runs], () => ({
    model,
    likely: model.compute(likelyValues(model)),
    into: noRuns(model, outcomes),
    done: 0,
  }));
  while (open.done < runs) {
    addRun(open.model, open.done, open.into);
    open.done++;
    if (open.done < runs && isSliceOver?.() === true) throw UNFINISHED;
  }
  return { likely: open.likely, found: open.into };
}
