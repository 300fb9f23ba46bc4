/** How long work shares its thread, reports its progress and ends early. */
import { timeSlices, type NextSlice, type SliceOptions } from "../timeSlices";

export interface PackageWork {
  /** Ends the work: it throws `ENDED` at the next pause, and what was given stays as it was. */
  readonly signal?: AbortSignal | undefined;
  /** Called from time to time with the share that is done, in units of the step that runs. */
  onProgress?(done: number, of: number): void;
  /** How long a slice may take, and how others get their turn; by default 8 ms and a new task. */
  readonly slices?: SliceOptions;
}

export function pauseOf({ signal, slices = {} }: PackageWork): NextSlice {
  return timeSlices(slices, signal === undefined ? [] : [signal]);
}
