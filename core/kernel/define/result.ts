/** Results of cell functions as plain data: what spills, in which order, with which labels and kinds. */
import type { Fault } from "../values/fault";
import type { KindName } from "../values/quantity";

/** One value of a result. `reading`: an absolute pressure shown on the argument `basis`. */
export interface QuantityResult {
  readonly type: "quantity";
  readonly kind: KindName;
  readonly description: string;
  readonly reading?: true;
  /** A word that may replace the number, such as "frozen". */
  readonly or?: string;
  /** A row that a list leaves out where its value is undefined; only the last rows of a list may be. */
  readonly optional?: true;
}

export interface WordResult {
  readonly type: "word";
  readonly description: string;
}

export type SingleResult = QuantityResult | WordResult;

type Singles = Readonly<Record<string, SingleResult>>;

export interface ListResult<R extends Singles = Singles> {
  readonly type: "list";
  readonly rows: R;
  readonly description: string;
}

export interface TableResult<C extends Singles = Singles> {
  readonly type: "table";
  readonly columns: C;
  readonly description: string;
  /** The last row is the total. */
  readonly total?: true;
}

export interface RowResult<C extends Singles = Singles> {
  readonly type: "row";
  readonly cells: C;
  readonly description: string;
}

/** A table without declared columns: for functions about functions only. */
export interface GridResult {
  readonly type: "grid";
  readonly description: string;
}

export type ResultShape = SingleResult | ListResult | TableResult | RowResult | GridResult;

/** "" means that the value doesn't apply; a fault fails its own cell only. */
export type Entry<S extends SingleResult> =
  | (S extends QuantityResult ? number | (S extends { readonly or: infer W extends string } ? W : never) : string)
  | ""
  | Fault
  | (S extends { readonly optional: true } ? undefined : never);

/** A value of a list or table that doesn't apply. */
export const NO_VALUE = "" as const;

export type GridCell = string | number | boolean;

export type ResultOf<G extends ResultShape> = G extends QuantityResult
  ? number
  : G extends WordResult
    ? string
    : G extends ListResult
      ? { readonly [K in keyof G["rows"]]: Entry<G["rows"][K]> }
      : G extends TableResult
        ? readonly { readonly [K in keyof G["columns"]]: Entry<G["columns"][K]> }[]
        : G extends RowResult
          ? { readonly [K in keyof G["cells"]]: Entry<G["cells"][K]> }
          : readonly (readonly GridCell[])[];

/** A quantity in a result; `reading` shows an absolute pressure on the argument `basis`, `or` names a word in its place, `optional` lets a list leave it out. */
export const quantityResult = <
  const O extends { readonly reading?: true; readonly or?: string; readonly optional?: true } = Record<never, never>,
>(
  kind: KindName,
  description: string,
  options?: O,
): QuantityResult & O => ({ type: "quantity", kind, description, ...options }) as QuantityResult & O;

export const wordResult = (description: string): WordResult => ({ type: "word", description });

/** Single values under each other: label, value, unit. Keys are the labels in camel case; their order is frozen. */
export const listResult = <const R extends Singles>(description: string, entries: R): ListResult<R> => ({
  type: "list",
  rows: entries,
  description,
});

/** Rows below a header that names columns and units. */
export const tableResult = <const C extends Singles>(
  description: string,
  columns: C,
  options: { readonly total?: true } = {},
): TableResult<C> => ({ type: "table", columns, description, ...options });

/** Values beside each other, without header. */
export const rowResult = <const C extends Singles>(description: string, cells: C): RowResult<C> => ({
  type: "row",
  cells,
  description,
});

export const gridResult = (description: string): GridResult => ({ type: "grid", description });
