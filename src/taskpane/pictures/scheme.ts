/**
 * Draws a schematic as SVG: the water goes down the line from the pool and back up on its left. The symbols are plain ones
 * of flow diagrams: a circle with a triangle is a pump, a bow tie a valve, a circle with a zigzag an exchanger.
 */
import type { Scheme, SchemePart, SchemeSymbol } from "../../../core/pictures";
import { wordLines } from "./wordLines";

const SVG = "http://www.w3.org/2000/svg";
const INK = "currentColor";
const GROUND = "var(--picture-ground)";

/** Pixels: the way back, the line, the texts. */
const [BACK, LINE, TEXT] = [16, 52, 84] as const;
const ROW = 22;
/** Of a letter of the details, and of a bold one of the names. */
const [LETTER, BOLD_LETTER] = [6.4, 7.4] as const;
const TEXT_LINE = 16;
const SYMBOL = 14;

type Attributes = Readonly<Record<string, string | number>>;

function part(name: string, attributes: Attributes, ...children: readonly (Element | string)[]): Element {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  element.append(...children);
  return element;
}

const path = (d: string, fill = "none", more: Attributes = {}): Element =>
  part("path", { d, fill, stroke: INK, "stroke-width": 1.75, "stroke-linejoin": "round", ...more });

const circle = (r: number): Element => part("circle", { r, fill: GROUND, stroke: INK, "stroke-width": 1.75 });

const box = (width: number, height: number): Element =>
  part("rect", {
    x: -width / 2,
    y: -height / 2,
    width,
    height,
    fill: GROUND,
    stroke: INK,
    "stroke-width": 1.75,
  });

const BOW_TIE = "M-9 -12H9L-9 12H9Z";

/** Each symbol around its middle, water coming from above. */
const SYMBOLS: Readonly<Record<SchemeSymbol, () => readonly Element[]>> = {
  pool: () => [box(44, 26), path("M-18 0q4.5 -5 9 0t9 0t9 0t9 0")],
  pump: () => [circle(13), path("M-10 -7H10L0 12Z", INK)],
  run: () => [part("circle", { r: 3, fill: INK })],
  valve: () => [path(BOW_TIE, GROUND)],
  "check valve": () => [path("M-9 -12H9L0 6Z", INK), path("M-10 8H10")],
  strainer: () => [box(24, 24), path("M-12 12L12 -12", "none", { "stroke-dasharray": "3 2" })],
  filter: () => [box(24, 28), path("M-12 0H12", "none", { "stroke-dasharray": "4 3" })],
  exchanger: () => [circle(13), path("M-20 0H-7L-3 -7L3 7L7 0H20")],
  heater: () => [box(24, 24), path("M-5 7Q-8 -1 0 -8Q8 -1 5 7Z")],
  node: () => [circle(5)],
  sensor: () => [path("M0 0H14"), part("circle", { cx: 18, r: 6, fill: GROUND, stroke: INK, "stroke-width": 1.75 })],
  part: () => [box(24, 20)],
};

interface Placed {
  readonly part: SchemePart;
  readonly name: readonly string[];
  readonly details: readonly string[];
  readonly top: number;
  readonly height: number;
}

function placed(parts: readonly SchemePart[], width: number, left: number): readonly Placed[] {
  const lettersOf = (letter: number): number => Math.max(1, Math.floor((width - left) / letter));
  let top = 6;
  return parts.map((each) => {
    const name = wordLines(each.name, lettersOf(BOLD_LETTER));
    const details = wordLines(each.details.join(" · "), lettersOf(LETTER));
    const height = Math.max(2 * SYMBOL, (name.length + details.length) * TEXT_LINE) + ROW;
    const at = top;
    top += height;
    return { part: each, name, details, top: at, height };
  });
}

function texts({ name, details, top, height }: Placed, left: number): Element {
  const count = name.length + details.length;
  const first = top + height / 2 - ((count - 1) * TEXT_LINE) / 2 + 4;
  const line = (words: string, at: number): Element =>
    part(
      "text",
      {
        x: left,
        y: first + at * TEXT_LINE,
        fill: INK,
        "font-size": 12.5,
        ...(at < name.length && { "font-weight": 600 }),
      },
      words,
    );
  return part("g", {}, ...[...name, ...details].map(line));
}

const arrow = (x: number, y: number, up: boolean): Element =>
  path(up ? `M${x - 5} ${y + 5}H${x + 5}L${x} ${y - 5}Z` : `M${x - 5} ${y - 5}H${x + 5}L${x} ${y + 5}Z`, INK);

const middleOf = ({ top, height }: Placed): number => top + height / 2;

/** One line down from the pool and back up. */
function oneLine(all: readonly Placed[], height: number): readonly Element[] {
  const first = all[0] === undefined ? 0 : middleOf(all[0]);
  const foot = height - 10;
  return [
    path(`M${LINE} ${first}V${foot}H${BACK}V${first}H${LINE}`),
    arrow(BACK, (first + foot) / 2, true),
    ...all.slice(1).map((one) => arrow(LINE, one.top + 2, false)),
  ];
}

/** The first lane's middle, and from lane to lane. */
const [FIRST_LANE, LANE] = [28, 30] as const;
const laneAt = (lane: number): number => FIRST_LANE + LANE * lane;

/** Lines down their lanes, each with an arrow where the water arrives. */
function branches(all: readonly Placed[], { at, lines }: NonNullable<Scheme["lanes"]>): readonly Element[] {
  return lines.flatMap(({ lane, from, to }) => {
    const [start, end] = [all[from], all[to]];
    if (start === undefined || end === undefined) return [];
    const [x, top, foot] = [laneAt(lane), middleOf(start), middleOf(end)];
    return [
      path(`M${laneAt(at[from] ?? 0)} ${top}H${x}V${foot}H${laneAt(at[to] ?? 0)}`),
      arrow(x, top < foot ? end.top + 2 : end.top + end.height, top >= foot),
    ];
  });
}

/** The schematic at a width in pixels. */
export function drawnScheme({ parts, description, lanes }: Scheme, width: number): Element {
  const left = lanes === undefined ? TEXT : laneAt(lanes.count - 1) + 32;
  const all = placed(parts, width, left);
  const last = all.at(-1);
  const height = (last?.top ?? 0) + (last?.height ?? 0) + 14;
  return part(
    "svg",
    {
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: "img",
      "aria-label": description,
      color: INK,
      "font-family": "inherit",
    },
    ...(lanes === undefined ? oneLine(all, height) : branches(all, lanes)),
    ...all.map((one, i) =>
      part(
        "g",
        {
          transform: `translate(${lanes === undefined ? (one.part.symbol === "pool" ? (LINE + BACK) / 2 : LINE) : laneAt(lanes.at[i] ?? 0)} ${middleOf(one)})`,
        },
        ...SYMBOLS[one.part.symbol](),
      ),
    ),
    ...all.map((one) => texts(one, left)),
  );
}
