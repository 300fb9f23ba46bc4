/** The formulas of a sheet outside its cells: those of rules, sparklines, drawings, charts and pivot tables. */
import type { SheetEntry } from "../book/facts";
import { hasPart, partText, partTree, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import { named, type XmlNode } from "../xml/node";
import { scanXml } from "../xml/scan";
import { ruleFormulas, formatsIn, formulasIn, validationsIn } from "../sheet/elements";

export interface Need {
  readonly by: string;
  readonly formula: string;
}

function ofElements(elements: readonly XmlNode[]): readonly Need[] {
  const each = (by: string, nodes: readonly XmlNode[], formulas: (node: XmlNode) => readonly string[]): Need[] =>
    nodes.flatMap((node) => formulas(node).map((formula) => ({ by, formula })));
  return elements.flatMap((node) => [
    ...each("a validation", validationsIn(node), formulasIn),
    ...each(
      "a conditional format",
      formatsIn(node).flatMap((format) => named(format, "cfRule")),
      ruleFormulas,
    ),
    ...each("a sparkline", named(node, "sparklineGroup"), formulasIn),
  ]);
}

/** Formulas in a chart: its series, titles and labels. */
export const chartFormulas = (root: XmlNode): readonly string[] =>
  named(root, "f")
    .map(({ text }) => text.trim())
    .filter((text) => text !== "");

async function ofDrawing(pack: Package, path: string): Promise<readonly Need[]> {
  const needs: Need[] = [];
  for (const { kind, target, external } of await relationsOf(pack, path)) {
    if (external || !/^chart(?:Ex)?$/.test(kind) || !hasPart(pack, target)) continue;
    const root = await partTree(pack, target);
    needs.push(...chartFormulas(root).map((formula) => ({ by: "a chart", formula })));
  }
  return needs;
}

/** The cells that a pivot table sums up; undefined where they aren't in this workbook. */
export async function pivotSource(pack: Package, path: string): Promise<string | undefined> {
  const cache = (await relationsOf(pack, path)).find(({ kind }) => kind === "pivotCacheDefinition")?.target;
  if (cache === undefined || !hasPart(pack, cache)) return undefined;
  const source = named(scanXml(cache, await partText(pack, cache)), "worksheetSource")[0]?.attributes;
  if (source === undefined || Object.keys(source).some((name) => name.endsWith(":id"))) return undefined;
  const { sheet, ref, name } = source;
  if (name !== undefined) return name;
  return sheet === undefined ? undefined : `'${sheet.replaceAll("'", "''")}'!${ref ?? "A1"}`;
}

/** @param pivots paths of the pivot tables that are kept */
export async function needsOfSheet(
  pack: Package,
  sheet: SheetEntry,
  elements: readonly XmlNode[],
  pivots: ReadonlySet<string>,
): Promise<readonly Need[]> {
  const needs = [...ofElements(elements)];
  for (const { kind, target, external } of await relationsOf(pack, sheet.path)) {
    if (external || !hasPart(pack, target)) continue;
    if (kind === "drawing") needs.push(...(await ofDrawing(pack, target)));
    if (kind !== "pivotTable" || !pivots.has(target)) continue;
    const formula = await pivotSource(pack, target);
    if (formula !== undefined) needs.push({ by: "a pivot table", formula });
  }
  return needs;
}
