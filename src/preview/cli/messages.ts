import type { OpeningReport } from "../file/openingReport";
import type { Evaluated, SkippedFormula } from "./evaluate";

/** Between the evaluator's main thread and the worker thread with the sheet engine. */

export type Request =
  | { readonly kind: "formulas"; readonly lines: readonly string[] }
  | { readonly kind: "workbook"; readonly path: string; readonly skipped: readonly SkippedFormula[] };

/** The formula that took longest, by its place in the list. */
export interface Slowest {
  readonly place: number;
  readonly ms: number;
}

export type Reply =
  | { readonly kind: "ready" }
  | { readonly kind: "results"; readonly results: readonly Evaluated[]; readonly slowest: Slowest }
  | {
      readonly kind: "workbook";
      readonly results: readonly Evaluated[];
      readonly report: OpeningReport;
    }
  | { readonly kind: "failed"; readonly message: string };

/** What the worker is given when it starts. */
export interface WorkerSettings {
  /** Two whole numbers in shared memory: how often the place has changed, and the place. */
  readonly progress: SharedArrayBuffer;
}

export const NO_PLACE = -1;
