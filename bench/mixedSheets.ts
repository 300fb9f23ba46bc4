/** The sheets of the mixed workbook, with the results that its formulas give. */
import { writeFileSync } from "node:fs";
import type { CellInput, CellScalar } from "../core";
import type { CellValue } from "../src/workbook/port";
import { columnLetters } from "../src/workbook/reader/reference";
import { newWorkbook, packageBytes, type NewSheet, type PlacedCell } from "../src/workbook/package";
import { FORMULAS, isMatrix, LINES, resultOf, SHARED, type Line } from "./mixedBook";

export const INPUTS = "Inputs";
export const CALLS = "Calls";
const RANGES = "Ranges";

/** Columns of a line on the sheet of calls, counted from 0. */
export const COLUMN = { input: 0, number: 1, call: 2, follower: 3, largest: 4 };
/** Rows and columns of shared inputs and lines, counted from 0. */
export const SHARED_COLUMN = 1;
export const FIRST_ROW = 1;
/** Formulas that look at the followers of so many lines. */
const TOGETHER = 3;

/** What a cell shows: an error as the port has it. */
const cellValue = (shown: CellScalar): CellValue =>
  typeof shown === "string" && shown.startsWith("#") ? { code: shown } : shown;

const text = (value: CellScalar): string => {
  if (value === null) return "";
  if (typeof value === "string") return `"${value.replaceAll('"', '""')}"`;
  return String(value).toUpperCase();
};

interface Ranges {
  readonly cells: readonly PlacedCell[];
  /** The text of a range in a formula, for one that is put there. */
  place(line: Line, argument: number, row: number): string;
}

/** Ranges one below the other; those without a number that differs are shared. */
function rangesSheet(): Ranges {
  const cells: PlacedCell[] = [];
  const known = new Map<CellInput, string>();
  let next = 0;
  const put = (
    values: readonly (readonly CellScalar[])[],
    formulaAt: (row: number, column: number) => string,
  ): string => {
    const first = next;
    for (const [down, row] of values.entries())
      for (const [over, value] of row.entries()) {
        const formula = formulaAt(down, over);
        if (value !== null) cells.push({ row: first + down, column: over, value, ...(formula !== "" && { formula }) });
      }
    next += values.length + 1;
    const last = columnLetters((values[0]?.length ?? 1) - 1);
    return `${RANGES}!$A$${first + 1}:$${last}$${first + values.length}`;
  };
  return {
    cells,
    place: ({ args, varied, input }, argument, row) => {
      const given = args[argument] ?? null;
      if (!isMatrix(given)) return "";
      const cell = varied?.argument === argument ? varied.cell : undefined;
      if (cell === undefined) {
        const placed = known.get(given) ?? put(given, () => "");
        known.set(given, placed);
        return placed;
      }
      const isIt = (down: number, over: number): boolean => down === cell[0] && over === cell[1];
      const values = given.map((line, down) => line.map((old, over) => (isIt(down, over) ? input : old)));
      return put(values, (down, over) => (isIt(down, over) ? `${CALLS}!$B$${row + 1}` : ""));
    },
  };
}

function callFormula(line: Line, row: number, ranges: Ranges): string {
  const { id, args, varied, shown } = line;
  const texts = args.map((value, at) => {
    if (isMatrix(value)) return ranges.place(line, at, row);
    return varied?.argument === at ? `B${row + 1}` : text(value);
  });
  while (texts.at(-1) === "") texts.pop();
  const call = `_xldudf_WARMBACK_${id.replaceAll(".", "_")}(${texts.join(",")})`;
  return shown === undefined ? call : `INDEX(${call},${shown[0] + 1},${shown[1] + 1})`;
}

/** What the formula behind a call gives. */
export const followerOf = (result: CellScalar): CellScalar => (typeof result === "number" ? result * 1.1 : result);

export const rowOf = (at: number): number => FIRST_ROW + at;

function callCells(lines: readonly Line[], ranges: Ranges): readonly PlacedCell[] {
  const results = lines.map((line) => resultOf(line, line.input));
  return lines.flatMap((line, at): PlacedCell[] => {
    const row = rowOf(at);
    const result = results[at] ?? null;
    return [
      { row, column: COLUMN.input, value: line.input },
      {
        row,
        column: COLUMN.number,
        value: line.input,
        formula: `A${row + 1}*${INPUTS}!$B$${FIRST_ROW + line.shared + 1}`,
      },
      { row, column: COLUMN.call, value: cellValue(result), formula: callFormula(line, row, ranges) },
      {
        row,
        column: COLUMN.follower,
        value: cellValue(followerOf(result)),
        formula: `IF(ISNUMBER(C${row + 1}),C${row + 1}*1.1,C${row + 1})`,
      },
    ];
  });
}

/** The largest of a line's follower and those of the next two. */
export function largestOf(results: readonly CellScalar[], at: number): number {
  const numbers = results
    .slice(at, at + TOGETHER)
    .map(followerOf)
    .filter((each) => typeof each === "number");
  return numbers.length === 0 ? 0 : Math.max(...numbers);
}

/** Formulas that fill up to their number, one a line from the first on. */
function largestCells(lines: readonly Line[], count: number): readonly PlacedCell[] {
  const results = lines.map((line) => resultOf(line, line.input));
  return Array.from({ length: count }, (_, at) => ({
    row: rowOf(at),
    column: COLUMN.largest,
    value: largestOf(results, at),
    formula: `MAX(D${rowOf(at) + 1}:D${rowOf(at) + TOGETHER})`,
  }));
}

const formulasOf = (cells: readonly PlacedCell[]): number =>
  cells.filter(({ formula }) => formula !== undefined).length;

export interface MixedSheets {
  readonly sheets: readonly NewSheet[];
  /** How many lines have a formula of the largest of three. */
  readonly largest: number;
}

export function mixedSheets(lines: readonly Line[]): MixedSheets {
  const ranges = rangesSheet();
  const calls = callCells(lines, ranges);
  const largest = FORMULAS - formulasOf(calls) - formulasOf(ranges.cells);
  if (largest < 0 || largest > LINES) throw new Error(`${largest} formulas are left to fill ${FORMULAS}`);
  const shared = Array.from({ length: SHARED }, (_, at) => [
    { row: FIRST_ROW + at, column: 0, value: `Shared input ${at + 1}` },
    { row: FIRST_ROW + at, column: SHARED_COLUMN, value: 1 },
  ]).flat();
  return {
    sheets: [
      { name: INPUTS, cells: shared },
      { name: CALLS, cells: [...calls, ...largestCells(lines, largest)] },
      { name: RANGES, cells: ranges.cells },
    ],
    largest,
  };
}

export async function writeMixed({ sheets }: MixedSheets, path: string): Promise<void> {
  writeFileSync(path, await packageBytes(await newWorkbook(sheets)));
}
