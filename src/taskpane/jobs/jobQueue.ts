/**
 * Long jobs, one after the other: in a worker, or in slices on the page if the host allows no worker. Cancelling a running
 * job terminates the worker; the next job gets a new one.
 */
import type { JobTypes } from "./job";
import { type JobOptions, type JobRunner, type JobTable, type WorkerRequest } from "./jobTable";
import { onPage } from "./pageJobs";
import { startWorker, type StartedWorker, type WorkerListener, type WorkerMessage } from "./startWorker";
import { CANCELLED } from "../../workbook/timeSlices";

export interface JobQueue<T extends JobTable<T> = JobTypes> {
  /** Rejects with CANCELLED if `signal` cancels the job, with a sentence if the job fails. */
  run<K extends keyof T & string>(kind: K, needs: T[K]["input"], options?: JobOptions): Promise<T[K]["result"]>;
  /** Where jobs run: known once the first has started. */
  place(): "worker" | "page" | undefined;
}

/** Where jobs may run. */
export interface JobPlaces<T extends JobTable<T>> {
  /** Creates a worker; after two failures jobs run on the page. */
  start(): Worker;
  /** Loads what runs them on the page. */
  load(): Promise<JobRunner<T>>;
  /** A sentence for a job whose worker ended by itself. */
  readonly crashed: string;
}

interface Job {
  readonly ask: WorkerRequest;
  readonly options: JobOptions;
  done(gives: object): void;
  fail(error: Error): void;
}

/** An idle worker is terminated after this many milliseconds: it holds the whole core in memory. */
const IDLE = 120_000;

/** After a failed start the worker is tried once more after this many milliseconds: the network may have been down. */
const RETRY_AFTER = 60_000;

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

interface Line {
  add(job: Job): void;
  remove(job: Job): void;
  place(): ReturnType<JobQueue["place"]>;
}

/** Runs jobs in their order, one at a time. */
function lineOf<T extends JobTable<T>>({ start, load, crashed }: JobPlaces<T>): Line {
  const waiting: Job[] = [];
  let running: Job | undefined;
  let worker: StartedWorker | undefined;
  let place: ReturnType<JobQueue["place"]>;
  let idle: ReturnType<typeof setTimeout> | undefined;
  let failed = false;

  function rest(): void {
    idle = setTimeout(() => {
      worker?.end();
      worker = undefined;
    }, IDLE);
  }

  function finish(job: Job, end: () => void): void {
    if (running !== job) return;
    running = undefined;
    end();
    next();
  }

  function unfit(): void {
    worker = undefined;
    place = "page";
    if (!failed) setTimeout(() => (place = undefined), RETRY_AFTER);
    failed = true;
    toPage();
  }

  function toPage(): void {
    const job = running;
    if (job === undefined) return;
    load()
      .then((run) => onPage(job.ask, job.options, run))
      .then(
        (gives) => finish(job, () => job.done(gives)),
        (thrown: unknown) => finish(job, () => job.fail(asError(thrown))),
      );
  }

  function onMessage(message: WorkerMessage): void {
    const job = running;
    if (job === undefined || message.number !== job.ask.number) return;
    if ("progress" in message) job.options.onProgress?.(message.progress);
    else if ("failed" in message) finish(job, () => job.fail(new Error(message.failed)));
    else finish(job, () => job.done(message.result));
  }

  const listener: WorkerListener = {
    ready() {
      place = "worker";
    },
    onMessage: onMessage,
    onStartFailed: unfit,
    onCrash() {
      worker = undefined;
      const job = running;
      if (job !== undefined) finish(job, () => job.fail(new Error(crashed)));
    },
  };

  function next(): void {
    if (running !== undefined) return;
    clearTimeout(idle);
    running = waiting.shift();
    if (running === undefined) return rest();
    if (place === "page") return toPage();
    try {
      worker ??= startWorker(start, listener);
      worker.send(running.ask, running.options.transfer);
    } catch {
      worker?.end();
      unfit();
    }
  }

  return {
    add(job) {
      waiting.push(job);
      next();
    },
    remove(job) {
      const at = waiting.indexOf(job);
      if (at >= 0) waiting.splice(at, 1);
      if (running !== job) return;
      worker?.end();
      worker = undefined;
      finish(job, () => undefined);
    },
    place: () => place,
  };
}

export function startJobQueue<T extends JobTable<T>>(places: JobPlaces<T>): JobQueue<T> {
  let page: Promise<JobRunner<T>> | undefined;
  const load = (): Promise<JobRunner<T>> =>
    (page ??= places.load().catch((error: unknown) => {
      page = undefined;
      throw error;
    }));
  const line = lineOf({ ...places, load });
  let numbers = 0;
  return {
    run: (kind, input, options = {}) =>
      new Promise((resolve, reject) => {
        const { signal } = options;
        if (signal?.aborted === true) return reject(CANCELLED);
        const cancel = (): void => {
          line.remove(job);
          reject(CANCELLED);
        };
        const leave = (): void => signal?.removeEventListener("abort", cancel);
        const job: Job = {
          ask: { number: ++numbers, kind, input },
          options,
          done(gives) {
            leave();
            resolve(gives);
          },
          fail(error) {
            leave();
            reject(error);
          },
        };
        signal?.addEventListener("abort", cancel);
        line.add(job);
      }),
    place: line.place,
  };
}
