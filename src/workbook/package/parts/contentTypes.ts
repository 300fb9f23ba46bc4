/** The list of what each part is: ECMA-376 part 2, 7.2.3. */
import { CONTENT_TYPES, partText, type Package } from "./package";
import { escapedAttribute, spliced, type Splice } from "../xml/text";
import { appended } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";

export interface ContentTypes {
  readonly defaults: ReadonlyMap<string, string>;
  /** By path in lower case. */
  readonly overrides: ReadonlyMap<string, string>;
}

const pathOf = (name: string): string => name.replace(/^\//, "").toLowerCase();

/** A zip may hold a part's name without its escapes. */
function unescapedPath(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

export async function contentTypes(pack: Package): Promise<ContentTypes> {
  const root = scanXml(CONTENT_TYPES, await partText(pack, CONTENT_TYPES));
  const defaults = new Map<string, string>();
  const overrides = new Map<string, string>();
  for (const { name, attributes } of root.children) {
    const type = attributes["ContentType"] ?? "";
    if (name === "Default") defaults.set((attributes["Extension"] ?? "").toLowerCase(), type);
    else if (name === "Override") {
      const path = pathOf(attributes["PartName"] ?? "");
      overrides.set(path, type);
      overrides.set(unescapedPath(path), type);
    }
  }
  return { defaults, overrides };
}

export function typeOf({ defaults, overrides }: ContentTypes, path: string): string | undefined {
  const key = path.toLowerCase();
  return overrides.get(key) ?? defaults.get(key.slice(key.lastIndexOf(".") + 1));
}

const override = (prefix: string, path: string, type: string): string =>
  `<${prefix}Override PartName="/${escapedAttribute(path)}" ContentType="${escapedAttribute(type)}"/>`;

/** Changes the list in place: a type for a path, or undefined to take its entry away. */
export function editedTypes(source: string, changes: ReadonlyMap<string, string | undefined>): string {
  const root = scanXml(CONTENT_TYPES, source);
  const prefix = rootPrefix(source);
  const splices: Splice[] = [];
  const met = new Set<string>();
  const wanted = new Map([...changes].map(([path, type]) => [path.toLowerCase(), type] as const));
  for (const { name, attributes, start, end } of root.children) {
    const path = pathOf(attributes["PartName"] ?? "");
    if (name !== "Override" || !wanted.has(path)) continue;
    met.add(path);
    const type = wanted.get(path);
    const text = type === undefined ? "" : override(prefix, attributes["PartName"]?.slice(1) ?? path, type);
    splices.push({ from: start, to: end, text });
  }
  const added = [...changes].flatMap(([path, type]) =>
    type === undefined || met.has(path.toLowerCase()) ? [] : [override(prefix, path, type)],
  );
  if (added.length > 0) splices.push(appended(source, root, added.join("")));
  return spliced(source, splices);
}

/** A new list for the parts that are there, with defaults for their extensions. */
export function typesText(paths: readonly string[], types: ContentTypes): string {
  const used = new Map<string, string>();
  const own: string[] = [];
  for (const path of paths) {
    const key = path.toLowerCase();
    const extension = key.slice(key.lastIndexOf(".") + 1);
    const fallback = types.defaults.get(extension);
    const type = types.overrides.get(key);
    if (type !== undefined) own.push(override("", path, type));
    else if (fallback !== undefined) used.set(extension, fallback);
  }
  const defaults = [...used].map(
    ([extension, type]) =>
      `<Default Extension="${escapedAttribute(extension)}" ContentType="${escapedAttribute(type)}"/>`,
  );
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${defaults.join("")}${own.join("")}</Types>`;
}
