import type { CellMatrix, CellScalar, Fault } from "../../../core";
import { isMatrixParameter } from "./functionsMetadata";
import type { HostFunctionEntry, FunctionParameter } from "./functionsMetadata";
import { isFaultValue } from "./hostValues";
import type { CallResult, HostArgument, ResultCell } from "./hostValues";

/**
 * How Excel passes arguments to a custom function and accepts its result, as documented by Microsoft ("Custom functions parameter
 * options", "Return and display errors"): omitted → null; blank → null for a single value and 0 inside a range; an error in
 * an argument is the result, the function isn't called; a range where the metadata has a single value is `#CALC!`
 * ("unliftable array", reported in OfficeDev/office-js-docs-pr issue 2238).
 */

/** An argument as the sheet engine found it, before Excel's rules. A cell is undefined where it is blank. */
export type FoundCell = string | number | boolean | Fault | undefined;
export type FoundArgument =
  | { readonly kind: "omitted" }
  | { readonly kind: "value"; readonly value: FoundCell }
  | {
      readonly kind: "range";
      readonly cells: readonly (readonly FoundCell[])[];
      /** Blank rows that follow, if the argument is a whole column. */
      readonly blankRows?: number;
    };

export type HostArguments = { readonly args: readonly HostArgument[] } | { readonly fault: Fault };

const fault = (code: string, message: string): Fault => ({ code, message });

const TYPE_WORDS: Readonly<Record<string, string>> = { number: "a number", boolean: "TRUE or FALSE" };

const asNumber = (value: string | number | boolean): number | undefined => {
  if (typeof value === "number") return value;
  if (typeof value === "boolean") return value ? 1 : 0;
  const number = value.trim() === "" ? Number.NaN : Number(value);
  return Number.isFinite(number) ? number : undefined;
};

const asBoolean = (value: string | number | boolean): boolean | undefined => {
  if (typeof value === "boolean") return value;
  if (typeof value === "number") return value !== 0;
  const word = value.trim().toUpperCase();
  return word === "TRUE" ? true : word === "FALSE" ? false : undefined;
};

const asText = (value: string | number | boolean): string =>
  typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : String(value);

/** Excel brings a value to the type that the metadata names; undefined where it can't. */
const coerce = (type: string | undefined, value: string | number | boolean): CellScalar | undefined => {
  if (type === "string") return asText(value);
  if (type === "number") return asNumber(value);
  if (type === "boolean") return asBoolean(value);
  return value;
};

const scalar = (parameter: FunctionParameter, cell: FoundCell): CellScalar | Fault => {
  if (cell === undefined) return null;
  if (isFaultValue(cell)) return cell;
  const value = coerce(parameter.type, cell);
  if (value !== undefined) return value;
  return fault("#VALUE!", `${parameter.name}: must be ${TYPE_WORDS[parameter.type ?? ""] ?? "a value"}, got "${cell}"`);
};

const matrix = (
  parameter: FunctionParameter,
  cells: readonly (readonly FoundCell[])[],
  blankRows = 0,
): CellMatrix | Fault => {
  const rows: CellScalar[][] = [];
  for (const row of cells) {
    const raw: CellScalar[] = [];
    for (const cell of row) {
      const value = cell === undefined ? 0 : scalar(parameter, cell);
      if (isFaultValue(value)) return value;
      raw.push(value);
    }
    rows.push(raw);
  }
  if (blankRows === 0) return rows;
  const blank = (rows[0] ?? []).map(() => 0);
  return rows.concat(new Array<CellScalar[]>(blankRows).fill(blank));
};

const handOne = (parameter: FunctionParameter, found: FoundArgument): CellScalar | CellMatrix | Fault => {
  if (found.kind === "omitted") return null;
  if (isMatrixParameter(parameter)) {
    return found.kind === "range"
      ? matrix(parameter, found.cells, found.blankRows)
      : matrix(parameter, [[found.value]]);
  }
  if (found.kind === "value") return scalar(parameter, found.value);
  const rows = found.cells.length;
  const columns = found.cells[0]?.length ?? 0;
  if (rows === 1 && columns === 1) return scalar(parameter, found.cells[0]?.[0]);
  return fault("#CALC!", `${parameter.name}: takes one cell, got a range of ${rows} × ${columns} cells`);
};

const handRepeating = (
  group: readonly FunctionParameter[],
  found: readonly FoundArgument[],
): HostArgument[] | Fault => {
  const lists: (CellScalar | CellMatrix)[][] = group.map(() => []);
  for (const [place, argument] of found.entries()) {
    const turn = place % group.length;
    const parameter = group[turn];
    if (parameter === undefined) continue;
    const value = handOne(parameter, argument);
    if (isFaultValue(value)) return value;
    lists[turn]?.push(value);
  }
  // A list holds matrices only or single values only, as its parameter says.
  return lists as HostArgument[];
};

/** The arguments as the function gets them, or the error value that the cell shows instead of a call. */
export const toHostArguments = (entry: HostFunctionEntry, found: readonly FoundArgument[]): HostArguments => {
  const single = entry.parameters.filter((parameter) => parameter.repeating !== true);
  const repeating = entry.parameters.filter((parameter) => parameter.repeating === true);
  if (repeating.length === 0 && found.length > single.length) {
    return {
      fault: fault("#VALUE!", `too many arguments: ${entry.id} takes at most ${single.length}, got ${found.length}`),
    };
  }
  const args: HostArgument[] = [];
  for (const [place, parameter] of single.entries()) {
    const value = handOne(parameter, found[place] ?? { kind: "omitted" });
    if (isFaultValue(value)) return { fault: value };
    args.push(value);
  }
  if (repeating.length === 0) return { args };
  const lists = handRepeating(repeating, found.slice(single.length));
  return isFaultValue(lists) ? { fault: lists } : { args: [...args, ...lists] };
};

const takeCell = (value: unknown): ResultCell => {
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") {
    return Number.isFinite(value) ? value : fault("#NUM!", `the function returned ${value}`);
  }
  if (value === null || value === undefined) return 0;
  if (isFaultValue(value)) return fault(value.code, value.message);
  return fault("#VALUE!", "the function returned something that is no cell value");
};

/** What a function returned, as the cell takes it: a matrix must be rectangular, and null shows as 0. */
export const fromHostResult = (returned: unknown): CallResult => {
  if (!Array.isArray(returned)) return takeCell(returned);
  const rows: readonly unknown[] = returned;
  const first = rows[0];
  const width = Array.isArray(first) ? first.length : 0;
  if (width === 0 || rows.some((row) => !Array.isArray(row) || row.length !== width)) {
    return fault("#VALUE!", "the function returned rows of unequal length");
  }
  return rows.map((row) => (row as readonly unknown[]).map(takeCell));
};

const messageOf = (thrown: unknown): string =>
  typeof thrown === "object" && thrown !== null && "message" in thrown ? String(thrown.message) : String(thrown);

/** What a function threw, as the cell shows it. */
export const fromThrown = (thrown: unknown): Fault =>
  isFaultValue(thrown)
    ? fault(thrown.code, typeof thrown.message === "string" ? thrown.message : "")
    : fault("#VALUE!", messageOf(thrown));
