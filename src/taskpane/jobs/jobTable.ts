/** What every kind of job has in common, whatever it works on: requests and answers are plain data. */
import type { SliceOptions } from "../../workbook/timeSlices";

/** By kind of job: its input and its result. */
export type JobTable<T> = { readonly [K in keyof T]: { readonly input: object; readonly result: object } };

export interface Progress {
  readonly done: number;
  readonly total: number;
  /** In words: "12 of 81 functions". */
  readonly text: string;
}

export interface JobOptions {
  readonly signal?: AbortSignal | undefined;
  onProgress?(progress: Progress): void;
  /** Parts of the input that the caller needs no more: a worker that runs gets them without a copy. */
  readonly transfer?: readonly Transferable[];
  /** Slices of a job on the page. */
  readonly slices?: SliceOptions | undefined;
}

/** What a running job may use. */
export interface JobContext {
  /** Reports the progress of the job. */
  report(progress: Progress): void;
  /** Yields to other tasks; throws if the job was cancelled. */
  yieldTurn(): Promise<void>;
  /** How a job that cuts itself into slices is cancelled, and how long its slices are; by default those of a page. */
  readonly slicing?: { readonly signal?: AbortSignal | undefined; readonly slices?: SliceOptions };
  /** Gives up bytes of the result, which the job no longer needs: a worker hands them over without a copy. */
  give?(bytes: Uint8Array): void;
}

export type JobRunner<T extends JobTable<T>> = <K extends keyof T & string>(
  kind: K,
  input: T[K]["input"],
  context: JobContext,
) => Promise<T[K]["result"]>;

export interface WorkerRequest {
  readonly number: number;
  readonly kind: string;
  readonly input: object;
}

/** A worker's message: ready, progress, result or failure. */
export type WorkerAnswer =
  | { readonly ready: string }
  | { readonly number: number; readonly progress: Progress }
  | { readonly number: number; readonly result: object }
  | { readonly number: number; readonly failed: string };
