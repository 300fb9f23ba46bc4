/** The parts of a copy that all its sheets share, and the lists that name every part. */
import type { NameEntry, SheetEntry } from "../book/facts";
import { BOOK_TYPE, dynamicMetadata, MAIN, METADATA_TYPE, STRICT_MAIN } from "../create/minimal";
import { contentTypes, typesText, type ContentTypes } from "../parts/contentTypes";
import { CONTENT_TYPES, hasPart, partAt, partText, type Package } from "../parts/package";
import {
  RELATIONS,
  relationsOf,
  relationsPath,
  relationsText,
  STRICT_RELATIONS,
  type PartRelation,
} from "../parts/relations";
import { sharedStringsPath } from "../sheet/strings";
import { scanXml } from "../xml/scan";
import { encoded } from "../xml/text";
import { copyPart, pivotCacheIds, put, type Assembly, type CopiedSheet } from "./assemble";
import { bookText } from "./bookText";
import type { CopyChoice } from "./choice";
import { propertyId } from "./ids";
import { appText, coreText, customText, documentProperties } from "./properties";
import { NO_FRAME } from "./sheetFrame";
import { styleNamesIn, trimmedStrings, trimmedStyles } from "./trim";

/** Stands for the workbook where a part of it is copied. */
const WHOLE: CopiedSheet = {
  path: "",
  kind: "workbook",
  frame: NO_FRAME,
  active: false,
  emptied: [],
  keepsComments: false,
  stays: () => true,
};

interface Shared {
  readonly relations: PartRelation[];
  readonly types: Map<string, string>;
  readonly add: (kind: string, path: string) => string;
}

function shared({ book }: Assembly): Shared {
  const relations: PartRelation[] = [];
  return {
    relations,
    types: new Map(),
    add(kind, target) {
      const id = `rId${relations.length + 1}`;
      const type = `${book.strict ? STRICT_RELATIONS : RELATIONS}/${kind}`;
      relations.push({ id, type, kind, target, external: false, raw: target });
      return id;
    },
  };
}

async function addStyles(assembly: Assembly, { add }: Shared): Promise<void> {
  const { source, book, use } = assembly;
  const path = (await relationsOf(source, book.path)).find(
    ({ kind, target }) => kind === "styles" && hasPart(source, target),
  )?.target;
  if (path === undefined) return;
  const text = trimmedStyles(path, await partText(source, path), use, styleNamesIn(assembly.texts));
  put(assembly, path, text);
  add("styles", path);
}

async function addStrings(assembly: Assembly, { add }: Shared): Promise<void> {
  const { source, book, use } = assembly;
  const path = await sharedStringsPath(source, book.path);
  if (path === undefined || use.strings.size === 0) return;
  put(assembly, path, trimmedStrings(path, await partText(source, path), use));
  add("sharedStrings", path);
}

async function addTheme(assembly: Assembly, { add }: Shared): Promise<void> {
  const { source, book } = assembly;
  for (const { kind, target } of await relationsOf(source, book.path)) {
    if (kind !== "theme" || !hasPart(source, target)) continue;
    await copyPart("theme", target, WHOLE, assembly);
    add("theme", target);
  }
}

function addMetadata(assembly: Assembly, { add, types }: Shared): void {
  if (!assembly.use.dynamic) return;
  const path = "xl/metadata.xml";
  put(assembly, path, dynamicMetadata(assembly.book.strict ? STRICT_MAIN : MAIN));
  types.set(path, METADATA_TYPE);
  add("sheetMetadata", path);
}

/** Caches of the pivot tables that are kept, with the numbers that their tables call them by. */
async function addCaches(assembly: Assembly, { add }: Shared) {
  const { source, book, parts } = assembly;
  const numbers = pivotCacheIds(scanXml(book.path, await partText(source, book.path)));
  return (await relationsOf(source, book.path)).flatMap(({ kind, target, id }) => {
    const cacheId = numbers.get(id);
    if (kind !== "pivotCacheDefinition" || cacheId === undefined || !parts.has(target.toLowerCase())) return [];
    return [{ cacheId, relationId: add(kind, target) }];
  });
}

const PROPERTY_PARTS = [
  [
    "docProps/core.xml",
    "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties",
    "application/vnd.openxmlformats-package.core-properties+xml",
  ],
  [
    "docProps/app.xml",
    `${RELATIONS}/extended-properties`,
    "application/vnd.openxmlformats-officedocument.extended-properties+xml",
  ],
  [
    "docProps/custom.xml",
    `${RELATIONS}/custom-properties`,
    "application/vnd.openxmlformats-officedocument.custom-properties+xml",
  ],
] as const;

/** The package's own relations: to the workbook and to new parts with the properties that are kept. */
async function addProperties(
  assembly: Assembly,
  types: Map<string, string>,
  { keep }: CopyChoice,
): Promise<readonly PartRelation[]> {
  const all = await documentProperties(assembly.source);
  const kept = all.filter(({ id }) => keep?.has(propertyId(id)) === true);
  const texts = [coreText(kept), appText(kept), customText(kept)];
  const { book } = assembly;
  const main = {
    kind: "officeDocument",
    target: book.path,
    type: `${book.strict ? STRICT_RELATIONS : RELATIONS}/officeDocument`,
  };
  const relations = [main];
  for (const [at, [path, type, contentType]] of PROPERTY_PARTS.entries()) {
    const text = texts[at];
    if (text === undefined) continue;
    put(assembly, path, text);
    types.set(path, contentType);
    relations.push({ kind: "", target: path, type });
  }
  return relations.map((one, at) => ({ ...one, id: `rId${at + 1}`, external: false, raw: one.target }));
}

/** Types of old parts as they were; of new ones as given. The workbook is one without macros, whatever it was. */
function typesOf(old: ContentTypes, types: ReadonlyMap<string, string>, book: string): ContentTypes {
  return {
    defaults: new Map([...old.defaults, ["rels", "application/vnd.openxmlformats-package.relationships+xml"]]),
    overrides: new Map([
      ...old.overrides,
      ...[...types].map(([path, type]) => [path.toLowerCase(), type] as const),
      [book.toLowerCase(), BOOK_TYPE],
    ]),
  };
}

/** Adds what all sheets share and names every part; order: the list of types first, then the package's relations. */
export async function finish(
  assembly: Assembly,
  sheets: readonly SheetEntry[],
  names: readonly NameEntry[],
  choice: CopyChoice,
): Promise<Package> {
  const { source, book, parts } = assembly;
  const lists = shared(assembly);
  const root = scanXml(book.path, await partText(source, book.path));
  const entries = sheets.map((entry) => ({ entry, relationId: lists.add(sheetKind(entry), entry.path) }));
  await addStyles(assembly, lists);
  await addStrings(assembly, lists);
  await addTheme(assembly, lists);
  addMetadata(assembly, lists);
  const pivotCaches = await addCaches(assembly, lists);
  put(assembly, book.path, bookText({ book, root, sheets: entries, names, pivotCaches }));
  put(assembly, relationsPath(book.path), relationsText(lists.relations));
  put(assembly, "_rels/.rels", relationsText(await addProperties(assembly, lists.types, choice)));
  const paths = [...parts.values()].map(({ path }) => path);
  const types = typesText(paths, typesOf(await contentTypes(source), lists.types, book.path));
  const first = [CONTENT_TYPES, "_rels/.rels", book.path].flatMap((path) => partAt({ parts }, path) ?? []);
  const all = [{ path: CONTENT_TYPES, bytes: encoded(types) }, ...first, ...parts.values()];
  return { parts: new Map(all.map((part) => [part.path.toLowerCase(), part])) };
}

const sheetKind = ({ kind }: SheetEntry): string => (kind === "macrosheet" ? "xlMacrosheet" : kind);
