import type { Borders, BorderStyle, Color, Style } from "exceljs";

import type { Edge, EdgeStyle, CellStyle } from "./bookData";

/** Between a cell's look and the style record of .xlsx files. */

/** The colours of a file without a theme of its own, in the order of the format: light 1, dark 1, light 2, dark 2, accents 1 to 6. */
const THEME = ["ffffff", "000000", "e7e6e6", "44546a", "4472c4", "ed7d31", "a5a5a5", "ffc000", "5b9bd5", "70ad47"];

/** A tint moves each channel towards white (above 0) or black (below 0). */
const tinted = (hex: string, tint: number): string =>
  [0, 2, 4]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16))
    .map((channel) => Math.round(tint < 0 ? channel * (1 + tint) : channel + (255 - channel) * tint))
    .map((channel) => channel.toString(16).padStart(2, "0"))
    .join("");

const hexOf = (color: (Partial<Color> & { tint?: number }) | undefined): string | undefined => {
  if (color?.argb !== undefined) return `#${color.argb.slice(-6).toLowerCase()}`;
  const base = color?.theme === undefined ? undefined : THEME[color.theme];
  return base === undefined ? undefined : `#${tinted(base, color?.tint ?? 0)}`;
};

const argbOf = (hex: string): Partial<Color> => ({ argb: `FF${hex.slice(1).toUpperCase()}` });

const EDGE_STYLES: readonly EdgeStyle[] = ["thin", "medium", "thick", "double", "dotted", "dashed", "hair"];
const edgeStyle = (style: BorderStyle): EdgeStyle =>
  EDGE_STYLES.find((known) => known === style) ?? (style.startsWith("medium") ? "medium" : "dashed");

const SIDES = ["top", "bottom", "left", "right"] as const;

const edgesOf = (borders: Partial<Borders> | undefined): CellStyle["edges"] => {
  const entries = SIDES.flatMap((side) => {
    const border = borders?.[side];
    if (border?.style === undefined) return [];
    const edge: Edge = { style: edgeStyle(border.style), color: hexOf(border.color) ?? "#000000" };
    return [[side, edge] as const];
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
};

export const lookOfFile = (style: Partial<Style>): CellStyle | undefined => {
  const { font, fill, alignment, border } = style;
  const color = hexOf(font?.color);
  const background = fill?.type === "pattern" && fill.pattern === "solid" ? hexOf(fill.fgColor) : undefined;
  const edges = edgesOf(border);
  const { horizontal, vertical } = alignment ?? {};
  const look: CellStyle = {
    ...(font?.name !== undefined && { font: font.name }),
    ...(font?.size !== undefined && { size: font.size }),
    ...(font?.bold === true && { bold: true }),
    ...(font?.italic === true && { italic: true }),
    ...(font?.underline !== undefined && font.underline !== false && font.underline !== "none" && { underline: true }),
    ...(font?.strike === true && { strike: true }),
    ...(color !== undefined && { color }),
    ...(background !== undefined && { fill: background }),
    ...((horizontal === "left" || horizontal === "center" || horizontal === "right") && { align: horizontal }),
    ...((vertical === "top" || vertical === "middle" || vertical === "bottom") && { verticalAlign: vertical }),
    ...(alignment?.wrapText === true && { wrap: true }),
    ...((alignment?.indent ?? 0) > 0 && { indent: true }),
    ...(edges !== undefined && { edges }),
  };
  return Object.keys(look).length === 0 ? undefined : look;
};

const bordersOf = (edges: NonNullable<CellStyle["edges"]>): Partial<Borders> =>
  Object.fromEntries(
    Object.entries(edges).map(([side, edge]) => [side, { style: edge.style, color: argbOf(edge.color) }]),
  );

export const fileStyle = (look: CellStyle | undefined, format: string | undefined): Partial<Style> => {
  const { font, size, bold, italic, underline, strike, color, fill, align, verticalAlign, wrap, indent, edges } =
    look ?? {};
  const fontRecord = {
    ...(font !== undefined && { name: font }),
    ...(size !== undefined && { size }),
    ...(bold === true && { bold }),
    ...(italic === true && { italic }),
    ...(underline === true && { underline }),
    ...(strike === true && { strike }),
    ...(color !== undefined && { color: argbOf(color) }),
  };
  const alignment = {
    ...(align !== undefined && { horizontal: align }),
    ...(verticalAlign !== undefined && { vertical: verticalAlign }),
    ...(wrap === true && { wrapText: true }),
    // Only cells that say which edge are moved off it.
    ...(indent === true && { horizontal: align ?? ("left" as const), indent: 1 }),
  };
  return {
    ...(format !== undefined && { numFmt: format }),
    ...(Object.keys(fontRecord).length > 0 && { font: fontRecord }),
    ...(Object.keys(alignment).length > 0 && { alignment }),
    ...(fill !== undefined && { fill: { type: "pattern", pattern: "solid", fgColor: argbOf(fill) } as const }),
    ...(edges !== undefined && { border: bordersOf(edges) }),
  };
};
