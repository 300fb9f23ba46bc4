/**
 * The sheet engine knows no charts and no groups of rows. Each corner of the cells that a chart draws or covers, and of a
 * group's first column, carries its first address, as a cell's rule does; rows and columns that come and go move the
 * corners, and charts and groups with them.
 */
import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import type { ChartSeries, SheetChart } from "../../sheets/sheet";
import { cellsText, parseCells } from "../../workbook/reader/reference";

type CellRows = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

const cornersOf = (area: string): readonly string[] => area.split(":");

/** The areas that charts draw or cover. */
export const chartAreas = (charts: readonly SheetChart[]): readonly string[] =>
  charts.flatMap(({ place, series }) => [place, ...series.flatMap(({ x, y }) => [x, y])]);

/** Marks the corners of areas in the engine's cells. */
export function markCorners(cells: Record<number, Record<number, ICellData>>, areas: readonly string[]): void {
  for (const corner of new Set(areas.flatMap(cornersOf))) {
    const { row = 0, column = 0 } = parseCells(corner) ?? {};
    const line = (cells[row] ??= {});
    const cell = line[column];
    line[column] = { ...cell, custom: { ...cell?.custom, corner } };
  }
}

/** Where each corner is now. A copied cell carries a second one: that in the old place counts. */
function cornersNow(cells: Nullable<CellRows>): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const [row, line] of Object.entries(cells ?? {}))
    for (const [column, cell] of Object.entries((line ?? {}) as Record<string, Nullable<ICellData>>)) {
      const corner = cell?.custom?.["corner"] as string | undefined;
      if (corner === undefined) continue;
      const place = cellsText({ row: Number(row), column: Number(column), rows: 1, columns: 1 });
      if (!found.has(corner) || place === corner) found.set(corner, place);
    }
  return found;
}

/** Where areas are now; undefined for one that lost a corner. */
function mover(cells: Nullable<CellRows>): (area: string) => string | undefined {
  const now = cornersNow(cells);
  return (area) => {
    const corners = cornersOf(area).map((corner) => now.get(corner));
    return corners.includes(undefined) ? undefined : corners.join(":");
  };
}

/** The groups of rows where they are now. */
export function movedGroups(groups: readonly string[], cells: Nullable<CellRows>): readonly string[] {
  const moved = mover(cells);
  return groups.flatMap((group) => moved(group) ?? []);
}

/** The charts with the cells that they have now; one that lost a corner is gone, rather than show other cells. */
export function movedCharts(charts: readonly SheetChart[], cells: Nullable<CellRows>): readonly SheetChart[] {
  const moved = mover(cells);
  return charts.flatMap((chart) => {
    const place = moved(chart.place);
    const [first, ...more] = chart.series.flatMap((one): ChartSeries[] => {
      const [x, y] = [moved(one.x), moved(one.y)];
      return x === undefined || y === undefined ? [] : [{ ...one, x, y }];
    });
    const whole = first !== undefined && more.length === chart.series.length - 1;
    return place === undefined || !whole ? [] : [{ ...chart, place, series: [first, ...more] }];
  });
}
