/** Draws a picture as SVG. Colours come from the stylesheet by name, so that they follow light, dark and forced colours. */
import { axisX, axisY, barY, dot, gridX, gridY, line, plot, ruleY, text, type Markish } from "@observablehq/plot";
import type { Axis, Curve, Picture, Point, Stack, Tone } from "./picture";

const toneOf = (tone: Tone): string => `var(--picture-${tone})`;
const INK = "currentColor";
const GRID = "var(--picture-grid)";

const HEIGHT = 260;
const TEXT_SIZE = 11;

const across = ([x]: Point): number => x;
const up = ([, y]: Point): number => y;

const curveMark = ({ points, tone, dashed }: Curve): Markish =>
  line(points, {
    x: across,
    y: up,
    stroke: toneOf(tone),
    strokeWidth: tone === "outline" ? 1.25 : 2,
    ...(dashed === true && { strokeDasharray: "6 3" }),
  });

/** The point of a curve at which its name stands: a third of the way for lines, so that names don't meet at the ends. */
const namePlace = ({ points }: Curve, share: number): Point => points[Math.floor(points.length * share)] ?? [0, 0];

const halo = { stroke: "var(--picture-ground)", strokeWidth: 4, fontSize: TEXT_SIZE } as const;

const nameMark = (curve: Curve, place: number): Markish =>
  text([namePlace(curve, 0.4 + 0.15 * (place % 2))], {
    x: across,
    y: up,
    text: () => curve.name,
    fill: toneOf(curve.tone),
    dy: place % 2 === 0 ? -9 : 11,
    ...halo,
  });

const stretchMarks = ({ stretches = [] }: Picture): readonly Markish[] => {
  const widest = Math.max(0, ...stretches.map(({ to }) => to));
  // A narrow stretch has no room for its name: the table has it.
  const named = stretches.filter(({ from, to }) => to - from > widest * 0.15);
  return [
    gridX(
      stretches.slice(1).map(({ from }) => from),
      { stroke: INK, strokeOpacity: 0.6, strokeDasharray: "2 3" },
    ),
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

const markMarks = ({ marks = [] }: Picture): readonly Markish[] => {
  const place = { x: ({ at }: { at: Point }) => at[0], y: ({ at }: { at: Point }) => at[1] };
  return [
    dot(marks, { ...place, fill: INK, r: 3 }),
    text(marks, { ...place, text: "label", fill: INK, dy: 12, dx: 8, textAnchor: "start", ...halo }),
  ];
};

interface Bar {
  readonly name: string;
  readonly value: number;
}

const stackMarks = ({ stacks = [], x }: Picture): readonly Markish[] =>
  stacks.map((stack, place) =>
    barY(
      (x.names ?? []).map((name, at): Bar & { readonly base: number } => ({
        name,
        value: stack.values[at] ?? 0,
        base: below(stacks, place, at),
      })),
      {
        x: "name",
        y1: "base",
        y2: ({ base, value }: { base: number; value: number }) => base + value,
        fill: toneOf(stack.tone),
        stroke: "var(--picture-ground)",
      },
    ),
  );

const below = (stacks: readonly Stack[], place: number, at: number): number =>
  stacks.slice(0, place).reduce((sum, { values }) => sum + (values[at] ?? 0), 0);

const levelMarks = ({ levels = [] }: Picture): readonly Markish[] =>
  levels.flatMap(({ at, label }) => [
    ruleY([at], { stroke: INK, strokeDasharray: "2 3" }),
    text([label], {
      y: () => at,
      frameAnchor: "left",
      text: (each: string) => each,
      fill: INK,
      dx: 34,
      dy: -8,
      ...halo,
    }),
  ]);

const isBanded = ({ stacks = [] }: Picture): boolean => stacks.length > 0;

const axisMarks = (picture: Picture): readonly Markish[] => {
  const { x, y } = picture;
  const style = { fontSize: TEXT_SIZE, color: INK, tickSize: 4 } as const;
  const along = x.names !== undefined && !isBanded(picture) ? { ticks: x.names.map((_, at) => at) } : { ticks: 5 };
  return [
    gridY({ stroke: GRID, strokeOpacity: 1, ticks: 5 }),
    axisX({
      ...style,
      ...(isBanded(picture) ? {} : along),
      label: x.label,
      labelAnchor: "center",
      labelArrow: "none",
      ...(x.names !== undefined && !isBanded(picture) && { tickFormat: (at: number) => x.names?.[at] ?? "" }),
    }),
    axisY({ ...style, ticks: 5, label: y.label, labelArrow: "none", tickFormat: tickText(y) }),
  ];
};

const tickText = ({ log }: Axis): ((value: number) => string) =>
  log === true ? (value) => String(value) : (value) => value.toLocaleString("en-US");

/** The picture at a width in pixels. */
export function drawn(picture: Picture, width: number): Element {
  const { curves, says, x, y } = picture;
  const named = curves.filter(({ tone }) => tone !== "outline");
  const made = plot({
    width,
    height: HEIGHT,
    marginLeft: 56,
    marginRight: 16,
    marginTop: 36,
    marginBottom: 40,
    ariaLabel: says,
    x: { ...(isBanded(picture) ? { type: "band", domain: [...(x.names ?? [])] } : { nice: false, inset: 8 }) },
    y: { ...(y.log === true && { type: "log" as const }), inset: 8 },
    marks: [
      ...axisMarks(picture),
      ...stretchMarks(picture),
      ...stackMarks(picture),
      ...levelMarks(picture),
      ...curves.map(curveMark),
      ...markMarks(picture),
      ...(named.length > 1 ? named.map(nameMark) : []),
    ],
  });
  // A style element is what the page's policy bars; the stylesheet says the same.
  made.querySelector("style")?.remove();
  made.setAttribute("role", "img");
  return made;
}
