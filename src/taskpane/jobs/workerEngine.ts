/** An engine that runs heavy calls in the job queue: they throw `Pending` until their result is there. */
import { pending } from "../../workbook/pending";
import { callKey } from "../../workbook/scan/callMemo";
import type { CellOutcome, CellInput } from "../../workbook/values";
import type { PanelEngine } from "../engine";
import type { JobResult, JobKind } from "./job";
import type { JobQueue } from "./jobQueue";
import { resultInSession } from "./sessionResult";

/** Results kept: more than any formula has calls, so that no pass loses a result that it waited for. */
const MOST_KEPT = 1024;
/** Characters of all keys together; a year of hourly rows takes half a million. */
const MOST_TEXT = 16_000_000;
/** Results kept whatever the length of their keys. */
const LEAST_KEPT = 64;

interface Kept<T> {
  get(key: string): T | undefined;
  set(key: string, value: T): void;
}

/** The newest values. */
function newest<T>(): Kept<T> {
  const held = new Map<string, T>();
  let text = 0;
  return {
    get: (key) => held.get(key),
    set(key, value) {
      if (held.delete(key)) text -= key.length;
      held.set(key, value);
      text += key.length;
      for (const oldest of held.keys()) {
        if (held.size <= LEAST_KEPT || (held.size <= MOST_KEPT && text <= MOST_TEXT)) return;
        held.delete(oldest);
        text -= oldest.length;
      }
    },
  };
}

/**
 * @param engine runs light calls at once
 * @param jobs runs heavy calls, unless a cell got the result in this session
 */
export function workerEngine(engine: PanelEngine, jobs: JobQueue): PanelEngine {
  const reports = newest<JobResult<"tell">>();
  const described = newest<JobResult<"describe">>();
  const kept = <K extends JobKind & ("tell" | "describe")>(
    kind: K,
    results: Kept<JobResult<K>>,
    id: string,
    args: readonly CellInput[],
  ): JobResult<K> => {
    const key = callKey(id, args);
    const known = results.get(key);
    if (known !== undefined) return known;
    throw pending(async (signal) => results.set(key, await jobs.run(kind, { id, args }, { signal })));
  };
  const inSession = (id: string, args: readonly CellInput[]): CellOutcome | undefined =>
    resultInSession(engine.log.of(id), args);
  return {
    ...engine,
    call: (id, args) =>
      engine.heavy(id) ? (inSession(id, args) ?? kept("tell", reports, id, args).outcome) : engine.call(id, args),
    cautionsOf: (id, args) =>
      engine.heavy(id) ? kept("tell", reports, id, args).cautions : engine.cautionsOf(id, args),
    describe: (id, args) => (engine.heavy(id) ? kept("describe", described, id, args) : engine.describe(id, args)),
  };
}
