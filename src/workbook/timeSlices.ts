/** Cuts long work into slices, so that the page stays alive, and ends it where it was overtaken. */

export interface SliceOptions {
  /** Work goes on for so many milliseconds before others get a turn. */
  readonly slice?: number;
  readonly now?: () => number;
  /** Lets others have their turn. */
  readonly turn?: () => Promise<void>;
}

const SLICE = 8;

/** Thrown through work that was ended. */
export const ENDED = new Error("a newer scan ended this one");

/** Called between two pieces of work: waits where the slice is used up; throws ENDED where the scan was ended. */
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
    if (signals.some(({ aborted }) => aborted)) throw ENDED;
  };
  return () => {
    check();
    return now() - since < slice ? undefined : wait();
  };
}

/** A new task, so that clicks and drawing come between; a timer would be held back for milliseconds by the browser. */
const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });
