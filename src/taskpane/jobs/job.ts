/** Jobs for the worker: requests and answers, all plain data. */
import type { ExplainedArg, RaisedCaution, System } from "../../../core";
import type { ShownPicture } from "../../../core/pictures";
import type { Described } from "../../workbook/copy/recordSheet";
import type { CellOutcome, CellInput } from "../../workbook/values";
import type { WorkingTree } from "../model/workingTree";

export interface JobCall {
  readonly id: string;
  readonly args: readonly CellInput[];
}

/** A call's result and the cautions that it raises. */
export interface CallReport {
  readonly outcome: CellOutcome;
  readonly cautions: readonly RaisedCaution[];
}

/** A call with everything that the panel shows of it. */
export interface ExplainedCall extends CallReport {
  readonly system: System;
  readonly args: readonly ExplainedArg[];
  readonly working: WorkingTree;
  readonly pictures: readonly ShownPicture[];
}

/** A published value and the calculated one. */
export interface CheckedValue {
  readonly id: string;
  readonly what: string;
  readonly expected: string | number;
  readonly agrees: boolean;
  /** The publication. */
  readonly from: string;
}

/** By kind of job: its input and its result. */
export interface JobTypes {
  readonly tell: { readonly needs: JobCall; readonly gives: CallReport };
  readonly describe: { readonly needs: JobCall; readonly gives: Described };
  readonly explain: { readonly needs: JobCall; readonly gives: ExplainedCall };
  readonly check: { readonly needs: object; readonly gives: readonly CheckedValue[] };
}

export type JobKind = keyof JobTypes;
export type JobInput<K extends JobKind> = JobTypes[K]["needs"];
export type JobResult<K extends JobKind> = JobTypes[K]["gives"];

export interface Progress {
  readonly done: number;
  readonly total: number;
  /** In words: "12 of 81 functions". */
  readonly text: string;
}

export type JobRequest = {
  readonly [K in JobKind]: { readonly number: number; readonly kind: K; readonly needs: JobInput<K> };
}[JobKind];

/** A worker's message: ready, progress, result or failure. */
export type JobAnswer =
  | { readonly ready: string }
  | { readonly number: number; readonly progress: Progress }
  | { readonly number: number; readonly gives: JobResult<JobKind> }
  | { readonly number: number; readonly failed: string };
