/** Every starter sheet on Letter and on A4. */
import { beforeAll, describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { placedCells } from "../../src/workbook/starterCells";
import { printScale, starterPrint } from "../../src/workbook/starterPrint";
import type { NewSheet } from "../../src/workbook/package";
import { linesOnPaper, onPaper, pagesOf, pdfOf, shownSheets, skipsPaper, type PrintedPage } from "./printed";

const TEXT_POINTS = 10;
const LEAST_POINTS = 8;
/** From one line of text to the next, in points; LibreOffice takes 11.5 for this font. */
const LINE_POINTS = 12;
/** A row without a height of its own. */
const ROW_POINTS = 15;
/** What lies lower is the footer. */
const FOOTER_POINTS = 40;
const MINUTES = 180_000;

const NAMES = STARTER_SHEETS.map((sheet) => [sheet.name, sheet] as const);

describe.each(NAMES)("The starter sheet %s on paper", (_, sheet) => {
  test("prints its text at 8 points or more on the narrower paper", () => {
    expect(printScale(sheet) * TEXT_POINTS).toBeGreaterThanOrEqual(LEAST_POINTS);
  });

  test("ends no page with a heading", () => {
    const headings = placedCells(sheet).flatMap(({ row, cell }) =>
      cell.style?.startsWith("Heading") ? [row + 1] : [],
    );
    const { breaks = [] } = starterPrint(sheet);
    expect(breaks.length).toBeGreaterThan(0);
    for (const row of breaks) expect(headings).not.toContain(row - 1);
  });
});

/** Rows of a place or of a series, from the first to the last, counted from 1. */
const rowsIn = (cells: string): readonly [number, number] => {
  const rows = [...cells.matchAll(/\d+/g)].map(([row]) => Number(row));
  return [Math.min(...rows), Math.max(...rows)];
};

test.each(NAMES)("No page of the sheet %s ends within a chart or within the table that it draws", (_, sheet) => {
  const { breaks = [] } = starterPrint(sheet);
  for (const { title, place, series } of sheet.charts ?? [])
    for (const [first, last] of [place, series[0].x].map(rowsIn))
      expect(
        breaks.filter((row) => row > first && row <= last),
        title,
      ).toEqual([]);
});

const FEWEST_ROWS = 3;

test.each(NAMES)("No page of the sheet %s takes only one or two rows of a part", (_, sheet) => {
  const placed = placedCells(sheet);
  const rows = [...new Set(placed.map(({ row }) => row + 1))].sort((a, b) => a - b);
  const headings = new Set(
    placed.flatMap(({ row, cell }) => (/^Heading [23]/.test(cell.style ?? "") ? [row + 1] : [])),
  );
  const starts = [...headings].filter((row) => !headings.has(row - 1)).sort((a, b) => a - b);
  for (const above of starterPrint(sheet).breaks ?? []) {
    const start = starts.filter((row) => row <= above).at(-1) ?? 0;
    const end = starts.find((row) => row > above) ?? Infinity;
    const results = rows.filter((row) => row >= start && row < end && !headings.has(row));
    const before = results.filter((row) => row < above).length;
    const alone = Math.min(before, results.length - before);
    expect(alone === 0 || alone >= FEWEST_ROWS, `above row ${String(above)}`).toBe(true);
  }
});

describe.skipIf(skipsPaper).each(["Letter", "A4"] as const)(onPaper("LibreOffice prints on %s"), (paper) => {
  let sheets: readonly NewSheet[] = [];
  let pages: readonly PrintedPage[] = [];
  const isFooter = ({ height }: PrintedPage, top: number): boolean => top > height - FOOTER_POINTS;
  const pagesWith = (name: string): readonly PrintedPage[] =>
    pages.filter((page) => page.texts.some(({ text, top }) => text === name && isFooter(page, top)));

  beforeAll(async () => {
    sheets = await shownSheets();
    pages = pagesOf(await pdfOf(sheets, paper));
  }, MINUTES);

  test("on that paper", () => {
    const [long, short] = paper === "A4" ? [841.9, 595.3] : [792, 612];
    expect(pages[0]?.width).toBeCloseTo(long, 0);
    expect(pages[0]?.height).toBeCloseTo(short, 0);
  });

  test("text of 8 points or more", () => {
    const sizes = pages.flatMap((page) => page.texts.map(({ size }) => size));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(LEAST_POINTS);
  });

  test("as many pages as the sheets' own page ends make, so that none is split elsewhere", () => {
    const found = sheets.map(({ name }) => [name, pagesWith(name).length]);
    expect(found).toEqual(sheets.map(({ name, print }) => [name, (print?.breaks?.length ?? 0) + 1]));
  });

  test("no heading as a page's last row", () => {
    for (const sheet of STARTER_SHEETS) {
      const headings = placedCells(sheet).flatMap(({ column, cell }) =>
        column === 0 && cell.style?.startsWith("Heading") ? [cell.content] : [],
      );
      for (const page of pagesWith(sheet.name)) {
        const rows = page.texts.filter(({ top }) => !isFooter(page, top));
        const last = rows.filter(({ top }) => top > (rows.at(-1)?.top ?? 0) - 2).map(({ text }) => text);
        expect(last.filter((text) => headings.includes(text))).toEqual([]);
      }
    }
  });

  test("date, file, sheet, page and pages at the foot, and the project at the head", () => {
    pages.forEach((page, at) => {
      const foot = page.texts.filter(({ top }) => isFooter(page, top)).map(({ text }) => text);
      expect(foot.join(" ")).toMatch(/\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}\s+book\.xlsx/);
      expect(foot).toContain(`Page ${String(at + 1)} of ${String(pages.length)}`);
      const head = page.texts.filter(({ top }) => top < page.height / 6).map(({ text }) => text);
      expect(head.join(" ")).toContain("Fernhill Hall");
    });
  });

  test("every wrapped text whole within its row", () => {
    const cut: string[] = [];
    const lost: string[] = [];
    let found = 0;
    for (const { name, heights = {}, cells } of sheets)
      for (const { row, value, style } of cells) {
        if (typeof value !== "string" || style?.wrap !== true || value === "") continue;
        const lines = linesOnPaper(pagesWith(name), value);
        const place = `${name}, row ${String(row + 1)}: ${value}`;
        if (lines === 0) lost.push(place);
        else found++;
        if (lines * LINE_POINTS > Math.max(ROW_POINTS, heights[row] ?? 0)) cut.push(place);
      }
    expect(cut).toEqual([]);
    // pdftohtml joins a text with its neighbour where they nearly touch.
    expect(lost.filter((place) => place.length > 70)).toEqual([]);
    expect(found).toBeGreaterThan(500);
  });
});
