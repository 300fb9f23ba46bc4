/**
 * Equations and relations: the printed form and the code that computes it, side by side. The form is plain mathjs text in
 * strict SI base units. A catalogue-wide test evaluates every form on random points and demands the code's result, so the
 * formula shown is the formula computed.
 */
import type { KindName } from "../values/quantity";
import type { Source } from "../reference";

export interface EquationSymbol {
  readonly kind: KindName;
  readonly description: string;
  /** The span, in base units, on which form and code are compared. */
  readonly span: readonly [number, number];
}

export type Symbols = Readonly<Record<string, EquationSymbol>>;
export type SymbolValues<S extends Symbols> = { readonly [K in keyof S]: number };

/** A symbol of an equation: kind, words, and the span of values on which the printed form is tried. */
export const symbol = (kind: KindName, description: string, from: number, to: number): EquationSymbol => ({
  kind,
  description,
  span: [from, to],
});

interface Printed<S extends Symbols> {
  readonly name: string;
  /** mathjs text: "h = f * L / D * v^2 / (2 * g)". */
  readonly form: string;
  readonly symbols: S;
  readonly constants?: Readonly<Record<string, number>>;
  /** Where it holds, in words. */
  readonly validity?: string;
  readonly source: Source;
}

/** An explicit equation; the form's left side is the symbol of the result. */
export interface Equation<S extends Symbols = Symbols> extends Printed<S> {
  readonly kind: KindName;
  readonly code: (x: SymbolValues<S>) => number;
}

/** An implicit relation, left = right, that holds at a solver's answer. */
export interface Relation<S extends Symbols = Symbols> extends Printed<S> {
  readonly left: (x: SymbolValues<S>) => number;
  readonly right: (x: SymbolValues<S>) => number;
}

export const equation = <const S extends Symbols>(definition: Equation<S>): Equation<S> => definition;

export const relation = <const S extends Symbols>(definition: Relation<S>): Relation<S> => definition;

/** Equations with their symbols forgotten, for lists of them. */
export type AnyEquation = Omit<Equation, "code"> & { readonly code: (x: never) => number };
export type AnyRelation = Omit<Relation, "left" | "right"> & {
  readonly left: (x: never) => number;
  readonly right: (x: never) => number;
};
