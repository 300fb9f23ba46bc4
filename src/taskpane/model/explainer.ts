/** Explains calls: light ones at once, heavy ones in the job queue. Keeps the last few heavy ones. */
import { callKey } from "../../workbook/scan/callMemo";
import type { CellInput } from "../../workbook/values";
import type { PanelEngine } from "../engine";
import type { ExplainedCall } from "../jobs/job";
import type { JobOptions, JobQueue } from "../jobs/jobQueue";

export interface Explainer {
  /** The explanation, if it is available at once; undefined for a heavy call that has to run first. */
  known(id: string, args: readonly CellInput[]): ExplainedCall | undefined;
  work(id: string, args: readonly CellInput[], options: JobOptions): Promise<ExplainedCall>;
}

/** About as many heavy calls as a user looks through in one sheet. */
const MOST_KEPT = 16;

export function explainer(engine: PanelEngine, jobs: JobQueue): Explainer {
  const kept = new Map<string, ExplainedCall>();
  return {
    known: (id, args) => (engine.heavy(id) ? kept.get(callKey(id, args)) : engine.explain(id, args)),
    async work(id, args, options) {
      const explained = await jobs.run("explain", { id, args }, options);
      kept.set(callKey(id, args), explained);
      for (const oldest of kept.keys()) if (kept.size > MOST_KEPT) kept.delete(oldest);
      return explained;
    },
  };
}
