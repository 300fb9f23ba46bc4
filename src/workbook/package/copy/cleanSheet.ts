/** The text of a kept sheet without what leads out of the copy. */
import { numberOf, withAttributes, type XmlNode } from "../xml/node";
import { spliced, type Splice } from "../xml/text";
import { formatsIn, ruleFormulas, formulasIn } from "../sheet/elements";
import { ruleSplices } from "../sheet/rules";
import { cleanElement, type CleanContext } from "./cleanElements";
import type { SheetFrame } from "./sheetFrame";

/** What the kept sheets use of the parts that all sheets share. */
export interface SharedUse {
  readonly strings: Set<number>;
  readonly styles: Set<number>;
  /** A dynamic array is left. */
  dynamic: boolean;
}

export const sharedUse = (): SharedUse => ({ strings: new Set(), styles: new Set([0]), dynamic: false });

export interface SheetClean extends CleanContext {
  /** Whether a rule's or a sparkline's formula may stay. */
  readonly stays: (formula: string) => boolean;
}

/** Cell metadata are numbered anew: the copy has one record, for dynamic arrays. */
function cleanMarks(source: string, { marked }: SheetFrame): Splice[] {
  return marked.map(({ start, dynamic }) => {
    const openEnd = source.indexOf(">", start) + 1;
    return withAttributes(source, { start, openEnd }, { cm: dynamic ? "1" : undefined, vm: undefined });
  });
}

function columnStyles(node: XmlNode, use: SharedUse): void {
  for (const { attributes } of node.children) use.styles.add(numberOf(attributes["style"]) ?? 0);
}

/** Sparklines of a group that lean on something lost go with their group. */
function lostSparklines(elements: readonly XmlNode[], stays: SheetClean["stays"]): Splice[] {
  const groups = elements.flatMap((node) => descend(node, "sparklineGroup"));
  return groups
    .filter((group) => !formulasIn(group).every(stays))
    .map(({ start, end }) => ({ from: start, to: end, text: "" }));
}

function descend(node: XmlNode, local: string): XmlNode[] {
  const own = node.name.slice(node.name.indexOf(":") + 1) === local ? [node] : [];
  return [...own, ...node.children.flatMap((child) => descend(child, local))];
}

function noteUse({ styles, strings, marked, elements }: SheetFrame, use: SharedUse): void {
  for (const style of styles) use.styles.add(style);
  for (const string of strings) use.strings.add(string);
  use.dynamic ||= marked.some(({ dynamic }) => dynamic);
  for (const node of elements) if (node.name === "cols") columnStyles(node, use);
}

/**
 * @param frame of this very text
 * @returns the clean text; `use` collects what it uses
 */
export function cleanSheet(frame: SheetFrame, context: SheetClean, use: SharedUse): string {
  const { source } = context;
  const { root, elements } = frame;
  noteUse(frame, use);
  return spliced(source, [
    ...(root === undefined
      ? []
      : [withAttributes(source, { start: root.start, openEnd: root.end }, { "[A-Za-z0-9]+:uid": undefined })]),
    ...cleanMarks(source, frame),
    ...elements.flatMap((node) => cleanElement(node, context)),
    ...ruleSplices(source, elements, (formulas) => !formulas.every(context.stays)),
    ...lostSparklines(elements, context.stays),
  ]);
}

/** How many rules of a sheet lean on something lost. */
export function lostRules(elements: readonly XmlNode[], stays: (formula: string) => boolean): number {
  const rules = elements.flatMap((node) => [
    ...descend(node, "dataValidation").map(formulasIn),
    ...formatsIn(node).flatMap((format) => descend(format, "cfRule").map(ruleFormulas)),
    ...descend(node, "sparklineGroup").map(formulasIn),
  ]);
  return rules.filter((formulas) => !formulas.every(stays)).length;
}
