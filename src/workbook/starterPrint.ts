/** Where a starter sheet's pages end: no part or group is split if one page can hold it, and no heading is a page's last row. */
import type { PrintSetUp, SheetStyle, StarterSheet } from "../sheets/sheet";
import { placedCells } from "./starterCells";
import { parseCells } from "./reader/reference";
import { rowHeights } from "./starterStyles";

/** In points. The lower one has room for the footer. */
export const MARGINS = { leftMargin: 36, rightMargin: 36, topMargin: 36, bottomMargin: 50.4 } as const;

/** Short and long side in points: Letter, A4. */
const PAPERS = [
  [612, 792],
  [595.3, 841.9],
] as const;
/** A program draws rows a little higher than a file says. */
const SLACK = 0.95;
/** Of a row without a height of its own. */
const ROW_POINTS = 15;

const HEADINGS: readonly (SheetStyle | undefined)[] = ["Heading 2", "Heading 3"];

/** Points of a column that shows so many figures of the usual font: 7 pixels each and 5 beside, at 96 to the inch. */
export const columnPoints = (figures: number): number => (figures * 7 + 5) * 0.75;

type Printed = Pick<StarterSheet, "widths" | "print">;

/** The scale at which a sheet's width fits a paper; never enlarged. */
function scaleOn([short, long]: (typeof PAPERS)[number], { widths, print }: Printed): number {
  const across = (print.landscape ? long : short) - MARGINS.leftMargin - MARGINS.rightMargin;
  return Math.min(1, across / widths.reduce((sum, width) => sum + columnPoints(width), 0));
}

/** The scale on the paper that needs the smaller one. */
export const printScale = (sheet: Printed): number => Math.min(...PAPERS.map((paper) => scaleOn(paper, sheet)));

/** Points of rows that a page of either paper holds. */
const roomOf = (sheet: Printed): number =>
  Math.min(
    ...PAPERS.map((paper) => {
      const down = (sheet.print.landscape ? paper[0] : paper[1]) - MARGINS.topMargin - MARGINS.bottomMargin;
      return down / scaleOn(paper, sheet);
    }),
  );

interface Row {
  readonly points: number;
  readonly isHeading: boolean;
}

function rowsOf(sheet: StarterSheet): readonly Row[] {
  const last = Number(/\d+$/.exec(sheet.print.area)?.[0] ?? 0);
  const heights = rowHeights(sheet);
  const headings = new Set(placedCells(sheet).flatMap(({ row, cell }) => (HEADINGS.includes(cell.style) ? [row] : [])));
  return Array.from({ length: last }, (_, row) => ({
    points: Math.max(ROW_POINTS, heights[row] ?? 0),
    isHeading: headings.has(row),
  }));
}

const pointsOf = (rows: readonly Row[]): number => rows.reduce((sum, { points }) => sum + points, 0);

/** First rows of what belongs together: a heading that follows no other heading. */
const groupStarts = (rows: readonly Row[], from: number): readonly number[] =>
  rows.flatMap(({ isHeading }, row) =>
    row === from || (row > from && isHeading && !rows[row - 1]?.isHeading) ? [row] : [],
  );

/** First rows of charts; charts in a row lie beside each other. */
const chartTops = ({ charts = [] }: StarterSheet): readonly number[] => [
  ...new Set(charts.map(({ place }) => parseCells(place)?.row ?? 0)),
];

/** A group that no page can hold goes on a new page at its charts, so that a page takes the table above them whole. */
function partStarts(sheet: StarterSheet, rows: readonly Row[], room: number): readonly number[] {
  const starts = groupStarts(rows, sheet.frozenRows);
  return starts.flatMap((start, at) => {
    const end = starts[at + 1] ?? rows.length;
    const tops = pointsOf(rows.slice(start, end)) <= room ? [] : chartTops(sheet);
    return [start, ...tops.filter((top) => top > start && top < end)];
  });
}

/** Rows, counted from 1, above which a page ends. */
function pageBreaks(sheet: StarterSheet): readonly number[] {
  const rows = rowsOf(sheet);
  const room = roomOf(sheet) * SLACK - pointsOf(rows.slice(0, sheet.frozenRows));
  const starts = partStarts(sheet, rows, room);
  const breaks: number[] = [];
  let left = room;
  const breakAbove = (row: number): void => {
    breaks.push(row + 1);
    left = room;
  };
  starts.forEach((start, at) => {
    const group = rows.slice(start, starts[at + 1] ?? rows.length);
    if (pointsOf(group) > left && left < room && pointsOf(group) <= room) breakAbove(start);
    group.forEach(({ points, isHeading }, down) => {
      // A heading needs the rows up to its first result beside it.
      const first = group.slice(down).findIndex((row) => !row.isHeading);
      const need = isHeading ? pointsOf(group.slice(down, down + first + 1)) : points;
      if (need > left) breakAbove(start + down);
      left -= points;
    });
  });
  return breaks;
}

/** The sheet's print set-up with its pages' ends; a sheet on one page has none. */
export function starterPrint(sheet: StarterSheet): PrintSetUp {
  if (sheet.print.onePage === true) return sheet.print;
  const breaks = pageBreaks(sheet);
  return { ...sheet.print, ...(breaks.length > 0 && { breaks }) };
}
