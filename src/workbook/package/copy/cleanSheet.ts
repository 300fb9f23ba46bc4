/** The text of a kept sheet without what leads out of the copy. */
import type { NextSlice } from "../../timeSlices";
import { isTrue, numberOf, withAttributes, type XmlNode } from "../xml/node";
import { scanText } from "../xml/scan";
import { spliced, type Splice } from "../xml/text";
import { formatsIn, ruleFormulas, formulasIn } from "../sheet/elements";
import { ruleSplices } from "../sheet/rules";
import { sheetScan, type ScannedCell } from "../sheet/scan";
import { cleanElement, type CleanContext } from "./cleanElements";

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
  /** The cell metadata that mark dynamic arrays. */
  readonly dynamic: ReadonlySet<number>;
}

/** Cell metadata are numbered anew: the copy has one record, for dynamic arrays. */
function cleanCell(cell: ScannedCell, { source, dynamic }: SheetClean, use: SharedUse): Splice[] {
  const { attributes, start, value, formula } = cell;
  use.styles.add(numberOf(attributes["s"]) ?? 0);
  if (attributes["t"] === "s") use.strings.add(Number(value));
  if (attributes["cm"] === undefined && attributes["vm"] === undefined) return [];
  const isDynamic = formula !== undefined && dynamic.has(numberOf(attributes["cm"]) ?? 0);
  use.dynamic ||= isDynamic;
  const openEnd = source.indexOf(">", start) + 1;
  return [withAttributes(source, { start, openEnd }, { cm: isDynamic ? "1" : undefined, vm: undefined })];
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

/** @returns the clean text; `use` collects what it uses */
export async function cleanSheet(path: string, context: SheetClean, use: SharedUse, pause: NextSlice): Promise<string> {
  const { source } = context;
  const splices: Splice[] = [];
  const elements: XmlNode[] = [];
  await scanText(
    path,
    source,
    sheetScan({
      root: (_, { start, end }) =>
        void splices.push(withAttributes(source, { start, openEnd: end }, { "[A-Za-z0-9]+:uid": undefined })),
      element: (node) => {
        elements.push(node);
        if (node.name === "cols") columnStyles(node, use);
      },
      row: ({ attributes }) => {
        if (isTrue(attributes["customFormat"])) use.styles.add(numberOf(attributes["s"]) ?? 0);
      },
      cell: (cell) => void splices.push(...cleanCell(cell, context, use)),
    }),
    pause,
  );
  splices.push(
    ...elements.flatMap((node) => cleanElement(node, context)),
    ...ruleSplices(source, elements, (formulas) => !formulas.every(context.stays)),
    ...lostSparklines(elements, context.stays),
  );
  return spliced(source, splices);
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
