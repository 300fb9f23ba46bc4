/** The lines of a hand-over record: each cell's formula with inputs, method, sources and cautions. */
import type { CellInput } from "../../../core";
import { resumeWhenReady } from "../pending";
import type { CellFault, CellValue } from "../port";
import { isCellFault } from "../port";
import type { ReadArgument, ReadCall, Reading } from "../reader/read";
import { addressText, cellsText } from "../reader/reference";
import { pauseIn, type CopyWork } from "./copyWork";
import type { DependentCell } from "./dependents";
import type { RecordContent, Describe, RecordLine, RecordWords } from "./recordTypes";
import { amount, inputLines, parts, shown } from "./recordTexts";
import { isMatrix, isOutcomeFault } from "../values";

/** A call's arguments as they go in; undefined if one is an error or can't be read. */
export const rawArguments = (args: readonly ReadArgument[]): readonly CellInput[] | undefined => {
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

/** The message of a fault, which a file doesn't hold. */
const withMessage = (value: CellValue, { whole, outcome }: ReadCall): CellValue | CellFault =>
  whole && isCellFault(value) && outcome !== undefined && isOutcomeFault(outcome) && outcome.code === value.code
    ? { ...outcome, ...value }
    : value;

/** A cell's value; of a table its place in the copy. */
function held({ area, value }: DependentCell, call?: ReadCall): RecordContent {
  if (area.rows * area.columns > 1) return `table in ${cellsText(area)}`;
  return shown(call === undefined ? value : withMessage(value, call));
}

const AS_THERE = "as on its sheet";
const NO_UNIT = "–";

const unitText = (cell: DependentCell, call: ReadCall, unit: string): string => {
  if (!call.whole) return AS_THERE;
  if (cell.area.rows * cell.area.columns > 1) return "in the table";
  return unit === "" ? NO_UNIT : unit;
};

interface Recorder {
  readonly describe: Describe;
  readonly words: RecordWords;
  /** The cell with the full record of a call, by function and arguments. */
  readonly recorded: Map<string, string>;
}

/** A call's lines; an equal call above is only referred to. */
function callLines(
  cell: DependentCell,
  call: ReadCall,
  first: boolean,
  { describe, recorded, words }: Recorder,
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
      first ? words.labelOf(cell.address) : "",
      first ? words.formulaOf(cell) : "in the same formula",
      top,
      first ? held(cell, call) : "",
      first ? unitText(cell, call, unit) : "",
      own === undefined ? call.id : `${call.id}: ${own.method}`,
      before === undefined ? (own?.sources ?? []).join("; ") : `as ${before}`,
      [...stale, ...cautions, ...(before === undefined ? [] : [`as ${before}`])].join("\n"),
    ],
    ...below.map((text): RecordLine => ["", "", "", text, "", "", "", "", ""]),
  ];
}

const dependentLine = (cell: DependentCell, { labelOf, formulaOf }: RecordWords): RecordLine => [
  addressText(cell.address),
  labelOf(cell.address),
  formulaOf(cell),
  "",
  held(cell),
  AS_THERE,
  cell.unclear ? "refers to cells that can't be followed" : "depends on the cells above",
  "",
  "",
];

/** Lines for the cells with calls of ours, one or more for each call; then for the cells that depend on them. */
export async function recordLines(
  cells: readonly DependentCell[],
  readings: ReadonlyMap<DependentCell, Reading>,
  describe: Describe,
  words: RecordWords,
  work: CopyWork = {},
): Promise<readonly RecordLine[]> {
  const recorder: Recorder = { describe, words, recorded: new Map() };
  const lines: RecordLine[] = [];
  const others: DependentCell[] = [];
  const pause = pauseIn(work);
  for (const [at, cell] of cells.entries()) {
    const wait = pause();
    if (wait !== undefined) {
      work.onProgress?.({ done: at, total: cells.length, text: `${at} of ${cells.length} cells recorded` });
      await wait;
    }
    const calls = readings.get(cell)?.calls ?? [];
    if (calls.length === 0) others.push(cell);
    for (const [place, call] of calls.entries())
      for (const line of await resumeWhenReady(() => callLines(cell, call, place === 0, recorder), work))
        lines.push(line);
  }
  for (const cell of others) {
    const wait = pause();
    if (wait !== undefined) await wait;
    lines.push(dependentLine(cell, words));
  }
  return lines;
}
