/** What a formula's text refers to. */
import type { Address, Area, ReferenceText } from "../port";
import { walkTree } from "../reader/calls";
import { plainName } from "../reader/evaluate";
import { parseReference } from "../reader/reference";
import { boundValue } from "../reader/scope";
import { isRefusal } from "../reader/tokens";
import { parse } from "../reader/tree";

/** Functions that build references from texts and numbers. */
const UNTRACEABLE = new Set(["INDIRECT", "OFFSET"]);

/** The references of a formula; undefined if its text doesn't show all of them. */
export function referencesOf(formula: string, from: Address): readonly ReferenceText[] | undefined {
  const tree = parse(formula);
  if (isRefusal(tree)) return undefined;
  const found: ReferenceText[] = [];
  let traceable = true;
  walkTree(tree, (node, scope) => {
    if (node.kind === "call" && UNTRACEABLE.has(plainName(node.name))) traceable = false;
    // A range between two references (A1:INDEX(…)) holds cells that neither names.
    if (node.kind === "binary" && node.operator === ":") traceable = false;
    if (node.kind !== "reference" || (scope && boundValue(scope, plainName(node.text))) !== undefined) return;
    found.push({ text: node.text, from });
  });
  return traceable ? found : undefined;
}

/** The cells that a reference names by itself; undefined for a name, a table or a spill. */
export function plainArea({ text, from }: ReferenceText): Area | undefined {
  const meaning = parseReference(text);
  if (meaning?.kind !== "cells" || meaning.spill) return undefined;
  return { sheet: meaning.sheet ?? from.sheet, ...meaning.area };
}
