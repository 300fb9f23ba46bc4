/** New cell styles behind those that are there: no index that a cell carries changes its meaning. */
import { brokenFile, refusal } from "../refusal";
import { appended, childOf, childrenOf, isTrue, numberOf, withAttributes, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { escapedAttribute, spliced, type Splice } from "../xml/text";
import { builtInId, FIRST_OWN_FORMAT } from "./formats";
import { ownFormats } from "./read";

export interface StyleWish {
  readonly format?: string | undefined;
  /** The content is a text even where it begins with "=". */
  readonly quote?: boolean | undefined;
}

export interface StyleAppender {
  /** The index of a style like `base` but for the wish; `base` itself where nothing differs. */
  like(base: number, wish: StyleWish): number;
  /** The part's text with what was appended; undefined where nothing was. */
  text(): string | undefined;
}

/** The most that Excel takes: its published specifications. */
const MOST_STYLES = 65_490;

export interface Formats {
  readonly known: Map<string, number>;
  readonly added: string[];
  next: number;
}

export function formatsOf(root: XmlNode): Formats {
  const own = ownFormats(root);
  return {
    known: new Map([...own].map(([id, code]) => [code, id])),
    added: [],
    next: Math.max(FIRST_OWN_FORMAT - 1, ...own.keys()) + 1,
  };
}

export function formatId(code: string, formats: Formats, prefix: string): number {
  const known = formats.known.get(code) ?? builtInId(code);
  if (known !== undefined) return known;
  const id = formats.next++;
  formats.known.set(code, id);
  formats.added.push(`<${prefix}numFmt numFmtId="${id}" formatCode="${escapedAttribute(code)}"/>`);
  return id;
}

/** Adds to a counted list, or puts a new list where it belongs. */
export function listSplices(source: string, list: XmlNode, added: readonly string[]): Splice[] {
  if (added.length === 0) return [];
  const end = appended(source, list, added.join(""));
  if (list.empty) return [end];
  return [withAttributes(source, list, { count: String(list.children.length + added.length) }), end];
}

/** @param source of the styles part */
export function styleAppender(path: string, source: string): StyleAppender {
  const root = scanXml(path, source);
  const prefix = rootPrefix(source);
  const cells = childOf(root, "cellXfs");
  if (cells === undefined) throw brokenFile(`${path} has no cell styles`);
  const styles = childrenOf(cells, "xf");
  const formats = formatsOf(root);
  const added: string[] = [];
  const made = new Map<string, number>();
  const make = (xf: XmlNode, changes: Readonly<Record<string, string | undefined>>): number => {
    if (styles.length + added.length >= MOST_STYLES)
      throw refusal("change", "This workbook has as many cell styles as Excel takes.");
    const whole = source.slice(xf.start, xf.end);
    added.push(withAttributes(source, xf, changes).text + whole.slice(xf.openEnd - xf.start));
    return styles.length + added.length - 1;
  };
  return {
    like(base, { format, quote }) {
      const xf = styles[base];
      if (xf === undefined) throw brokenFile(`a cell has the style ${base}, which ${path} doesn't have`);
      const changes: Record<string, string | undefined> = {};
      const id = format === undefined ? undefined : formatId(format, formats, prefix);
      if (id !== undefined && id !== (numberOf(xf.attributes["numFmtId"]) ?? 0)) {
        changes["numFmtId"] = String(id);
        changes["applyNumberFormat"] = "1";
      }
      if (quote !== undefined && quote !== isTrue(xf.attributes["quotePrefix"]))
        changes["quotePrefix"] = quote ? "1" : undefined;
      if (Object.keys(changes).length === 0) return base;
      const key = JSON.stringify([base, changes["numFmtId"], "quotePrefix" in changes && quote]);
      const index = made.get(key) ?? make(xf, changes);
      made.set(key, index);
      return index;
    },
    text() {
      if (added.length === 0) return undefined;
      return spliced(source, [
        ...numberFormats(source, root, formats.added, prefix),
        ...listSplices(source, cells, added),
      ]);
    },
  };
}

/** Number formats come first in the part. */
export function numberFormats(source: string, root: XmlNode, added: readonly string[], prefix: string): Splice[] {
  const list = childOf(root, "numFmts");
  if (list !== undefined || added.length === 0) return list === undefined ? [] : listSplices(source, list, added);
  const text = `<${prefix}numFmts count="${added.length}">${added.join("")}</${prefix}numFmts>`;
  return [{ from: root.openEnd, to: root.openEnd, text }];
}
