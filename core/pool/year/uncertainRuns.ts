/**
 * Runs of the last few calls, shared by the cells of a sheet and by what explains them. A constant of this module like that
 * of `sharedYear`: bounded, a hit is compared in full, and the runs depend on the arguments only.
 */
import { boundedMemo } from "../../kernel/call/memo";
import type { CellMatrix } from "../../kernel/values/cellInput";
import type { System } from "../../kernel/values/quantity";
import type { UncertainRange } from "../../uncertainty/ranges";
import { runAll, type Runs } from "../../uncertainty/study";
import type { UncertainEntries } from "./uncertainInputs";
import { OUTCOMES, type UncertainYear } from "./uncertainYear";

const KNOWN = boundedMemo<Runs>({ entries: 4, cells: 500_000 });

/** The runs of a model made from these arguments. */
export function uncertainRuns(
  model: UncertainYear,
  inputs: UncertainEntries,
  climate: CellMatrix,
  ranges: readonly UncertainRange[],
  runs: number,
  system: System,
): Runs {
  const key = [
    Object.entries(inputs),
    climate,
    ranges.map((range) => Object.values(range)),
    [...(model.correlation?.matrix ?? [])],
    runs,
    system,
  ];
  return KNOWN.getOrCompute("runs", key, () => runAll(model, runs, OUTCOMES.length));
}
