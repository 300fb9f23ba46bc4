/** Runs of a year whose inputs have ranges. */
import type { IsSliceOver } from "../../kernel/define/slice";
import type { CellMatrix } from "../../kernel/values/cellInput";
import type { System } from "../../kernel/values/quantity";
import { knownRuns } from "../../uncertainty/knownRuns";
import type { UncertainRange } from "../../uncertainty/ranges";
import type { UncertainEntries } from "./uncertainInputs";
import { OUTCOMES, type UncertainYear } from "./uncertainYear";

/** The runs of a model made from these arguments. */
export function uncertainRuns(
  model: UncertainYear,
  inputs: UncertainEntries,
  climate: CellMatrix,
  ranges: readonly UncertainRange[],
  runs: number,
  system: System,
  isSliceOver?: IsSliceOver,
): ReturnType<typeof knownRuns> {
  const key = [
    Object.entries(inputs),
    climate,
    ranges.map((range) => Object.values(range)),
    [...(model.correlation?.matrix ?? [])],
    system,
  ];
  return knownRuns("year", key, { model, runs, outcomes: OUTCOMES.length, isSliceOver });
}
