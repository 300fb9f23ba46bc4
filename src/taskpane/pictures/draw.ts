/** Draws a picture as SVG. Colours come from the stylesheet by name, so that they follow light, dark and forced colours. */
import {
  axisX,
  axisY,
  dot,
  gridX,
  gridY,
  line,
  plot,
  ruleY,
  text,
  type Markish,
  type PlotOptions,
} from "@observablehq/plot";
import type { Axis, PictureCurve, Mark, Picture, PicturePoint } from "../../../core/pictures";
import { groupMarks, MARGIN, stackMarks, toneOf } from "./bars";
import { barsAcross, heightAcross, nameRoom } from "./barsAcross";

const INK = "currentColor";
const GROUND = "var(--picture-ground)";
const DASHES = "6 3";

const HEIGHT = 260;
const TEXT_SIZE = 11;
/** Room that a number along the x axis takes, in pixels. */
const TICK_ROOM = 75;
/** Room for a short name; with less room only its first letter is shown. */
const NAME_ROOM = 28;

const across = ([x]: PicturePoint): number => x;
const up = ([, y]: PicturePoint): number => y;

const curveMark = ({ points, tone, dashed }: PictureCurve): Markish =>
  line(points, {
    x: across,
    y: up,
    stroke: toneOf(tone),
    strokeWidth: tone === "outline" ? 1.25 : 2,
    ...(dashed === true && { strokeDasharray: DASHES }),
  });

const stretchMarks = ({ stretches = [] }: Picture): readonly Markish[] => {
  const widest = Math.max(0, ...stretches.map(({ to }) => to));
  // A narrow stretch has no room for its name: the table has it.
  const named = stretches.filter(({ from, to }) => to - from > widest * 0.15);
  const places = stretches.slice(1).map(({ from }) => from);
  return [
    gridX(places, { stroke: INK, strokeOpacity: 0.6, strokeDasharray: "2 3" }),
    text(named, {
      x: ({ from, to }: { from: number; to: number }) => (from + to) / 2,
      text: "label",
      frameAnchor: "top",
      dy: -12,
      fill: INK,
      fontSize: TEXT_SIZE,
    }),
  ];
};

/** Words are placed to the right of their points; in the right part of the picture, to the left. */
const markMarks = ({ marks = [], curves }: Picture): readonly Markish[] => {
  const all = curves.flatMap(({ points }) => points.map(across));
  const middle = (Math.min(...all) + 2 * Math.max(...all)) / 3;
  const isRight = ({ at, label }: Mark): boolean => at[0] > middle && label.length > 2;
  const place = { x: ({ at }: Mark) => at[0], y: ({ at }: Mark) => at[1] };
  const look = { ...place, text: "label", fill: INK, stroke: GROUND, strokeWidth: 4, fontSize: TEXT_SIZE };
  const right = marks.filter(isRight);
  const left = marks.filter((mark) => !isRight(mark));
  return [
    dot(marks, { ...place, fill: INK, r: 3 }),
    text(left, { ...look, dx: 8, dy: 12, textAnchor: "start" }),
    text(right, { ...look, dx: -6, dy: -12, textAnchor: "end" }),
  ];
};

const levelMarks = ({ levels = [] }: Picture): readonly Markish[] =>
  levels.flatMap(({ at, label }, place) => [
    ruleY([at], { stroke: INK, strokeDasharray: "2 3" }),
    text([label], {
      y: () => at,
      // One label at the left, the next at the right: levels may be close.
      frameAnchor: place % 2 === 0 ? "left" : "right",
      textAnchor: place % 2 === 0 ? "start" : "end",
      text: (each: string) => each,
      fill: INK,
      stroke: GROUND,
      strokeWidth: 4,
      fontSize: TEXT_SIZE,
      dx: place % 2 === 0 ? 4 : -4,
      dy: -8,
    }),
  ]);

const tickText = ({ log }: Axis): ((value: number) => string) =>
  log === true ? (value) => String(value) : (value) => value.toLocaleString("en-US");

const style = { fontSize: TEXT_SIZE, color: INK, tickSize: 4, labelArrow: "none" } as const;

/** The axis below: numbers as many as have room, or texts of its own. */
const axisBelow = ({ x }: Picture, width: number): Markish => {
  const label = { ...style, label: x.label, labelAnchor: "center" } as const;
  if (x.names !== undefined) {
    const narrow = (width - MARGIN.marginLeft) / x.names.length < NAME_ROOM;
    return axisX({ ...label, tickFormat: (name: string) => (narrow ? name.slice(0, 1) : name) });
  }
  const { ticks } = x;
  if (ticks === undefined) {
    const room = Math.floor((width - MARGIN.marginLeft) / TICK_ROOM);
    return axisX({ ...label, ticks: Math.max(2, room), tickFormat: tickText(x) });
  }
  const texts = new Map(ticks.map(({ at, text: own }) => [at, own]));
  return axisX(
    ticks.map(({ at }) => at),
    { ...label, tickFormat: (at: number) => texts.get(at) ?? "" },
  );
};

/** A drawing, and where values of its x axis are in it. */
export interface DrawnPicture {
  readonly svg: Element;
  readonly across: (x: number | string) => number;
}

/** The picture at a width in pixels. */
export const drawn = (picture: Picture, width: number): Element => drawnWithScale(picture, width).svg;

export function drawnWithScale(picture: Picture, width: number, height?: number): DrawnPicture {
  const { description } = picture;
  const across = picture.y.names !== undefined;
  const made = plot({
    width,
    height: across ? heightAcross(picture) : (height ?? HEIGHT),
    ariaLabel: description,
    ...(across ? planAcross(picture, width) : planUpright(picture, width)),
  });
  // The page's policy bars style elements; the stylesheet has the same rules.
  made.querySelector("style")?.remove();
  made.setAttribute("role", "img");
  // A screen reader gets one sentence: the content adds nothing to it.
  for (const part of made.querySelectorAll("[aria-label]")) part.removeAttribute("aria-label");
  const scale = made.scale("x");
  const half = (scale?.bandwidth ?? 0) / 2;
  return { svg: made, across: (at) => Number(scale?.apply(at) ?? 0) + half };
}

const planAcross = (picture: Picture, width: number): PlotOptions => ({
  ...MARGIN,
  marginTop: 8,
  marginLeft: nameRoom(picture, width),
  x: { inset: 8 },
  y: { type: "band", domain: [...(picture.y.names ?? [])], padding: 0 },
  marks: [...barsAcross(picture, width)],
});

function planUpright(picture: Picture, width: number): PlotOptions {
  const { curves, x, y } = picture;
  return {
    ...MARGIN,
    x: x.names === undefined ? { inset: 8 } : { type: "band", domain: [...x.names] },
    y: {
      ...(y.log === true && { type: "log" }),
      ...(y.span !== undefined && { domain: [...y.span] }),
      inset: x.names === undefined ? 8 : 0,
    },
    marks: [
      gridY({ stroke: "var(--picture-grid)", strokeOpacity: 1, ticks: 5 }),
      axisBelow(picture, width),
      axisY({ ...style, ticks: 5, label: y.label, tickFormat: tickText(y) }),
      ...stretchMarks(picture),
      ...stackMarks(picture),
      ...groupMarks(picture, width),
      ...levelMarks(picture),
      ...curves.map(curveMark),
      ...markMarks(picture),
    ],
  };
}
