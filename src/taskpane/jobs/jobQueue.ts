/**
 * The panel's long jobs, one after the other: in a worker, or in slices on the page if the host allows no worker.
 * Cancelling a running job terminates the worker; the next job gets a new one.
 */
import { BUILD } from "../../functions/buildHash";
import { startWorker, type StartedWorker, type WorkerListener, type WorkerMessage } from "./startWorker";
import type { JobRequest, JobResult, JobKind, JobInput, Progress } from "./job";

/** The rejection of a cancelled job. */
export const CANCELLED = new Error("cancelled");

export interface JobOptions {
  readonly signal?: AbortSignal | undefined;
  onProgress?(progress: Progress): void;
}

export interface JobQueue {
  /** Rejects with CANCELLED if `signal` cancels the job, with a sentence if the job fails. */
  run<K extends JobKind>(kind: K, needs: JobInput<K>, options?: JobOptions): Promise<JobResult<K>>;
  /** Where jobs run: known once the first has started. */
  place(): "worker" | "page" | undefined;
}

interface Job {
  readonly ask: JobRequest;
  readonly options: JobOptions;
  done(gives: JobResult<JobKind>): void;
  fail(error: Error): void;
}

/** An idle worker is terminated after this many milliseconds: it holds the whole core in memory. */
const IDLE = 120_000;

/** After a failed start the worker is tried once more after this many milliseconds: the network may have been down. */
const RETRY_AFTER = 60_000;

/** Lets the page draw before the job keeps it busy. */
const nextTask = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

async function onPage({ ask: { kind, input }, options: { signal, onProgress } }: Job): Promise<JobResult<JobKind>> {
  const { runJob } = await import(/* webpackChunkName: "perform" */ "./runJob");
  const yieldTurn = async (): Promise<void> => {
    await nextTask();
    if (signal?.aborted === true) throw CANCELLED;
  };
  // Even a job in one piece yields to the page once before it starts.
  await yieldTurn();
  return runJob(kind, input, { report: (progress) => onProgress?.(progress), yieldTurn });
}

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

interface Line {
  add(job: Job): void;
  remove(job: Job): void;
  place(): ReturnType<JobQueue["place"]>;
}

/** Runs jobs in their order, one at a time. */
function lineOf(start: () => Worker): Line {
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
    onPage(job).then(
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
      if (job !== undefined) finish(job, () => job.fail(new Error("the calculation stopped")));
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
      worker.send(running.ask);
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

const newWorker = (): Worker => new Worker(`worker.js?v=${BUILD}`, { name: "warmback" });

/** @param start creates a worker; after two failures jobs run on the page */
export function startJobQueue(start: () => Worker = newWorker): JobQueue {
  const line = lineOf(start);
  let numbers = 0;
  return {
    run: <K extends JobKind>(kind: K, input: JobInput<K>, options: JobOptions = {}) =>
      new Promise<JobResult<K>>((resolve, reject) => {
        const { signal } = options;
        if (signal?.aborted === true) return reject(CANCELLED);
        const cancel = (): void => {
          line.remove(job);
          reject(CANCELLED);
        };
        const leave = (): void => signal?.removeEventListener("abort", cancel);
        const job: Job = {
          ask: { number: ++numbers, kind, input } as JobRequest,
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
