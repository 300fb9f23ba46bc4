import type { Fault } from "../../../core";
import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { BaseReferenceObject, BaseValueObject, ErrorType, FunctionVariantType } from "@univerjs/engine-formula";

import type { FoundArgument, FoundCell } from "../host/hostCall";
import { isFaultValue, isMatrixResult } from "../host/hostValues";
import type { CallResult, ResultCell } from "../host/hostValues";

/** Between the engine's value objects and plain cell values. */

/** The message that a cell's error value carries, where one is known. */
export type MessageAt = (sheetId: string, row: number, column: number, code: string) => string;

/** A whole column is as long as Excel's, whatever the preview's sheet holds. */
const EXCEL_ROWS = 1_048_576;

const NO_CELL: FoundArgument = { kind: "value", value: { code: "#REF!", message: "" } };

const foundCell = (value: BaseValueObject | null | undefined, message = ""): FoundCell => {
  if (value === null || value === undefined || value.isNull()) return undefined;
  if (value.isError()) return { code: String(value.getValue()), message };
  return value.getValue();
};

const foundReference = (reference: BaseReferenceObject, messageAt: MessageAt): FoundArgument => {
  const sheetId = reference.getSheetId();
  // A missing sheet leaves no id behind; whole rows and columns end with the sheet.
  if (sheetId === undefined || sheetId === "" || reference.isExceedRange()) return NO_CELL;
  const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
  const cells: FoundCell[][] = [];
  for (let row = startRow; row <= endRow; row += 1) {
    const line: FoundCell[] = [];
    for (let column = startColumn; column <= endColumn; column += 1) {
      const cell = reference.getCellData(row, column);
      if (cell === null || cell === undefined || cell.v === null || cell.v === undefined) line.push(undefined);
      else if (cell.v === "") line.push("");
      else {
        const value = reference.getCellValueObject(cell);
        const message = value.isError() ? messageAt(sheetId, row, column, String(value.getValue())) : "";
        line.push(foundCell(value, message));
      }
    }
    cells.push(line);
  }
  const single = cells.length === 1 && cells[0]?.length === 1;
  if (single) return { kind: "value", value: cells[0]?.[0] };
  const blankRows = reference.isColumn() ? EXCEL_ROWS - cells.length : 0;
  return { kind: "range", cells, blankRows };
};

const SCIENTIFIC = /^\d+(?:\.\d+)?E[+-]?\d+$/i;

/** The engine leaves a number such as 1E3 in a formula as text; no function here distinguishes the two. */
const literal = (cell: FoundCell): FoundCell =>
  typeof cell === "string" && SCIENTIFIC.test(cell) ? Number(cell) : cell;

/** What an argument holds. `innerMessage` knows the message of an error value that a call inside this formula gave. */
export const found = (
  variant: FunctionVariantType,
  messageAt: MessageAt,
  innerMessage: (code: string) => string,
): FoundArgument => {
  if (variant.isReferenceObject()) return foundReference(variant as BaseReferenceObject, messageAt);
  const value = variant as BaseValueObject;
  if (value.isLambda()) return { kind: "value", value: { code: "#CALC!", message: "" } };
  const inner = (item: Nullable<BaseValueObject>): FoundCell =>
    item ? foundCell(item, item.isError() ? innerMessage(String(item.getValue())) : "") : undefined;
  if (value.isArray()) {
    return { kind: "range", cells: (value as ArrayValueObject).getArrayValue().map((row) => row.map(inner)) };
  }
  // A comma with nothing before it gives a null object; a blank cell arrives as a reference.
  return value.isNull() ? { kind: "omitted" } : { kind: "value", value: literal(inner(value)) };
};

const KNOWN_ERRORS = new Set([
  "#DIV/0!",
  "#NAME?",
  "#VALUE!",
  "#NUM!",
  "#N/A",
  "#CYCLE!",
  "#REF!",
  "#SPILL!",
  "#CALC!",
  "#NULL!",
]);

const errorObject = ({ code }: Fault): ErrorValueObject =>
  ErrorValueObject.create((KNOWN_ERRORS.has(code) ? code : "#VALUE!") as ErrorType);

const cellObject = (cell: ResultCell): BaseValueObject => {
  if (typeof cell === "number") return NumberValueObject.create(cell);
  if (typeof cell === "boolean") return BooleanValueObject.create(cell);
  if (typeof cell === "string") return StringValueObject.create(cell);
  return errorObject(cell);
};

/** A result as the engine takes it: a matrix spills. */
export const resultObject = (result: CallResult, unitId: string, sheetId: string): BaseValueObject => {
  if (isFaultValue(result)) return errorObject(result);
  if (!isMatrixResult(result)) return cellObject(result);
  return ArrayValueObject.create({
    calculateValueList: result.map((row) => row.map(cellObject)),
    rowCount: result.length,
    columnCount: result[0]?.length ?? 0,
    unitId,
    sheetId,
    row: 0,
    column: 0,
  });
};
