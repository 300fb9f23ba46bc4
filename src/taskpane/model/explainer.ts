/** Explains calls: light ones at once, heavy ones by the runs; the last few heavy ones are kept. */
import { callKey } from "../../workbook/scan/callMemo";
import type { CellInput } from "../../workbook/values";
import type { PanelEngine } from "../engine";
import type { ExplainedCall } from "../jobs/job";
import type { JobOptions, JobQueue } from "../jobs/jobQueue";

export interface Explainer {
  /** What is known at once; undefined for a heavy call that must be worked out first. */
  known(id: string, args: readonly CellInput[]): ExplainedCall | undefined;
  work(id: string, args: readonly CellInput[], options: JobOptions): Promise<ExplainedCall>;
}

/** As many heavy calls as stand beside each other in a sheet that is looked through. */
const MOST_KEPT = 16;

export function explainer(engine: PanelEngine, runs: JobQueue): Explainer {
  const kept = new Map<string, ExplainedCall>();
  return {
    known: (id, args) => (engine.heavy(id) ? kept.get(callKey(id, args)) : engine.explain(id, args)),
    async work(id, args, options) {
      const explained = await runs.run("explain", { id, args }, options);
      kept.set(callKey(id, args), explained);
      for (const oldest of kept.keys()) if (kept.size > MOST_KEPT) kept.delete(oldest);
      return explained;
    },
  };
}
