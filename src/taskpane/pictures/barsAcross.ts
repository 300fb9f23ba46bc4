/** Bars that lie across, below each other: names of any length have room. */
import { axisX, axisY, barX, gridX, ruleX, type Markish } from "@observablehq/plot";
import type { Picture } from "../../../core/pictures";
import { toneOf } from "./bars";

const LETTER = 6.2;
/** Share of the width that names take at most. */
const MOST_FOR_NAMES = 0.42;
const LINE = 13;
const BETWEEN = 10;
const AROUND = 76;

const namesOf = ({ y: { names = [] } }: Picture): readonly string[] => names;

/** Room for the names, in pixels. */
export const nameRoom = (picture: Picture, width: number): number =>
  Math.min(MOST_FOR_NAMES * width, 14 + LETTER * Math.max(0, ...namesOf(picture).map(({ length }) => length)));

/** Height by the number of bars, in pixels. */
export const heightAcross = (picture: Picture): number =>
  AROUND + namesOf(picture).length * (LINE * (picture.groups?.length ?? 1) + BETWEEN);

/** The names, cut where the room ends, and the bars of each group below each other. */
export function barsAcross(picture: Picture, width: number): readonly Markish[] {
  const { groups = [], x } = picture;
  const names = namesOf(picture);
  const letters = Math.floor((nameRoom(picture, width) - 14) / LETTER);
  const cut = (name: string): string => (name.length > letters + 1 ? `${name.slice(0, letters)}…` : name);
  const style = { fontSize: 11, color: "currentColor", labelArrow: "none" } as const;
  return [
    gridX({ stroke: "var(--picture-grid)", strokeOpacity: 1, ticks: 5 }),
    axisX({ ...style, tickSize: 4, ticks: 5, label: x.label, labelAnchor: "center" }),
    axisY({ ...style, tickSize: 0, label: null, tickFormat: cut }),
    ...groups.map(({ tone, values }, place) =>
      barX(
        names.map((name, at) => ({ name, to: values[at] ?? 0 })),
        {
          y: "name",
          x: "to",
          fill: toneOf(tone),
          insetTop: BETWEEN / 2 + place * LINE,
          insetBottom: BETWEEN / 2 + (groups.length - 1 - place) * LINE,
        },
      ),
    ),
    ruleX([0], { stroke: "currentColor" }),
  ];
}
