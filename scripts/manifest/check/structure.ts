import type { XmlElement } from "../xml";
import type { Finding } from "./finding";
import { NAMESPACES, OFFICE_APP, type ResourceKind, type ElementShape } from "./schema";

/** A use of a resource: the element that carries the `resid` and the kind that it needs. */
export interface Reference {
  readonly element: XmlElement;
  readonly parent: XmlElement;
  readonly kind: ResourceKind;
}

export interface Structure {
  readonly findings: readonly Finding[];
  readonly references: readonly Reference[];
}

const fault = (element: XmlElement, message: string): Finding => ({ rule: "structure", message, line: element.line });

function attributeFaults(element: XmlElement, shape: ElementShape): Finding[] {
  const needed = [...(shape.attributes ?? []), ...(shape.refers ? ["resid"] : [])];
  return needed
    .filter((name) => (element.attributes.get(name) ?? "") === "")
    .map((name) => fault(element, `<${element.name}> has no ${name}`));
}

/** The children that the schema allows here; undefined when the xsi:type is one that it doesn't know. */
function childrenOf(element: XmlElement, shape: ElementShape): readonly ElementShape[] | undefined {
  return shape.byType ? shape.byType[element.attributes.get("xsi:type") ?? ""] : shape.children;
}

function countFaults(element: XmlElement, allowed: readonly ElementShape[]): Finding[] {
  return allowed.flatMap((shape) => {
    const count = element.children.filter(({ name }) => name === shape.name).length;
    if (count === 0 && shape.times === "one") return [fault(element, `<${element.name}> lacks <${shape.name}>`)];
    if (count > 1 && shape.times !== "some") {
      return [fault(element, `<${element.name}> holds ${count} <${shape.name}>, at most one is allowed`)];
    }
    return [];
  });
}

function walkChildren(element: XmlElement, allowed: readonly ElementShape[]): Structure {
  const findings: Finding[] = countFaults(element, allowed);
  const references: Reference[] = [];
  let last = 0;
  for (const child of element.children) {
    const place = allowed.findIndex(({ name }) => name === child.name);
    const shape = allowed[place];
    if (!shape) {
      findings.push(fault(child, `<${child.name}> is not allowed in <${element.name}>`));
      continue;
    }
    if (place < last) {
      findings.push(fault(child, `<${child.name}> follows <${allowed[last]?.name}>: the schema requires it before`));
    }
    last = Math.max(last, place);
    if (shape.refers) references.push({ element: child, parent: element, kind: shape.refers });
    const below = walk(child, shape);
    findings.push(...below.findings);
    references.push(...below.references);
  }
  return { findings, references };
}

function walk(element: XmlElement, shape: ElementShape): Structure {
  const own = attributeFaults(element, shape);
  if (element.uri !== NAMESPACES[shape.ns]) {
    own.push(fault(element, `<${element.name}> is in namespace "${element.uri}", expected "${NAMESPACES[shape.ns]}"`));
  }
  const allowed = childrenOf(element, shape);
  if (!allowed) {
    const known = Object.keys(shape.byType ?? {}).join(" or ");
    const type = element.attributes.get("xsi:type") ?? "none";
    return {
      findings: [...own, fault(element, `<${element.name}> has xsi:type ${type}, expected ${known}`)],
      references: [],
    };
  }
  const below = walkChildren(element, allowed);
  return { findings: [...own, ...below.findings], references: below.references };
}

/** Element names, order, counts, namespaces and needed attributes against the schema; and collects the resource references. */
export function checkStructure(root: XmlElement): Structure {
  if (root.name === OFFICE_APP.name) return walk(root, OFFICE_APP);
  return { findings: [fault(root, `the root is <${root.name}>, expected <${OFFICE_APP.name}>`)], references: [] };
}
