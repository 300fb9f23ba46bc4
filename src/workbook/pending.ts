/**
 * Results that another thread computes. Reading a formula is one synchronous pass: a call without a result throws
 * `Pending`, the result is fetched, and the pass runs again. This throw, fetch, run-again scheme is known as suspense.
 */

/** Thrown by a pass that lacks a result; `load` fetches it, so that the next pass gets further. */
export interface Pending extends Error {
  load(signal?: AbortSignal): Promise<void>;
}

export const pending = (load: Pending["load"]): Pending =>
  Object.assign(new Error("a result has not come yet"), { load });

/** Options of a caller that waits for results. */
export interface WaitOptions {
  /** Cancels the pending work. */
  readonly signal?: AbortSignal | undefined;
  /** Called when a pass has to wait for a result. */
  onWait?(): void;
}

export const isPending = (thrown: unknown): thrown is Pending => thrown instanceof Error && "load" in thrown;

/**
 * Runs a pass again until no result is missing. Returns its value at once if nothing is missing.
 * @param pass runs from its start each time: it must have no side effects before it completes
 */
export function resumeWhenReady<T>(pass: () => T, waiting: WaitOptions = {}): T | Promise<T> {
  try {
    return pass();
  } catch (thrown) {
    if (!isPending(thrown)) throw thrown;
    waiting.onWait?.();
    return thrown.load(waiting.signal).then(() => resumeWhenReady(pass, waiting));
  }
}
