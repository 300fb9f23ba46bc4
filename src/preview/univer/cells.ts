import type { ICellData, IRange, Nullable, Workbook, Worksheet } from "@univerjs/core";
import type { FormulaDataModel } from "@univerjs/engine-formula";

import type { Area, Block, CellValue } from "../../workbook/port";
import { addressText } from "../../workbook/reader/reference";
import { referencesIn } from "../file/address";
import { faultOf, spilledFaultOf } from "../host/callSites";
import type { CallSites } from "../host/callSites";
import type { PlainValue } from "../file/bookData";
import { plainValue } from "./cellValue";

/** Reading cells at full precision, spilled ones included. */

const ERRORS = /^#(?:DIV\/0!|NAME\?|VALUE!|NUM!|N\/A|CYCLE!|REF!|SPILL!|CALC!|NULL!|ERROR!)$/;

/** How far back to trace an error that a formula only passes on, and how many cells of a range to check. */
const TRACE_DEPTH = 8;
const TRACE_CELLS = 200;

export interface CellReader {
  formula(sheet: Worksheet, row: number, column: number): string;
  read(sheet: Worksheet, area: Area): Block;
  used(sheet: Worksheet): Area | undefined;
  spill(sheet: Worksheet, row: number, column: number): Area | undefined;
}

const holds = (cell: Nullable<ICellData>): boolean =>
  cell !== null && cell !== undefined && ((cell.v ?? "") !== "" || (cell.f ?? "") !== "" || (cell.si ?? "") !== "");

const contains = ({ startRow, endRow, startColumn, endColumn }: IRange, row: number, column: number): boolean =>
  row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;

type SpilledRange = readonly [row: number, column: number, range: IRange];

/** The smallest area around all filled cells and spills of a sheet, undefined where it is empty. */
function usedArea(sheet: Worksheet, spills: readonly SpilledRange[]): Area | undefined {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  const widen = (row: number, column: number): void => {
    top = Math.min(top, row);
    left = Math.min(left, column);
    bottom = Math.max(bottom, row);
    right = Math.max(right, column);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (holds(cell)) widen(row, column);
  });
  for (const [, , { startRow, startColumn, endRow, endColumn }] of spills) {
    widen(startRow, startColumn);
    widen(endRow, endColumn);
  }
  if (bottom < 0) return undefined;
  return { sheet: sheet.getName(), row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

export const createCellReader = (model: FormulaDataModel, workbook: Workbook, log: CallSites): CellReader => {
  const unitId = workbook.getUnitId();
  const spilled = (sheet: Worksheet) => model.getArrayFormulaCellData()[unitId]?.[sheet.getSheetId()];
  const ranges = (sheet: Worksheet): readonly SpilledRange[] =>
    Object.entries(model.getArrayFormulaRange()[unitId]?.[sheet.getSheetId()] ?? {}).flatMap(([row, line]) =>
      Object.entries((line ?? {}) as Readonly<Record<string, IRange>>).map(
        ([column, range]) => [Number(row), Number(column), range] as const,
      ),
    );
  const formula = (sheet: Worksheet, row: number, column: number): string =>
    model.getFormulaStringByCell(row, column, sheet.getSheetId(), unitId) ?? "";
  const plainAt = (sheet: Worksheet, row: number, column: number): PlainValue | null => {
    const cell = sheet.getCellMatrix().getValue(row, column);
    return holds(cell) ? plainValue(cell) : (plainValue(spilled(sheet)?.[row]?.[column]) ?? plainValue(cell));
  };
  const own = (sheet: Worksheet, row: number, column: number, code: string): string => {
    const id = sheet.getSheetId();
    const site = { sheetId: id, row, column };
    const fault = faultOf(log.at(site), code) ?? log.refusals(site).find((refusal) => refusal.code === code);
    if (fault !== undefined) return fault.message;
    const anchor = ranges(sheet).find(([, , range]) => contains(range, row, column));
    if (anchor === undefined) return "";
    const [top, left] = anchor;
    return (
      spilledFaultOf(log.at({ sheetId: id, row: top, column: left }), code, row - top, column - left)?.message ?? ""
    );
  };
  /** The message of the first cell with this error that a formula refers to. */
  const passedOn = (sheet: Worksheet, text: string, code: string, depth: number): string => {
    for (const area of referencesIn(text, sheet.getName())) {
      const source = workbook.getSheetBySheetName(area.sheet);
      if (!source || area.rows * area.columns > TRACE_CELLS) continue;
      for (let row = area.row; row < area.row + area.rows; row += 1) {
        for (let column = area.column; column < area.column + area.columns; column += 1) {
          const message = plainAt(source, row, column) === code ? messageAt(source, row, column, code, depth - 1) : "";
          if (message.startsWith("from ")) return message;
          if (message !== "") return `from ${addressText({ sheet: source.getName(), row, column })}: ${message}`;
        }
      }
    }
    return "";
  };
  const messageAt = (sheet: Worksheet, row: number, column: number, code: string, depth: number): string => {
    const message = own(sheet, row, column, code);
    return message !== "" || depth === 0 ? message : passedOn(sheet, formula(sheet, row, column), code, depth);
  };
  const value = (sheet: Worksheet, row: number, column: number): CellValue => {
    const plain = plainAt(sheet, row, column);
    if (typeof plain !== "string" || !ERRORS.test(plain)) return plain;
    const message = messageAt(sheet, row, column, plain, TRACE_DEPTH);
    return message === "" ? { code: plain } : { code: plain, message };
  };
  return {
    formula,
    read: (sheet, area) => {
      const rows = Array.from({ length: area.rows }, (_, place) => area.row + place);
      const columns = Array.from({ length: area.columns }, (_, place) => area.column + place);
      return {
        area,
        formulas: rows.map((row) => columns.map((column) => formula(sheet, row, column))),
        values: rows.map((row) => columns.map((column) => value(sheet, row, column))),
      };
    },
    used: (sheet) => usedArea(sheet, ranges(sheet)),
    spill: (sheet, row, column) => {
      const range = model.getArrayFormulaRange()[unitId]?.[sheet.getSheetId()]?.[row]?.[column];
      if (range === undefined || range === null) return undefined;
      return {
        sheet: sheet.getName(),
        row,
        column,
        rows: range.endRow - range.startRow + 1,
        columns: range.endColumn - range.startColumn + 1,
      };
    },
  };
};
