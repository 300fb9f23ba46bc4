/** Starts a worker and detects failure: a host may refuse to create one, or create one that never starts. */
import { BUILD } from "../../functions/buildHash";
import type { WorkerAnswer, WorkerRequest } from "./jobTable";

export type WorkerMessage = Exclude<WorkerAnswer, { readonly ready: string }>;

export interface WorkerListener {
  /** The worker runs. */
  ready(): void;
  onMessage(message: WorkerMessage): void;
  /** The worker didn't start: this host allows none. */
  onStartFailed(): void;
  /** The worker ended by itself after its start. */
  onCrash(): void;
}

export interface StartedWorker {
  /** @param transfer what the page gives away, once it knows that the worker runs: another place may need it otherwise */
  send(ask: WorkerRequest, transfer?: readonly Transferable[]): void;
  end(): void;
}

/** A worker that is silent for this many milliseconds counts as not started. */
const START_LIMIT = 15_000;

/** Extra milliseconds to deliver messages that arrived while the page was busy: a late timer may fire before them. */
const DELIVERY = 250;

/** @throws what `start` throws */
export function startWorker(start: () => Worker, listener: WorkerListener): StartedWorker {
  const worker = start();
  let state: "starting" | "ready" | "ended" = "starting";
  const end = (): void => {
    state = "ended";
    clearTimeout(timer);
    worker.terminate();
  };
  const lost = (): void => {
    if (state === "ended") return;
    const notify = state === "ready" ? listener.onCrash : listener.onStartFailed;
    end();
    notify();
  };
  let timer = setTimeout(() => {
    timer = setTimeout(lost, DELIVERY);
  }, START_LIMIT);
  worker.onmessage = ({ data }: MessageEvent<WorkerAnswer>) => {
    if (state === "ended") return;
    if (!("ready" in data)) return listener.onMessage(data);
    // A worker of another build may give other results.
    if (data.ready !== BUILD) return lost();
    state = "ready";
    clearTimeout(timer);
    listener.ready();
  };
  worker.onerror = (event) => {
    event.preventDefault();
    lost();
  };
  worker.onmessageerror = lost;
  return { send: (ask, transfer = []) => worker.postMessage(ask, state === "ready" ? [...transfer] : []), end };
}
