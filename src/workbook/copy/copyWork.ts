/** How the making of a copy is cancelled, heard of and cut into slices. */
import type { PackageWork } from "../package";
import { timeSlices, type NextSlice, type SliceOptions } from "../timeSlices";

export interface CopyProgress {
  readonly done: number;
  readonly total: number;
  /** In words: "12 of 81 sheets". */
  readonly text: string;
}

export interface CopyWork {
  readonly signal?: AbortSignal | undefined;
  onProgress?(progress: CopyProgress): void;
  readonly slices?: SliceOptions;
}

export const pauseIn = ({ signal, slices = {} }: CopyWork): NextSlice =>
  timeSlices(slices, signal === undefined ? [] : [signal]);

/** The same for a step of the package, which reports in numbers alone. */
export function packageWork({ signal, onProgress, slices }: CopyWork, text: string): PackageWork {
  return {
    signal,
    onProgress: (done, total) => onProgress?.({ done, total, text }),
    ...(slices !== undefined && { slices }),
  };
}
