/**
 * Whole columns and rows in formulas of sheets so long that the engine can't work through them cell by cell: what each
 * function makes of the empty cells behind the last used one, which decides whether the used cells are enough.
 */
import type { Area } from "../../../workbook/port";
import { plainName } from "../../../workbook/reader/evaluate";
import type { CallTree, Tree } from "../../../workbook/reader/tree";
import { CELL_BY_CELL, READABLE } from "./functions";

/** Lines shorter than these are worked through as they are. */
export const LONG_ROWS = 100_000;
export const LONG_COLUMNS = 10_000;

/** No array of a long line holds more cells than these, and no result that is spilled over a sheet. */
export const MOST_LINE_CELLS = 100_000;

const names = (text: string): ReadonlySet<string> => new Set(text.split(" "));

/** Each further cell of the same kind adds the same to the result. */
const SUMS = names(
  "ROWS COLUMNS SUM SUMSQ COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS SUMIF SUMIFS SUMPRODUCT SUMX2MY2 SUMX2PY2 SUMXMY2",
);

/** Where one further cell of a kind changes nothing, no number of them does. */
const STEADY = names(
  "MAX MIN MAXA MINA AND OR PRODUCT AVERAGE AVERAGEA AVERAGEIF AVERAGEIFS MAXIFS MINIFS MATCH XMATCH XLOOKUP VLOOKUP " +
    "HLOOKUP LOOKUP FILTER UNIQUE TEXTJOIN CONCAT",
);

/** They take no notice of empty cells in a range; a calculation makes numbers of those. */
const WITHOUT_BLANKS = names(
  "MEDIAN MODE MODE.SNGL STDEV STDEV.S STDEV.P STDEVA STDEVP STDEVPA VAR VAR.S VAR.P VARA VARP VARPA DEVSQ AVEDEV " +
    "GEOMEAN HARMEAN KURT SKEW SKEW.P SUBTOTAL LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE " +
    "QUARTILE.INC QUARTILE.EXC TRIMMEAN RANK RANK.EQ RANK.AVG CORREL PEARSON RSQ SLOPE INTERCEPT STEYX COVAR " +
    "COVARIANCE.P COVARIANCE.S FORECAST FORECAST.LINEAR",
);

/** They give each row or column its number. */
const NUMBERS = names("ROW COLUMN");

/**
 * "sum" and "steady": over ranges and calculations. "blankless": over ranges. "corners": ranges as they are, for a result
 * of one cell. "cells": cell by cell. "none": as many results as cells.
 */
export type LineUse = "sum" | "steady" | "blankless" | "corners" | "cells" | "none";

export function lineUse(name: string): LineUse {
  if (SUMS.has(name)) return "sum";
  if (STEADY.has(name)) return "steady";
  if (WITHOUT_BLANKS.has(name)) return "blankless";
  const known = READABLE.get(name);
  // What isn't Excel's gets its ranges as they are.
  if (known === undefined) return "corners";
  if (CELL_BY_CELL.has(name)) return "cells";
  const isPlain = !known.spills && [...known.first, ...known.rest].every((kind) => kind === "s" || kind === "b");
  if (isPlain) return "cells";
  return known.spills || NUMBERS.has(name) ? "none" : "corners";
}

/** What a part of a formula is: a long line itself, something worked out for each of its cells, or neither. */
export type LineKind = "short" | "line" | "calculated";

/** @returns undefined where the function needs every cell of the line */
export function kindOfCall(name: string, parts: readonly LineKind[]): LineKind | undefined {
  if (parts.every((part) => part === "short")) return "short";
  const use = lineUse(name);
  const isDirect = !parts.includes("calculated");
  if (use === "cells") return "calculated";
  if (use === "sum" || use === "steady") return "short";
  return (use === "blankless" || use === "corners") && isDirect ? "short" : undefined;
}

export const LONG_LINES = "calculations over whole columns or rows that need each of their cells";

/** The cells that a reference or a name means, or the calculation that a name holds. */
export type LineReader = (text: string) => readonly Area[] | Tree | undefined;

export interface LongSheets {
  readonly rows: ReadonlySet<string>;
  readonly columns: ReadonlySet<string>;
}

/** The sheet engine gives a sheet this much room behind its last cell. */
const SPARE_ROWS = 50;
const SPARE_COLUMNS = 10;

export function longSheetsOf(
  sheets: Iterable<readonly [name: string, cells: readonly { readonly row: number; readonly column: number }[]]>,
): LongSheets {
  const [rows, columns] = [new Set<string>(), new Set<string>()];
  for (const [name, cells] of sheets)
    for (const { row, column } of cells) {
      if (row + SPARE_ROWS > LONG_ROWS) rows.add(name);
      if (column + SPARE_COLUMNS > LONG_COLUMNS) columns.add(name);
    }
  return { rows, columns };
}

const isLong = ({ sheet, rows, columns }: Area, long: LongSheets): boolean =>
  rows * columns > MOST_LINE_CELLS &&
  ((rows > LONG_ROWS && long.rows.has(sheet)) || (columns > LONG_COLUMNS && long.columns.has(sheet)));

const calculated = (parts: readonly (LineKind | undefined)[]): LineKind | undefined => {
  if (parts.includes(undefined)) return undefined;
  return parts.every((part) => part === "short") ? "short" : "calculated";
};

/** Names lead to calculations with names. */
const DEEPEST_NAMES = 8;

function kindOfTree(tree: Tree, long: LongSheets, read: LineReader, depth: number): LineKind | undefined {
  const inner = (part: Tree): LineKind | undefined => kindOfTree(part, long, read, depth);
  if (tree.kind === "group") return inner(tree.of);
  if (tree.kind === "sign" && tree.sign === "@") return "short";
  if (tree.kind === "sign" || tree.kind === "percent") return calculated([inner(tree.of)]);
  if (tree.kind === "binary") return kindOfBinary(tree, [inner(tree.left), inner(tree.right)]);
  if (tree.kind === "call") return kindOfCallTree(tree, tree.args.map(inner));
  if (tree.kind !== "reference") return "short";
  const found = read(tree.text);
  if (found === undefined) return "short";
  if ("kind" in found) return depth === 0 ? undefined : kindOfTree(found, long, read, depth - 1);
  return found.some((area) => isLong(area, long)) ? "line" : "short";
}

function kindOfBinary(
  { operator }: Tree & { kind: "binary" },
  parts: readonly (LineKind | undefined)[],
): LineKind | undefined {
  if (operator !== ":" && operator !== " " && operator !== ",") return calculated(parts);
  if (parts.includes(undefined)) return undefined;
  return parts.includes("line") ? "line" : "short";
}

function kindOfCallTree({ name }: CallTree, parts: readonly (LineKind | undefined)[]): LineKind | undefined {
  const known = parts.flatMap((part) => part ?? []);
  if (known.length < parts.length) return undefined;
  const plain = plainName(name);
  if (plain === "SINGLE") return "short";
  return plain === "LET" && known.includes("line") ? undefined : kindOfCall(plain, known);
}

/** Whether the engine can work a formula out from the used cells of the long lines in it. */
export const needsLongLines = (tree: Tree, long: LongSheets, read: LineReader): boolean =>
  kindOfTree(tree, long, read, DEEPEST_NAMES) !== "short";
