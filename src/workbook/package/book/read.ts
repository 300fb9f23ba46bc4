/** Reads the workbook part with everything that it leads to, sheets' cells apart. */
import { parseCells } from "../../reader/reference";
import { hasPart, partTree, CONTENT_TYPES, type Package } from "../parts/package";
import { contentTypes, typeOf } from "../parts/contentTypes";
import { relationsOf, type PartRelation } from "../parts/relations";
import { brokenFile, refusal } from "../refusal";
import { readStyles } from "../styles/read";
import { attributeOf, childOf, childrenOf, flag, isTrue, numberOf, type XmlNode } from "../xml/node";
import { cellTextOf } from "../xml/text";
import type {
  BookFacts,
  CalculationFacts,
  ExternalLink,
  NameEntry,
  SheetEntry,
  SheetKind,
  SheetState,
  TableFacts,
} from "./facts";

/** ECMA-376 part 1, 12.3.23 for workbooks; the others are Microsoft's [MS-OFFMACRO2] 2.3 and [MS-XLSB] 2.1.7. */
const WORKBOOK_TYPE =
  /spreadsheetml\.(?:sheet|template)\.main\+xml$|ms-excel\.(?:sheet|template|addin)\.macroEnabled\.main\+xml$/i;
const BINARY_TYPE = /ms-excel\.sheet\.binary/i;
const SIGNATURES = "_xmlsignatures/";

const NO_WORKBOOK = "This zip holds no Excel workbook.";

const KINDS: Readonly<Record<string, SheetKind>> = {
  worksheet: "worksheet",
  chartsheet: "chartsheet",
  dialogsheet: "dialogsheet",
  xlMacrosheet: "macrosheet",
  xlIntlMacrosheet: "macrosheet",
};

/** The path of the workbook part and its content type. */
async function workbookPart(pack: Package): Promise<{ readonly path: string; readonly type: string }> {
  if (!hasPart(pack, CONTENT_TYPES)) throw refusal("no-workbook", NO_WORKBOOK);
  const types = await contentTypes(pack);
  const main = (await relationsOf(pack, "")).find(({ kind, external }) => kind === "officeDocument" && !external);
  const type = main === undefined ? undefined : typeOf(types, main.target);
  if (main !== undefined && BINARY_TYPE.test(type ?? main.target.replace(/.*\.bin$/, "ms-excel.sheet.binary")))
    throw refusal("other-format", "This is a binary workbook (.xlsb): save it as .xlsx in Excel first.");
  if (main === undefined || type === undefined || !WORKBOOK_TYPE.test(type)) throw refusal("no-workbook", NO_WORKBOOK);
  if (!hasPart(pack, main.target)) throw brokenFile("its workbook part is missing");
  return { path: main.target, type };
}

function sheetsOf(root: XmlNode, relations: readonly PartRelation[], pack: Package): readonly SheetEntry[] {
  return childrenOf(childOf(root, "sheets"), "sheet").map(({ attributes }) => {
    const relationId = attributeOf(attributes, "id") ?? "";
    const relation = relations.find(({ id }) => id === relationId);
    const name = attributes["name"] ?? "";
    if (relation === undefined || !hasPart(pack, relation.target))
      throw brokenFile(`the sheet ${JSON.stringify(name)} is missing`);
    const state = attributes["state"];
    return {
      name,
      kind: KINDS[relation.kind] ?? "worksheet",
      state: state === "hidden" || state === "veryHidden" ? (state satisfies SheetState) : "visible",
      path: relation.target,
      relationId,
      sheetId: attributes["sheetId"] ?? "",
    };
  });
}

const BUILT_IN = "_xlnm.";

function nameOf({ attributes, text }: XmlNode, sheets: readonly SheetEntry[]): NameEntry {
  const name = attributes["name"] ?? "";
  const sheet = sheets[numberOf(attributes["localSheetId"]) ?? -1]?.name;
  const { comment } = attributes;
  return {
    name,
    ...(sheet !== undefined && { sheet }),
    formula: text.replace(/^=/, ""),
    hidden: isTrue(attributes["hidden"]),
    ...(comment !== undefined && comment !== "" && { comment }),
    ...(name.toLowerCase().startsWith(BUILT_IN) && { builtIn: name.slice(BUILT_IN.length) }),
    macro: isTrue(attributes["function"]) || isTrue(attributes["vbProcedure"]) || isTrue(attributes["xlm"]),
  };
}

/** Defaults: ECMA-376 part 1, 18.2.2. */
function calculationOf(attributes: Readonly<Record<string, string>>): CalculationFacts {
  const mode = attributes["calcMode"];
  return {
    mode: mode === "manual" ? "manual" : mode === "autoNoTable" ? "exceptTables" : "automatic",
    iterate: flag(attributes["iterate"], false),
    iterations: numberOf(attributes["iterateCount"]) ?? 100,
    largestChange: numberOf(attributes["iterateDelta"]) ?? 0.001,
    fullPrecision: flag(attributes["fullPrecision"], true),
    fullCalcOnLoad: flag(attributes["fullCalcOnLoad"], false),
  };
}

const LINKS: Readonly<Record<string, ExternalLink["kind"]>> = {
  externalBook: "workbook",
  ddeLink: "dde",
  oleLink: "ole",
};

async function linksOf(
  pack: Package,
  root: XmlNode,
  relations: readonly PartRelation[],
): Promise<readonly ExternalLink[]> {
  const links: ExternalLink[] = [];
  for (const [at, { attributes }] of childrenOf(childOf(root, "externalReferences"), "externalReference").entries()) {
    const relation = relations.find(({ id }) => id === attributeOf(attributes, "id"));
    if (relation === undefined || !hasPart(pack, relation.target)) continue;
    const child = (await partTree(pack, relation.target)).children.find(({ name }) => name in LINKS);
    const id = child === undefined ? undefined : attributeOf(child.attributes, "id");
    const target = (await relationsOf(pack, relation.target)).find((one) => one.id === id)?.target;
    links.push({ number: at + 1, path: relation.target, kind: LINKS[child?.name ?? ""] ?? "other", target });
  }
  return links;
}

function tableOf(root: XmlNode, sheet: string, path: string): TableFacts | undefined {
  const { ref = "", displayName, name = "", headerRowCount, totalsRowCount } = root.attributes;
  const area = parseCells(ref);
  if (area === undefined) return undefined;
  const columns = childrenOf(childOf(root, "tableColumns"), "tableColumn").map((column) => {
    const calculated = childOf(column, "calculatedColumnFormula")?.text;
    const totals = childOf(column, "totalsRowFormula")?.text;
    return {
      name: cellTextOf(column.attributes["name"] ?? ""),
      ...(calculated !== undefined && { calculated }),
      ...(totals !== undefined && { totals }),
    };
  });
  return {
    name: displayName ?? name,
    sheet,
    path,
    area: { sheet, ...area },
    headerRows: numberOf(headerRowCount) ?? 1,
    totalsRows: numberOf(totalsRowCount) ?? 0,
    columns,
  };
}

async function tablesOf(pack: Package, sheets: readonly SheetEntry[]): Promise<readonly TableFacts[]> {
  const tables: TableFacts[] = [];
  for (const { name, path } of sheets)
    for (const { kind, target } of await relationsOf(pack, path)) {
      if (kind !== "table" || !hasPart(pack, target)) continue;
      const table = tableOf(await partTree(pack, target), name, target);
      if (table !== undefined) tables.push(table);
    }
  return tables;
}

/** @throws a refusal where the zip holds no workbook of the kinds that can be read */
export async function readBook(pack: Package): Promise<BookFacts> {
  const book = await readBookPart(pack);
  if (book.sheets.length === 0) throw brokenFile("it has no sheet");
  return book;
}

/** As `readBook`, for a workbook that has no sheet yet as well. */
export async function readBookPart(pack: Package): Promise<BookFacts> {
  const { path, type } = await workbookPart(pack);
  const [root, relations] = [await partTree(pack, path), await relationsOf(pack, path)];
  if (root.name !== "workbook") throw refusal("no-workbook", NO_WORKBOOK);
  const sheets = sheetsOf(root, relations, pack);
  const view = childOf(childOf(root, "bookViews"), "workbookView")?.attributes ?? {};
  const styles = relations.find(({ kind, target }) => kind === "styles" && hasPart(pack, target))?.target;
  return {
    path,
    strict: Object.values(root.attributes).some((value) =>
      value.startsWith("http://purl.oclc.org/ooxml/spreadsheetml"),
    ),
    macros: /macroEnabled/i.test(type) || relations.some(({ kind }) => kind === "vbaProject"),
    signed: [...pack.parts.keys()].some((key) => key.startsWith(SIGNATURES)),
    date1904: isTrue(childOf(root, "workbookPr")?.attributes["date1904"]),
    calculation: calculationOf(childOf(root, "calcPr")?.attributes ?? {}),
    sheets,
    activeSheet: numberOf(view["activeTab"]) ?? 0,
    names: childrenOf(childOf(root, "definedNames"), "definedName").map((node) => nameOf(node, sheets)),
    tables: await tablesOf(pack, sheets),
    externalLinks: await linksOf(pack, root, relations),
    structureLocked: isTrue(childOf(root, "workbookProtection")?.attributes["lockStructure"]),
    styles: await readStyles(pack, styles),
  };
}
