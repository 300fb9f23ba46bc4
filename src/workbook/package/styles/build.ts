/** Styles of new cells, behind those that are there. */
import { DEFAULT_FONT } from "../create/minimal";
import type { NewStyle } from "../create/newSheet";
import { brokenFile } from "../refusal";
import { childOf, numberOf, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { escapedAttribute, spliced, type Splice } from "../xml/text";
import { formatId, formatsOf, listSplices, numberFormats } from "./append";

export interface StyleBuilder {
  /** @param quote the content is a text even where it begins with "=" */
  of(style: NewStyle, quote: boolean): number;
  /** The index of what a conditional format changes. */
  difference(look: { readonly color: string; readonly fill: string }): number;
  /** The part's text with what was added. */
  text(): string;
}

const LISTS = ["fonts", "fills", "borders", "cellXfs"] as const;
type List = (typeof LISTS)[number];

const argb = (hex: string): string => `FF${hex.slice(1).toUpperCase()}`;

interface OwnFont {
  readonly name: string;
  readonly size: number;
}

/** The font of a workbook's cells without a look: its first. */
function ownFont(fonts: XmlNode | undefined): OwnFont {
  const first = fonts?.children[0];
  const value = (name: string): string | undefined => childOf(first, name)?.attributes["val"];
  return { name: value("name") ?? DEFAULT_FONT.name, size: numberOf(value("sz")) ?? DEFAULT_FONT.size };
}

function fontText({ font, size, bold, italic, underline, strike, color }: NewStyle, own: OwnFont, p: string): string {
  const on = (name: string, is: boolean | undefined): string => (is === true ? `<${p}${name}/>` : "");
  const shade = color === undefined ? "" : `<${p}color rgb="${argb(color)}"/>`;
  return (
    `<${p}font>${on("b", bold)}${on("i", italic)}${on("strike", strike)}${on("u", underline)}` +
    `<${p}sz val="${size ?? own.size}"/>${shade}<${p}name val="${escapedAttribute(font ?? own.name)}"/></${p}font>`
  );
}

const fillText = (fill: string, p: string): string =>
  `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="${argb(fill)}"/><${p}bgColor indexed="64"/></${p}patternFill></${p}fill>`;

function borderText(edges: NonNullable<NewStyle["edges"]>, p: string): string {
  const sides = (["left", "right", "top", "bottom"] as const).map((side) => {
    const edge = edges[side];
    return edge === undefined
      ? `<${p}${side}/>`
      : `<${p}${side} style="${edge.style}"><${p}color rgb="${argb(edge.color)}"/></${p}${side}>`;
  });
  return `<${p}border>${sides.join("")}<${p}diagonal/></${p}border>`;
}

const hasFont = ({ font, size, bold, italic, underline, strike, color }: NewStyle): boolean =>
  [font, size, bold, italic, underline, strike, color].some((one) => one !== undefined && one !== false);

const VERTICAL: Readonly<Record<string, string>> = { top: "top", middle: "center", bottom: "bottom" };

function alignmentText({ align, verticalAlign, wrap, indent }: NewStyle, p: string): string {
  // An indent moves off an edge, so it needs one.
  const horizontal = align ?? (indent === true ? "left" : undefined);
  const attributes =
    (horizontal === undefined ? "" : ` horizontal="${horizontal}"`) +
    (verticalAlign === undefined ? "" : ` vertical="${VERTICAL[verticalAlign]}"`) +
    (wrap === true ? ' wrapText="1"' : "") +
    (indent === true ? ' indent="1"' : "");
  return attributes === "" ? "" : `<${p}alignment${attributes}/>`;
}

/** The differences come behind the named styles: ECMA-376 part 1, 18.8.39. */
function differenceSplices(source: string, root: XmlNode, looks: readonly string[], p: string): readonly Splice[] {
  if (looks.length === 0) return [];
  const list = childOf(root, "dxfs");
  if (list !== undefined) return listSplices(source, list, looks);
  const before = childOf(root, "cellStyles") ?? childOf(root, "cellXfs");
  const at = before?.end ?? root.openEnd;
  return [{ from: at, to: at, text: `<${p}dxfs count="${looks.length}">${looks.join("")}</${p}dxfs>` }];
}

export function styleBuilder(path: string, source: string): StyleBuilder {
  const root = scanXml(path, source);
  const p = rootPrefix(source);
  const nodes = new Map<List, XmlNode>();
  for (const name of LISTS) {
    const node = childOf(root, name);
    if (node === undefined) throw brokenFile(`${path} has no ${name}`);
    nodes.set(name, node);
  }
  const added = new Map<List, string[]>(LISTS.map((name) => [name, []]));
  const known = new Map<string, number>();
  const formats = formatsOf(root);
  const own = ownFont(nodes.get("fonts"));
  const index = (list: List, text: string): number => {
    const key = `${list} ${text}`;
    const texts = added.get(list) ?? [];
    const before = known.get(key);
    if (before !== undefined) return before;
    texts.push(text);
    const place = (nodes.get(list)?.children.length ?? 0) + texts.length - 1;
    known.set(key, place);
    return place;
  };
  const differences = childOf(root, "dxfs");
  const looks: string[] = [];
  const plain = new WeakMap<NewStyle, number>();
  const quoted = new WeakMap<NewStyle, number>();
  const made = (style: NewStyle, quote: boolean): number => {
    if (Object.keys(style).length === 0 && !quote) return 0;
    const font = hasFont(style) ? index("fonts", fontText(style, own, p)) : 0;
    const fill = style.fill === undefined ? 0 : index("fills", fillText(style.fill, p));
    const border = style.edges === undefined ? 0 : index("borders", borderText(style.edges, p));
    const format = style.format === undefined ? 0 : formatId(style.format, formats, p);
    const alignment = alignmentText(style, p);
    const protection = style.locked === false ? `<${p}protection locked="0"/>` : "";
    const applies =
      (format > 0 ? ' applyNumberFormat="1"' : "") +
      (font > 0 ? ' applyFont="1"' : "") +
      (fill > 0 ? ' applyFill="1"' : "") +
      (border > 0 ? ' applyBorder="1"' : "") +
      (alignment === "" ? "" : ' applyAlignment="1"') +
      (protection === "" ? "" : ' applyProtection="1"');
    const open = `<${p}xf numFmtId="${format}" fontId="${font}" fillId="${fill}" borderId="${border}" xfId="0"${quote ? ' quotePrefix="1"' : ""}${applies}>`;
    return index("cellXfs", `${open}${alignment}${protection}</${p}xf>`);
  };
  return {
    of(style, quote) {
      const places = quote ? quoted : plain;
      const place = places.get(style) ?? made(style, quote);
      places.set(style, place);
      return place;
    },
    difference({ color, fill }) {
      const text =
        `<${p}dxf><${p}font><${p}color rgb="${argb(color)}"/></${p}font>` +
        `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="${argb(fill)}"/><${p}bgColor rgb="${argb(fill)}"/></${p}patternFill></${p}fill></${p}dxf>`;
      const known = looks.indexOf(text);
      return (differences?.children.length ?? 0) + (known < 0 ? looks.push(text) - 1 : known);
    },
    text() {
      const lists = [...nodes].flatMap(([name, node]) => listSplices(source, node, added.get(name) ?? []));
      const changed = differenceSplices(source, root, looks, p);
      return spliced(source, [...numberFormats(source, root, formats.added, p), ...lists, ...changed]);
    },
  };
}
