/** Adds sheets and names that are made anew. */
import type { BookFacts } from "../book/facts";
import { readBookPart } from "../book/read";
import { dynamicArrays } from "../book/metadata";
import { partsEditor, type PartsEditor } from "../parts/edits";
import type { Package } from "../parts/package";
import { RELATIONS, STRICT_RELATIONS } from "../parts/relations";
import { refusal } from "../refusal";
import { styleBuilder } from "../styles/build";
import { pauseOf, type PackageWork } from "../work";
import { appended, childOf, numberOf, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { escapedXml, escapedAttribute, spliced, type Splice } from "../xml/text";
import { absoluteCells, sheetPrefix } from "./absolute";
import { addCharts } from "./charts";
import { MAIN, MINIMAL_STYLES, SHEET_TYPE, STRICT_MAIN, STYLES_TYPE } from "./minimal";
import type { NewName, NewSheet } from "./newSheet";
import { sharedTexts } from "./sharedTexts";
import { newSheetBytes } from "./sheetText";

const LONGEST_NAME = 31;

/** Excel's rules for a sheet's name. */
function checkName(name: string, taken: Set<string>): void {
  const quoted = JSON.stringify(name);
  if (name === "" || name.length > LONGEST_NAME)
    throw refusal("change", `A sheet's name has 1 to ${LONGEST_NAME} characters: ${quoted} has ${name.length}.`);
  if (/[[\]:*?/\\]|^'|'$/.test(name))
    throw refusal("change", `A sheet's name can't hold [ ] : * ? / \\ nor begin or end with ': ${quoted}.`);
  if (taken.has(name.toLowerCase())) throw refusal("change", `There is a sheet ${quoted} already.`);
  taken.add(name.toLowerCase());
}

/** Names of print areas and title rows. */
function printNames({ name, print }: NewSheet): readonly NewName[] {
  const { area, titleRows } = print ?? {};
  const place = sheetPrefix(name);
  return [
    ...(area === undefined || area === ""
      ? []
      : [{ name: "_xlnm.Print_Area", sheet: name, formula: place + absoluteCells(area) }]),
    ...(titleRows === undefined || titleRows === ""
      ? []
      : [{ name: "_xlnm.Print_Titles", sheet: name, formula: place + titleRows.replace(/\d+/g, "$$$&") }]),
  ];
}

function nameTexts(names: readonly NewName[], titles: readonly string[], prefix: string): string {
  return names
    .map(({ name, formula, sheet }) => {
      const at = sheet === undefined ? -1 : titles.findIndex((title) => title.toLowerCase() === sheet.toLowerCase());
      if (sheet !== undefined && at < 0)
        throw refusal("change", `The name ${name} belongs to the sheet ${JSON.stringify(sheet)}, which isn't there.`);
      const local = at < 0 ? "" : ` localSheetId="${at}"`;
      return `<${prefix}definedName name="${escapedAttribute(name)}"${local}>${escapedXml(formula)}</${prefix}definedName>`;
    })
    .join("");
}

/** Names come behind the links to other workbooks: ECMA-376 part 1, 18.2.27. */
function nameSplice(source: string, root: XmlNode, text: string): readonly Splice[] {
  if (text === "") return [];
  const list = childOf(root, "definedNames");
  if (list !== undefined) return [appended(source, list, text)];
  const before = ["externalReferences", "functionGroups", "sheets"].flatMap((name) => childOf(root, name) ?? [])[0];
  const at = before?.end ?? root.openEnd;
  const prefix = rootPrefix(source);
  return [{ from: at, to: at, text: `<${prefix}definedNames>${text}</${prefix}definedNames>` }];
}

/** The prefix under which the workbook part knows relations. */
function relationPrefix(root: XmlNode): string | undefined {
  const found = Object.entries(root.attributes).find(
    ([name, value]) => name.startsWith("xmlns:") && (value === RELATIONS || value === STRICT_RELATIONS),
  );
  return found?.[0].slice("xmlns:".length);
}

async function addToBook(
  book: BookFacts,
  sheets: readonly NewSheet[],
  ids: readonly string[],
  names: readonly NewName[],
  editor: PartsEditor,
): Promise<void> {
  const source = await editor.text(book.path);
  const root = scanXml(book.path, source);
  const prefix = rootPrefix(source);
  const list = childOf(root, "sheets");
  if (list === undefined) throw refusal("broken", "This file is damaged and can't be read: it has no list of sheets.");
  const relations = relationPrefix(root);
  const type = book.strict ? STRICT_RELATIONS : RELATIONS;
  const attribute = relations === undefined ? `xmlns:r="${type}" r:id` : `${relations}:id`;
  const first = Math.max(0, ...list.children.map(({ attributes }) => numberOf(attributes["sheetId"]) ?? 0)) + 1;
  const elements = sheets.map(({ name, state = "visible" }, at) => {
    const hidden = state === "visible" ? "" : ` state="${state}"`;
    return `<${prefix}sheet name="${escapedAttribute(name)}" sheetId="${first + at}"${hidden} ${attribute}="${ids[at]}"/>`;
  });
  const titles = [...book.sheets, ...sheets].map(({ name }) => name);
  const own = [...sheets.flatMap(printNames), ...names];
  const text = nameTexts(own, titles, prefix);
  editor.set(
    book.path,
    spliced(source, [appended(source, list, elements.join("")), ...nameSplice(source, root, text)]),
  );
}

function checkNames(book: BookFacts, names: readonly NewName[]): void {
  const key = ({ name, sheet }: { readonly name: string; readonly sheet?: string }): string =>
    `${sheet?.toLowerCase() ?? ""}!${name.toLowerCase()}`;
  const taken = new Set(book.names.map(key));
  for (const one of names) {
    if (taken.has(key(one))) throw refusal("change", `There is a name ${one.name} already.`);
    taken.add(key(one));
  }
}

/**
 * @param sheets go behind those that are there
 * @returns a new package; the one given stays as it was
 * @throws a refusal where a name is taken or none that Excel takes
 */
export async function addSheets(
  pack: Package,
  sheets: readonly NewSheet[],
  names: readonly NewName[] = [],
  work: PackageWork = {},
): Promise<Package> {
  const pause = pauseOf(work);
  const book = await readBookPart(pack);
  const taken = new Set(book.sheets.map(({ name }) => name.toLowerCase()));
  for (const { name } of sheets) checkName(name, taken);
  checkNames(book, names);
  const editor = partsEditor(pack);
  const folder = book.path.slice(0, book.path.lastIndexOf("/") + 1);
  const main = book.strict ? STRICT_MAIN : MAIN;
  const base = book.strict ? STRICT_RELATIONS : RELATIONS;
  const path = book.styles.path ?? `${folder}styles.xml`;
  const styles = styleBuilder(
    path,
    book.styles.path === undefined ? MINIMAL_STYLES.replace(MAIN, main) : await editor.text(path),
  );
  const hasLines = sheets.some(({ lines }) => lines !== undefined);
  const texts = hasLines ? await sharedTexts(pack, book, editor, pause) : undefined;
  const dynamic = [...(await dynamicArrays(pack, book.path))][0];
  const ids: string[] = [];
  let number = 1;
  for (const [at, sheet] of sheets.entries()) {
    work.onProgress?.(at, sheets.length);
    while (editor.has(`${folder}worksheets/sheet${number}.xml`)) number++;
    const own = `${folder}worksheets/sheet${number}.xml`;
    const drawing = await addCharts(editor, sheet, { folder, own, strict: book.strict });
    editor.set(own, await newSheetBytes(sheet, { main, styles, texts, dynamic, pause, drawing }));
    editor.setType(own, SHEET_TYPE);
    ids.push(await editor.addRelation(book.path, `${base}/worksheet`, own));
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  await texts?.save();
  editor.set(path, styles.text());
  if (book.styles.path === undefined) {
    editor.setType(path, STYLES_TYPE);
    await editor.addRelation(book.path, `${base}/styles`, path);
  }
  await addToBook(book, sheets, ids, names, editor);
  return editor.done();
}
