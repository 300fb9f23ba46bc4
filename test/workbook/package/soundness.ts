/** What Excel would repair: links to nothing, parts without a type, parts that nothing leads to. */
import { scanXml } from "../../../src/workbook/package/xml/scan";
import type { XmlNode } from "../../../src/workbook/package/xml/node";

function* all(node: XmlNode): Generator<XmlNode> {
  yield node;
  for (const child of node.children) yield* all(child);
}

const folder = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);
const relsOf = (path: string): string => `${folder(path)}_rels/${path.slice(folder(path).length)}.rels`;

function target(from: string, text: string): string {
  const url = new URL(text, `file:///${folder(from)}`);
  return decodeURIComponent(url.pathname.slice(1));
}

/** Element names whose `r:id` is no relation of their part. */
const relationIds = (root: XmlNode): string[] =>
  [...all(root)].flatMap(({ attributes }) =>
    Object.entries(attributes).flatMap(([name, value]) =>
      /^r:(?:id|embed|link|dm|lo|qs|cs)$/.test(name) && value !== "" ? [value] : [],
    ),
  );

/** @param parts texts by path; pictures may be garbled */
export function problemsOf(parts: Readonly<Record<string, string>>): readonly string[] {
  const problems: string[] = [];
  const reached = new Set(["[Content_Types].xml"]);
  const types = scanXml("types", parts["[Content_Types].xml"]!).children;
  const defaults = new Set(
    types.flatMap(({ name, attributes }) => (name === "Default" ? [attributes["Extension"]] : [])),
  );
  const overrides = types.flatMap(({ name, attributes }) =>
    name === "Override" ? [attributes["PartName"]!.slice(1)] : [],
  );
  for (const path of overrides) if (!(path in parts)) problems.push(`a type for ${path}, which isn't there`);
  for (const path of ["", ...Object.keys(parts)]) {
    const own = relsOf(path);
    const relations = own in parts ? scanXml(own, parts[own]!).children : [];
    if (own in parts) reached.add(own);
    for (const { attributes } of relations) {
      if (attributes["TargetMode"] === "External" || attributes["Target"]!.startsWith("#")) continue;
      const to = target(path, attributes["Target"]!);
      reached.add(to);
      if (!(to in parts)) problems.push(`${own} leads to ${to}, which isn't there`);
    }
    const ids = new Set(relations.map(({ attributes }) => attributes["Id"]));
    if (/\.xml$/.test(path) && path !== "[Content_Types].xml")
      for (const id of relationIds(scanXml(path, parts[path]!)))
        if (!ids.has(id)) problems.push(`${path} names ${id}, which leads nowhere`);
    const extension = path.slice(path.lastIndexOf(".") + 1);
    if (path !== "" && path !== "[Content_Types].xml" && !overrides.includes(path) && !defaults.has(extension))
      problems.push(`${path} has no type`);
  }
  for (const path of Object.keys(parts)) if (!reached.has(path)) problems.push(`nothing leads to ${path}`);
  return problems;
}
