/** Formulas outside the cells: names, validations, conditional formats, columns of tables. */
import type { BookFacts } from "../book/facts";
import { nameNodes } from "../book/text";
import { constantText } from "../formula/constant";
import { callsUs } from "../formula/uses";
import type { PartsEditor } from "../parts/edits";
import { rulesOf, ruleSplices } from "../sheet/rules";
import { childOf, childrenOf, withAttributes, without, type XmlNode } from "../xml/node";
import { scanXml } from "../xml/scan";
import { escapedXml, type Splice } from "../xml/text";
import type { CellValue } from "../../port";
import type { OutsideFormula } from "./changes";

/** Our calls in the names and tables of a workbook. */
export function outsideOfBook({ names, tables }: BookFacts): readonly OutsideFormula[] {
  const ofNames = names.map(({ name, sheet, formula }): OutsideFormula => ({
    kind: "name",
    ...(sheet !== undefined && { sheet }),
    where: name,
    formula,
  }));
  const ofTables = tables.flatMap(({ name, sheet, columns }) =>
    columns.flatMap((column): OutsideFormula[] => [
      { kind: "calculated column", sheet, where: `${name}[${column.name}]`, formula: column.calculated ?? "" },
      { kind: "totals row", sheet, where: `${name}[${column.name}]`, formula: column.totals ?? "" },
    ]),
  );
  return [...ofNames, ...ofTables].filter(({ formula }) => callsUs(formula));
}

export function outsideOfSheet(sheet: string, elements: readonly XmlNode[]): readonly OutsideFormula[] {
  return elements
    .flatMap((node) => rulesOf(node))
    .flatMap(({ kind, areas, formulas }) =>
      formulas.filter(callsUs).map((formula) => ({ kind, sheet, where: areas, formula })),
    );
}

/** Rules with calls of ours go. */
export const clearedRules = (source: string, elements: readonly XmlNode[]): readonly Splice[] =>
  ruleSplices(source, elements, (formulas) => formulas.some(callsUs));

/** Names with calls of ours become constants: their value where it is known, else #N/A. */
export function frozenNames(source: string, values: ReadonlyMap<string, CellValue>): readonly Splice[] {
  return nameNodes(source).flatMap((node): Splice[] => {
    if (!callsUs(node.text)) return [];
    const value = values.get((node.attributes["name"] ?? "").toLowerCase()) ?? { code: "#N/A" };
    return [{ from: node.openEnd, to: node.closeStart, text: escapedXml(constantText(value)) }];
  });
}

/** Columns with calls of ours are no longer calculated: their cells hold what is in them. */
export async function clearedColumns({ tables }: BookFacts, editor: PartsEditor): Promise<void> {
  for (const { path, columns } of tables) {
    if (!columns.some(({ calculated = "", totals = "" }) => callsUs(calculated) || callsUs(totals))) continue;
    const source = await editor.text(path);
    const nodes = childrenOf(childOf(scanXml(path, source), "tableColumns"), "tableColumn");
    await editor.splice(
      path,
      nodes.flatMap((column) => clearedColumn(source, column)),
    );
  }
}

function clearedColumn(source: string, column: XmlNode): Splice[] {
  const calculated = childOf(column, "calculatedColumnFormula");
  const totals = childOf(column, "totalsRowFormula");
  const isOurs = (node: XmlNode | undefined): node is XmlNode => node !== undefined && callsUs(node.text);
  return [
    ...(isOurs(calculated) ? [without(calculated)] : []),
    ...(isOurs(totals) ? [without(totals), withAttributes(source, column, { totalsRowFunction: undefined })] : []),
  ];
}
