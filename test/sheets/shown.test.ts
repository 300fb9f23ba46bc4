/** What the cells of the starter sheets show: nothing cut by a filled neighbour or by the paper's edge, no number longer than its column. */
import { beforeAll, describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import type { NewSheet } from "../../src/workbook/package";
import { parseCells } from "../../src/workbook/reader/reference";
import { textLines } from "../../src/workbook/textLines";
import { shownSheets } from "./printed";

const USUAL_POINTS = 10;
/** Columns without a width of their own, in figures. */
const USUAL_WIDTH = 8;

/** Figures that fit from a cell on to the next filled one, or to the end of the print area. */
function roomOf({ name, widths = [], cells }: NewSheet, row: number, column: number): number {
  const { print } = STARTER_SHEETS.find((sheet) => sheet.name === name) ?? {};
  const { column: first = 0, columns = 0 } = parseCells(print?.area ?? "") ?? {};
  const filled = cells.filter((cell) => cell.row === row && cell.column > column && cell.value !== "");
  // What lies outside the print area feeds a chart.
  const edge = column < first + columns ? first + columns : column + 1;
  const end = Math.min(...filled.map((cell) => cell.column), edge);
  return Array.from({ length: end - column }, (_, place) => widths[column + place] ?? USUAL_WIDTH).reduce(
    (sum, width) => sum + width,
    0,
  );
}

describe("The starter sheets show", () => {
  let sheets: readonly NewSheet[] = [];
  beforeAll(async () => {
    sheets = await shownSheets();
  }, 180_000);

  test("every text of one line whole: it ends before the next filled cell and on the paper", () => {
    const cut = sheets.flatMap((sheet) =>
      sheet.cells.flatMap(({ row, column, value, style }) => {
        if (typeof value !== "string" || value === "" || style?.wrap === true) return [];
        const figures = (roomOf(sheet, row, column) * USUAL_POINTS) / (style?.size ?? USUAL_POINTS);
        return textLines(value, figures) > 1 ? [`${sheet.name}, row ${String(row + 1)}: ${value}`] : [];
      }),
    );
    expect(cut).toEqual([]);
  });

  test("no number with more digits than its column holds or than its figures carry", () => {
    const long = sheets.flatMap(({ name, cells }) =>
      cells.flatMap(({ row, value, style }) =>
        typeof value === "number" && (style?.format ?? "General") === "General" && String(value).length > 7
          ? [`${name}, row ${String(row + 1)}: ${String(value)}`]
          : [],
      ),
    );
    expect(long).toEqual([]);
  });
});
