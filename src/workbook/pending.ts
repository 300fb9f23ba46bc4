/**
 * Results that are worked out elsewhere and come later. Reading a formula is one synchronous pass: a call in it whose result
 * isn't there yet breaks the pass off, and the pass is made again once the result has come.
 */

/** Thrown through a pass by what it lacks; `load` fetches that, so that the next pass gets further. */
export interface Pending extends Error {
  load(signal?: AbortSignal): Promise<void>;
}

export const pending = (load: Pending["load"]): Pending =>
  Object.assign(new Error("a result has not come yet"), { load });

/** Who waits for a result. */
export interface WaitOptions {
  /** Ends the work on what is awaited. */
  readonly signal?: AbortSignal | undefined;
  /** Is called when a result has to be waited for. */
  onWait?(): void;
}

const isAwaited = (thrown: unknown): thrown is Pending => thrown instanceof Error && "load" in thrown;

/**
 * What a pass gives once nothing that it needs is missing: at once where all is there.
 * @param pass is made again from its start each time: it may leave nothing behind before it is through
 */
export function resumeWhenReady<T>(pass: () => T, waiting: WaitOptions = {}): T | Promise<T> {
  try {
    return pass();
  } catch (thrown) {
    if (!isAwaited(thrown)) throw thrown;
    waiting.onWait?.();
    return thrown.load(waiting.signal).then(() => resumeWhenReady(pass, waiting));
  }
}
