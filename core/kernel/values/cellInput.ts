/** Values that a host passes to a cell function and accepts in return. */
import { valueError, hostError } from "./fault";

export type CellScalar = string | number | boolean | null;
export type CellMatrix = readonly (readonly CellScalar[])[];
export type CellInput = CellScalar | CellMatrix;

/** Excel's own limit for a text in a formula. */
const MAX_TEXT = 255;

/** Characters of a text that a message quotes. */
const MAX_QUOTED = 60;

/** The largest range that one argument may hold, in cells. */
export const MAX_ARGUMENT_CELLS = 40_000;

const ERRORS =
  /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NAME\?|NUM!|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!|EXTERNAL!)$/;

/** Whether a text is an error value of the sheet. */
export const isErrorText = (value: unknown): value is string =>
  typeof value === "string" && value.startsWith("#") && ERRORS.test(value);

const isScalar = (value: unknown): value is CellScalar =>
  value === null || typeof value === "string" || typeof value === "number" || typeof value === "boolean";

/** "3 rows × 2 columns". */
export const sizeText = (matrix: CellMatrix): string => {
  const columns = matrix[0]?.length ?? 0;
  return `${matrix.length} row${matrix.length === 1 ? "" : "s"} × ${columns} column${columns === 1 ? "" : "s"}`;
};

/** A text in quotation marks, cut where it is long: messages fit a cell's tool tip. */
export const quoteText = (text: string): string =>
  `"${text.length > MAX_QUOTED ? `${text.slice(0, MAX_QUOTED - 1)}…` : text}"`;

const notFinite = (value: number): string => (Number.isNaN(value) ? "no number" : "infinity");

const checkedScalar = (value: CellScalar, name: string): CellScalar => {
  if (typeof value === "string" && value.length > MAX_TEXT)
    throw valueError(
      `${name}: a text may have at most ${MAX_TEXT} characters, got ${value.length}: ${quoteText(value)}`,
    );
  return value;
};

/**
 * Removes from a raw value what no host should send. Anything but a scalar or a matrix of scalars counts as omitted: an
 * absent value, or an object that a host appended under stale metadata. A matrix of one cell becomes that cell.
 */
export const normalizeInput = (value: unknown, name: string, most = MAX_ARGUMENT_CELLS): CellInput => {
  if (isScalar(value)) return checkedScalar(value, name);
  if (!Array.isArray(value)) return null;
  const rows = value as readonly unknown[];
  const first = rows[0];
  if (!Array.isArray(first)) return null;
  if (rows.length === 1 && first.length === 1) return isScalar(first[0]) ? checkedScalar(first[0], name) : null;
  if (rows.length * first.length > most)
    throw valueError(
      `${name}: a range may hold at most ${most} cells, got ${rows.length} × ${first.length}; name the filled cells rather than a whole column`,
    );
  return rows.map((row) =>
    Array.isArray(row) ? row.map((cell: unknown) => (isScalar(cell) ? checkedScalar(cell, name) : null)) : [],
  );
};

/** Throws if an argument is an error value of the sheet: the error passes through unchanged. */
export const refuseErrorText = (value: CellScalar, name: string): void => {
  if (isErrorText(value)) throw hostError(value, `${name}: holds ${value}`);
};

/** Describes an input for a message. */
export const describeInput = (value: CellInput): string => {
  if (value === null || value === "") return "a blank";
  if (typeof value === "string") return quoteText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return Number.isFinite(value) ? String(value) : notFinite(value);
  return `a range of ${sizeText(value)}`;
};
