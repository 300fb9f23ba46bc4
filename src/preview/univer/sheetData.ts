/** Sheets of the engine's snapshot as data. */
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from "@univerjs/core";

import type { PrintSetUp, SheetChart } from "../../sheets/sheet";
import type { CellData, NameData, SheetData } from "../file/bookData";
import { keptOf, plainValue, saysState, validationOf } from "./cellValue";
import { movedCharts, movedGroups } from "./chartCells";
import { pixelsToPoints, pixelsToWidth } from "./sizes";
import { cellStyleOf } from "./styles";
import { typedOf } from "./typedCell";

export const numbered = <T>(record: Readonly<Record<number, T>> | undefined): readonly (readonly [number, T])[] =>
  Object.entries(record ?? {}).map(([key, value]) => [Number(key), value] as const);

/** Whether nothing may be written on the sheet. */
export const isLocked = (sheet: Partial<IWorksheetData>): boolean => sheet.custom?.["locked"] === true;

export interface DataReading {
  readonly styles: IWorkbookData["styles"];
  /** The formula of a cell, shared formulas resolved; "" where there is none. */
  formulaAt(sheetId: string, row: number, column: number, cell: ICellData): string;
  /** What a formula spills, undefined where it doesn't. */
  spillAt(sheetId: string, row: number, column: number): CellData["spill"];
}

const cellOf = (reading: DataReading, sheetId: string, row: number, column: number, cell: ICellData): CellData => {
  const style: Nullable<IStyleData> = typeof cell.s === "string" ? reading.styles[cell.s] : cell.s;
  const formula = reading.formulaAt(sheetId, row, column, cell);
  const look = cellStyleOf(style);
  const format = style?.n?.pattern;
  const spill = formula === "" ? undefined : reading.spillAt(sheetId, row, column);
  const validation = validationOf(cell);
  const kept = keptOf(cell);
  const source = typedOf(cell, formula);
  return {
    row,
    column,
    value: plainValue(cell),
    ...(formula !== "" && { formula }),
    ...(source !== undefined && { source }),
    ...(look !== undefined && { look }),
    ...(format !== undefined && { format }),
    ...(validation !== undefined && { validation }),
    ...(saysState(cell) && { state: true as const }),
    ...(spill !== undefined && { spill }),
    ...(kept !== undefined && { kept }),
  };
};

/** The names that only a sheet knows; the engine carries them along. */
export const sheetNames = (sheet: Partial<IWorksheetData>): readonly NameData[] =>
  (sheet.custom?.["names"] as readonly NameData[] | undefined) ?? [];

/** A sheet's charts where they are now. */
export const sheetCharts = ({ custom, cellData }: Partial<IWorksheetData>): readonly SheetChart[] =>
  movedCharts((custom?.["charts"] as readonly SheetChart[] | undefined) ?? [], cellData);

/** A sheet's groups of rows where they are now. */
export const sheetGroups = ({ custom, cellData }: Partial<IWorksheetData>): readonly string[] =>
  movedGroups((custom?.["groups"] as readonly string[] | undefined) ?? [], cellData);

type CellsOfRow = readonly CellData[];

export const rowCells = (
  reading: DataReading,
  sheetId: string,
  row: number,
  line: Readonly<Record<number, ICellData>>,
): CellsOfRow => numbered(line).map(([column, cell]) => cellOf(reading, sheetId, row, column, cell));

/** A sheet of a snapshot as data. */
export const sheetData = (
  reading: DataReading,
  sheet: Partial<IWorksheetData>,
  cells: readonly CellData[] = numbered(sheet.cellData).flatMap(([row, line]) =>
    rowCells(reading, sheet.id ?? "", row, line),
  ),
): SheetData => {
  const widths = numbered(sheet.columnData).flatMap(([column, data]) =>
    data.w === undefined ? [] : [[column, pixelsToWidth(data.w)] as const],
  );
  const heights = numbered(sheet.rowData).flatMap(([row, data]) =>
    data.h === undefined || data.ia === 1 ? [] : [[row, pixelsToPoints(data.h)] as const],
  );
  const print = sheet.custom?.["print"] as PrintSetUp | undefined;
  const names = sheetNames(sheet);
  const charts = sheetCharts(sheet);
  const groups = sheetGroups(sheet);
  return {
    name: sheet.name ?? "",
    ...(groups.length > 0 && { groups }),
    ...(charts.length > 0 && { charts }),
    ...(print !== undefined && { print }),
    ...(names.length > 0 && { names }),
    cells,
    widths: Object.fromEntries(widths),
    heights: Object.fromEntries(heights),
    frozenRows: sheet.freeze?.ySplit ?? 0,
    frozenColumns: sheet.freeze?.xSplit ?? 0,
    hidden: sheet.hidden === 1,
    hiddenRows: numbered(sheet.rowData).flatMap(([row, data]) => (data.hd === 1 ? [row] : [])),
    hiddenColumns: numbered(sheet.columnData).flatMap(([column, data]) => (data.hd === 1 ? [column] : [])),
    merged: (sheet.mergeData ?? []).map(({ startRow, startColumn, endRow, endColumn }) => ({
      row: startRow,
      column: startColumn,
      rows: endRow - startRow + 1,
      columns: endColumn - startColumn + 1,
    })),
  };
};
