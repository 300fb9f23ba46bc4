/**
 * Results that are worked out elsewhere and come later. Reading a formula is one synchronous pass: a call in it whose result
 * isn't there yet breaks the pass off, and the pass is made again once the result has come.
 */

/** Thrown through a pass by what it lacks; `bring` fetches that, so that the next pass gets further. */
export interface Awaited extends Error {
  bring(signal?: AbortSignal): Promise<void>;
}

export const awaited = (bring: Awaited["bring"]): Awaited =>
  Object.assign(new Error("a result has not come yet"), { bring });

/** Who waits for a result. */
export interface Waiting {
  /** Ends the work on what is awaited. */
  readonly signal?: AbortSignal | undefined;
  /** Is called when a result has to be waited for. */
  awaits?(): void;
}

const isAwaited = (thrown: unknown): thrown is Awaited => thrown instanceof Error && "bring" in thrown;

/**
 * What a pass gives once nothing that it needs is missing: at once where all is there.
 * @param pass is made again from its start each time: it may leave nothing behind before it is through
 */
export function settled<T>(pass: () => T, waiting: Waiting = {}): T | Promise<T> {
  try {
    return pass();
  } catch (thrown) {
    if (!isAwaited(thrown)) throw thrown;
    waiting.awaits?.();
    return thrown.bring(waiting.signal).then(() => settled(pass, waiting));
  }
}
