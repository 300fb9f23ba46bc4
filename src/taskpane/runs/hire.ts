/** A worker and what can go wrong with it: a host may refuse to make one, or make one that never starts. */
import { BUILD } from "../../functions/buildHash";
import type { Answer, Ask } from "./job";

export type Message = Exclude<Answer, { readonly ready: string }>;

export interface Listener {
  /** It works. */
  ready(): void;
  said(message: Message): void;
  /** It didn't start: none can be had here. */
  unfit(): void;
  /** It ended by itself after it had started. */
  broken(): void;
}

export interface Hired {
  ask(ask: Ask): void;
  end(): void;
}

/** A worker that says nothing for so many milliseconds is taken for one that the host doesn't let start. */
const MOST_START = 15_000;

/** What it said while the page was kept busy is heard first, in milliseconds: a late timer may come before it. */
const HEARD = 250;

/** @throws what `start` throws */
export function hire(start: () => Worker, listener: Listener): Hired {
  const worker = start();
  let state: "starting" | "ready" | "ended" = "starting";
  const end = (): void => {
    state = "ended";
    clearTimeout(timer);
    worker.terminate();
  };
  const lost = (): void => {
    if (state === "ended") return;
    const tell = state === "ready" ? listener.broken : listener.unfit;
    end();
    tell();
  };
  let timer = setTimeout(() => {
    timer = setTimeout(lost, HEARD);
  }, MOST_START);
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    if (state === "ended") return;
    if (!("ready" in data)) return listener.said(data);
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
  return { ask: (ask) => worker.postMessage(ask), end };
}
