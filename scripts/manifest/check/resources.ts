import { LIMITS } from "../manifest";
import { find, type XmlElement } from "../xml";
import type { Finding } from "./finding";
import type { ResourceKind } from "./schema";
import type { Reference } from "./structure";

export interface Resource {
  readonly id: string;
  readonly kind: ResourceKind;
  readonly value: string;
  readonly element: XmlElement;
}

const LISTS: readonly (readonly [string, ResourceKind, number])[] = [
  ["Images", "Image", LIMITS.url],
  ["Urls", "Url", LIMITS.url],
  ["ShortStrings", "short String", LIMITS.shortString],
  ["LongStrings", "long String", LIMITS.longString],
];

/** Every entry of the Resources element, in document order. */
export function resourcesOf(root: XmlElement): Resource[] {
  return LISTS.flatMap(([list, kind]) =>
    find(root, "VersionOverrides", "Resources", list)
      .flatMap(({ children }) => children)
      .map((element) => ({
        id: element.attributes.get("id") ?? "",
        kind,
        value: element.attributes.get("DefaultValue") ?? "",
        element,
      })),
  );
}

function entryFaults(resource: Resource, all: readonly Resource[]): Finding[] {
  const { id, kind, value, element } = resource;
  const { line } = element;
  const limit = LISTS.find(([, name]) => name === kind)?.[2] ?? LIMITS.url;
  const findings: Finding[] = [];
  if (id.length > LIMITS.resid) {
    findings.push({
      rule: "length",
      line,
      message: `resource id "${id}": at most ${LIMITS.resid} characters, got ${id.length}`,
    });
  }
  if (all.find((other) => other.id === id) !== resource) {
    findings.push({ rule: "resource", line, message: `resource id "${id}" is given twice` });
  }
  if (value.length > limit) {
    findings.push({
      rule: "length",
      line,
      message: `${kind} "${id}": at most ${limit} characters, got ${value.length}`,
    });
  }
  return findings;
}

function referenceFaults({ element, parent, kind }: Reference, all: readonly Resource[]): Finding[] {
  const id = element.attributes.get("resid") ?? "";
  const found = all.find((resource) => resource.id === id);
  const where = `<${element.name}> in <${parent.name}>`;
  const { line } = element;
  if (!found) return [{ rule: "resource", line, message: `${where} names resource "${id}", which doesn't exist` }];
  if (found.kind === kind) return [];
  return [{ rule: "resource", line, message: `${where} needs a ${kind}, "${id}" is a ${found.kind}` }];
}

/** Every resource has a unique short id and a value within its limit, every `resid` leads to the right kind, none is left over. */
export function checkResources(resources: readonly Resource[], references: readonly Reference[]): Finding[] {
  const used = new Set(references.map(({ element }) => element.attributes.get("resid")));
  const unused = resources.filter(({ id }) => !used.has(id));
  return [
    ...resources.flatMap((resource) => entryFaults(resource, resources)),
    ...references.flatMap((reference) => referenceFaults(reference, resources)),
    ...unused.map(({ id, element }): Finding => ({
      rule: "resource",
      line: element.line,
      message: `resource "${id}" is used nowhere`,
    })),
  ];
}
