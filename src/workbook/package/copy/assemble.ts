/** Builds the copy's package from the workbook part outwards: only parts that a kept one may lead to come along. */
import type { Area } from "../../port";
import type { BookFacts } from "../book/facts";
import { hasPart, partAt, partText, type Package, type Part } from "../parts/package";
import { relationsOf, relationsPath, relationsText, type PartRelation } from "../parts/relations";
import { isPackageRefusal } from "../refusal";
import { placeOf } from "../sheet/scan";
import { contains } from "../sheet/formulas";
import { pauseOf, type PackageWork } from "../work";
import { attributeOf, childOf, named, withAttributes, without, type XmlNode } from "../xml/node";
import { scanXml } from "../xml/scan";
import { encoded, spliced, type Splice } from "../xml/text";
import { cleanChart, cleanComments, cleanDrawing, cleanNoteBoxes } from "./cleanDrawing";
import { cleanElement, cleanTable } from "./cleanElements";
import { cleanSheet, type SharedUse } from "./cleanSheet";
import { mayLead } from "./reach";
import type { SheetFrame } from "./sheetFrame";

/** One kept sheet, with what is known of it. */
export interface CopiedSheet {
  readonly path: string;
  readonly kind: string;
  /** Of the text that the source holds. */
  readonly frame: SheetFrame;
  readonly active: boolean;
  readonly emptied: readonly Area[];
  readonly keepsComments: boolean;
  /** Whether a formula may stay on this sheet. */
  readonly stays: (formula: string) => boolean;
}

export interface Assembly {
  readonly source: Package;
  readonly book: BookFacts;
  readonly parts: Map<string, Part>;
  /** Texts of the parts that were cleaned, for what they name. */
  readonly texts: string[];
  readonly use: SharedUse;
  readonly pivots: ReadonlySet<string>;
  readonly work: PackageWork;
}

/** Remarks of whoever wrote a part, and instructions to programs; the XML declaration stays. */
const REMARKS = /<!--[\s\S]*?-->|<\?(?!xml\s)[\s\S]*?\?>/g;

export function put({ parts, texts }: Assembly, path: string, content: string | Part): void {
  const text = typeof content === "string" ? content.replace(REMARKS, "") : undefined;
  if (text !== undefined) texts.push(text);
  const part = typeof content === "string" ? { path, bytes: encoded(text ?? content) } : content;
  parts.set(path.toLowerCase(), part);
}

const dropsRows = ({ emptied }: CopiedSheet): boolean => emptied.length > 0;

/** The element that leads to the boxes of notes, not to the pictures of a header. */
const notesId = (elements: readonly XmlNode[]): string | undefined => {
  const node = elements.find(({ name }) => name === "legacyDrawing");
  return node === undefined ? undefined : attributeOf(node.attributes, "id");
};

function staysHere(sheet: CopiedSheet, relation: PartRelation, { pivots }: Assembly): boolean {
  const { kind, raw, target, id } = relation;
  if (kind === "comments") return sheet.keepsComments;
  if (kind === "vmlDrawing") return sheet.keepsComments || id !== notesId(sheet.frame.elements);
  if (kind === "pivotTable") return pivots.has(target);
  return kind !== "hyperlink" || !raw.startsWith("#") || sheet.stays(raw.slice(1));
}

/** Sums up anew when the copy opens, and remembers neither records nor who refreshed it. */
function cleanCache(source: string, root: XmlNode): readonly Splice[] {
  return [
    withAttributes(source, root, {
      "[A-Za-z]+:id": undefined,
      refreshedBy: undefined,
      refreshedDate: undefined,
      refreshedDateIso: undefined,
      recordCount: undefined,
      saveData: "0",
      refreshOnLoad: "1",
    }),
  ];
}

function notesOf(root: XmlNode, { emptied }: CopiedSheet): readonly Splice[] {
  const gone = named(root, "comment").filter(({ attributes }) => {
    const place = placeOf(attributes["ref"] ?? "");
    return place !== undefined && emptied.some((area) => contains(area, place));
  });
  return [...cleanComments(root), ...gone.map(without)];
}

/** The new text of a part, or undefined where it goes as it is. */
async function cleaned(
  kind: string,
  path: string,
  relations: readonly PartRelation[],
  sheet: CopiedSheet,
  assembly: Assembly,
): Promise<string | undefined> {
  const ids = new Set(relations.map(({ id }) => id));
  const { stays, active } = sheet;
  const edit = async (splices: (source: string, root: XmlNode) => readonly Splice[]): Promise<string> => {
    const source = await partText(assembly.source, path);
    return spliced(source, splices(source, scanXml(path, source)));
  };
  const context = (source: string) => ({
    source,
    relations: ids,
    placeStays: stays,
    active,
    dropsRows: dropsRows(sheet),
    stays,
  });
  if (kind === "worksheet") {
    const source = await partText(assembly.source, path, pauseOf(assembly.work));
    return cleanSheet(sheet.frame, context(source), assembly.use);
  }
  if (kind === "chartsheet")
    return edit((source, root) => root.children.flatMap((node) => cleanElement(node, context(source))));
  if (kind === "drawing" || kind === "chartUserShapes")
    return edit((source, root) => cleanDrawing(source, root, ids, stays));
  if (kind === "chart" || kind === "chartEx") return edit((source, root) => cleanChart(source, root, ids, stays));
  if (kind === "table") return edit((source, root) => cleanTable(source, root, stays, dropsRows(sheet)));
  if (kind === "comments") return edit((_, root) => notesOf(root, sheet));
  if (kind === "vmlDrawing") return edit((_, root) => cleanNoteBoxes(root));
  if (kind === "pivotCacheDefinition") return edit(cleanCache);
  return /\.xml$/i.test(path) ? partText(assembly.source, path) : undefined;
}

/** Old drawings need not be sound XML: one that can't be cleaned stays behind. */
async function isSound({ source }: Assembly, { kind, target }: PartRelation): Promise<boolean> {
  if (kind !== "vmlDrawing") return true;
  try {
    scanXml(target, await partText(source, target));
    return true;
  } catch (error) {
    if (isPackageRefusal(error)) return false;
    throw error;
  }
}

/** Relations of these kinds are named where they are used; of the others the part itself is enough. */
const NAMED_KINDS = new Set(["hyperlink", "image", "chart", "chartEx", "drawing", "vmlDrawing", "chartUserShapes"]);

/** Whether the cleaned text still names a relation. */
const isUsed = ({ kind, id }: PartRelation, text: string | undefined): boolean =>
  !NAMED_KINDS.has(kind) || text === undefined || text.includes(`"${id}"`) || text.includes(`'${id}'`);

async function relationsThatStay(
  kind: string,
  path: string,
  sheet: CopiedSheet,
  assembly: Assembly,
): Promise<readonly PartRelation[]> {
  const kept: PartRelation[] = [];
  for (const relation of await relationsOf(assembly.source, path)) {
    if (!mayLead(kind, relation) || !staysHere(sheet, relation, assembly)) continue;
    const outside = relation.external || relation.raw.startsWith("#");
    const isThere = outside || (hasPart(assembly.source, relation.target) && (await isSound(assembly, relation)));
    if (isThere) kept.push(relation);
  }
  return kept;
}

/** Puts a part and all that it may lead to into the copy. */
export async function copyPart(kind: string, path: string, sheet: CopiedSheet, assembly: Assembly): Promise<void> {
  const part = partAt(assembly.source, path);
  if (part === undefined || assembly.parts.has(path.toLowerCase())) return;
  // Comes first, so that a circle of relations ends.
  put(assembly, path, part);
  const relations = await relationsThatStay(kind, path, sheet, assembly);
  const text = await cleaned(kind, path, relations, sheet, assembly);
  if (text !== undefined) put(assembly, path, text);
  const used = relations.filter((relation) => isUsed(relation, text));
  for (const { kind: next, target, external, raw } of used)
    if (!external && !raw.startsWith("#")) await copyPart(next, target, sheet, assembly);
  if (used.length > 0) put(assembly, relationsPath(path), relationsText(used));
}

export const pivotCacheIds = (root: XmlNode): ReadonlyMap<string, string> =>
  new Map(
    (childOf(root, "pivotCaches")?.children ?? []).map(({ attributes }) => [
      attributeOf(attributes, "id") ?? "",
      attributes["cacheId"] ?? "",
    ]),
  );
