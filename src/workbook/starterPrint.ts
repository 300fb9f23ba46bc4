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
/** A part that no page can hold leaves at least so many rows on each of its pages. */
const FEWEST_ROWS = 3;

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
  readonly isBlank: boolean;
}

function rowsOf(sheet: StarterSheet): readonly Row[] {
  const last = Number(/\d+$/.exec(sheet.print.area)?.[0] ?? 0);
  const heights = rowHeights(sheet);
  const placed = placedCells(sheet);
  const headings = new Set(placed.flatMap(({ row, cell }) => (HEADINGS.includes(cell.style) ? [row] : [])));
  const charts = (sheet.charts ?? []).map(({ place }) => parseCells(place));
  const filled = new Set([
    ...placed.map(({ row }) => row),
    ...charts.flatMap((chart) => Array.from({ length: chart?.rows ?? 0 }, (_, down) => (chart?.row ?? 0) + down)),
  ]);
  return Array.from({ length: last }, (_, row) => ({
    points: Math.max(ROW_POINTS, heights[row] ?? 0),
    isHeading: headings.has(row),
    isBlank: !filled.has(row),
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

/** The rows that follow a heading and stay with it: those up to its first result, or the first few of a part that is split. */
function needAt(group: readonly Row[], down: number, isSplit: boolean): number {
  const row = group[down];
  if (row === undefined) return 0;
  const rest = group.slice(down);
  if (row.isHeading) {
    const first = rest.findIndex(({ isHeading }) => !isHeading);
    return pointsOf(rest.slice(0, first + (isSplit ? FEWEST_ROWS : 1)));
  }
  // The last few rows go on together.
  return isSplit && rest.length === FEWEST_ROWS ? pointsOf(rest) : row.points;
}

/** Rows, counted from 1, above which a page ends. Blank rows after a part may lie at a page's foot, but don't push the part off it. */
function pageBreaks(sheet: StarterSheet): readonly number[] {
  const rows = rowsOf(sheet);
  const room = roomOf(sheet) * SLACK - pointsOf(rows.slice(0, sheet.frozenRows));
  const starts = partStarts(sheet, rows, room);
  const breaks: number[] = [];
  let [left, fresh] = [room, true];
  const breakAbove = (row: number): void => {
    breaks.push(row + 1);
    [left, fresh] = [room, true];
  };
  starts.forEach((start, at) => {
    const whole = rows.slice(start, starts[at + 1] ?? rows.length);
    const group = whole.slice(0, whole.map(({ isBlank }) => isBlank).lastIndexOf(false) + 1);
    // On a page of blank rows alone it begins below them.
    const isSplit = pointsOf(group) > (fresh ? left : room);
    if (pointsOf(group) > left && !isSplit) breakAbove(start);
    group.forEach((row, down) => {
      if (needAt(group, down, isSplit) > left) breakAbove(start + down);
      [left, fresh] = [left - row.points, false];
    });
    const blanks = pointsOf(whole.slice(group.length));
    if (blanks > left && at + 1 < starts.length) breakAbove(start + group.length);
    left -= blanks;
  });
  return breaks;
}

/** The sheet's print set-up with its pages' ends; a sheet on one page has none. */
export function starterPrint(sheet: StarterSheet): PrintSetUp {
  if (sheet.print.onePage === true) return sheet.print;
  const breaks = pageBreaks(sheet);
  return { ...sheet.print, ...(breaks.length > 0 && { breaks }) };
}
