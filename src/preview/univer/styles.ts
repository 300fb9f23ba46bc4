import { BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import type { IBorderData, IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";

import type { Align, Edge, EdgeStyle, CellStyle, VerticalAlign as Upright } from "../file/bookData";

/** Between a cell's look and the engine's style record. */

const EDGES: Readonly<Record<EdgeStyle, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  double: BorderStyleTypes.DOUBLE,
  medium: BorderStyleTypes.MEDIUM,
  thick: BorderStyleTypes.THICK,
};

const ALIGNS: Readonly<Record<Align, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
};

const UPRIGHTS: Readonly<Record<Upright, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  middle: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

const keyOf = <K extends string, V>(table: Readonly<Record<K, V>>, value: Nullable<V>): K | undefined =>
  (Object.keys(table) as K[]).find((key) => table[key] === value);

const borderOf = (edge: Edge): IBorderStyleData => ({ s: EDGES[edge.style], cl: { rgb: edge.color } });

const bordersOf = (edges: NonNullable<CellStyle["edges"]>): IBorderData => ({
  ...(edges.top && { t: borderOf(edges.top) }),
  ...(edges.bottom && { b: borderOf(edges.bottom) }),
  ...(edges.left && { l: borderOf(edges.left) }),
  ...(edges.right && { r: borderOf(edges.right) }),
});

/** One step off the edge, in pixels. */
const INDENT = 9;

export const styleOf = (look: CellStyle | undefined, format: string | undefined): IStyleData | undefined => {
  if (look === undefined && format === undefined) return undefined;
  const { font, size, bold, italic, underline, strike, color, fill, align, verticalAlign, wrap, indent, edges } =
    look ?? {};
  return {
    ...(font !== undefined && { ff: font }),
    ...(size !== undefined && { fs: size }),
    ...(bold === true && { bl: 1 }),
    ...(italic === true && { it: 1 }),
    ...(underline === true && { ul: { s: 1 } }),
    ...(strike === true && { st: { s: 1 } }),
    ...(color !== undefined && { cl: { rgb: color } }),
    ...(fill !== undefined && { bg: { rgb: fill } }),
    ...(align !== undefined && { ht: ALIGNS[align] }),
    ...(verticalAlign !== undefined && { vt: UPRIGHTS[verticalAlign] }),
    ...(wrap === true && { tb: WrapStrategy.WRAP }),
    ...(indent === true && { pd: { l: INDENT } }),
    ...(edges !== undefined && { bd: bordersOf(edges) }),
    ...(format !== undefined && format !== "General" && { n: { pattern: format } }),
  };
};

/** #rrggbb of "#abc", "#AABBCC" or "rgb(1, 2, 3)". */
const hexOf = (color: string): string => {
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(color)?.slice(1, 4);
  if (parts !== undefined) return `#${parts.map((part) => Number(part).toString(16).padStart(2, "0")).join("")}`;
  return color.length === 4 ? `#${[...color.slice(1)].map((digit) => digit + digit).join("")}` : color.toLowerCase();
};

const edgeOf = (border: Nullable<IBorderStyleData>): Edge | undefined =>
  border === null || border === undefined || border.s === BorderStyleTypes.NONE
    ? undefined
    : { style: keyOf(EDGES, border.s) ?? "thin", color: hexOf(border.cl.rgb ?? "#000000") };

const edgesOf = (borders: Nullable<IBorderData>): CellStyle["edges"] => {
  if (borders === null || borders === undefined) return undefined;
  const sides = { top: borders.t, bottom: borders.b, left: borders.l, right: borders.r };
  const entries = Object.entries(sides).flatMap(([side, border]) => {
    const edge = edgeOf(border);
    return edge === undefined ? [] : [[side, edge] as const];
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
};

const hasLook = (style: IStyleData): boolean => {
  for (const part in style) if (part !== "n") return true;
  return false;
};

export const cellStyleOf = (style: Nullable<IStyleData>): CellStyle | undefined => {
  // Most cells have a number format alone.
  if (style === null || style === undefined || !hasLook(style)) return undefined;
  const align = keyOf(ALIGNS, style.ht);
  const verticalAlign = keyOf(UPRIGHTS, style.vt);
  const edges = edgesOf(style.bd);
  const look: CellStyle = {
    ...(typeof style.ff === "string" && { font: style.ff }),
    ...(style.fs !== undefined && { size: style.fs }),
    ...(style.bl === 1 && { bold: true }),
    ...(style.it === 1 && { italic: true }),
    ...(style.ul?.s === 1 && { underline: true }),
    ...(style.st?.s === 1 && { strike: true }),
    ...(typeof style.cl?.rgb === "string" && { color: hexOf(style.cl.rgb) }),
    ...(typeof style.bg?.rgb === "string" && { fill: hexOf(style.bg.rgb) }),
    ...(align !== undefined && { align }),
    ...(verticalAlign !== undefined && { verticalAlign }),
    ...(style.tb === WrapStrategy.WRAP && { wrap: true }),
    ...(style.pd?.l === INDENT && { indent: true }),
    ...(edges !== undefined && { edges }),
  };
  return Object.keys(look).length === 0 ? undefined : look;
};
