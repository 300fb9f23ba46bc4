/**
 * Long work of the panel, one piece after the other: in a worker, or sliced on the page where the host lets none be made.
 * Ending a piece that runs ends the worker; the next piece gets a new one.
 */
import { BUILD } from "../../functions/buildHash";
import { hire, type Hired, type Listener, type Message } from "./hire";
import type { Ask, Gives, Kind, Needs, Progress } from "./job";

/** What ended work is rejected with. */
export const CANCELLED = new Error("cancelled");

export interface RunOptions {
  readonly signal?: AbortSignal | undefined;
  tell?(progress: Progress): void;
}

export interface Runs {
  /** Rejects with CANCELLED where `signal` ends the work, with a sentence where it fails. */
  run<K extends Kind>(kind: K, needs: Needs<K>, options?: RunOptions): Promise<Gives<K>>;
  /** Where work is done: known once some was begun. */
  place(): "worker" | "page" | undefined;
}

interface Piece {
  readonly ask: Ask;
  readonly options: RunOptions;
  done(gives: Gives<Kind>): void;
  fail(error: Error): void;
}

/** A worker that nothing was asked of for so many milliseconds is let go: it holds the whole core in memory. */
const IDLE = 120_000;

/** After a start that failed a worker is tried once more when so many milliseconds have passed: the net may have been away. */
const TRIED_AGAIN = 60_000;

/** The page draws what it was told before it is kept busy. */
const nextTask = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

async function onPage({ ask: { kind, needs }, options: { signal, tell } }: Piece): Promise<Gives<Kind>> {
  const { perform } = await import(/* webpackChunkName: "perform" */ "./perform");
  const turn = async (): Promise<void> => {
    await nextTask();
    if (signal?.aborted === true) throw CANCELLED;
  };
  // Work that is one piece, too, leaves the page a turn between itself and the piece before.
  await turn();
  return perform(kind, needs, { tell: (progress) => tell?.(progress), turn });
}

const asError = (thrown: unknown): Error => (thrown instanceof Error ? thrown : new Error(String(thrown)));

interface Line {
  add(piece: Piece): void;
  remove(piece: Piece): void;
  place(): ReturnType<Runs["place"]>;
}

/** Pieces in their order, one at a time. */
function lineOf(start: () => Worker): Line {
  const waiting: Piece[] = [];
  let running: Piece | undefined;
  let worker: Hired | undefined;
  let place: ReturnType<Runs["place"]>;
  let idle: ReturnType<typeof setTimeout> | undefined;
  let failed = false;

  function rest(): void {
    idle = setTimeout(() => {
      worker?.end();
      worker = undefined;
    }, IDLE);
  }

  function finish(piece: Piece, end: () => void): void {
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

  function said(message: Message): void {
    const piece = running;
    if (piece === undefined || message.number !== piece.ask.number) return;
    if ("progress" in message) piece.options.tell?.(message.progress);
    else if ("failed" in message) finish(piece, () => piece.fail(new Error(message.failed)));
    else finish(piece, () => piece.done(message.gives));
  }

  const listener: Listener = {
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
      worker ??= hire(start, listener);
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

const startWorker = (): Worker => new Worker(`worker.js?v=${BUILD}`, { name: "warmback" });

/** @param start makes a worker; where it throws, or what it makes doesn't start, twice, work is done on the page from then on */
export function startRuns(start: () => Worker = startWorker): Runs {
  const line = lineOf(start);
  let numbers = 0;
  return {
    run: <K extends Kind>(kind: K, needs: Needs<K>, options: RunOptions = {}) =>
      new Promise<Gives<K>>((resolve, reject) => {
        const { signal } = options;
        if (signal?.aborted === true) return reject(CANCELLED);
        const cancel = (): void => {
          line.remove(piece);
          reject(CANCELLED);
        };
        const leave = (): void => signal?.removeEventListener("abort", cancel);
        const piece: Piece = {
          ask: { number: ++numbers, kind, needs } as Ask,
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
