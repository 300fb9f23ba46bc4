/** The properties of a document: who made it, when, for whom. A copy gets new parts with those that are kept. */
import { hasPart, partTree, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import { localName } from "../xml/node";
import { escapedXml, escapedAttribute } from "../xml/text";
import { DECLARATION } from "../create/minimal";

export interface DocumentProperty {
  /** core:creator, app:Company, custom:Project */
  readonly id: string;
  readonly label: string;
  readonly value: string;
}

const LABELS: Readonly<Record<string, string>> = {
  creator: "Author",
  lastModifiedBy: "Last changed by",
  created: "Created",
  modified: "Changed",
  lastPrinted: "Printed",
  contentStatus: "Status",
};

/** Properties that say nothing of people: programs write them about themselves. */
const OF_PROGRAMS = new Set(
  "Application AppVersion DocSecurity ScaleCrop LinksUpToDate SharedDoc HyperlinksChanged TotalTime".split(" "),
);
/** Lists of the sheets and names, made anew. */
const OF_CONTENT = new Set(["TitlesOfParts", "HeadingPairs", "HLinks", "DigSig"]);

const KINDS: Readonly<Record<string, string>> = {
  "core-properties": "core",
  "extended-properties": "app",
  "custom-properties": "custom",
};

const title = (name: string): string => LABELS[name] ?? name.charAt(0).toUpperCase() + name.slice(1);

export async function documentProperties(pack: Package): Promise<readonly DocumentProperty[]> {
  const found: DocumentProperty[] = [];
  for (const { kind, target } of await relationsOf(pack, "")) {
    const group = KINDS[kind];
    if (group === undefined || !hasPart(pack, target)) continue;
    for (const node of (await partTree(pack, target)).children) {
      const name = group === "custom" ? (node.attributes["name"] ?? "") : localName(node.name);
      const value = (node.text + node.children.map(({ text }) => text).join(" ")).trim();
      if (value === "" || (group === "app" && (OF_PROGRAMS.has(name) || OF_CONTENT.has(name)))) continue;
      found.push({ id: `${group}:${name}`, label: title(name), value });
    }
  }
  return found;
}

const CORE_NAMES: Readonly<Record<string, string>> = {
  creator: "dc:creator",
  title: "dc:title",
  subject: "dc:subject",
  description: "dc:description",
  language: "dc:language",
  identifier: "dc:identifier",
  created: "dcterms:created",
  modified: "dcterms:modified",
};

/** The part of the core properties: ECMA-376 part 2, 8.3. */
export function coreText(kept: readonly DocumentProperty[]): string {
  const lines = kept
    .filter(({ id }) => id.startsWith("core:"))
    .map(({ id, value }) => {
      const name = id.slice("core:".length);
      const tag = CORE_NAMES[name] ?? `cp:${name}`;
      const type = tag.startsWith("dcterms:") ? ' xsi:type="dcterms:W3CDTF"' : "";
      return `<${tag}${type}>${escapedXml(value)}</${tag}>`;
    });
  return `${DECLARATION}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">${lines.join("")}</cp:coreProperties>`;
}

const APP = "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties";
/** Texts among the extended properties: the others are numbers and lists of the file as it was. */
const APP_TEXTS = ["Manager", "Company", "Template", "HyperlinkBase", "PresentationFormat"];

export function appText(kept: readonly DocumentProperty[]): string {
  const lines = kept
    .filter(({ id }) => APP_TEXTS.some((name) => id === `app:${name}`))
    .map(({ id, value }) => `<${id.slice(4)}>${escapedXml(value)}</${id.slice(4)}>`);
  return `${DECLARATION}<Properties xmlns="${APP}"><Application>Microsoft Excel</Application>${lines.join("")}</Properties>`;
}

const CUSTOM = "http://schemas.openxmlformats.org/officeDocument/2006/custom-properties";

/** As texts, whatever they were; undefined where none is kept. */
export function customText(kept: readonly DocumentProperty[]): string | undefined {
  const own = kept.filter(({ id }) => id.startsWith("custom:"));
  if (own.length === 0) return undefined;
  const lines = own.map(
    ({ id, value }, at) =>
      `<property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="${at + 2}" name="${escapedAttribute(id.slice(7))}"><vt:lpwstr>${escapedXml(value)}</vt:lpwstr></property>`,
  );
  return `${DECLARATION}<Properties xmlns="${CUSTOM}" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes">${lines.join("")}</Properties>`;
}
