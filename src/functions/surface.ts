/** What the functions script leaves on the global object for the panel and the evaluator. */
import type { RaisedCaution } from "../../core/kernel/caution";
import type { CallLog } from "../workbook/log";
import type { Value } from "../workbook/values";

export interface ToldCall {
  /** The cell's value; faults of single cells of a table stand in their places. */
  readonly value?: Value;
  readonly error?: { readonly code: string; readonly message: string };
  readonly cautions: readonly RaisedCaution[];
}

export interface WarmbackSurface {
  readonly namespace: string;
  readonly edition: string;
  /** The calls of this session. */
  readonly log: CallLog;
  /** Works a call again and tells its value and its cautions, most severe first. Arguments as the host hands them. */
  explain(id: string, args: readonly unknown[]): ToldCall;
  /** Modules that the panel's script shares, by their paths: see shared.ts. */
  modules?: Readonly<Record<string, unknown>>;
}

declare global {
  var warmback: WarmbackSurface | undefined;
}
