/**
 * Long work of the panel, one piece after the other: in a worker, or sliced on the page where the host lets none be made.
 * Ending a piece that runs ends the worker; the next piece gets a new one.
 */
import { BUILD } from "../../functions/buildHash";
import { startWorker, type StartedWorker, type WorkerListener, type WorkerMessage } from "./startWorker";
import type { JobRequest, JobResult, JobKind, JobInput, Progress } from "./job";

/** What ended work is rejected with. */
export const CANCELLED = new Error("cancelled");

export interface JobOptions {
  readonly signal?: AbortSignal | undefined;
  tell?(progress: Progress): void;
}

export interface JobQueue {
  /** Rejects with CANCELLED where `signal` ends the work, with a sentence where it fails. */
  run<K extends JobKind>(kind: K, needs: JobInput<K>, options?: JobOptions): Promise<JobResult<K>>;
  /** Where work is done: known once some was begun. */
  place(): "worker" | "page" | undefined;
}

interface Job {
  readonly ask: JobRequest;
  readonly options: JobOptions;
  done(gives: JobResult<JobKind>): void;
  fail(error: Error): void;
}

/** A worker that nothing was asked of for so many milliseconds is let go: it holds the whole core in memory. */
const IDLE = 120_000;

/** After a start that failed a worker is tried once more when so many milliseconds have passed: the net may have been away. */
const TRIED_AGAIN = 60_000;

/** The page draws what it was told before it is kept busy. */
const nextTask = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

async function onPage({ ask: { kind, needs }, options: { signal, tell } }: Job): Promise<JobResult<JobKind>> {
  const { runJob } = await import(/* webpackChunkName: "perform" */ "./runJob");
  const yieldTurn = async (): Promise<void> => {
    await nextTask();
    if (signal?.aborted === true) throw CANCELLED;
  };
  // Work that is one piece, too, leaves the page a turn between itself and the piece before.
  await yieldTurn();
  return runJob(kind, needs, { report: (progress) => tell?.(progress), yieldTurn });
}

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

interface Line {
  add(piece: Job): void;
  remove(piece: Job): void;
  place(): ReturnType<JobQueue["place"]>;
}

/** Pieces in their order, one at a time. */
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

  function finish(piece: Job, end: () => void): void {
    if (running !== piece) return;
    running = undefined;
    end();
    next();
  }

  function unfit(): void {
    worker = undefined;
    place = "page";
    if (!failed) setTimeout(() => (place = undefined), TRIED_AGAIN);
    failed = true;
    toPage();
  }

  function toPage(): void {
    const piece = running;
    if (piece === undefined) return;
    onPage(piece).then(
      (gives) => finish(piece, () => piece.done(gives)),
      (thrown: unknown) => finish(piece, () => piece.fail(asError(thrown))),
    );
  }

  function said(message: WorkerMessage): void {
    const piece = running;
    if (piece === undefined || message.number !== piece.ask.number) return;
    if ("progress" in message) piece.options.tell?.(message.progress);
    else if ("failed" in message) finish(piece, () => piece.fail(new Error(message.failed)));
    else finish(piece, () => piece.done(message.gives));
  }

  const listener: WorkerListener = {
    ready() {
      place = "worker";
    },
    said,
    unfit,
    broken() {
      worker = undefined;
      const piece = running;
      if (piece !== undefined) finish(piece, () => piece.fail(new Error("the calculation broke off")));
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
      worker.ask(running.ask);
    } catch {
      worker?.end();
      unfit();
    }
  }

  return {
    add(piece) {
      waiting.push(piece);
      next();
    },
    remove(piece) {
      const at = waiting.indexOf(piece);
      if (at >= 0) waiting.splice(at, 1);
      if (running !== piece) return;
      worker?.end();
      worker = undefined;
      finish(piece, () => undefined);
    },
    place: () => place,
  };
}

const newWorker = (): Worker => new Worker(`worker.js?v=${BUILD}`, { name: "warmback" });

/** @param start makes a worker; where it throws, or what it makes doesn't start, twice, work is done on the page from then on */
export function startJobQueue(start: () => Worker = newWorker): JobQueue {
  const line = lineOf(start);
  let numbers = 0;
  return {
    run: <K extends JobKind>(kind: K, needs: JobInput<K>, options: JobOptions = {}) =>
      new Promise<JobResult<K>>((resolve, reject) => {
        const { signal } = options;
        if (signal?.aborted === true) return reject(CANCELLED);
        const cancel = (): void => {
          line.remove(piece);
          reject(CANCELLED);
        };
        const leave = (): void => signal?.removeEventListener("abort", cancel);
        const piece: Job = {
          ask: { number: ++numbers, kind, needs } as JobRequest,
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
        line.add(piece);
      }),
    place: line.place,
  };
}
