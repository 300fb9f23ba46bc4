/** The lines of a hand-over record: each cell's formula with inputs, method, sources and cautions. */
import type { CellInput } from "../../../core";
import { resumeWhenReady } from "../pending";
import type { CellValue } from "../port";
import { isCellFault } from "../port";
import type { ReadArgument, ReadCall, Reading } from "../reader/read";
import { addressText, cellsText } from "../reader/reference";
import type { DependentCell } from "./dependents";
import { timeSlices } from "../timeSlices";
import { isMatrix, isOutcomeFault } from "../values";

/** A function's description of one of its calls. */
export interface CallDescription {
  /** The function's sentence: the method. */
  readonly method: string;
  readonly inputs: readonly DescribedInput[];
  readonly unit: string;
  readonly sources: readonly string[];
  readonly cautions: readonly { readonly severity: string; readonly text: string }[];
}

export interface DescribedInput {
  readonly label: string;
  readonly value: string | number | boolean;
  readonly unit: string;
  /** False if it is the default. */
  readonly given: boolean;
}

/** Throws `Pending` if the description isn't available yet. */
export type Describe = (id: string, args: readonly CellInput[]) => CallDescription | undefined;

type Content = string | number | boolean;

/** Cell, formula, inputs, value, unit, method, source, cautions. */
export type RecordLine = readonly [string, string, string, Content, string, string, string, string];

/** More lines than these make a row too high for a page: the text continues in the row below. */
const MOST_LINES = 22;
/** Characters of a line in the column of inputs. */
const LINE_LETTERS = 34;

const shown = (value: CellValue): Content =>
  value === null ? "" : isCellFault(value) ? `${value.code} ${value.message ?? ""}`.trim() : value;

const amount = (value: Content, unit: string): string => {
  const text = typeof value === "number" ? String(Number(value.toPrecision(7))) : String(value);
  return unit === "" ? text : `${text} ${unit}`;
};

const inputText = ({ label, value, unit }: DescribedInput): string => `${label}: ${amount(value, unit)}`;

/** The given inputs, a line each, then the defaults used. An omitted input without a default has no line. */
const inputLines = (inputs: readonly DescribedInput[]): readonly string[] => {
  const defaults = inputs.filter(({ given, value }) => !given && value !== "").map(inputText);
  return [
    ...inputs.filter(({ given }) => given).map(inputText),
    ...defaults.map((text, at) => (at === 0 ? `by default: ${text}` : `  ${text}`)),
  ];
};

/** Splits lines into parts that each fit one row. */
const parts = (lines: readonly string[]): readonly string[] => {
  const found: string[][] = [[]];
  let high = 0;
  for (const line of lines) {
    const own = Math.max(1, Math.ceil(line.length / LINE_LETTERS));
    if (high > 0 && high + own > MOST_LINES) {
      found.push([]);
      high = 0;
    }
    found.at(-1)?.push(line);
    high += own;
  }
  return found.map((part) => part.join("\n"));
};

const rawArguments = (args: readonly ReadArgument[]): readonly CellInput[] | undefined => {
  const values = args.flatMap((argument) => ("value" in argument ? [argument.value] : []));
  return values.length === args.length ? values : undefined;
};

/** Why a call's inputs are unknown. */
const unknownInputs = (args: readonly ReadArgument[]): readonly string[] =>
  args.flatMap((argument) => {
    if ("unreadable" in argument) return [argument.unreadable];
    return "fault" in argument ? [String(shown(argument.fault))] : [];
  });

/** The result of a call inside a larger formula. */
const partText = ({ outcome }: ReadCall, unit: string): readonly string[] => {
  if (outcome === undefined) return [];
  if (isOutcomeFault(outcome)) return [`gives ${String(shown(outcome))}`];
  const { value } = outcome;
  return isMatrix(value) ? [] : [`gives ${amount(shown(value), unit)}`];
};

/** A cell's value; of a table its place in the copy. */
const held = ({ area, value }: DependentCell): Content =>
  area.rows * area.columns > 1 ? `table in ${cellsText(area)}` : shown(value);

const AS_THERE = "as on its sheet";
const NO_UNIT = "–";

const unitText = (cell: DependentCell, call: ReadCall, unit: string): string => {
  if (!call.whole) return AS_THERE;
  if (cell.area.rows * cell.area.columns > 1) return "in the table";
  return unit === "" ? NO_UNIT : unit;
};

interface Recorder {
  readonly describe: Describe;
  /** The cell with the full record of a call, by function and arguments. */
  readonly recorded: Map<string, string>;
}

/** A call's lines; an equal call above is only referred to. */
function callLines(
  cell: DependentCell,
  call: ReadCall,
  first: boolean,
  { describe, recorded }: Recorder,
): RecordLine[] {
  const raw = rawArguments(call.args);
  const key = raw && JSON.stringify([call.id, raw]);
  const before = key === undefined ? undefined : recorded.get(key);
  const own = raw && describe(call.id, raw);
  if (key !== undefined && before === undefined) recorded.set(key, addressText(cell.address));
  const unit = own?.unit ?? "";
  const inputs =
    before !== undefined ? [`as ${before}`] : own === undefined ? unknownInputs(call.args) : inputLines(own.inputs);
  const [top = "", ...below] = parts([...inputs, ...(call.whole ? [] : partText(call, unit))]);
  const cautions =
    before === undefined ? (own?.cautions ?? []).map(({ severity, text }) => `${severity}: ${text}`) : [];
  const stale = call.stale ? ["Out of date: the formula now gives another value than the cell holds."] : [];
  return [
    [
      first ? addressText(cell.address) : "",
      first ? cell.formula : "in the same formula",
      top,
      first ? held(cell) : "",
      first ? unitText(cell, call, unit) : "",
      own === undefined ? call.id : `${call.id}: ${own.method}`,
      before === undefined ? (own?.sources ?? []).join("; ") : `as ${before}`,
      [...stale, ...cautions, ...(before === undefined ? [] : [`as ${before}`])].join("\n"),
    ],
    ...below.map((text): RecordLine => ["", "", text, "", "", "", "", ""]),
  ];
}

const dependentLine = (cell: DependentCell): RecordLine => [
  addressText(cell.address),
  cell.formula,
  "",
  held(cell),
  AS_THERE,
  "relies on the cells above",
  "",
  "",
];

/** Options of a caller that waits for the record; `tell` reports how many cells are done. */
export interface RecordOptions {
  readonly signal?: AbortSignal | undefined;
  onProgress?(done: number, of: number): void;
}

/**
 * Lines for the cells with calls of ours, one or more for each call; then for the cells that depend on them.
 * @param recording `signal` cancels the work on pending descriptions
 */
export async function recordLines(
  cells: readonly DependentCell[],
  readings: readonly Reading[],
  describe: Describe,
  { signal, onProgress }: RecordOptions = {},
): Promise<readonly RecordLine[]> {
  const recorder: Recorder = { describe, recorded: new Map() };
  const lines: RecordLine[] = [];
  const pause = timeSlices({}, signal === undefined ? [] : [signal]);
  for (const [at, cell] of cells.entries()) {
    onProgress?.(at, cells.length);
    await pause();
    for (const [place, call] of (readings[at]?.calls ?? []).entries())
      lines.push(...(await resumeWhenReady(() => callLines(cell, call, place === 0, recorder), { signal })));
  }
  const others = cells.filter((_, at) => (readings[at]?.calls.length ?? 0) === 0);
  return [...lines, ...others.map(dependentLine)];
}
