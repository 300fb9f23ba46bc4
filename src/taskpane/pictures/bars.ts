/** Upright bars: stacked, or beside each other. */
import { barY, type Markish } from "@observablehq/plot";
import type { Picture, Stack, Tone } from "../../../core/pictures";

export const toneOf = (tone: Tone): string => `var(--picture-${tone})`;

/** Around every drawing, in pixels. */
export const MARGIN = { marginLeft: 58, marginRight: 16, marginTop: 36, marginBottom: 40 };

interface Bar {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

const below = (stacks: readonly Stack[], place: number, at: number): number =>
  stacks.slice(0, place).reduce((sum, { values }) => sum + (values[at] ?? 0), 0);

export const stackMarks = ({ stacks = [], x: { names = [] } }: Picture): readonly Markish[] =>
  stacks.map(({ tone, values }, place) => {
    const bars = names.map((name, at): Bar => {
      const from = below(stacks, place, at);
      return { name, from, to: from + (values[at] ?? 0) };
    });
    // Each bar is narrower than the one before, with a thin gap: distinct without colours, and no thin bar is hidden.
    const side = place * 0.75 + 0.5;
    const fill = toneOf(tone);
    return barY(bars, { x: "name", y1: "from", y2: "to", fill, insetLeft: side, insetRight: side, insetTop: 0.5 });
  });

/** Share of the axis that a band's bars take. */
const BAND = 0.85;

/** Bars of one name beside each other. */
export const groupMarks = ({ groups = [], x: { names = [] } }: Picture, width: number): readonly Markish[] =>
  groups.map(({ tone, values }, place) => {
    const bars = names.map((name, at) => ({ name, to: values[at] ?? 0 }));
    const band = (BAND * (width - MARGIN.marginLeft - MARGIN.marginRight)) / Math.max(1, names.length);
    const each = band / groups.length;
    return barY(bars, {
      x: "name",
      y: "to",
      fill: toneOf(tone),
      insetLeft: place * each,
      insetRight: (groups.length - 1 - place) * each,
    });
  });
