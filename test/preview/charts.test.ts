/** Charts and folding rows of a sheet in the page: they come back with the workbook and follow their cells. */
import type { ICellData } from "@univerjs/core";
import { expect, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { starterData } from "../../src/preview/file/starterBook";
import { chartAreas, markCorners, movedCharts, movedGroups } from "../../src/preview/univer/chartCells";
import { poolLoop } from "../../src/sheets/poolLoop";
import type { SheetChart } from "../../src/sheets/sheet";
import { newBook } from "./support";

const CHART: SheetChart = {
  kind: "lines",
  title: "Heat",
  description: "Heat by month.",
  x: "month",
  y: "heat (million BTU)",
  place: "D2:F9",
  series: [{ name: "taken", x: "A2:A4", y: "B2:B4" }],
};

type Cells = Record<number, Record<number, ICellData>>;

/** The engine's cells after rows were put in before a row, counted from 0. */
const withRows = (cells: Cells, before: number, count: number): Cells =>
  Object.fromEntries(
    Object.entries(cells).map(([row, line]) => [Number(row) >= before ? Number(row) + count : Number(row), line]),
  );

const marked = (): Cells => {
  const cells: Cells = { 1: { 0: { v: "Jan" }, 1: { v: 3, custom: { state: true } } } };
  markCorners(cells, chartAreas([CHART]));
  return cells;
};

test("a chart keeps its cells where nothing moves, and cells keep what they carry", () => {
  const cells = marked();
  expect(movedCharts([CHART], cells)).toEqual([CHART]);
  expect(cells[1]?.[1]).toEqual({ v: 3, custom: { state: true, corner: "B2" } });
});

test("a chart follows rows above it, and grows with rows within its cells", () => {
  const [down] = movedCharts([CHART], withRows(marked(), 0, 2));
  expect(down).toMatchObject({ place: "D4:F11", series: [{ x: "A4:A6", y: "B4:B6" }] });
  const [longer] = movedCharts([CHART], withRows(marked(), 2, 1));
  expect(longer).toMatchObject({ place: "D2:F10", series: [{ x: "A2:A5", y: "B2:B5" }] });
});

test("a chart that lost the end of its cells is gone, and a copied cell moves none", () => {
  const cells = marked();
  delete cells[3];
  expect(movedCharts([CHART], cells)).toEqual([]);
  const copied = marked();
  copied[0] = { 7: { ...copied[1]?.[0] } };
  expect(movedCharts([CHART], copied)).toEqual([CHART]);
});

test("a starter sheet's charts come back with the workbook", async () => {
  const book = newBook();
  try {
    book.load({ sheets: [starterData(poolLoop, "Loop", new Set()).sheet, emptySheet("Other")], names: [] });
    await book.whenCalculated();
    const [loop, other] = book.data().sheets;
    expect(loop?.charts).toEqual(poolLoop.charts);
    expect(other?.charts).toBeUndefined();
  } finally {
    book.dispose();
  }
});

test("rows that fold follow rows above them, grow with rows within them, and are gone without their last row", () => {
  const cells: Cells = {};
  markCorners(cells, ["A3:A6", "A4:A5"]);
  expect(movedGroups(["A3:A6", "A4:A5"], withRows(cells, 0, 1))).toEqual(["A4:A7", "A5:A6"]);
  expect(movedGroups(["A3:A6", "A4:A5"], withRows(cells, 4, 2))).toEqual(["A3:A8", "A4:A7"]);
  delete cells[4];
  expect(movedGroups(["A3:A6", "A4:A5"], cells)).toEqual(["A3:A6"]);
});

test("a starter sheet's folding rows come back with the workbook", async () => {
  const book = newBook();
  try {
    book.load({ sheets: [starterData(poolLoop, "Loop", new Set()).sheet, emptySheet("Other")], names: [] });
    await book.whenCalculated();
    const [loop, other] = book.data().sheets;
    expect(loop?.groups).toEqual(poolLoop.groups);
    expect(other?.groups).toBeUndefined();
  } finally {
    book.dispose();
  }
});
