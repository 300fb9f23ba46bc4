/** Workers on the test's own thread: the product's code at both ends, and every message copied as between threads. */
import { answerJobs, type WorkerScope } from "../../src/taskpane/jobs/answerJobs";
import type { JobRunner, JobTable } from "../../src/taskpane/jobs/jobTable";

interface Started extends Pick<Worker, "onmessage" | "onmessageerror" | "onerror" | "terminate" | "postMessage"> {
  /** Ends by itself, as a browser ends one that takes too much memory. */
  crash(): void;
  readonly ended: boolean;
}

/** As much of a worker as the queue of jobs uses. */
const asWorker = (started: Started): Worker => started as unknown as Worker;

function workerOf<T extends JobTable<T>>(run: JobRunner<T>): Started {
  const scope: WorkerScope = {
    onmessage: null,
    postMessage(message, { transfer }) {
      const data: unknown = structuredClone(message, { transfer });
      queueMicrotask(() => {
        if (!ended) worker.onmessage?.call(asWorker(worker), { data } as MessageEvent);
      });
    },
  };
  let ended = false;
  const worker: Started = {
    onmessage: null,
    onmessageerror: null,
    onerror: null,
    postMessage(message: unknown, transfer: unknown = []) {
      const data: unknown = structuredClone(message, { transfer: transfer as Transferable[] });
      queueMicrotask(() => scope.onmessage?.({ data } as MessageEvent));
    },
    terminate: () => void (ended = true),
    crash() {
      ended = true;
      worker.onerror?.call(asWorker(worker), { preventDefault: () => undefined } as ErrorEvent);
    },
    get ended() {
      return ended;
    },
  };
  queueMicrotask(() => answerJobs(run, scope));
  return worker;
}

/** @param runner makes what a new worker runs its jobs with */
export function workersHere<T extends JobTable<T>>(runner: () => JobRunner<T>) {
  const started: Started[] = [];
  const start = (): Worker => {
    const worker = workerOf(runner());
    started.push(worker);
    return asWorker(worker);
  };
  return { start, started };
}
