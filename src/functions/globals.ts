/** The functions script's global object, for the panel, its worker and the evaluator. */
import type * as Core from "../../core";
import type { NoteParts, RaisedCaution } from "../../core";
import type { SessionLog } from "../workbook/callLog";
import type { Value } from "../workbook/values";

export interface HostCallReport {
  /** The cell's value; a table may contain faults of single cells. */
  readonly value?: Value;
  readonly error?: { readonly code: string; readonly message: string };
  readonly cautions: readonly RaisedCaution[];
}

/** The part that the evaluator and the preview page need. */
export interface FunctionsGlobal {
  readonly namespace: string;
  readonly edition: string;
  /** Repeats a call: its value and its cautions, most severe first. Takes the arguments as the host passes them. */
  explain(id: string, args: readonly unknown[]): HostCallReport;
}

export interface WarmbackGlobal extends FunctionsGlobal {
  /** The build that the script belongs to. */
  readonly build: string;
  /** The calls of this session. */
  readonly log: SessionLog;
  /** The core's run-time door: the panel's scripts take it from here. Its definitions are complete once `notes` is true. */
  readonly core: typeof Core;
  /** Whether the notes script has run. */
  readonly notes: boolean;
  /** Takes what the notes script brings: from then on, `core` has the complete definitions. */
  addNotes(build: string, parts: readonly NoteParts[]): void;
}

declare global {
  var warmback: WarmbackGlobal | undefined;
}
