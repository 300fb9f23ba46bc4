/** What the functions script leaves on the global object for the panel, its worker and the evaluator. */
import type * as Core from "../../core";
import type { RaisedCaution } from "../../core";
import type { CallLog } from "../workbook/log";
import type { Value } from "../workbook/values";

export interface ToldCall {
  /** The cell's value; in a table a cell's own fault is in its place. */
  readonly value?: Value;
  readonly error?: { readonly code: string; readonly message: string };
  readonly cautions: readonly RaisedCaution[];
}

/** What the evaluator and the preview page need of it. */
export interface FunctionsGlobal {
  readonly namespace: string;
  readonly edition: string;
  /** Works a call again and tells its value and its cautions, most severe first. Arguments as the host passes them. */
  explain(id: string, args: readonly unknown[]): ToldCall;
}

export interface WarmbackGlobal extends FunctionsGlobal {
  /** The build that the script belongs to. */
  readonly build: string;
  /** The calls of this session. */
  readonly log: CallLog;
  /** The core's run-time door: the panel's scripts take it from here instead of carrying it again. */
  readonly core: typeof Core;
}

declare global {
  var warmback: WarmbackGlobal | undefined;
}
