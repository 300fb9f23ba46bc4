/** Jobs for the worker: requests and answers, all plain data. */
import type { ExplainedArg, RaisedCaution, System, CellInput } from "../../../core";
import type { ShownPicture } from "../../../core/pictures";
import type { CallDescription } from "../../workbook/copy/recordTypes";
import type { LoggedCall } from "../../workbook/callLog";
import type { StoredFile } from "../../workbook/compare/storedSheets";
import type { CopyPlan } from "../../workbook/copy/handOver";
import type { MadeCopy, PackedSurvey } from "../../workbook/copy/surveyFacts";
import type { CopyChoice, HiddenItem, KeptSheet } from "../../workbook/package";
import type { CellOutcome } from "../../workbook/values";
import type { RecordedFile } from "../../workbook/weather/readFile";
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
  readonly source: string;
}

/** Many runs of a call with ranges. */
export interface StudiedCall {
  readonly pictures: readonly ShownPicture[];
  /** Whether shares of the inputs are among them: not of correlated inputs. */
  readonly shares: boolean;
  /** How many runs, in what time. */
  readonly summary: string;
}

/** A workbook to make a copy of. */
export interface CopySource {
  /** Another one for every workbook: who has looked it over needn't do so again. */
  readonly key: string;
  /** The workbook's own bytes. */
  readonly bytes: Uint8Array;
  /** Calls of this session that may have given what its cells hold, of each function the newest first. */
  readonly calls: readonly LoggedCall[];
}

/** What a workbook holds for a copy. */
export interface Surveyed {
  /** Undefined if no cell of the workbook uses us. */
  readonly survey: PackedSurvey | undefined;
  /** Functions whose calls in the session were looked for. */
  readonly asked: readonly string[];
}

/** What a choice of sheets comes to. */
export interface Consequences {
  readonly kept: readonly KeptSheet[];
  readonly hidden: readonly HiddenItem[];
}

/** By kind of job: its input and its result. */
export interface JobTypes {
  readonly report: { readonly input: JobCall; readonly result: CallReport };
  readonly describe: { readonly input: JobCall; readonly result: CallDescription };
  readonly explain: { readonly input: JobCall; readonly result: ExplainedCall };
  readonly study: { readonly input: JobCall; readonly result: StudiedCall };
  readonly weather: {
    readonly input: { readonly bytes: Uint8Array; readonly hourly: boolean };
    readonly result: RecordedFile;
  };
  /** Reads a workbook file for a comparison. */
  readonly stored: { readonly input: { readonly bytes: Uint8Array }; readonly result: StoredFile };
  readonly survey: { readonly input: CopySource; readonly result: Surveyed };
  readonly consequences: {
    readonly input: { readonly source: CopySource; readonly choice: CopyChoice };
    readonly result: Consequences;
  };
  readonly copy: {
    readonly input: { readonly source: CopySource; readonly plan: CopyPlan };
    readonly result: MadeCopy;
  };
  readonly check: { readonly input: object; readonly result: readonly CheckedValue[] };
}

export type JobKind = keyof JobTypes;
export type JobInput<K extends JobKind> = JobTypes[K]["input"];
export type JobResult<K extends JobKind> = JobTypes[K]["result"];

export type JobRequest = {
  readonly [K in JobKind]: { readonly number: number; readonly kind: K; readonly input: JobInput<K> };
}[JobKind];
