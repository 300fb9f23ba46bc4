/** A call of a cell function: its arguments, and what takes it. */
import type { FunctionResult } from "../members/targets";
import type { CellModel, Place, Scalar, SheetModel } from "../model/workbook";

/** A blank cell as an argument. */
export const BLANK: unique symbol = Symbol("a blank cell");

/** A scalar argument. */
export type One = Scalar | typeof BLANK | { readonly error: string };
/** An argument: null is one that was left out. */
export type Argument = One | null | readonly (readonly One[])[];

/** What Excel knows of a function from its metadata. */
export interface FunctionFacts {
  readonly id: string;
  readonly parameters: readonly {
    readonly repeating?: true | undefined;
    readonly dimensionality?: string | undefined;
  }[];
}

export interface FunctionCalls {
  /** Types a formula and calls its function; the cell shows #BUSY! until the result comes. */
  call(sheet: SheetModel, place: Place, facts: FunctionFacts, args: readonly Argument[]): Promise<CellModel>;
  finish(result: FunctionResult): void;
}

export const noFunctions: FunctionCalls = {
  call: () => Promise.reject(new Error("this host has no custom functions: see attachFunctions")),
  finish: () => undefined,
};
