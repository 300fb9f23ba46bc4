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

/**
 * The block with the example's values in it: label, value, unit, what it is. An optional line without a value is left
 * out: desktop Excel hands a blank cell of a range over as 0.
 */
const filledBlock = (shape: BlockShape, given: CellMatrix, system: System): CellMatrix => {
  const values = new Map(given.map(([label, value]) => [normalizeKey(String(label)), value ?? null]));
  const entries = Object.values(shape.entries);
  return blockRows(shape, system).flatMap(([label, preset, unit], place) => {
    const arg = entries[place];
    const needed = arg?.presence === "required";
    const value = values.get(normalizeKey(label)) ?? preset;
    if (value === "" && !needed) return [];
    const about = arg?.description ?? "";
    return [[label, value, typeof value === "string" ? "" : unit, needed ? `${about} (needed)` : about]];
  });
};

/** A range of inputs. */
interface Inputs {
  readonly matrix: CellMatrix;
  /** The columns that the formula refers to; the description of each label follows them. */
  readonly columns: number;
}

const inputsOf = (definition: CellFunction, { raw, system }: CallExample): readonly (Inputs | undefined)[] =>
  raw.map((value, place) => {
    if (!Array.isArray(value)) return undefined;
    const matrix = value as CellMatrix;
    const shape = placedArgs(definition)[place]?.[1].shape;
    if (shape?.type === "block") return { matrix: filledBlock(shape, matrix, system), columns: BLOCK_COLUMNS };
    return { matrix, columns: widthOf(matrix) };
  });

/** Label, value and unit. */
const BLOCK_COLUMNS = 3;

const widthOf = (matrix: CellMatrix): number => Math.max(1, ...matrix.map((row) => row.length));

export interface Insertion {
  readonly cells: readonly CellWrite[];
  /** Everything that the cells and the result will cover: it must be empty. */
  readonly area: Area;
  readonly formula: string;
  /** The cell of the formula. */
  readonly result: Address;
}

const sizeOf = (outcome: CellOutcome): { readonly rows: number; readonly columns: number } =>
  isOutcomeFault(outcome) || !isMatrix(outcome.value)
    ? { rows: 1, columns: 1 }
    : { rows: outcome.value.length, columns: outcome.value[0]?.length ?? 1 };

const token = (place: number): string => `\u0001${String(place)}\u0001`;

const cellsOf = (matrix: CellMatrix, at: Address): readonly CellWrite[] =>
  matrix.flatMap((row, down) =>
    row.flatMap((content: CellScalar, over) =>
      content === null || content === ""
        ? []
        : [{ sheet: at.sheet, row: at.row + down, column: at.column + over, content }],
    ),
  );

/**
 * The cells to write for an example: its inputs from `at` down, the formula below them, at `at` where it has none.
 * @param references texts used in the formula in place of arguments, by place
 */
export function insertionOf(
  definition: CellFunction,
  example: CallExample,
  at: Address,
  references: ReadonlyMap<number, string> = new Map(),
): Insertion {
  const size = sizeOf(example.outcome);
  const cells: CellWrite[] = [];
  const raw: CellInput[] = [...example.raw];
  const texts = new Map(references);
  let { row } = at;
  let { columns } = size;
  for (const [place, inputs] of inputsOf(definition, example).entries()) {
    if (inputs === undefined || references.has(place)) continue;
    const { matrix } = inputs;
    cells.push(...cellsOf(matrix, { ...at, row }));
    texts.set(place, cellsText({ row, column: at.column, rows: matrix.length, columns: inputs.columns }));
    row += matrix.length + 1;
    columns = Math.max(columns, widthOf(matrix));
  }
  for (const place of texts.keys()) raw[place] = token(place);
  let formula = formulaOf(definition, raw);
  for (const [place, text] of texts) formula = formula.replace(`"${token(place)}"`, () => text);
  const result = { ...at, row };
  const area = { ...at, rows: row - at.row + size.rows, columns };
  return { cells: [...cells, { ...result, content: formula }], area, formula, result };
}
