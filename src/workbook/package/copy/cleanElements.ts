/** Takes out of a sheet's elements whatever leads to something that isn't in the copy. */
import { attributeOf, childrenOf, localName, named, withAttributes, without, type XmlNode } from "../xml/node";
import type { Splice } from "../xml/text";

/** Children of a sheet that a copy keeps: ECMA-376 part 1, 18.3.1.99. The others hold paths, people, scenarios or controls. */
const KEPT = new Set(
  (
    "sheetPr dimension sheetViews sheetFormatPr cols sheetCalcPr sheetProtection protectedRanges autoFilter sortState mergeCells " +
    "phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks " +
    "colBreaks ignoredErrors drawing legacyDrawing legacyDrawingHF picture tableParts extLst"
  ).split(" "),
);

const KEPT_EXTENSIONS = new Set(["conditionalFormattings", "dataValidations", "sparklineGroups", "ignoredErrors"]);

export interface CleanContext {
  readonly source: string;
  /** Ids of relations that stay. */
  readonly relations: ReadonlySet<string>;
  /** Whether a place in the workbook is there in the copy. */
  readonly placeStays: (location: string) => boolean;
  /** Whether the sheet is shown when the copy opens. */
  readonly active: boolean;
  /** Filters name values of rows that went. */
  readonly dropsRows: boolean;
}

/** Lists that carry their length. */
function fewer(source: string, list: XmlNode, gone: readonly XmlNode[]): Splice[] {
  if (gone.length === 0) return [];
  if (gone.length === list.children.length) return [without(list)];
  const count =
    "count" in list.attributes
      ? [withAttributes(source, list, { count: String(list.children.length - gone.length) })]
      : [];
  return [...count, ...gone.map(without)];
}

function hyperlinks(node: XmlNode, { source, relations, placeStays }: CleanContext): Splice[] {
  const gone = childrenOf(node, "hyperlink").filter(({ attributes }) => {
    const id = attributeOf(attributes, "id");
    const location = attributes["location"];
    if (id !== undefined) return !relations.has(id);
    return location !== undefined && !placeStays(location);
  });
  return fewer(source, node, gone);
}

function views(node: XmlNode, { source, active }: CleanContext): Splice[] {
  const all = childrenOf(node, "sheetView");
  const gone = all.filter(({ attributes }) => (attributes["workbookViewId"] ?? "0") !== "0");
  const kept = all.filter((view) => !gone.includes(view));
  return [
    ...gone.map(without),
    ...kept.flatMap((view) => childrenOf(view, "pivotSelection")).map(without),
    ...kept.map((view) => withAttributes(source, view, { tabSelected: active ? "1" : undefined })),
  ];
}

function extensions(node: XmlNode, { source }: CleanContext): Splice[] {
  const gone = node.children.filter(
    ({ children }) => !children.every(({ name }) => KEPT_EXTENSIONS.has(localName(name))),
  );
  return fewer(source, node, gone);
}

/** An element that is one link: it goes with its relation. */
const linked = (node: XmlNode, { relations }: CleanContext): Splice[] => {
  const id = attributeOf(node.attributes, "id");
  return id !== undefined && !relations.has(id) ? [without(node)] : [];
};

const CLEANERS: Readonly<Record<string, (node: XmlNode, context: CleanContext) => Splice[]>> = {
  hyperlinks,
  sheetViews: views,
  extLst: extensions,
  drawing: linked,
  legacyDrawing: linked,
  legacyDrawingHF: linked,
  picture: linked,
  sheetPr: (node, { source }) => [withAttributes(source, node, { codeName: undefined })],
  pageSetup: (node, { source }) => [withAttributes(source, node, { "[A-Za-z]+:id": undefined })],
  protectedRanges: (node, { source }) =>
    node.children.flatMap((range) => [
      withAttributes(source, range, { securityDescriptor: undefined }),
      ...childrenOf(range, "securityDescriptor").map(without),
    ]),
  tableParts: (node, { source, relations }) =>
    fewer(
      source,
      node,
      node.children.filter(({ attributes }) => !relations.has(attributeOf(attributes, "id") ?? "")),
    ),
  autoFilter: (node, { dropsRows }) => (dropsRows ? node.children.map(without) : []),
};

/** @param node a child of the sheet that holds no cells */
export function cleanElement(node: XmlNode, context: CleanContext): readonly Splice[] {
  if (!KEPT.has(node.name)) return [without(node)];
  return CLEANERS[node.name]?.(node, context) ?? [];
}

/** The filters and formulas of a table that lean on what isn't in the copy. */
export function cleanTable(
  source: string,
  root: XmlNode,
  stays: (formula: string) => boolean,
  dropsRows: boolean,
): Splice[] {
  const formulas = [...named(root, "calculatedColumnFormula"), ...named(root, "totalsRowFormula")];
  const lost = formulas.filter(({ text }) => !stays(text));
  const filters = dropsRows ? [...named(root, "filterColumn"), ...named(root, "sortState")] : [];
  const columns = named(root, "tableColumn");
  return [
    withAttributes(source, root, { tableType: undefined, connectionId: undefined, insertRow: undefined }),
    ...[...lost, ...filters, ...named(root, "xmlColumnPr")].map(without),
    ...columns.flatMap((column) => {
      const loses = column.children.some((child) => lost.includes(child) && child.name === "totalsRowFormula");
      const changes = { queryTableFieldId: undefined, ...(loses && { totalsRowFunction: undefined }) };
      return [withAttributes(source, column, changes)];
    }),
  ];
}
