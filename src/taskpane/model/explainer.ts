/** Explains calls: light ones at once, heavy ones in the job queue. Keeps the last few heavy ones. */
import { type CellInput, boundedMemo } from "../../../core";
import type { PanelEngine } from "../engine";
import type { ExplainedCall } from "../jobs/job";
import type { JobQueue } from "../jobs/jobQueue";
import type { JobOptions } from "../jobs/jobTable";

export interface Explainer {
  /** The explanation, if it is available at once; undefined for a heavy call that has to run first. */
  known(id: string, args: readonly CellInput[]): ExplainedCall | undefined;
  work(id: string, args: readonly CellInput[], options: JobOptions): Promise<ExplainedCall>;
}

/** The heavy calls that a reader looks through in a sheet. */
const BOUNDS = { entries: 16, cells: 2_000_000 };

export function explainer(engine: PanelEngine, jobs: JobQueue): Explainer {
  const kept = boundedMemo<ExplainedCall>(BOUNDS);
  return {
    known: (id, args) => (engine.heavy(id) ? kept.get(id, args) : engine.explain(id, args)),
    async work(id, args, options) {
      const explained = await jobs.run("explain", { id, args }, options);
      kept.set(id, args, explained);
      return explained;
    },
  };
}
