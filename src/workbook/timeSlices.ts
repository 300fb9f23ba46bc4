/** Cuts long work into slices, so that the page stays responsive, and stops work that newer work replaces. */

export interface SliceOptions {
  /** Milliseconds of work before other tasks get a turn. */
  readonly slice?: number;
  readonly now?: () => number;
  /** Yields to other tasks. */
  readonly turn?: () => Promise<void>;
}

const SLICE = 8;

/** Milliseconds of a slice on the page where its turns, which cost time as well, would take most of it. */
export const LONG_SLICE = 40;

/** Thrown by work that was cancelled. */
export const CANCELLED = Object.assign(new Error("cancelled: the work has ended"), { name: "AbortError" });

/** Whether work was cancelled. Page and panel are scripts of their own, each of which throws its own error. */
export const isCancelled = (error: unknown): boolean => error instanceof Error && error.name === CANCELLED.name;

/** Called between two steps of the work: waits if the slice is used up; throws CANCELLED if the work was cancelled. */
export type NextSlice = () => Promise<void> | undefined;

export function timeSlices(options: SliceOptions, signals: readonly AbortSignal[]): NextSlice {
  const { slice = SLICE, now = () => performance.now(), turn = nextTask } = options;
  let since = now();
  const wait = async (): Promise<void> => {
    await turn();
    since = now();
    check();
  };
  const check = (): void => {
    if (signals.some(({ aborted }) => aborted)) throw CANCELLED;
  };
  return () => {
    check();
    return now() - since < slice ? undefined : wait();
  };
}

/** A new task, so that clicks and drawing come between; browsers delay a timer by milliseconds. */
export const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });
