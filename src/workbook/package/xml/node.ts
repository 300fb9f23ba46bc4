/** Elements of a small part as a tree that knows where each one is in the text. */
import { escapedAttribute, type Splice } from "./text";

export type Attributes = Readonly<Record<string, string>>;

export interface XmlNode {
  /** With the root's own prefix taken off; elements of other vocabularies keep theirs. */
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: XmlNode[];
  /** Character content of the element itself, without that of its children. */
  text: string;
  /** `<` of the opening tag. */
  readonly start: number;
  /** Behind `>` of the opening tag. */
  readonly openEnd: number;
  /** `<` of the closing tag; `openEnd` of an empty tag. */
  closeStart: number;
  /** Behind `>` of the closing tag. */
  end: number;
  /** Written as `<a/>`. */
  empty: boolean;
}

export function childrenOf(node: XmlNode | undefined, name: string): readonly XmlNode[] {
  return node?.children.filter((child) => child.name === name) ?? [];
}

export function childOf(node: XmlNode | undefined, name: string): XmlNode | undefined {
  return node?.children.find((child) => child.name === name);
}

export const localName = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The node and everything inside. */
export function* descendants(node: XmlNode): Generator<XmlNode> {
  yield node;
  for (const child of node.children) yield* descendants(child);
}

/** All elements of a local name, at any depth. */
export function named(node: XmlNode, local: string): readonly XmlNode[] {
  return [...descendants(node)].filter(({ name }) => localName(name) === local);
}

/** An attribute by its local name: relation ids come under any prefix. */
export function attributeOf(attributes: Attributes, local: string): string | undefined {
  const key = Object.keys(attributes).find((name) => localName(name) === local && name.includes(":"));
  return key === undefined ? undefined : attributes[key];
}

export const isTrue = (text: string | undefined): boolean => text === "1" || text === "true" || text === "on";

/** A switch with its default. */
export const flag = (text: string | undefined, otherwise: boolean): boolean =>
  text === undefined ? otherwise : isTrue(text);

export function numberOf(text: string | undefined): number | undefined {
  const number = text === undefined || text.trim() === "" ? Number.NaN : Number(text);
  return Number.isFinite(number) ? number : undefined;
}

/** Puts text at the end of an element; an empty tag becomes an open one. */
export function appended(source: string, node: XmlNode, text: string): Splice {
  if (!node.empty) return { from: node.closeStart, to: node.closeStart, text };
  const name = /^<([^\s/>]+)/.exec(source.slice(node.start, node.end))?.[1] ?? node.name;
  return { from: node.end - 2, to: node.end, text: `>${text}</${name}>` };
}

/** Takes an element away. */
export const without = ({ start, end }: XmlNode): Splice => ({ from: start, to: end, text: "" });

/** Sets or, with undefined, drops attributes of an element's opening tag; the others stay as they are written. */
export function withAttributes(
  source: string,
  node: Pick<XmlNode, "start" | "openEnd">,
  changes: Readonly<Record<string, string | undefined>>,
): Splice {
  const from = node.start;
  const to = node.openEnd;
  let tag = source.slice(from, to);
  for (const [name, value] of Object.entries(changes)) {
    const found = new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`).exec(tag);
    const written = value === undefined ? "" : ` ${name}="${escapedAttribute(value)}"`;
    if (found !== null) tag = tag.slice(0, found.index) + written + tag.slice(found.index + found[0].length);
    else if (value !== undefined) tag = tag.replace(/\s*\/?>$/, (end) => written + end.trim());
  }
  return { from, to, text: tag };
}
