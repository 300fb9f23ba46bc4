/** Published checks: a definition's examples with the value that print or another program gives. */
import type { CellFunction, Check, Catalogue } from "../define/cellFunction";
import { normalizeKey } from "../define/argument";
import { rawByPlace } from "./describe";
import { compile, evaluate } from "../call/evaluate";
import { isFault, notAvailable, type Fault } from "../values/fault";
import type { CellOut, Out } from "../call/present";

export interface CheckResult {
  readonly id: string;
  readonly check: Check;
  /** What was compared: "" for a single value, else the row (and column). */
  readonly what: string;
  readonly expected: number | string;
  readonly got: CellOut;
  readonly agrees: boolean;
}

const within = (expected: number | string, got: CellOut, tolerance: Check["tolerance"]): boolean => {
  if (typeof expected !== "number" || typeof got !== "number") return expected === got;
  const allowed = typeof tolerance === "string" ? (parseFloat(tolerance) / 100) * Math.abs(expected) : (tolerance ?? 0);
  return Math.abs(got - expected) <= allowed * (1 + 1e-9) + 1e-12 * Math.abs(expected);
};

const absent = (what: string): Fault => notAvailable(`no ${what} in the result`);

/** A number names its row to within rounding, a word without case and spacing. */
const isRow = (first: CellOut, row: string | number): boolean =>
  typeof first === "number" && typeof row === "number"
    ? Math.abs(first - row) <= 1e-9 * Math.max(1, Math.abs(row))
    : normalizeKey(String(first)) === normalizeKey(String(row));

/** A column's head without the unit behind it. */
const withoutUnit = (head: string): string => head.replace(/\s*\([^()]*(?:\([^()]*\))?[^()]*\)$/, "");

const cellAt = (out: Out, row: string | number, column?: string): CellOut => {
  if (!Array.isArray(out)) return absent("table");
  const matrix = out as readonly (readonly CellOut[])[];
  const line = matrix.find(([first = ""]) => isRow(first, row));
  if (column === undefined) return (matrix.length === 1 ? undefined : line?.[1]) ?? absent(`row ${row}`);
  const heads = matrix[0] ?? [];
  const place = heads.findIndex(
    (head) => normalizeKey(withoutUnit(String(head))) === normalizeKey(withoutUnit(column)),
  );
  return (place < 0 ? undefined : line?.[place]) ?? absent(`column ${column} in row ${row}`);
};

interface Comparison {
  readonly row?: string | number;
  readonly column?: string;
  readonly value: number | string;
}

/** The comparisons of one check. */
const comparisonsOf = (expected: Check["expected"]): readonly Comparison[] => {
  if (typeof expected !== "object") return [{ value: expected }];
  if ("column" in expected && "row" in expected && "value" in expected) return [expected as Comparison];
  return Object.entries(expected as Readonly<Record<string, number | string>>).map(([row, value]) => ({ row, value }));
};

const rowCell = (definition: CellFunction, out: Out, row: string): CellOut => {
  if (definition.returns.type !== "row") return cellAt(out, row);
  const place = Object.keys(definition.returns.cells).findIndex((key) => normalizeKey(key) === normalizeKey(row));
  return (out as readonly (readonly CellOut[])[])[0]?.[place] ?? absent(`cell ${row}`);
};

/** Runs one check. A check that expects an error code ("#N/A") compares the code. */
export const runCheck = (definition: CellFunction, check: Check, catalogue: Catalogue): readonly CheckResult[] => {
  const out = evaluate(compile(definition), rawByPlace(definition, check.inputs), catalogue);
  return comparisonsOf(check.expected).map(({ row, column, value }) => {
    const got: CellOut = isFault(out)
      ? out
      : row === undefined
        ? (out as CellOut)
        : column === undefined
          ? rowCell(definition, out, String(row))
          : cellAt(out, row, column);
    const compared = isFault(got) && typeof value === "string" && value.startsWith("#") ? got.code : got;
    const what = [row, column].filter((each) => each !== undefined).join(", ");
    return { id: definition.id, check, what, expected: value, got, agrees: within(value, compared, check.tolerance) };
  });
};
