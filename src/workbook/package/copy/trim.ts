/** Empties what only dropped sheets used in the parts that all sheets share. Indices keep their meaning. */
import type { SharedUse } from "./cleanSheet";
import { childOf, childrenOf, numberOf, withAttributes, without, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { spliced, type Splice } from "../xml/text";

/** Texts that no kept cell shows become empty ones. */
export function trimmedStrings(path: string, source: string, { strings }: SharedUse): string {
  const root = scanXml(path, source);
  const prefix = rootPrefix(source);
  const items = childrenOf(root, "si");
  const splices = items.flatMap(({ start, end }, at): Splice[] =>
    strings.has(at) ? [] : [{ from: start, to: end, text: `<${prefix}si><${prefix}t/></${prefix}si>` }],
  );
  const others = root.children.filter(({ name }) => name !== "si").map(without);
  return spliced(source, [...splices, ...others]);
}

const formatOf = (xf: XmlNode): number => numberOf(xf.attributes["numFmtId"]) ?? 0;

/** Takes children out of a counted list. */
function thinned(source: string, list: XmlNode | undefined, gone: readonly XmlNode[]): Splice[] {
  if (list === undefined || gone.length === 0) return [];
  if (gone.length === list.children.length) return [without(list)];
  return [withAttributes(source, list, { count: String(list.children.length - gone.length) }), ...gone.map(without)];
}

/** Number formats, conditional looks and named styles can hold words of the sheets that went. */
export function trimmedStyles(
  path: string,
  source: string,
  { styles }: SharedUse,
  { differences, tableStyles }: StyleNames,
): string {
  const root = scanXml(path, source);
  const prefix = rootPrefix(source);
  const cells = childrenOf(childOf(root, "cellXfs"), "xf");
  const named = childOf(root, "cellStyles");
  const used = cells.filter((_, at) => styles.has(at));
  const bases = new Set(used.map(({ attributes }) => attributes["xfId"] ?? "0"));
  const goneStyles = childrenOf(named, "cellStyle").filter(
    ({ attributes }) => attributes["builtinId"] === undefined && !bases.has(attributes["xfId"] ?? ""),
  );
  const lostBases = new Set(goneStyles.map(({ attributes }) => Number(attributes["xfId"])));
  const keptBases = childrenOf(childOf(root, "cellStyleXfs"), "xf").filter((_, at) => !lostBases.has(at));
  const formats = new Set([...used, ...keptBases].map(formatOf));
  const numbers = childOf(root, "numFmts");
  const goneFormats = childrenOf(numbers, "numFmt").filter(
    ({ attributes }) => !formats.has(Number(attributes["numFmtId"])),
  );
  const unused = [
    ...cells.filter((_, at) => !styles.has(at)),
    ...childrenOf(childOf(root, "cellStyleXfs"), "xf"),
  ].filter((xf) => !formats.has(formatOf(xf)));
  const ownTables = childOf(root, "tableStyles");
  const goneTables = childrenOf(ownTables, "tableStyle").filter(
    ({ attributes }) => !tableStyles.has(attributes["name"] ?? ""),
  );
  const tables = childrenOf(ownTables, "tableStyle").filter((style) => !goneTables.includes(style));
  const usedLooks = new Set([
    ...differences,
    ...tables.flatMap(({ children }) => children.map(({ attributes }) => Number(attributes["dxfId"]))),
  ]);
  const looks = childrenOf(childOf(root, "dxfs"), "dxf").flatMap(({ start, end }, at): Splice[] =>
    usedLooks.has(at) ? [] : [{ from: start, to: end, text: `<${prefix}dxf/>` }],
  );
  return spliced(source, [
    ...thinned(source, named, goneStyles),
    ...goneTables.map(without),
    ...(ownTables === undefined || goneTables.length === 0
      ? []
      : [withAttributes(source, ownTables, { count: String(tables.length), defaultTableStyle: undefined })]),
    // Styles of slicers and timelines, which a copy has none of.
    ...childrenOf(root, "extLst").map(without),
    ...thinned(source, numbers, goneFormats),
    ...unused.map((xf) => withAttributes(source, xf, { numFmtId: "0" })),
    ...looks,
  ]);
}

/** What the parts of a copy name in the styles, beside the styles of cells. */
export interface StyleNames {
  /** Looks of rules and tables. */
  readonly differences: ReadonlySet<number>;
  readonly tableStyles: ReadonlySet<string>;
}

export function styleNamesIn(texts: readonly string[]): StyleNames {
  const differences = new Set<number>();
  const tableStyles = new Set<string>();
  for (const text of texts) {
    for (const [, index] of text.matchAll(/[dD]xfId\s*=\s*["'](\d+)["']/g)) differences.add(Number(index));
    for (const [, , name] of text.matchAll(/StyleInfo\s[^>]*?name\s*=\s*(["'])(.*?)\1/g)) tableStyles.add(name ?? "");
  }
  return { differences, tableStyles };
}
