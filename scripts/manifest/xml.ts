import { SaxesParser } from "saxes";

/** An element of a parsed document, names resolved to their namespaces. */
export interface XmlElement {
  /** Name without prefix. */
  readonly name: string;
  readonly uri: string;
  /** Attribute values by name; the schema instance's carry the prefix `xsi:` whatever the document calls it. No declarations. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Its own text, trimmed. */
  readonly text: string;
  /** Line of the start tag's end, from 1. */
  readonly line: number;
}

interface Growing extends XmlElement {
  readonly children: Growing[];
  text: string;
}

export type Parsed = { readonly root: XmlElement } | { readonly fault: string };

const XMLNS = "http://www.w3.org/2000/xmlns/";
const XSI = "http://www.w3.org/2001/XMLSchema-instance";

/** Reads an XML text; `fault` says the first thing that isn't well-formed, with its line and column. */
export function parseXml(xml: string): Parsed {
  const parser = new SaxesParser({ xmlns: true });
  const open: Growing[] = [];
  let root: Growing | undefined;
  let fault: string | undefined;
  parser.on("error", (error) => (fault ??= error.message));
  parser.on("opentag", (tag) => {
    const attributes = Object.values(tag.attributes).filter(({ uri }) => uri !== XMLNS);
    const element: Growing = {
      name: tag.local,
      uri: tag.uri,
      attributes: new Map(
        attributes.map(({ local, uri, name, value }) => [uri === XSI ? `xsi:${local}` : name, value]),
      ),
      children: [],
      text: "",
      line: parser.line,
    };
    const parent = open.at(-1);
    if (parent) parent.children.push(element);
    root ??= element;
    open.push(element);
  });
  const addText = (text: string): void => {
    const element = open.at(-1);
    if (element) element.text = (element.text + text).trim();
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("closetag", () => open.pop());
  parser.write(xml).close();
  if (fault !== undefined) return { fault };
  return root ? { root } : { fault: "the document is empty" };
}

/** The element itself and all below it, in document order. */
export function everyElement(root: XmlElement): XmlElement[] {
  return [root, ...root.children.flatMap(everyElement)];
}

/** Follows child names from `from`; every match at every step. */
export function find(from: XmlElement, ...path: readonly string[]): XmlElement[] {
  return path.reduce<XmlElement[]>(
    (found, name) => found.flatMap((e) => e.children.filter((c) => c.name === name)),
    [from],
  );
}
