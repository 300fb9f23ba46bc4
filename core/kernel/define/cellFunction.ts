/** The definition of a cell function: one plain object; everything else is derived from it. */
import type { Args, ValuesOf } from "./argument";
import type { Caution, FactKind, FactValue } from "./caution";
import type { IsSliceOver } from "./slice";
import type { Source, SourceKey } from "../reference";
import type { SourceEntry } from "../reference/entry";
import type { ResultShape, ListResult, QuantityResult, ResultOf, RowResult, SingleResult, WordResult } from "./result";
import type { Trace } from "./steps";
import type { System } from "../values/quantity";

/** What `recordFacts` may record: name → kind. */
export type FactKinds = Readonly<Record<string, FactKind>>;
export type FactValues<F extends FactKinds> = { readonly [K in keyof F]?: FactValue<F[K]> };

/** What a calculation may use besides its arguments. */
export interface Context<F extends FactKinds = FactKinds> {
  readonly trace: Trace;
  /** `trace.step`, for short. */
  readonly step: Trace["step"];
  /** Records facts for the cautions, in base units. A function of them is called only if somebody asks for the cautions. */
  readonly recordFacts: (facts: FactValues<F> | (() => FactValues<F>)) => void;
  /** Texts that name a unit may follow the cell's system; values never do. */
  readonly system: System;
  /** All cell functions: for functions about functions only. */
  readonly catalogue: Catalogue;
  /** Given where the calculation may end with `UNFINISHED`. */
  readonly isSliceOver?: IsSliceOver | undefined;
}

type Scalar = string | number | boolean;

/** A raw argument in a check or example: scalar, matrix, a block's labels, or rows with column names. */
export type Example =
  | Scalar
  | readonly (readonly (Scalar | null)[])[]
  | { readonly [label: string]: Scalar }
  | readonly { readonly [column: string]: Scalar }[];

export type ExampleArgs<A extends Args = Args> = { readonly [K in keyof A | "units"]?: Example };

/** A published value that the cell must show. */
export interface Check<A extends Args = Args> {
  readonly inputs: ExampleArgs<A>;
  /** The cell's value; or of a list its row, of a table its row (by the first column) and column. */
  readonly expected:
    | number
    | string
    | { readonly [row: string]: number | string }
    | { readonly row: string | number; readonly column: string; readonly value: number | string };
  /** In the cell's unit; a text such as "0.5 %" is relative. Words must be equal and need none. */
  readonly tolerance?: number | `${number} %`;
  readonly source: Source;
  /** What a reader should know about the value: from memory, rounded, other constants. */
  readonly remark?: string;
}

export interface CautionUse<V, A extends Args = Args> {
  readonly rule: Caution<V>;
  /** Arguments that raise it. */
  readonly raisedBy: ExampleArgs<A>;
}

type SingleValue<S extends SingleResult> = S extends QuantityResult ? number : string;
type GivenValues<G extends ResultShape> = G extends QuantityResult
  ? { readonly answer: number }
  : G extends WordResult
    ? { readonly answer: string }
    : G extends ListResult
      ? { readonly [K in keyof G["rows"]]: SingleValue<G["rows"][K]> }
      : G extends RowResult
        ? { readonly [K in keyof G["cells"]]: SingleValue<G["cells"][K]> }
        : unknown;

/** Arguments that a caution may read: given or by default; optional ones only if given. */
type ArgFacts<A extends Args> = { readonly [K in keyof A]: Exclude<ValuesOf<A>[K], undefined> };
type Available<A extends Args, G extends ResultShape, F extends FactKinds> = ArgFacts<A> &
  GivenValues<G> & { readonly [K in keyof F]: FactValue<F[K]> };

interface Common<A extends Args, G extends ResultShape, F extends FactKinds> {
  readonly id: string;
  readonly topic: string;
  /** One sentence, at most 128 characters: what it answers. */
  readonly summary: string;
  /** Further words that a user may search for. */
  readonly keywords?: readonly string[];
  /** More for the help page: validity, limits, choices made. */
  readonly details?: readonly string[];
  readonly args: A;
  readonly returns: G;
  readonly facts?: F;
  /** The argument that `units` follows: the last, unless arguments were added later. */
  readonly unitsAfter?: keyof A & string;
  /** Takes over 20 µs: its results are memoised. */
  readonly memoised?: true;
  /** Takes over 5 ms: the self-test in a cell leaves it out. */
  readonly slow?: true;
  /** Sources besides those of equations, cautions and checks. */
  readonly sources?: readonly Source[];
  /** Arguments that show what it can do, where its first check shows too little (`exampleArgs`). */
  readonly example?: ExampleArgs<A>;
  readonly checks: readonly Check<A>[];
  /** The citations that a function about sources prints. */
  readonly bibliography?: Readonly<Record<SourceKey, SourceEntry>>;
}

export interface Definition<A extends Args, G extends ResultShape, F extends FactKinds> extends Common<A, G, F> {
  readonly cautions: readonly CautionUse<Available<A, G, F>, A>[];
  readonly compute: (args: ValuesOf<A>, context: Context<F>) => ResultOf<G>;
}

/** A definition with its types forgotten: what the catalogue holds. */
export interface CellFunction extends Common<Args, ResultShape, FactKinds> {
  readonly cautions: readonly { readonly rule: Caution<never>; readonly raisedBy: ExampleArgs }[];
  readonly compute: (args: Readonly<Record<string, unknown>>, context: Context) => unknown;
}

/** A set of cell functions. */
export type Catalogue = readonly CellFunction[];

/** Declares a cell function. Wrong argument names, kinds, fact names or source keys don't compile. */
export const cellFunction = <
  const A extends Args,
  const G extends ResultShape,
  const F extends FactKinds = Record<never, never>,
>(
  definition: Definition<A, G, F>,
): CellFunction => definition as unknown as CellFunction;
