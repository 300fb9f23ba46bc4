/**
 * Excel's operators on values and matrices. If a result depends on the user's locale or on how Excel rounds a comparison,
 * the answer is `unread` rather than a guess.
 */
import { isCellFault } from "../port";
import type { CellFault, CellValue } from "../port";
import { matrixOf } from "../values";
import type { Value, ValueMatrix } from "../values";
import type { Operator } from "./tree";

/** A part of a formula that this reader can't work out. */
export interface Unsupported {
  readonly unsupported: string;
}

export type Operand = Value | Unsupported;

export const unsupported = (why: string): Unsupported => ({ unsupported: why });

export const isUnsupported = (answer: Operand): answer is Unsupported =>
  typeof answer === "object" && answer !== null && "unsupported" in answer;

export const fault = (code: string): CellFault => ({ code });

const EXPRESSION = "is an expression we can't read: put it in its own cell to see its working";

/** The general reason: it contains something that this reader doesn't support. */
export const UNSUPPORTED = unsupported(EXPRESSION);

/** A number from a cell: blank is 0, a boolean 1 or 0; text only if every locale reads it alike. */
export function toNumber(cell: CellValue): number | CellFault | Unsupported {
  if (typeof cell === "number") return cell;
  if (cell === null) return 0;
  if (typeof cell === "boolean") return cell ? 1 : 0;
  if (isCellFault(cell)) return cell;
  if (/^\s*[-+]?\d{1,15}\s*$/.test(cell)) return Number(cell);
  return /\d/.test(cell) || /^\s*(?:true|false)\s*$/i.test(cell) ? UNSUPPORTED : fault("#VALUE!");
}

/** A cell as text. A decimal comma of the locale is written as a point: every quantity text reads both alike. */
export function toText(cell: CellValue): string | CellFault | Unsupported {
  if (typeof cell === "string") return cell;
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (isCellFault(cell)) return cell;
  const size = Math.abs(cell);
  if (size !== 0 && (size < 1e-6 || size >= 1e15)) return UNSUPPORTED;
  return String(Number(cell.toPrecision(15)));
}

/** A condition: a number other than 0 holds. */
export function toCondition(cell: CellValue): boolean | CellFault | Unsupported {
  if (typeof cell === "string") return /^(?:true|false)$/i.test(cell) ? UNSUPPORTED : fault("#VALUE!");
  const number = toNumber(cell);
  return typeof number === "number" ? number !== 0 : number;
}

const finite = (value: number): number | CellFault => (Number.isFinite(value) ? value : fault("#NUM!"));

function power(base: number, exponent: number): number | CellFault {
  if (base === 0 && exponent === 0) return fault("#NUM!");
  if (base === 0 && exponent < 0) return fault("#DIV/0!");
  return finite(base ** exponent);
}

type Arithmetic = (a: number, b: number) => number | CellFault;

const ARITHMETIC: Partial<Record<Operator, Arithmetic>> = {
  "+": (a, b) => finite(a + b),
  "-": (a, b) => finite(a - b),
  "*": (a, b) => finite(a * b),
  "/": (a, b) => (b === 0 ? fault("#DIV/0!") : finite(a / b)),
  "^": power,
};

const rank = (cell: CellValue): number => (typeof cell === "number" ? 0 : typeof cell === "string" ? 1 : 2);

/** A blank takes the other side's kind. */
const filled = (cell: CellValue, other: CellValue): CellValue =>
  cell !== null ? cell : typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;

/** Compares in Excel's order (numbers, texts without case, booleans): below 0 if `a` comes first, 0 if equal. */
function order(left: CellValue, right: CellValue): number | Unsupported {
  const a = filled(left, right);
  const b = filled(right, left);
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (typeof a === "string" && typeof b === "string") return textOrder(a.toLowerCase(), b.toLowerCase());
  const [x, y] = [Number(a), Number(b)];
  const near = x !== y && Math.abs(x - y) < 1e-13 * Math.max(Math.abs(x), Math.abs(y));
  return near && Number(x.toPrecision(15)) === Number(y.toPrecision(15)) ? UNSUPPORTED : x - y;
}

/** Only plain letters and digits sort alike in every locale. */
function textOrder(a: string, b: string): number | Unsupported {
  if (a === b) return 0;
  const plain = /^[a-z0-9]*$/;
  return plain.test(a) && plain.test(b) ? (a < b ? -1 : 1) : { unsupported: EXPRESSION, ...DIFFERENT };
}

/** Texts known to differ, their order unknown. */
const DIFFERENT = { different: true } as const;

const COMPARISON: Partial<Record<Operator, (order: number) => boolean>> = {
  "=": (o) => o === 0,
  "<>": (o) => o !== 0,
  "<": (o) => o < 0,
  ">": (o) => o > 0,
  "<=": (o) => o <= 0,
  ">=": (o) => o >= 0,
};

function compare(operator: Operator, left: CellValue, right: CellValue): boolean | Unsupported {
  const found = order(left, right);
  if (typeof found === "number") return COMPARISON[operator]?.(found) ?? false;
  if ("different" in found && (operator === "=" || operator === "<>")) return operator === "<>";
  return found;
}

/** One operator over two cells; the left side's fault comes first. */
export function operate(operator: Operator, left: CellValue, right: CellValue): CellValue | Unsupported {
  if (isCellFault(left)) return left;
  if (isCellFault(right)) return right;
  if (operator === "&") {
    const a = toText(left);
    const b = toText(right);
    return typeof a !== "string" ? a : typeof b !== "string" ? b : a + b;
  }
  const arithmetic = ARITHMETIC[operator];
  if (arithmetic === undefined) return compare(operator, left, right);
  const a = toNumber(left);
  const b = toNumber(right);
  return typeof a !== "number" ? a : typeof b !== "number" ? b : arithmetic(a, b);
}

const cellAt = (matrix: ValueMatrix, row: number, column: number): CellValue => {
  const cells = matrix.length === 1 ? matrix[0] : matrix[row];
  const cell = cells?.length === 1 ? cells[0] : cells?.[column];
  return cell === undefined ? fault("#N/A") : cell;
};

const isSingle = (matrix: ValueMatrix): boolean => matrix.length === 1 && matrix[0]?.length === 1;

/** Works cell by cell over two values; a single row, column or cell is repeated, a missing cell is #N/A. */
export function broadcast(
  left: Value,
  right: Value,
  work: (a: CellValue, b: CellValue) => CellValue | Unsupported,
): Operand {
  const a = matrixOf(left);
  const b = matrixOf(right);
  if (isSingle(a) && isSingle(b)) return work(a[0]?.[0] ?? null, b[0]?.[0] ?? null);
  const rows = Math.max(a.length, b.length);
  const columns = Math.max(a[0]?.length ?? 0, b[0]?.length ?? 0);
  if (rows * columns > MOST_CELLS_WORKED) return UNSUPPORTED;
  const result: CellValue[][] = [];
  for (let row = 0; row < rows; row++) {
    const line: CellValue[] = [];
    for (let column = 0; column < columns; column++) {
      const cell = work(cellAt(a, row, column), cellAt(b, row, column));
      if (isUnsupported(cell)) return cell;
      line.push(cell);
    }
    result.push(line);
  }
  return result;
}

const MOST_CELLS_WORKED = 40_000;
