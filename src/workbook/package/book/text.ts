/** Small changes of the workbook part: recalculation on opening, names. */
import { childOf, withAttributes, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import type { Splice } from "../xml/text";

/** What comes before the settings of calculation: ECMA-376 part 1, 18.2.27. */
const BEFORE_CALCULATION = ["definedNames", "externalReferences", "functionGroups", "sheets"];

/** Asks the next program to recalculate everything when it opens the file. */
export function recalculation(source: string): Splice {
  const root = scanXml("workbook", source);
  const node = childOf(root, "calcPr");
  if (node !== undefined) return withAttributes(source, node, { fullCalcOnLoad: "1" });
  const before = BEFORE_CALCULATION.flatMap((name) => childOf(root, name) ?? [])[0];
  const at = before?.end ?? root.openEnd;
  return { from: at, to: at, text: `<${rootPrefix(source)}calcPr fullCalcOnLoad="1"/>` };
}

/** The elements of defined names in a workbook part. */
export function nameNodes(source: string): readonly XmlNode[] {
  return childOf(scanXml("workbook", source), "definedNames")?.children ?? [];
}
