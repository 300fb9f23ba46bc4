/** How the cells of a workbook look, as far as a sheet on a page shows it. */
import type { BookFacts } from "../book/facts";
import type { NewEdge, NewStyle } from "../create/newSheet";
import { hasPart, partTree, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import { childOf, childrenOf, flag, numberOf, type XmlNode } from "../xml/node";

/** The colours of a workbook without a theme: light 1, dark 1, light 2, dark 2, accents 1 to 6. */
const USUAL_THEME = [
  "ffffff",
  "000000",
  "e7e6e6",
  "44546a",
  "4472c4",
  "ed7d31",
  "a5a5a5",
  "ffc000",
  "5b9bd5",
  "70ad47",
];

/** The theme's elements in the order in which cells number them: ECMA-376 part 1, 18.8.3. */
const THEME_ORDER = "lt1 dk1 lt2 dk2 accent1 accent2 accent3 accent4 accent5 accent6".split(" ");

/** The first colours of the indexed palette: ECMA-376 part 1, 18.8.27. */
const INDEXED = "000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff".split(" ");

/** A tint moves each channel towards white (above 0) or black (below 0). */
function tinted(hex: string, tint: number): string {
  return [0, 2, 4]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16))
    .map((channel) => Math.round(tint < 0 ? channel * (1 + tint) : channel + (255 - channel) * tint))
    .map((channel) => channel.toString(16).padStart(2, "0"))
    .join("");
}

type Theme = readonly string[];

async function themeOf(pack: Package, book: BookFacts): Promise<Theme> {
  const relation = (await relationsOf(pack, book.path)).find(({ kind }) => kind === "theme");
  if (relation === undefined || !hasPart(pack, relation.target)) return USUAL_THEME;
  const scheme = childOf(childOf(await partTree(pack, relation.target), "themeElements"), "clrScheme");
  return THEME_ORDER.map((name, at) => {
    const [color] = childOf(scheme, name)?.children ?? [];
    const hex = color?.attributes["lastClr"] ?? color?.attributes["val"] ?? "";
    return /^[0-9a-f]{6}$/i.test(hex) ? hex.toLowerCase() : (USUAL_THEME[at] ?? "000000");
  });
}

function colorOf(node: XmlNode | undefined, theme: Theme): string | undefined {
  const { rgb, theme: place, indexed, tint } = node?.attributes ?? {};
  const base =
    rgb !== undefined
      ? rgb.slice(-6).toLowerCase()
      : place !== undefined
        ? theme[Number(place)]
        : INDEXED[(numberOf(indexed) ?? -1) % 8];
  return base === undefined || !/^[0-9a-f]{6}$/.test(base) ? undefined : `#${tinted(base, numberOf(tint) ?? 0)}`;
}

const isOn = (node: XmlNode | undefined): boolean => node !== undefined && flag(node.attributes["val"], true);

function fontOf(font: XmlNode | undefined, theme: Theme): NewStyle {
  const name = childOf(font, "name")?.attributes["val"];
  const size = numberOf(childOf(font, "sz")?.attributes["val"]);
  const color = colorOf(childOf(font, "color"), theme);
  const underline = childOf(font, "u");
  return {
    ...(name !== undefined && { font: name }),
    ...(size !== undefined && { size }),
    ...(isOn(childOf(font, "b")) && { bold: true }),
    ...(isOn(childOf(font, "i")) && { italic: true }),
    ...(isOn(childOf(font, "strike")) && { strike: true }),
    ...(underline !== undefined && underline.attributes["val"] !== "none" && { underline: true }),
    ...(color !== undefined && { color }),
  };
}

const EDGES: readonly NewEdge["style"][] = ["thin", "medium", "thick", "double", "dotted", "dashed", "hair"];

const edgeStyle = (style: string): NewEdge["style"] =>
  EDGES.find((known) => known === style) ?? (style.startsWith("medium") ? "medium" : "dashed");

function edgesOf(border: XmlNode | undefined, theme: Theme): NewStyle["edges"] {
  const entries = (["left", "right", "top", "bottom"] as const).flatMap((side) => {
    const node = childOf(border, side);
    const style = node?.attributes["style"] ?? "none";
    if (style === "none") return [];
    return [[side, { style: edgeStyle(style), color: colorOf(childOf(node, "color"), theme) ?? "#000000" }] as const];
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}

function alignmentOf(xf: XmlNode): NewStyle {
  const { horizontal, vertical, wrapText, indent } = childOf(xf, "alignment")?.attributes ?? {};
  const align = (["left", "center", "right"] as const).find((known) => known === horizontal);
  const upright = ({ top: "top", center: "middle", bottom: "bottom" } as const)[vertical ?? ""];
  return {
    ...(align !== undefined && { align }),
    ...(upright !== undefined && { verticalAlign: upright }),
    ...(flag(wrapText, false) && { wrap: true }),
    ...((numberOf(indent) ?? 0) > 0 && { indent: true }),
  };
}

/** Looks by the index that cells carry; number formats are in the workbook's facts. */
export async function readLooks(pack: Package, book: BookFacts): Promise<readonly NewStyle[]> {
  const { path } = book.styles;
  if (path === undefined) return [];
  const root = await partTree(pack, path);
  const theme = await themeOf(pack, book);
  const fonts = childrenOf(childOf(root, "fonts"), "font").map((font) => fontOf(font, theme));
  const fills = childrenOf(childOf(root, "fills"), "fill").map((fill) => {
    const pattern = childOf(fill, "patternFill");
    return pattern?.attributes["patternType"] === "solid" ? colorOf(childOf(pattern, "fgColor"), theme) : undefined;
  });
  const borders = childrenOf(childOf(root, "borders"), "border").map((border) => edgesOf(border, theme));
  return childrenOf(childOf(root, "cellXfs"), "xf").map((xf) => {
    const at = (name: string): number => numberOf(xf.attributes[name]) ?? 0;
    const [fill, edges] = [fills[at("fillId")], borders[at("borderId")]];
    return {
      ...fonts[at("fontId")],
      ...alignmentOf(xf),
      ...(fill !== undefined && { fill }),
      ...(edges !== undefined && { edges }),
    };
  });
}
