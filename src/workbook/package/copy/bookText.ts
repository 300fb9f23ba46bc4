/** The workbook part of a copy, written anew: only what is known to be meant goes in. */
import type { BookFacts, NameEntry, SheetEntry } from "../book/facts";
import { DECLARATION, MAIN, STRICT_MAIN } from "../create/minimal";
import { RELATIONS, STRICT_RELATIONS } from "../parts/relations";
import { childOf, type XmlNode } from "../xml/node";
import { escapedXml, escapedAttribute } from "../xml/text";

export interface BookTextFacts {
  readonly book: BookFacts;
  /** The old workbook part. */
  readonly root: XmlNode;
  readonly sheets: readonly { readonly entry: SheetEntry; readonly relationId: string }[];
  readonly names: readonly NameEntry[];
  /** Number and relation of each pivot cache that stays. */
  readonly pivotCaches: readonly { readonly cacheId: string; readonly relationId: string }[];
}

const attributesText = (attributes: Readonly<Record<string, string>>): string =>
  Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escapedAttribute(value)}"`)
    .join("");

/** Attributes of an old element by name; none that isn't listed. */
function some(node: XmlNode | undefined, names: readonly string[]): string {
  const own = Object.entries(node?.attributes ?? {}).filter(([name]) => names.includes(name));
  return attributesText(Object.fromEntries(own));
}

const BOOK_ATTRIBUTES = [
  "date1904",
  "showObjects",
  "backupFile",
  "saveExternalLinkValues",
  "dateCompatibility",
  "defaultThemeVersion",
];
const CALCULATION = [
  "calcId",
  "calcMode",
  "refMode",
  "iterate",
  "iterateCount",
  "iterateDelta",
  "fullPrecision",
  "calcOnSave",
  "concurrentCalc",
];
const PROTECTION = /^(?:lock|workbook(?:Password|Algorithm|Hash|Salt|Spin)|revisions)/;
const VIEW = [
  "xWindow",
  "yWindow",
  "windowWidth",
  "windowHeight",
  "tabRatio",
  "showSheetTabs",
  "showHorizontalScroll",
  "showVerticalScroll",
];

/** The sheet that shows first: the one that did, else the first that can be seen. */
export function activeOf(book: BookFacts, sheets: readonly SheetEntry[]): number {
  const before = book.sheets[book.activeSheet];
  const same = sheets.findIndex((sheet) => sheet === before && sheet.state === "visible");
  return Math.max(0, same >= 0 ? same : sheets.findIndex(({ state }) => state === "visible"));
}

function sheetText({ entry, relationId }: BookTextFacts["sheets"][number], at: number, shown: number): string {
  // A workbook needs a sheet that can be seen.
  const state = entry.state === "visible" || at === shown ? "" : ` state="${entry.state}"`;
  return `<sheet name="${escapedAttribute(entry.name)}" sheetId="${at + 1}"${state} r:id="${relationId}"/>`;
}

function nameText(entry: NameEntry, titles: readonly string[]): string {
  const at = entry.sheet === undefined ? -1 : titles.indexOf(entry.sheet);
  const local = at < 0 ? "" : ` localSheetId="${at}"`;
  const hidden = entry.hidden ? ' hidden="1"' : "";
  return `<definedName name="${escapedAttribute(entry.name)}"${local}${hidden}>${escapedXml(entry.formula)}</definedName>`;
}

export function bookText({ book, root, sheets, names, pivotCaches }: BookTextFacts): string {
  const titles = sheets.map(({ entry }) => entry.name);
  const active = activeOf(
    book,
    sheets.map(({ entry }) => entry),
  );
  const protection = childOf(root, "workbookProtection");
  const locks = Object.fromEntries(
    Object.entries(protection?.attributes ?? {}).filter(([name]) => PROTECTION.test(name)),
  );
  const view = childOf(childOf(root, "bookViews"), "workbookView");
  const list = (name: string, items: readonly string[]): string =>
    items.length === 0 ? "" : `<${name}>${items.join("")}</${name}>`;
  const caches = pivotCaches.map(
    ({ cacheId, relationId }) => `<pivotCache cacheId="${cacheId}" r:id="${relationId}"/>`,
  );
  const strict = book.strict ? ' conformance="strict"' : "";
  return (
    `${DECLARATION}<workbook xmlns="${book.strict ? STRICT_MAIN : MAIN}" xmlns:r="${book.strict ? STRICT_RELATIONS : RELATIONS}"${strict}>` +
    `<workbookPr${some(childOf(root, "workbookPr"), BOOK_ATTRIBUTES)}/>` +
    (Object.keys(locks).length === 0 ? "" : `<workbookProtection${attributesText(locks)}/>`) +
    `<bookViews><workbookView${some(view, VIEW)} activeTab="${active}"/></bookViews>` +
    list(
      "sheets",
      sheets.map((sheet, at) => sheetText(sheet, at, active)),
    ) +
    list(
      "definedNames",
      names.map((name) => nameText(name, titles)),
    ) +
    `<calcPr${some(childOf(root, "calcPr"), CALCULATION)} fullCalcOnLoad="1"/>` +
    list("pivotCaches", caches) +
    "</workbook>"
  );
}
