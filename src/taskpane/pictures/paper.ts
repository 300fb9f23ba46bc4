/** A picture for paper: dark on white whatever the panel's colours, with its title and the names of its lines, as a PNG. */
import type { Picture, Scheme } from "../../../core/pictures";
import { h } from "../elements";
import { legendOf, type LegendEntry } from "./legend";
import { drawn } from "./draw";
import { drawnScheme } from "./scheme";

/** A picture as a PNG, and its size on paper. */
export interface Paper {
  /** In base 64. */
  readonly png: string;
  /** Points. */
  readonly width: number;
  readonly height: number;
}

/** Pixels of the screen. */
const WIDTH = 520;
const MARGIN = 12;
const LINE = 20;
/** Widths of a line's and of a bar's sample. */
const SAMPLE = 24;
const BAR = 12;
const AFTER_SAMPLE = 6;
const GAP = 16;
const TITLE = "600 15px";
const TEXT = "13px";
/** Pixels of the picture for each of the screen: sharp when printed. */
const FINENESS = 2;
const POINTS_PER_PIXEL = 0.75;
const DASHES: readonly number[] = [6, 3];

/** What a drawing takes from the page's stylesheet. */
const LOOKS = [
  "color",
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "stroke-dasharray",
  "paint-order",
  "font-family",
  "font-size",
  "font-weight",
  "font-variant-numeric",
  "text-anchor",
];

/** Copies computed styles into the drawing, so that it looks the same outside the page. */
function settleLooks(drawing: Element): void {
  const parts = [drawing, ...drawing.querySelectorAll("*")];
  // Reads all before writing any: written styles are inherited.
  const looks = parts.map((part) => {
    const computed = getComputedStyle(part);
    return LOOKS.map((name) => [name, computed.getPropertyValue(name)] as const);
  });
  for (const [at, part] of parts.entries())
    for (const [name, value] of looks[at] ?? []) if (value !== "") part.setAttribute(name, value);
}

async function imageOf(drawing: Element): Promise<HTMLImageElement> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(drawing))}`;
  await image.decode();
  return image;
}

interface Look {
  readonly family: string;
  readonly ink: string;
  toneOf(tone: string): string;
}

function lookOf(sheet: Element): Look {
  const computed = getComputedStyle(sheet);
  return {
    family: computed.fontFamily,
    ink: computed.color,
    toneOf: (tone) => computed.getPropertyValue(`--picture-${tone}`).trim(),
  };
}

interface Placed extends LegendEntry {
  readonly x: number;
  readonly y: number;
  /** Width of the sample. */
  readonly wide: number;
}

/** The names of lines and bars from left to right, in as many lines as they need. */
function placeLegend(entries: readonly LegendEntry[], widthOf: (text: string) => number): readonly Placed[] {
  let [x, y] = [MARGIN, 0];
  return entries.map((entry) => {
    const wide = entry.look === "bar" ? BAR : SAMPLE;
    const width = wide + AFTER_SAMPLE + widthOf(entry.name) + GAP;
    if (x > MARGIN && x + width > WIDTH) {
      x = MARGIN;
      y += LINE;
    }
    const placed = { ...entry, x, y, wide };
    x += width;
    return placed;
  });
}

function drawSample(
  brush: CanvasRenderingContext2D,
  { x, y, wide, look, tone }: Placed,
  from: number,
  colours: Look,
): void {
  const middle = from + y + LINE / 2;
  brush.fillStyle = brush.strokeStyle = colours.toneOf(tone);
  if (look === "bar") return brush.fillRect(x, middle - wide / 2, wide, wide);
  brush.lineWidth = 3;
  brush.setLineDash(look === "dashed" ? [...DASHES] : []);
  brush.beginPath();
  brush.moveTo(x, middle);
  brush.lineTo(x + wide, middle);
  brush.stroke();
  brush.setLineDash([]);
}

function brushOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const brush = canvas.getContext("2d");
  if (brush === null) throw new Error("the picture can't be made here");
  return brush;
}

/** Title, names and drawing one below the other. */
function compose(picture: Picture | Scheme, image: HTMLImageElement, look: Look): Paper {
  const canvas = h("canvas");
  const measuring = brushOf(canvas);
  measuring.font = `${TEXT} ${look.family}`;
  const legend = placeLegend("parts" in picture ? [] : legendOf(picture), (text) => measuring.measureText(text).width);
  const below = MARGIN + LINE + 4;
  const legendHeight = legend.length === 0 ? 0 : (legend.at(-1)?.y ?? 0) + LINE + 4;
  const height = below + legendHeight + image.naturalHeight + MARGIN;
  canvas.width = WIDTH * FINENESS;
  canvas.height = height * FINENESS;
  const brush = brushOf(canvas);
  brush.scale(FINENESS, FINENESS);
  brush.fillStyle = "#ffffff";
  brush.fillRect(0, 0, WIDTH, height);
  brush.textBaseline = "middle";
  brush.fillStyle = look.ink;
  brush.font = `${TITLE} ${look.family}`;
  brush.fillText(picture.title, MARGIN, MARGIN + LINE / 2, WIDTH - 2 * MARGIN);
  brush.font = `${TEXT} ${look.family}`;
  for (const entry of legend) {
    drawSample(brush, entry, below, look);
    brush.fillStyle = look.ink;
    brush.fillText(entry.name, entry.x + entry.wide + AFTER_SAMPLE, below + entry.y + LINE / 2);
  }
  brush.drawImage(image, 0, below + legendHeight, WIDTH, image.naturalHeight);
  const [, png = ""] = canvas.toDataURL("image/png").split(",");
  return { png, width: WIDTH * POINTS_PER_PIXEL, height: height * POINTS_PER_PIXEL };
}

/** @param panel whose stylesheet says how pictures look on paper */
export async function onPaper(picture: Picture | Scheme, panel: Element): Promise<Paper> {
  const drawing = "parts" in picture ? drawnScheme(picture, WIDTH) : drawn(picture, WIDTH);
  const sheet = h("div", { class: "paper", "aria-hidden": "true" }, drawing);
  panel.append(sheet);
  try {
    settleLooks(drawing);
    return compose(picture, await imageOf(drawing), lookOf(sheet));
  } finally {
    sheet.remove();
  }
}
