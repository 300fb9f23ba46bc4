/** Work that may be done in a worker: what is asked and what is answered, all of it plain data. */
import type { ExplainedArg, RaisedCaution, System } from "../../../core";
import type { Shown } from "../../../core/pictures";
import type { Described } from "../../workbook/record";
import type { CellOutcome, RawValue } from "../../workbook/values";
import type { WorkingTree } from "../model/tree";

export interface Call {
  readonly id: string;
  readonly args: readonly RawValue[];
}

/** What a call gives, and the cautions that it raises. */
export interface Told {
  readonly outcome: CellOutcome;
  readonly cautions: readonly RaisedCaution[];
}

/** A call with all that is shown of it. */
export interface Explained extends Told {
  readonly system: System;
  readonly args: readonly ExplainedArg[];
  readonly working: WorkingTree;
  readonly pictures: readonly Shown[];
}

/** A published value beside what comes out. */
export interface Checked {
  readonly id: string;
  readonly what: string;
  readonly expected: string | number;
  readonly agrees: boolean;
  /** The publication. */
  readonly from: string;
}

/** By kind of work: what it needs and what comes of it. */
export interface Work {
  readonly tell: { readonly needs: Call; readonly gives: Told };
  readonly describe: { readonly needs: Call; readonly gives: Described };
  readonly explain: { readonly needs: Call; readonly gives: Explained };
  readonly check: { readonly needs: object; readonly gives: readonly Checked[] };
}

export type Kind = keyof Work;
export type Needs<K extends Kind> = Work[K]["needs"];
export type Gives<K extends Kind> = Work[K]["gives"];

export interface Progress {
  readonly done: number;
  readonly total: number;
  /** In words: "12 of 81 functions". */
  readonly text: string;
}

export type Ask = {
  readonly [K in Kind]: { readonly number: number; readonly kind: K; readonly needs: Needs<K> };
}[Kind];

/** What a worker says: that it is there, how far it is, what came of it. */
export type Answer =
  | { readonly ready: string }
  | { readonly number: number; readonly progress: Progress }
  | { readonly number: number; readonly gives: Gives<Kind> }
  | { readonly number: number; readonly failed: string };
