/** Reads XML as a stream of tags with their places in the text. */
import { SaxesParser } from "saxes";
import type { NextSlice } from "../../timeSlices";
import { brokenFile } from "../refusal";
import type { Attributes, XmlNode } from "./node";

export interface TagPlace {
  readonly start: number;
  readonly end: number;
}

export interface XmlVisitor {
  /** @param at the opening tag; an empty element is closed right after */
  open(name: string, attributes: Attributes, at: TagPlace, empty: boolean): void;
  /** @param at the closing tag; of an empty element its end alone */
  close(name: string, at: TagPlace): void;
  text(text: string): void;
}

export interface XmlScan {
  write(text: string): void;
  close(): void;
}

/** @param path of the part, for refusals */
export function xmlScan(path: string, visitor: XmlVisitor): XmlScan {
  const parser = new SaxesParser();
  const broken = (): Error => brokenFile(`${path} is no sound XML`);
  let start = 0;
  let prefix: string | undefined;
  const plain = (name: string): string => {
    if (prefix === undefined) prefix = name.includes(":") ? name.slice(0, name.indexOf(":") + 1) : "";
    return prefix !== "" && name.startsWith(prefix) ? name.slice(prefix.length) : name;
  };
  parser.on("error", () => {
    throw broken();
  });
  parser.on("doctype", () => {
    throw brokenFile(`${path} declares a document type, which workbooks don't`);
  });
  parser.on("opentagstart", ({ name }) => {
    start = parser.position - name.length - 2;
  });
  parser.on("opentag", ({ name, attributes, isSelfClosing }) => {
    visitor.open(plain(name), attributes, { start, end: parser.position }, isSelfClosing);
  });
  parser.on("closetag", ({ name, isSelfClosing }) => {
    const end = parser.position;
    visitor.close(plain(name), { start: isSelfClosing ? end : end - name.length - 3, end });
  });
  const text = (content: string): void => {
    visitor.text(content);
  };
  parser.on("text", text);
  parser.on("cdata", text);
  return {
    write: (piece) => void parser.write(piece),
    close: () => void parser.close(),
  };
}

/** So many characters at a time, with pauses between. */
const STEP = 32_768;

export async function scanText(path: string, source: string, visitor: XmlVisitor, pause: NextSlice): Promise<void> {
  const scan = xmlScan(path, visitor);
  for (let at = 0; at < source.length; at += STEP) {
    scan.write(source.slice(at, at + STEP));
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  scan.close();
}

export interface TreeBuilder extends XmlVisitor {
  readonly root: () => XmlNode | undefined;
}

export function treeBuilder(): TreeBuilder {
  const open: XmlNode[] = [];
  let root: XmlNode | undefined;
  return {
    root: () => root,
    open(name, attributes, { start, end }, empty) {
      const node: XmlNode = {
        name,
        attributes,
        children: [],
        text: "",
        start,
        openEnd: end,
        closeStart: end,
        end,
        empty,
      };
      if (open.length === 0) root ??= node;
      open.at(-1)?.children.push(node);
      open.push(node);
    },
    close(_, { start, end }) {
      const node = open.pop();
      if (node === undefined) return;
      node.closeStart = start;
      node.end = end;
    },
    text(text) {
      const node = open.at(-1);
      if (node !== undefined) node.text += text;
    },
  };
}

/** A whole small part. */
export function scanXml(path: string, source: string): XmlNode {
  const builder = treeBuilder();
  const scan = xmlScan(path, builder);
  scan.write(source);
  scan.close();
  const root = builder.root();
  if (root === undefined) throw brokenFile(`${path} is empty`);
  return root;
}

/** The prefix that a part's own vocabulary is written with, colon and all; empty in most files. */
export function rootPrefix(source: string): string {
  return /<([A-Za-z_][\w.-]*:)?[A-Za-z_][\w.-]*[\s/>]/.exec(source)?.[1] ?? "";
}
