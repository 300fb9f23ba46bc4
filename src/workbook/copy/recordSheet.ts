/** The lines of a hand-over record: each cell's formula with inputs, method, sources and cautions. */
import type { CellInput } from "../../../core";
import { resumeWhenReady } from "../pending";
import type { CellFault, CellValue } from "../port";
import { isCellFault } from "../port";
import type { ReadArgument, ReadCall, Reading } from "../reader/read";
import { cellsText } from "../reader/reference";
import { pauseIn, type CopyWork } from "./copyWork";
import type { DependentCell } from "./dependents";
import type { CallDescription, Describe, RecordContent, RecordLine, RecordLines, RecordWords } from "./recordTypes";
import { addressTexts, amount, inputLines, parts, shown } from "./recordTexts";
import { isMatrix, isOutcomeFault } from "../values";

/** A call's arguments as they go in; undefined if one is an error or can't be read. */
function rawArguments(args: readonly ReadArgument[]): readonly CellInput[] | undefined {
  const values: CellInput[] = [];
  for (const argument of args) {
    if (!("value" in argument)) return undefined;
    values.push(argument.value);
  }
  return values;
}

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
  readonly words: RecordWords;
  readonly nameOf: ReturnType<typeof addressTexts>;
  /** The cell with the full record of a call, by function and arguments. */
  readonly recorded: Map<string, string>;
}

/** A call with its arguments as they go in, and its description; neither where an argument is unknown. */
interface DescribedCall {
  readonly call: ReadCall;
  readonly raw: readonly CellInput[] | undefined;
  readonly own: CallDescription | undefined;
}

/** The inputs, method, source and cautions of a call. */
function callTexts({ address }: DependentCell, { call, raw, own }: DescribedCall, { recorded, nameOf }: Recorder) {
  const method = own === undefined ? call.id : `${call.id}: ${own.method}`;
  const unit = own?.unit ?? "";
  const key = raw && JSON.stringify([call.id, raw]);
  const before = key === undefined ? undefined : recorded.get(key);
  if (before !== undefined) return { method, unit, inputs: [before], source: before, cautions: [before] };
  if (key !== undefined) recorded.set(key, `as ${nameOf(address)}`);
  return {
    ...{ method, unit },
    inputs: own === undefined ? unknownInputs(call.args) : inputLines(own.inputs),
    source: (own?.sources ?? []).join("; "),
    cautions: (own?.cautions ?? []).map(({ severity, text }) => `${severity}: ${text}`),
  };
}

const STALE = "Out of date: the formula now gives another value than the cell holds.";

/** A call's lines; an equal call above is only referred to. */
function addCallLines(
  cell: DependentCell,
  described: DescribedCall,
  first: boolean,
  recorder: Recorder,
  into: RecordLine[],
): void {
  const { call } = described;
  const { nameOf, words } = recorder;
  const { method, unit, inputs, source, cautions } = callTexts(cell, described, recorder);
  const [top = "", ...below] = parts(call.whole ? inputs : [...inputs, ...partText(call, unit)]);
  into.push([
    first ? nameOf(cell.address) : "",
    first ? words.labelOf(cell.address) : "",
    first ? words.formulaOf(cell) : "in the same formula",
    top,
    first ? held(cell, call) : "",
    first ? unitText(cell, call, unit) : "",
    method,
    source,
    (call.stale ? [STALE, ...cautions] : cautions).join("\n"),
  ]);
  for (const text of below) into.push(["", "", "", text, "", "", "", "", ""]);
}

const UNCLEAR = [AS_THERE, "refers to cells that can't be followed", "", ""] as const;

/** Without unit and method: the head says what that means. */
function dependentLine(cell: DependentCell, { words, nameOf }: Recorder): RecordLine {
  const name = nameOf(cell.address);
  const label = words.labelOf(cell.address);
  const formula = words.formulaOf(cell);
  return cell.unclear ? [name, label, formula, "", held(cell), ...UNCLEAR] : [name, label, formula, "", held(cell)];
}

/** Called with each call that is recorded. */
export type OnRecordedCall = (cell: DependentCell, call: ReadCall, described: CallDescription | undefined) => void;

/** Lines for the cells with calls of ours, one or more for each call; then for the cells that depend on them. */
export async function recordLines(
  cells: readonly DependentCell[],
  readings: ReadonlyMap<DependentCell, Reading>,
  describe: Describe,
  words: RecordWords,
  work: CopyWork = {},
  onCall?: OnRecordedCall,
): Promise<RecordLines> {
  const recorder: Recorder = { words, nameOf: addressTexts(), recorded: new Map() };
  const lines: RecordLine[] = [];
  const others: DependentCell[] = [];
  const pause = pauseIn(work);
  let done = 0;
  for (const cell of cells) {
    const wait = pause();
    if (wait !== undefined) {
      work.onProgress?.({ done, total: cells.length, text: `${done} of ${cells.length} cells recorded` });
      await wait;
    }
    done++;
    const calls = readings.get(cell)?.calls ?? [];
    if (calls.length === 0) others.push(cell);
    for (const [place, call] of calls.entries()) {
      const raw = rawArguments(call.args);
      const own = raw && (await resumeWhenReady(() => describe(call.id, raw), work));
      addCallLines(cell, { call, raw, own }, place === 0, recorder, lines);
      onCall?.(cell, call, own);
    }
  }
  return {
    count: lines.length + others.length,
    line(at) {
      const other = others[at - lines.length];
      return other === undefined ? (lines[at] ?? []) : dependentLine(other, recorder);
    },
  };
}
