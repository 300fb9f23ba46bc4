/** Lists what is hidden in a workbook, each item to keep or to drop. */
import type { BookFacts, NameEntry, SheetEntry } from "../book/facts";
import { nameKey, resolver } from "../formula/resolve";
import { hasPart, partTree, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import { pauseOf, type PackageWork } from "../work";
import { named } from "../xml/node";
import type { HiddenItem, HiddenKind } from "./choice";
import { hiddenCells } from "./hiddenCells";
import { commentsId, nameId, pivotId, propertyId, sheetId } from "./ids";
import { documentProperties } from "./properties";
import { keptSheets, type KeptFrame } from "./keptSheets";
import { lostNames } from "./lostNames";
import { framesOf, type SheetFrames } from "./sheetFrame";
import { needsOfSheet } from "./sheetNeeds";

/** Parts that never go into a copy, by their path. */
const LEFT: readonly (readonly [HiddenKind, RegExp, string])[] = [
  ["macros", /(?:^|\/)(?:vbaProject|macrosheets|activeX|ctrlProps|attachedToolbars)/i, "macros and controls"],
  [
    "links to other workbooks",
    /\/externalLinks\/[^/]+\.xml$/i,
    "links to other workbooks, with the values they remember",
  ],
  ["connections", /\/(?:connections|queryTables|model)(?:\/|\.)/i, "connections to data outside"],
  ["custom XML", /^customXml\//i, "data that programs attached"],
  ["web extensions", /webextensions\//i, "parts of add-ins"],
  ["printer settings", /printerSettings/i, "settings of printers, with their names"],
  ["other", /\/persons\//i, "the list of people who commented"],
  ["other", /thumbnail/i, "a picture of the first page"],
  ["other", /\/(?:slicers|slicerCaches|timelines|timelineCaches)\//i, "slicers, with the values they remember"],
  ["other", /\/embeddings\//i, "embedded files"],
  ["other", /\/(?:revisions|userNames)/i, "who changed what"],
  ["other", /\/richData\//i, "linked data and pictures in cells"],
];

function leftItems(pack: Package): readonly HiddenItem[] {
  const paths = [...pack.parts.values()].map(({ path }) => path);
  return LEFT.filter(([, pattern]) => paths.some((path) => pattern.test(path))).map(([kind, , text]) => ({
    id: `left:${text}`,
    kind,
    text,
    byDefault: "drop",
    alwaysDropped: true,
  }));
}

async function partItems(pack: Package, { name: sheet, path }: SheetEntry): Promise<readonly HiddenItem[]> {
  const items: HiddenItem[] = [];
  for (const { kind, target, external } of await relationsOf(pack, path)) {
    if (external || !hasPart(pack, target)) continue;
    if (kind === "comments") {
      const count = named(await partTree(pack, target), "comment").length;
      items.push({
        id: commentsId(sheet),
        kind: "comments",
        sheet,
        text: count === 1 ? "1 comment" : `${count} comments`,
        byDefault: "drop",
      });
    } else if (kind === "pivotTable") {
      const name = (await partTree(pack, target)).attributes["name"] ?? "";
      const text = `the pivot table ${name}, with the values that it remembers; its cells stay as values`;
      items.push({ id: pivotId(target), kind: "pivot table", sheet, text, byDefault: "drop" });
    }
  }
  return items;
}

function nameItem(entry: NameEntry, used: boolean): HiddenItem {
  const { name, sheet, formula, hidden } = entry;
  return {
    id: nameId(entry),
    kind: "name",
    ...(sheet !== undefined && { sheet }),
    text: `${name} = ${formula}${hidden ? " (hidden)" : ""}`,
    byDefault: used ? "keep" : "drop",
  };
}

/** Names that formulas and rules of the sheets use, by key. */
async function usedNames(pack: Package, book: BookFacts, frames: readonly KeptFrame[], work: PackageWork) {
  const resolve = resolver(book);
  const pause = pauseOf(work);
  const used = new Set<string>();
  const items: HiddenItem[] = [];
  const add = (formula: string, sheet: string): void => {
    for (const name of resolve.of(formula, sheet).names) used.add(name);
  };
  for (const frame of frames) {
    const sheet = frame.entry;
    items.push(
      ...hiddenCells(sheet.name, frame).map(({ id, kind, text, byDefault }) => ({
        id,
        kind,
        sheet: sheet.name,
        text,
        byDefault,
      })),
    );
    if (frame.elements.some(({ name }) => name === "scenarios"))
      items.push({
        id: `scenarios:${sheet.name}`,
        kind: "scenarios",
        sheet: sheet.name,
        text: "scenarios",
        byDefault: "drop",
        alwaysDropped: true,
      });
    for (const need of await needsOfSheet(pack, sheet, frame.elements, new Set())) add(need.formula, sheet.name);
    for (const { text } of frame.formulas) {
      const wait = pause();
      if (wait !== undefined) await wait;
      if (resolve.mayName(text)) add(text, sheet.name);
    }
  }
  return { used, items };
}

/**
 * @param sheets those that are to be handed over: of the others that they don't need, no rows, columns or comments are listed
 * @param frames of sheets that were read before
 */
export async function listHidden(
  pack: Package,
  book: BookFacts,
  sheets: readonly string[],
  work: PackageWork = {},
  frames: SheetFrames = new Map(),
): Promise<readonly HiddenItem[]> {
  const frameOf = framesOf(pack, work, frames);
  const all = await keptSheets(pack, book, sheets, resolver(book), new Set(), new Set(), frameOf);
  const lost = lostNames(book, resolver(book), new Set(all.dropped.map((name) => name.toLowerCase())), { sheets });
  const kept = all.kept.map(({ entry }) => entry);
  const { used, items } = await usedNames(pack, book, all.kept, work);
  for (const sheet of kept) items.push(...(await partItems(pack, sheet)));
  const hidden = book.sheets.filter(({ state }) => state !== "visible");
  const properties = await documentProperties(pack);
  return [
    ...hidden.map((sheet): HiddenItem => ({
      id: sheetId(sheet.name),
      kind: "sheet",
      sheet: sheet.name,
      text: `the hidden sheet ${sheet.name}`,
      byDefault: kept.includes(sheet) ? "keep" : "drop",
    })),
    ...items,
    ...book.names
      .filter(({ builtIn }) => builtIn === undefined)
      .map((entry) => nameItem(entry, used.has(nameKey(entry)) && !lost.has(nameKey(entry)))),
    ...properties.map(({ id, label, value }): HiddenItem => ({
      id: propertyId(id),
      kind: "property",
      text: `${label}: ${value}`,
      byDefault: "drop",
    })),
    ...leftItems(pack),
  ];
}
