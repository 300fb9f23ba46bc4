/** An engine that runs heavy calls in the job queue: they throw `Pending` until their result is there. */
import { type CellInput, boundedMemo, type Memo } from "../../../core";
import { pending } from "../../workbook/pending";
import type { CellOutcome } from "../../workbook/values";
import type { PanelEngine } from "../engine";
import type { JobResult, JobKind } from "./job";
import type { JobQueue } from "./jobQueue";
import { resultInSession } from "./sessionResult";

/** More results than any formula has calls stay whatever they weigh, so that no pass loses what it waited for. */
const BOUNDS = { entries: 1024, cells: 2_000_000, least: 64 };

/**
 * @param engine runs light calls at once
 * @param jobs runs heavy calls, unless a cell got the result in this session
 */
export function workerEngine(engine: PanelEngine, jobs: JobQueue): PanelEngine {
  const reports = boundedMemo<JobResult<"report">>(BOUNDS);
  const described = boundedMemo<JobResult<"describe">>(BOUNDS);
  const kept = <K extends JobKind & ("report" | "describe")>(
    kind: K,
    results: Memo<JobResult<K>>,
    id: string,
    args: readonly CellInput[],
  ): JobResult<K> => {
    const known = results.get(id, args);
    if (known !== undefined) return known;
    throw pending(async (signal) => results.set(id, args, await jobs.run(kind, { id, args }, { signal })));
  };
  const inSession = (id: string, args: readonly CellInput[]): CellOutcome | undefined =>
    resultInSession(engine.log.of(id), args);
  return {
    ...engine,
    call: (id, args) =>
      engine.heavy(id) ? (inSession(id, args) ?? kept("report", reports, id, args).outcome) : engine.call(id, args),
    cautionsOf: (id, args) =>
      engine.heavy(id) ? kept("report", reports, id, args).cautions : engine.cautionsOf(id, args),
    describe: (id, args) => (engine.heavy(id) ? kept("describe", described, id, args) : engine.describe(id, args)),
  };
}
