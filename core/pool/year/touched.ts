/** Which of a year's four runs an input touches: what it doesn't touch needs no second run. */
import { RECOVERY, SECOND_SINK, type YearInputs } from "./inputs";
import type { Year } from "./results";

type Labels = readonly (keyof YearInputs)[];

/** Counted after the runs. */
export const MONEY_LABELS = [
  "backUpEfficiency",
  "backUpPrice",
  "electricityPrice",
  "hotWaterSource",
  "hotWaterEfficiency",
  "hotWaterPrice",
] as const satisfies Labels;

/** Touch pools with recovery alone. */
export const RECOVERY_LABELS = [
  ...Object.keys(RECOVERY),
  ...Object.keys(SECOND_SINK),
  "pumpOnCall",
  "lineLoss",
  "pipeLoss",
] as Labels;

/** Touch pools held by the back-up heater alone. */
export const HELD_LABELS = ["backUpCapacity", "seasonStart", "seasonEnd"] as const satisfies Labels;

const withoutLabels = (inputs: YearInputs, ...lists: readonly Labels[]): readonly (readonly unknown[])[] =>
  Object.entries(inputs).filter(([key]) => !lists.some((labels) => labels.some((label) => label === key)));

/** What of a block a year's runs depend on. */
export const runLabels = (inputs: YearInputs): readonly (readonly unknown[])[] => withoutLabels(inputs, MONEY_LABELS);

const same = (a: YearInputs, b: YearInputs, ...lists: readonly Labels[]): boolean =>
  JSON.stringify(withoutLabels(a, MONEY_LABELS, ...lists)) === JSON.stringify(withoutLabels(b, MONEY_LABELS, ...lists));

/** Runs of an earlier year that other inputs leave as they are. */
export type Untouched = { readonly [K in "free" | "held"]: Partial<Year[K]> };

/** The set point bounds the machine's curve on the pool, so it touches all but the pool left to itself without recovery. */
export function untouchedBy(inputs: YearInputs, { inputs: before, free, held }: Year): Untouched {
  return {
    free: {
      ...(same(before, inputs, RECOVERY_LABELS, HELD_LABELS, ["setPoint"]) ? { without: free.without } : {}),
      ...(same(before, inputs, HELD_LABELS) ? { with: free.with } : {}),
    },
    held: {
      ...(same(before, inputs, RECOVERY_LABELS) ? { without: held.without } : {}),
      ...(same(before, inputs) ? { with: held.with } : {}),
    },
  };
}
