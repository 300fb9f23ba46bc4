/** Converts a function's example into cells to write: matrices become ranges beside the formula, blocks are written in full. */
import {
  blockRows,
  type BlockShape,
  type CellFunction,
  exampleArgs,
  normalizeKey,
  formulaOf,
  placedArgs,
  type CellInput,
  rawByPlace,
  type CellMatrix,
  type CellScalar,
  type System,
} from "../../../core";
import type { Address, Area, CellWrite } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";
import { isMatrix, isOutcomeFault, type CellOutcome } from "../../workbook/values";

export interface CallExample {
  readonly raw: readonly CellInput[];
  readonly formula: string;
  readonly system: System;
  readonly outcome: CellOutcome;
}

/**
 * A function's example, as on its help page; undefined if it has none.
 * @param call runs it
 */
export function exampleOf(
  definition: CellFunction,
  call: (raw: readonly CellInput[]) => CellOutcome,
): CallExample | undefined {
  const at = exampleArgs(definition);
  if (at === undefined) return undefined;
  const raw = rawByPlace(definition, at);
  const system = at.units === "SI" ? "SI" : "US";
  return { raw, formula: formulaOf(definition, raw), system, outcome: call(raw) };
}

/** The whole block with the example's values in it: label, value, unit, what it is. */
const fullBlock = (shape: BlockShape, given: CellMatrix, system: System): CellMatrix => {
  const values = new Map(given.map(([label, value]) => [normalizeKey(String(label)), value ?? null]));
  const abouts = Object.values(shape.entries).map((arg) =>
    arg.presence === "required" ? `${arg.description} (needed)` : arg.description,
  );
  return blockRows(shape, system).map(([label, preset, unit], place) => {
    const own = values.get(normalizeKey(label));
    const value = own === undefined ? preset : own;
    return [label, value, typeof value === "string" ? "" : unit, abouts[place] ?? ""];
  });
};

interface Beside {
  readonly matrix: CellMatrix;
  /** The columns that the formula refers to; the description of each label follows them. */
  readonly columns: number;
}

const beside = (definition: CellFunction, { raw, system }: CallExample): readonly (Beside | undefined)[] =>
  placedArgs(definition).map(([, { shape }], place) => {
    const value = raw[place];
    if (!Array.isArray(value)) return undefined;
    const matrix = value as CellMatrix;
    if (shape.type === "block") return { matrix: fullBlock(shape, matrix, system), columns: 3 };
    return { matrix, columns: matrix[0]?.length ?? 1 };
  });

const widthOf = ({ matrix }: Beside): number => Math.max(1, ...matrix.map((row) => row.length));

export interface Insertion {
  readonly cells: readonly CellWrite[];
  /** Everything that the cells and the result will cover: it must be empty. */
  readonly area: Area;
  readonly formula: string;
}

const sizeOf = (outcome: CellOutcome): { readonly rows: number; readonly columns: number } =>
  isOutcomeFault(outcome) || !isMatrix(outcome.value)
    ? { rows: 1, columns: 1 }
    : { rows: outcome.value.length, columns: outcome.value[0]?.length ?? 1 };

const token = (place: number): string => `\u0001${String(place)}`;

const cellsOf = (matrix: CellMatrix, at: Address): readonly CellWrite[] =>
  matrix.flatMap((row, down) =>
    row.flatMap((content: CellScalar, over) =>
      content === null || content === ""
        ? []
        : [{ sheet: at.sheet, row: at.row + down, column: at.column + over, content }],
    ),
  );

/** The cells to write for an example with its formula at `at`. */
export function insertionOf(definition: CellFunction, example: CallExample, at: Address): Insertion {
  const result = sizeOf(example.outcome);
  const cells: CellWrite[] = [];
  const raw: CellInput[] = [...example.raw];
  const references = new Map<number, string>();
  let column = at.column + result.columns + 1;
  let rows = result.rows;
  for (const [place, one] of beside(definition, example).entries()) {
    if (one === undefined) continue;
    const area = { row: at.row, column, rows: one.matrix.length, columns: one.columns };
    cells.push(...cellsOf(one.matrix, { sheet: at.sheet, row: at.row, column }));
    references.set(place, cellsText(area));
    raw[place] = token(place);
    column += widthOf(one) + 1;
    rows = Math.max(rows, one.matrix.length);
  }
  let formula = formulaOf(definition, raw);
  for (const [place, reference] of references) formula = formula.replace(`"${token(place)}"`, reference);
  const columns = Math.max(result.columns, column - 1 - at.column);
  const area = { ...at, rows, columns: references.size === 0 ? result.columns : columns };
  return { cells: [...cells, { ...at, content: formula }], area, formula };
}
