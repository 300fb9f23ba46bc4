/** The cell styles of a workbook, as far as they bear on values. */
import type { StoredStyle, StyleFacts } from "../book/facts";
import { partTree, type Package } from "../parts/package";
import { childOf, childrenOf, flag, numberOf, type XmlNode } from "../xml/node";
import { BUILT_IN_FORMATS } from "./formats";

export function ownFormats(root: XmlNode): ReadonlyMap<number, string> {
  return new Map(
    childrenOf(childOf(root, "numFmts"), "numFmt").map(({ attributes }) => [
      numberOf(attributes["numFmtId"]) ?? 0,
      attributes["formatCode"] ?? "General",
    ]),
  );
}

function styleOf(xf: XmlNode, formats: ReadonlyMap<number, string>): StoredStyle {
  const numberFormatId = numberOf(xf.attributes["numFmtId"]) ?? 0;
  const protection = childOf(xf, "protection")?.attributes ?? {};
  return {
    numberFormatId,
    numberFormat: formats.get(numberFormatId) ?? BUILT_IN_FORMATS[numberFormatId] ?? "General",
    quotePrefix: flag(xf.attributes["quotePrefix"], false),
    locked: flag(protection["locked"], true),
    hiddenFormula: flag(protection["hidden"], false),
  };
}

export async function readStyles(pack: Package, path: string | undefined): Promise<StyleFacts> {
  if (path === undefined) return { path, cells: [] };
  const root = await partTree(pack, path);
  const formats = ownFormats(root);
  return { path, cells: childrenOf(childOf(root, "cellXfs"), "xf").map((xf) => styleOf(xf, formats)) };
}
