/** The raw values that pass between cells, the reader and the calculation. */
import type { CellInput } from "../../core";
import { isCellFault } from "./port";
import type { CellFault, CellValue } from "./port";

export type ValueMatrix = readonly (readonly CellValue[])[];

/** The value of a part of a formula; single cells of a matrix may be faults. */
export type Value = CellValue | ValueMatrix;

/** What a cell function returns. */
export type CellOutcome = { readonly value: Value } | CellFault;

export const isMatrix = <T>(value: T | readonly (readonly T[])[]): value is readonly (readonly T[])[] =>
  Array.isArray(value);

export const isOutcomeFault = (outcome: CellOutcome): outcome is CellFault => "code" in outcome;

/** The value of an outcome; of a refused call its fault. */
export const valueOf = (outcome: CellOutcome): Value => (isOutcomeFault(outcome) ? outcome : outcome.value);

/** The first cell of a matrix, or the value itself. */
export const topLeft = (value: Value): CellValue => (isMatrix(value) ? (value[0]?.[0] ?? null) : value);

/** Any value as a matrix. */
export const matrixOf = (value: Value): ValueMatrix => (isMatrix(value) ? value : [[value]]);

/** Replaces a matrix of one cell by that cell. */
export function collapse(value: Value): Value {
  return isMatrix(value) && value.length === 1 && value[0]?.length === 1 ? (value[0][0] ?? null) : value;
}

/** The first fault in a value, row by row. */
export function faultIn(value: Value): CellFault | undefined {
  if (!isMatrix(value)) return isCellFault(value) ? value : undefined;
  for (const row of value) for (const cell of row) if (isCellFault(cell)) return cell;
  return undefined;
}

/** The value as an input; undefined if it holds a fault. */
export function inputOf(value: Value): CellInput | undefined {
  return faultIn(value) === undefined ? (value as CellInput) : undefined;
}

const SAME_WITHIN = 1e-9;
const NEGLIGIBLE = 1e-12;

/** Whether two cells hold the same value: numbers to 1e-9 of the larger; an empty cell also equals 0 and "". */
export function sameCell(a: CellValue, b: CellValue): boolean {
  if (a === b) return true;
  if (a === null) return b === "" || b === 0;
  if (b === null) return a === "" || a === 0;
  if (typeof a === "number" && typeof b === "number") {
    const gap = Math.abs(a - b);
    return gap <= NEGLIGIBLE || gap <= SAME_WITHIN * Math.max(Math.abs(a), Math.abs(b));
  }
  return isCellFault(a) && isCellFault(b) && a.code === b.code;
}

/** Whether two values are the same, cell by cell; a matrix of one cell equals that cell. */
export function sameValue(left: Value, right: Value): boolean {
  const a = collapse(left);
  const b = collapse(right);
  if (!isMatrix(a) || !isMatrix(b)) return !isMatrix(a) && !isMatrix(b) && sameCell(a, b);
  return a.length === b.length && a.every((row, at) => sameRow(row, b[at] ?? []));
}

const sameRow = (a: readonly CellValue[], b: readonly CellValue[]): boolean =>
  a.length === b.length && a.every((cell, at) => sameCell(cell, b[at] ?? null));
