/** Converts results for cells, for the log and for the evaluator. */
import { type CellOut, type Fault, isFault, type Out } from "../../core";
import type { CellValue } from "../workbook/port";
import type { CellOutcome, Value } from "../workbook/values";

type Rows = readonly (readonly CellOut[])[];

const isRows = (out: Out): out is Rows => Array.isArray(out);

const holdsFault = (rows: Rows): boolean => rows.some((row) => row.some(isFault));

const cellOf = (cell: CellOut): CellValue => (isFault(cell) ? { code: cell.code, message: cell.message } : cell);

/** A result as the workbook's reader compares it. A matrix without faults isn't copied. */
export const outcomeOf = (out: Out | Fault): CellOutcome => {
  if (isFault(out)) return { code: out.code, message: out.message };
  if (isRows(out) && holdsFault(out)) return { value: out.map((row) => row.map(cellOf)) };
  return { value: out as Value };
};

/** The host's code for an error; undefined if the host has none: the message then names the error. */
const codeIn = (code: string): CustomFunctions.ErrorCode | undefined => {
  const { ErrorCode } = CustomFunctions;
  const codes: Readonly<Record<string, CustomFunctions.ErrorCode>> = {
    "#VALUE!": ErrorCode.invalidValue,
    "#N/A": ErrorCode.notAvailable,
    "#DIV/0!": ErrorCode.divisionByZero,
    "#NUM!": ErrorCode.invalidNumber,
    "#NULL!": ErrorCode.nullReference,
    "#NAME?": ErrorCode.invalidName,
    "#REF!": ErrorCode.invalidReference,
  };
  return codes[code];
};

/** A fault as the error that a cell shows. */
export const cellError = ({ code, message }: Fault): CustomFunctions.Error => {
  const known = codeIn(code);
  return known === undefined
    ? new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, message)
    : new CustomFunctions.Error(known, message);
};

/** A result as the host takes it; throws the error that the whole cell shows. */
export const cellResult = (out: Out | Fault): unknown => {
  if (isFault(out)) throw cellError(out);
  if (!isRows(out) || !holdsFault(out)) return out;
  return out.map((row) => row.map((cell) => (isFault(cell) ? cellError(cell) : cell)));
};
