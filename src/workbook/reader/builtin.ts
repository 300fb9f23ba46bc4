/** The few built-in functions that this reader evaluates itself, as Excel documents them. */
import { isCellFault } from "../port";
import type { CellFault, CellValue } from "../port";
import { isMatrix, matrixOf, topLeft } from "../values";
import type { Value } from "../values";
import { fault, isUnsupported, broadcast, toCondition, toNumber, UNSUPPORTED } from "./operators";
import type { Operand, Unsupported } from "./operators";
import type { Tree } from "./tree";

type BuiltIn = (args: readonly Tree[], value: (argument: Tree) => Operand) => Operand;

const isOne = (value: Value): boolean => {
  const matrix = matrixOf(value);
  return matrix.length === 1 && matrix[0]?.length === 1;
};

/** An argument that must be one cell: a matrix is beyond this reader. */
function one(argument: Tree | undefined, value: (argument: Tree) => Operand): CellValue | Unsupported {
  const answer = argument === undefined ? null : value(argument);
  if (isUnsupported(answer)) return answer;
  return isOne(answer) ? topLeft(answer) : UNSUPPORTED;
}

/** IF(condition, then, [else]): only the chosen branch is evaluated; an empty branch is 0, a missing one FALSE. */
const choose: BuiltIn = (args, value) => {
  if (args.length < 2 || args.length > 3) return UNSUPPORTED;
  const cell = one(args[0], value);
  const holds = isUnsupported(cell) ? cell : toCondition(cell);
  if (typeof holds !== "boolean") return holds;
  const branch = args[holds ? 1 : 2];
  if (branch === undefined) return false;
  return branch.kind === "omitted" ? 0 : value(branch);
};

/** IFERROR(value, instead), cell by cell. Hosts differ in the result for a blank: unsupported. */
const orElse: BuiltIn = (args, value) => {
  const [first, second] = args;
  if (first === undefined || second === undefined || args.length > 2) return UNSUPPORTED;
  const answer = value(first);
  if (isUnsupported(answer)) return answer;
  const cells = matrixOf(answer).flat();
  if (cells.includes(null)) return UNSUPPORTED;
  if (!cells.some(isCellFault)) return answer;
  const instead = value(second);
  return isUnsupported(instead)
    ? instead
    : broadcast(answer, instead, (cell, other) => (isCellFault(cell) ? other : cell));
};

/** The numbers of SUM, MIN and MAX: typed values are converted, texts and booleans in cells are left out. */
function numbers(
  args: readonly Tree[],
  value: (argument: Tree) => Operand,
): readonly number[] | CellFault | Unsupported {
  const found: number[] = [];
  for (const argument of args) {
    const answer = value(argument);
    if (isUnsupported(answer)) return answer;
    const taken = isMatrix(answer) ? inCells(answer.flat()) : toNumber(answer);
    if (typeof taken === "number") found.push(taken);
    else if (Array.isArray(taken)) for (const number of taken) found.push(number as number);
    else return taken;
  }
  return found;
}

function inCells(cells: readonly CellValue[]): readonly number[] | CellFault {
  return cells.find(isCellFault) ?? cells.filter((cell) => typeof cell === "number");
}

const gather =
  (work: (numbers: readonly number[]) => number): BuiltIn =>
  (args, value) => {
    const found = numbers(args, value);
    if (!Array.isArray(found)) return found as CellFault | Unsupported;
    const result = work(found as readonly number[]);
    return Number.isFinite(result) ? result : fault("#NUM!");
  };

const least = (all: readonly number[]): number => all.reduce((a, b) => Math.min(a, b), all[0] ?? 0);
const most = (all: readonly number[]): number => all.reduce((a, b) => Math.max(a, b), all[0] ?? 0);

/** Moves the decimal point in a number's own digits, so that 2.675 rounds as it reads. */
function shifted(value: number, places: number): number {
  const [digits = "0", exponent = "0"] = value.toPrecision(15).split("e");
  return Number(`${digits}e${String(Number(exponent) + places)}`);
}

/** ROUND: halves go away from zero. */
function rounded(value: number, places: number): number {
  const whole = Math.trunc(places);
  if (Math.abs(whole) > 300) return whole > 0 ? value : 0;
  return Math.sign(value) * shifted(Math.round(shifted(Math.abs(value), whole)), -whole);
}

const round: BuiltIn = (args, value) => {
  const [first, second] = args;
  if (first === undefined || second === undefined || args.length > 2) return UNSUPPORTED;
  const answer = value(first);
  if (isUnsupported(answer)) return answer;
  const places = value(second);
  if (isUnsupported(places)) return places;
  return broadcast(answer, places, (cell, by) => {
    const number = toNumber(cell);
    const digits = toNumber(by);
    return typeof number !== "number" ? number : typeof digits !== "number" ? digits : rounded(number, digits);
  });
};

/** INDEX(array, row, [column]): 0 takes the whole row or column; one number counts along a single row. */
const index: BuiltIn = (args, value) => {
  const [first, ...at] = args;
  if (first === undefined || at.length < 1 || at.length > 2) return UNSUPPORTED;
  const answer = value(first);
  if (isUnsupported(answer)) return answer;
  if (!isMatrix(answer) && isCellFault(answer)) return answer;
  const matrix = matrixOf(answer);
  const place: number[] = [];
  for (const argument of at) {
    const cell = one(argument, value);
    const number = isUnsupported(cell) ? cell : toNumber(cell);
    if (typeof number !== "number") return number;
    place.push(Math.trunc(number));
  }
  const along = at.length === 1 && matrix.length === 1;
  const [row, column] = along ? [1, place[0] ?? 0] : [place[0] ?? 0, place[1] ?? (matrix[0]?.length === 1 ? 1 : 0)];
  return picked(matrix, row, column);
};

function picked(matrix: readonly (readonly CellValue[])[], row: number, column: number): Operand {
  if (row < 0 || column < 0) return fault("#VALUE!");
  if (row > matrix.length || column > (matrix[0]?.length ?? 0)) return fault("#REF!");
  const rows = row === 0 ? matrix : matrix.slice(row - 1, row);
  return column === 0 ? rows : rows.map((cells) => cells.slice(column - 1, column));
}

export const BUILT_IN: ReadonlyMap<string, BuiltIn> = new Map<string, BuiltIn>([
  ["IF", choose],
  ["IFERROR", orElse],
  ["SUM", gather((all) => all.reduce((a, b) => a + b, 0))],
  ["MIN", gather(least)],
  ["MAX", gather(most)],
  ["ROUND", round],
  ["INDEX", index],
]);
