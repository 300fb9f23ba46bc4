import type { ICellData, IRange } from "@univerjs/core";
import { SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import {
  InsertDefinedNameCommand,
  InsertSheetCommand,
  SetRangeValuesCommand,
  SetSelectionsOperation,
  SetWorksheetColumnCountMutation,
  SetWorksheetRowCountMutation,
  SetWorksheetActiveOperation,
} from "@univerjs/sheets";

import type { Address, Area, CellWrite } from "../../workbook/port";
import type { NameData, SheetData } from "../file/bookData";
import type { OpenBook } from "./open";
import type { StepPiece } from "./oneStep";
import { engineSheet, type CellRows } from "./bookSnapshot";
import { valueCell } from "./cellValue";

/** Changes to the open workbook, as commands that undo knows. */

const rangeOf = ({ row, column, rows, columns }: Area): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

const written = ({ content }: CellWrite): ICellData => {
  const blank = { v: null, t: null, f: null, si: null, p: null };
  if (content === null) return blank;
  if (typeof content === "string" && content.startsWith("=")) return { ...blank, f: content };
  return { ...blank, ...valueCell(content) };
};

const writeCells = (open: OpenBook, sheet: string, value: Record<number, Record<number, ICellData>>): void => {
  open.services.commands.syncExecuteCommand(SetRangeValuesCommand.id, {
    unitId: open.unitId(),
    subUnitId: open.sheet(sheet).getSheetId(),
    // The matrix carries the places; the command only wants to see some range.
    range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 },
    value,
  });
};

/** So many cells are written in one task of some milliseconds. */
export const PIECE_CELLS = 500;

/** The pieces of a write: each is a part of one sheet. */
export function writePieces(open: OpenBook, cells: readonly CellWrite[]): readonly StepPiece[] {
  const bySheet = new Map<string, CellWrite[]>();
  for (const cell of cells) {
    const known = bySheet.get(cell.sheet);
    if (known === undefined) bySheet.set(cell.sheet, [cell]);
    else known.push(cell);
  }
  return [...bySheet].flatMap(([sheet, all]) =>
    Array.from({ length: Math.ceil(all.length / PIECE_CELLS) }, (_, at): StepPiece => {
      const some = all.slice(at * PIECE_CELLS, (at + 1) * PIECE_CELLS);
      const change = (): void => {
        const value: Record<number, Record<number, ICellData>> = {};
        for (const cell of some) (value[cell.row] ??= {})[cell.column] = written(cell);
        writeCells(open, sheet, value);
      };
      return { size: some.length, change };
    }),
  );
}

/** Adds rows and columns behind the last ones; they stay when what was written into them is undone. */
export const makeRoom = (open: OpenBook, { sheet, row, column, rows, columns }: Area): void => {
  const worksheet = open.sheet(sheet);
  const { commands } = open.services;
  const place = { unitId: open.unitId(), subUnitId: worksheet.getSheetId() };
  const [rowCount, columnCount] = [row + rows, column + columns];
  if (rowCount > worksheet.getRowCount())
    commands.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...place, rowCount });
  if (columnCount > worksheet.getColumnCount())
    commands.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...place, columnCount });
};

/** Marks areas dirty; without areas everything calculates again. */
export const markDirty = (open: OpenBook, areas: readonly Area[]): void => {
  const dirtyRanges = areas.map((area) => ({
    unitId: open.unitId(),
    sheetId: open.sheet(area.sheet).getSheetId(),
    range: rangeOf(area),
  }));
  open.services.commands.syncExecuteCommand(
    SetTriggerFormulaCalculationStartMutation.id,
    {
      forceCalculation: areas.length === 0,
      dirtyRanges,
      dirtyNameMap: {},
      dirtyDefinedNameMap: {},
      dirtySuperTableMap: {},
      dirtyUnitFeatureMap: {},
      dirtyUnitOtherFormulaMap: {},
      clearDependencyTreeCache: {},
    },
    { onlyLocal: true },
  );
};

const addName = (open: OpenBook, { name, refersTo }: NameData): void => {
  open.services.commands.syncExecuteCommand(InsertDefinedNameCommand.id, {
    unitId: open.unitId(),
    id: `name-${name.toLowerCase()}`,
    name,
    formulaOrRefString: refersTo,
    localSheetId: "AllDefaultWorkbook",
  });
};

/** Adds a sheet and its names; `sheet.name` must be free. */
export const addSheet = (open: OpenBook, sheet: SheetData, names: readonly NameData[], cells?: CellRows): void => {
  const id = `sheet-${Date.now().toString(36)}-${open.workbook().getSheetSize()}`;
  for (const name of names) addName(open, name);
  open.services.commands.syncExecuteCommand(InsertSheetCommand.id, {
    unitId: open.unitId(),
    sheet: engineSheet(id, sheet, cells),
  });
};

/** Goes to a cell: its sheet comes to the front. */
export const selectCell = (open: OpenBook, { sheet, row, column }: Address): void => {
  const worksheet = open.sheet(sheet);
  const { commands } = open.services;
  const [unitId, subUnitId] = [open.unitId(), worksheet.getSheetId()];
  if (open.workbook().getActiveSheet(true) !== worksheet) {
    commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId });
  }
  const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
  const primary = { ...range, actualRow: row, actualColumn: column, isMerged: false, isMergedMainCell: false };
  const selections = [{ range, primary, style: null }];
  commands.syncExecuteCommand(SetSelectionsOperation.id, { unitId, subUnitId, selections });
};

/** The selected cell of the sheet in front. */
export const selectedCell = (open: OpenBook): Address | undefined => {
  const sheet = open.workbook().getActiveSheet(true)?.getName();
  if (sheet === undefined) return undefined;
  const cell = open.services.selections.getCurrentLastSelection()?.primary;
  return { sheet, row: cell?.actualRow ?? 0, column: cell?.actualColumn ?? 0 };
};

/** All selected ranges of the sheet in front; whole rows and columns end with the sheet. */
export const frontSelection = (open: OpenBook): readonly Area[] => {
  const front = open.workbook().getActiveSheet(true);
  if (front === undefined || front === null) return [];
  const sheet = front.getName();
  const [lastRow, lastColumn] = [front.getRowCount() - 1, front.getColumnCount() - 1];
  return open.services.selections.getCurrentSelections().map(({ range }) => {
    const [row, column] = [range.startRow || 0, range.startColumn || 0];
    const endRow = Number.isNaN(range.endRow) ? lastRow : range.endRow;
    const endColumn = Number.isNaN(range.endColumn) ? lastColumn : range.endColumn;
    return { sheet, row, column, rows: endRow - row + 1, columns: endColumn - column + 1 };
  });
};
