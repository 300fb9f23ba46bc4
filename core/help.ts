/**
 * The core's door for the scripts that write help pages and data for the panel's finder. It names the texts that stay out
 * of the functions script, so nothing at run time may read them from a definition there.
 */
import type { CautionUse, CellFunction, Check } from "./kernel/define/cellFunction";
import type { Equation, Relation } from "./kernel/define/equation";

export type { Check, ExampleArgs } from "./kernel/define/cellFunction";
export type { AnyEquation, AnyRelation, EquationSymbol } from "./kernel/define/equation";
export { NOTE_KEYS } from "./kernel/define/noteParts";
export { referenceOf } from "./kernel/reference";
export { CITATION_KEYS, type SourceEntry } from "./kernel/reference/entry";
export type { LookupStep, PropertyStep } from "./kernel/define/steps";
export { NUMBERS_HEAD } from "./kernel/explain/working";

/** The keys of a definition's texts for the finder. */
export type FinderKey = "keywords" | "details";

interface HelpKeys {
  readonly cellFunction: readonly (keyof CellFunction)[];
  readonly equation: readonly (keyof Equation)[];
  readonly relation: readonly (keyof Relation)[];
  readonly cautions: readonly (keyof CautionUse<never>)[];
  readonly checks: readonly (keyof Check)[];
}

/** Declaring function, or list of cautions or checks, → the keys that hold help texts. */
export const HELP_KEYS = {
  cellFunction: ["keywords", "details"] satisfies readonly FinderKey[],
  equation: ["symbols", "validity"],
  relation: ["symbols", "validity"],
  cautions: ["raisedBy"],
  checks: ["remark"],
} as const satisfies HelpKeys;

/** By function: its texts for the finder. */
export function finderTextsOf(
  catalogue: readonly CellFunction[],
): Readonly<Record<string, Pick<CellFunction, FinderKey>>> {
  return Object.fromEntries(
    catalogue.map(({ id, keywords, details }) => [id, { ...(keywords && { keywords }), ...(details && { details }) }]),
  );
}
