/**
 * Cautions: rules over a calculation's arguments, results and recorded facts. They run only on request (panel, evaluator,
 * NOTE.CAUTIONS), never in a plain cell.
 */
import type { KindName } from "../values/quantity";
import type { Source } from "../reference";

/** The signal words of ANSI Z535.4, most severe first. */
export const SEVERITIES = ["Danger", "Warning", "Caution", "Notice"] as const;
export type Severity = (typeof SEVERITIES)[number];

/** What a caution reads: a quantity's kind, a word, or a yes/no. */
export type FactKind = KindName | "word" | "yes/no";
export type RequiredFacts = Readonly<Record<string, FactKind>>;
export type FactValue<N> = N extends "word" ? string : N extends "yes/no" ? boolean : number;
export type RequiredFactValues<N extends RequiredFacts> = { readonly [K in keyof N]: FactValue<N[K]> };

/** A base value as text in the cell's own units. */
export type ShowQuantity = (value: number, kind: KindName) => string;

export interface Caution<V> {
  readonly code: string;
  readonly severity: Severity;
  /** It holds for every call of its functions, whatever the numbers: lists show it once. */
  readonly standing?: true;
  readonly source: Source;
  /** The rule in one sentence, without numbers of a case: for help pages and lists of rules. */
  readonly description: string;
  readonly needs: RequiredFacts;
  readonly when: (facts: V) => boolean;
  readonly message: (facts: V, show: ShowQuantity) => string;
}

/**
 * A caution rule. `needs` are keys of the using function's arguments, results (a single result is `answer`) or facts; a
 * function that lacks one doesn't compile. `when` and `message` get them in base units. A rule doesn't apply if a fact was
 * not recorded or a result is missing.
 */
export const caution = <const N extends RequiredFacts>(
  definition: Omit<Caution<RequiredFactValues<N>>, "needs"> & { readonly needs: N },
): Caution<RequiredFactValues<N>> => definition;

/** A caution that a call raised. */
export interface RaisedCaution {
  readonly code: string;
  readonly severity: Severity;
  readonly text: string;
  /** The rule holds whatever the numbers. */
  readonly standing?: true;
}
