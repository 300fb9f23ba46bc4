/**
 * A workbook of 10,000 formulas (invented), as its calls: all functions, with the arguments of their own examples and checks,
 * one number of which differs from line to line and depends on an input of its own and on one that many lines share.
 */
import { CATALOGUE, exampleArgs, rawByPlace, type CellFunction, type CellInput, type CellScalar } from "../core";
import { panelEngine } from "../src/taskpane/engine";
import { sessionLog } from "../src/workbook/callLog";
import type { CellOutcome, Value } from "../src/workbook/values";

export const FORMULAS = 10_000;
/** Each has an input, the number that the call gets, the call, and a formula that depends on it. */
export const LINES = 2_800;
/** Shared inputs, and how many lines depend on the first. */
export const SHARED = 10;
export const OF_FIRST = 1_000;

/** Lines of a function; those of light functions fill up the rest. A table's own range takes room. */
const MEMOISED_LINES = 8;
const RANGE_LINES = 6;
const SLOW_LINES = 2;

/** It runs the published checks of every function: one call of it takes longer than a thousand others. */
const LEFT_OUT = new Set(["NOTE.SELFTEST"]);

/** How far inputs get from those of the example: a line is of use where its result changes over this. */
const FACTORS = [1, 1.0173, 1.12];
const MOST_TRIED = 24;

/** Where the number is that differs: an argument, or a cell of one that is a range. */
export interface Place {
  readonly argument: number;
  readonly cell?: readonly [row: number, column: number];
}

/** One call with what surrounds it. */
export interface Line {
  readonly id: string;
  readonly args: readonly CellInput[];
  /** Missing where the function has no number to differ. */
  readonly varied?: Place;
  /** The number in the input cell. */
  readonly input: number;
  /** Which shared input it is multiplied by. */
  readonly shared: number;
  /** The cell of a table that is shown. */
  readonly shown?: readonly [row: number, column: number];
}

type Variant = Pick<Line, "id" | "args" | "varied" | "input" | "shown">;

const ENGINE = panelEngine(sessionLog());

export const isMatrix = (value: CellInput): value is readonly (readonly CellScalar[])[] => Array.isArray(value);

/** A cell of a range that holds nothing arrives as 0. */
const asCells = (value: CellInput): CellInput =>
  isMatrix(value) ? value.map((row) => row.map((cell) => (cell === "" ? 0 : (cell ?? 0)))) : value;

function withNumber(args: readonly CellInput[], { argument, cell }: Place, number: number): readonly CellInput[] {
  const given = args[argument] ?? null;
  const value =
    cell !== undefined && isMatrix(given)
      ? given.map((row, down) => row.map((old, over) => (down === cell[0] && over === cell[1] ? number : old)))
      : number;
  return args.map((old, at) => (at === argument ? value : old));
}

function shownOf(outcome: CellOutcome, shown: Line["shown"]): CellScalar {
  if (!("value" in outcome)) return outcome.code;
  const { value } = outcome;
  if (!Array.isArray(value)) return value as CellScalar;
  const cell = (value as Extract<Value, readonly unknown[]>)[shown?.[0] ?? 0]?.[shown?.[1] ?? 0] ?? null;
  return typeof cell === "object" && cell !== null ? cell.code : cell;
}

/** What the core gives for a line whose number is this; an error's code where it fails. */
export function resultOf({ id, args, varied, shown }: Variant, number: number): CellScalar {
  return shownOf(ENGINE.call(id, varied === undefined ? args : withNumber(args, varied, number)), shown);
}

const isNumber = (value: unknown): value is number => typeof value === "number" && value !== 0;

/** The numbers among arguments: single ones first. */
function placesOf(args: readonly CellInput[]): readonly { readonly place: Place; readonly number: number }[] {
  const single = args.flatMap((value, argument) => (isNumber(value) ? [{ place: { argument }, number: value }] : []));
  const inRanges = args.flatMap((value, argument) =>
    isMatrix(value)
      ? value.flatMap((row, down) =>
          row.flatMap((cell, over) =>
            isNumber(cell) ? [{ place: { argument, cell: [down, over] as const }, number: cell }] : [],
          ),
        )
      : [],
  );
  return [...single, ...inRanges];
}

/** The cells of results: those that differ from each other, or the first that holds something. */
function shownCell(outcomes: readonly CellOutcome[]): Line["shown"] | "single" | undefined {
  const [first] = outcomes;
  if (first === undefined || !outcomes.every((each) => "value" in each)) return undefined;
  const differs = (shown?: readonly [number, number]): boolean =>
    new Set(outcomes.map((each) => shownOf(each, shown))).size === outcomes.length;
  const isTable = "value" in first && Array.isArray(first.value);
  if (!isTable) return outcomes.length === 1 || differs() ? "single" : undefined;
  const rows = first.value as readonly (readonly CellScalar[])[];
  for (const [down, row] of rows.entries())
    for (const [over, cell] of row.entries())
      if (typeof cell === "number" && differs([down, over])) return [down, over];
  return outcomes.length === 1 ? [0, 0] : undefined;
}

function listsOf(definition: CellFunction): readonly (readonly CellInput[])[] {
  const example = exampleArgs(definition);
  const all = [...(example === undefined ? [] : [example]), ...definition.checks.map(({ inputs }) => inputs)];
  const lists = all.map((inputs) => rawByPlace(definition, inputs).map(asCells));
  return lists.length === 0 ? [[]] : lists;
}

/** The ways in which a function's examples can differ; one that stays as it is where there is none. */
function variantsOf(definition: CellFunction): readonly Variant[] {
  const { id } = definition;
  const variants: Variant[] = [];
  const most = definition.slow ? 1 : 4;
  let tried = 0;
  for (const args of listsOf(definition))
    for (const { place, number } of placesOf(args)) {
      if (variants.length === most || tried++ === MOST_TRIED) return variants;
      const outcomes = FACTORS.map((factor) => ENGINE.call(id, withNumber(args, place, number * factor)));
      const shown = shownCell(outcomes);
      if (shown === undefined) continue;
      variants.push({ id, args, varied: place, input: number, ...(shown !== "single" && { shown }) });
    }
  return variants;
}

/** Examples without a number that makes a difference. */
function fixedOf(definition: CellFunction): readonly Variant[] {
  const { id } = definition;
  for (const args of listsOf(definition)) {
    const shown = shownCell([ENGINE.call(id, args)]);
    if (shown !== undefined) return [{ id, args, input: 1, ...(shown !== "single" && { shown }) }];
  }
  return [];
}

const isInRange = ({ varied }: Variant): boolean => varied?.cell !== undefined;

/** As many lines as a function gets; undefined: as many as there is room for. */
function countOf({ slow, memoised }: CellFunction, variants: readonly Variant[]): number | undefined {
  if (slow) return SLOW_LINES;
  if (variants.every(({ varied }) => varied === undefined)) return 1;
  if (variants.some(isInRange)) return RANGE_LINES;
  return memoised ? MEMOISED_LINES : undefined;
}

/** Inputs of a function's lines differ by a hundredth of a per cent and more, and none is as the example has it. */
const inputOf = ({ input }: Variant, at: number): number => Number((input * (1 + (at + 1) * 0.0013)).toPrecision(12));

/** The lines, functions mixed: each in turn as often as it has lines left. */
export function mixedLines(): readonly Line[] {
  const functions = CATALOGUE.filter(({ id }) => !LEFT_OUT.has(id)).flatMap((definition) => {
    const varying = variantsOf(definition);
    const variants = varying.length > 0 ? varying : fixedOf(definition);
    return variants.length === 0 ? [] : [{ variants, left: countOf(definition, variants) ?? LINES }];
  });
  const lines: Line[] = [];
  let ofFirst = 0;
  const sharedOf = ({ varied }: Variant, at: number): number => {
    if (varied === undefined || at % 2 === 1 || ofFirst === OF_FIRST) return 1 + (at % (SHARED - 1));
    ofFirst += 1;
    return 0;
  };
  for (let turn = 0; lines.length < LINES; turn++)
    for (const { variants, left } of functions) {
      const variant = variants[turn % variants.length];
      if (variant === undefined || turn >= left || lines.length === LINES) continue;
      const at = lines.length;
      lines.push({ ...variant, input: variant.varied ? inputOf(variant, turn) : 1, shared: sharedOf(variant, at) });
    }
  return lines;
}
