/** Reads the arguments of our calls in cells and checks that the cells still hold the results. */
import type { CellInput } from "../../../core";
import type { Address, CellFault, CellValue, ReferenceText, BookReader } from "../port";
import { isCellFault } from "../port";
import { resumeWhenReady, type WaitOptions } from "../pending";
import type { SessionLog } from "../callLog";
import { collapse, faultIn, isMatrix, inputOf, sameCell, sameValue, topLeft, valueOf } from "../values";
import type { CellOutcome, Value, ValueMatrix } from "../values";
import { mentionsUs, sitesIn, walkTree, wholeCall } from "./calls";
import type { FormulaCall } from "./calls";
import { evaluateTree, plainName } from "./evaluate";
import type { EvaluationContext } from "./evaluate";
import { loggedCall } from "./loggedCall";
import { isUnsupported, UNSUPPORTED } from "./operators";
import type { Operand } from "./operators";
import { resolveFormulaReferences } from "./resolve";
import type { Resolved } from "./resolve";
import { boundValue } from "./scope";
import { isRefusal } from "./tokens";
import type { FormulaRefusal } from "./tokens";
import { parse } from "./tree";
import type { CallTree, Tree } from "./tree";

/** A cell to read; `spill` is its whole spill, if known. */
export interface CellToRead {
  readonly address: Address;
  readonly formula: string;
  readonly value: CellValue;
  readonly spill?: ValueMatrix;
}

/** The calculation, and the calls that it made in this session. */
export interface Engine {
  readonly known: ReadonlySet<string>;
  /** The result of a call; throws `Pending` if it isn't available yet. */
  call(id: string, args: readonly CellInput[]): CellOutcome;
  readonly log: SessionLog;
}

/** An argument's raw value, its error, or a sentence that says why it can't be read. */
export type ReadArgument =
  { readonly value: CellInput } | { readonly fault: CellFault } | { readonly unreadable: string };

export interface ReadCall {
  readonly id: string;
  readonly start: number;
  readonly end: number;
  readonly whole: boolean;
  readonly args: readonly ReadArgument[];
  /** The call's present result; missing if an argument can't be read. */
  readonly outcome?: CellOutcome;
  /** The cell's value differs from what its formula gives now. */
  readonly stale: boolean;
}

export interface Reading {
  readonly address: Address;
  readonly formula: string;
  readonly calls: readonly ReadCall[];
  /** The cell's value was compared with the formula's. */
  readonly checked: boolean;
  readonly stale: boolean;
  /** Why the formula can't be read at all. */
  readonly refusal?: FormulaRefusal;
}

/** A cell whose formula was parsed. */
export interface Prepared {
  readonly cell: CellToRead;
  readonly tree: Tree | FormulaRefusal;
  readonly sites: readonly FormulaCall[];
}

export function prepare(cell: CellToRead, known: ReadonlySet<string>): Prepared {
  if (!mentionsUs(cell.formula)) return { cell, tree: { at: 0, why: "holds no call of ours" }, sites: [] };
  const tree = parse(cell.formula);
  return { cell, tree, sites: isRefusal(tree) ? [] : sitesIn(tree, known) };
}

/** The references that a prepared cell needs before it can be read. */
export function wantedBy({ cell, tree, sites }: Prepared): readonly ReferenceText[] {
  const wanted: ReferenceText[] = [];
  if (isRefusal(tree) || sites.length === 0) return wanted;
  walkTree(tree, (node, scope) => {
    if (node.kind !== "reference" || (scope && boundValue(scope, plainName(node.text))) !== undefined) return;
    wanted.push({ text: node.text, from: cell.address });
  });
  return wanted;
}

interface Worked {
  /** The arguments as the formula gives them. */
  readonly read: readonly Operand[];
  /** The arguments with what the log adds. */
  readonly args: readonly Operand[];
  readonly outcome: CellOutcome | undefined;
  readonly fromLog: boolean;
}

/** One of our calls: evaluated if all arguments are known, else searched in the log. */
function work(node: CallTree, id: string, args: readonly Operand[], { cell, tree }: Prepared, engine: Engine): Worked {
  if (!args.some(isUnsupported)) {
    const values = args as readonly Value[];
    const bad = values.map(faultIn).find((found) => found !== undefined);
    const raw = values.map((value) => inputOf(collapse(value)) ?? null);
    return { read: args, args, outcome: bad ?? engine.call(id, raw), fromLog: false };
  }
  const whole = !isRefusal(tree) && wholeCall(tree) === node;
  const call = loggedCall(engine.log, id, args, whole ? cell.value : undefined);
  if (call === undefined) return { read: args, args, outcome: undefined, fromLog: false };
  const filled = args.map((argument, at) => (isUnsupported(argument) ? (call.args[at] ?? null) : argument));
  return { read: args, args: filled, outcome: call.result, fromLog: true };
}

function argument(answer: Operand, at: number): ReadArgument {
  if (isUnsupported(answer)) return { unreadable: `argument ${String(at + 1)} ${answer.unsupported}` };
  const value = collapse(answer);
  const bad = faultIn(value);
  return bad === undefined ? { value: value as CellInput } : { fault: bad };
}

/** Values that a host shows while it calculates or can't spill: nothing to compare. */
const isPassing = (value: CellValue): boolean =>
  isCellFault(value) && ["#BUSY!", "#GETTING_DATA", "#SPILL!", "#CONNECT!"].includes(value.code);

/** Whether the cell holds the result of its formula; undefined if unknown. */
function holds(answer: Operand, cell: CellToRead): boolean | undefined {
  if (isUnsupported(answer) || isPassing(cell.value)) return undefined;
  if (cell.spill !== undefined && isMatrix(answer)) return sameValue(answer, cell.spill);
  return sameCell(topLeft(answer), cell.value);
}

/** How a blank cell reaches a function: as nothing in Excel on the web, as 0 on the desktop. */
type Blank = null | 0;

/** An argument that is a reference, with the blank cells in it read that way. */
function withBlanks(answer: Operand, tree: Tree | undefined, blank: Blank): Operand {
  if (blank === null || tree?.kind !== "reference" || isUnsupported(answer)) return answer;
  return isMatrix(answer) ? answer.map((row) => row.map((cell) => cell ?? blank)) : (answer ?? blank);
}

interface Pass {
  readonly worked: ReadonlyMap<CallTree, Worked>;
  readonly agreed: boolean | undefined;
}

function passOver(prepared: Prepared, tree: Tree, resolved: Resolved, engine: Engine, blank: Blank): Pass {
  const { cell, sites } = prepared;
  const worked = new Map<CallTree, Worked>();
  const around: EvaluationContext = {
    memo: new Map(),
    read: (text) => resolved.read(text, cell.address),
    resolveReference: (text) => resolved.meet(text, cell.address),
    ours: (node) => sites.find(({ tree: own }) => own === node)?.id,
    call(node, id, args) {
      const given = args.map((one, at) => withBlanks(one, node.args[at], blank));
      const done = work(node, id, given, prepared, engine);
      worked.set(node, done);
      return done.outcome === undefined ? UNSUPPORTED : valueOf(done.outcome);
    },
  };
  const agreed = holds(evaluateTree(tree, around), cell);
  for (const site of sites) evaluateTree(site.tree, around, site.scope);
  return { worked, agreed };
}

const holdsBlank = (answer: Operand, tree: Tree | undefined): boolean => {
  if (tree?.kind !== "reference" || isUnsupported(answer)) return false;
  return isMatrix(answer) ? answer.some((row) => row.includes(null)) : answer === null;
};

/** The pass whose reading of blank cells gives what the cell holds; the first one where neither does. */
function bestPass(prepared: Prepared, tree: Tree, resolved: Resolved, engine: Engine): Pass {
  const first = passOver(prepared, tree, resolved, engine, null);
  const blanks = [...first.worked].some(([node, { read }]) => read.some((one, at) => holdsBlank(one, node.args[at])));
  if (first.agreed !== false || !blanks) return first;
  const second = passOver(prepared, tree, resolved, engine, 0);
  return second.agreed === true ? second : first;
}

/** Reads one prepared cell whose references are loaded. */
export function readOne(prepared: Prepared, resolved: Resolved, engine: Engine): Reading {
  const { cell, tree, sites } = prepared;
  const { address, formula } = cell;
  if (isRefusal(tree)) return { address, formula, calls: [], checked: false, stale: false, refusal: tree };
  const { worked, agreed } = bestPass(prepared, tree, resolved, engine);
  // A call from the log that doesn't give the cell's value was a wrong guess: it doesn't make the cell stale.
  const doubted = agreed === false && [...worked.values()].some(({ fromLog }) => fromLog);
  const stale = agreed === false && !doubted;
  const calls = sites.map((site) => readCall(site, worked.get(site.tree), stale, doubted));
  return { address, formula, calls, checked: agreed !== undefined && !doubted, stale };
}

function readCall(site: FormulaCall, done: Worked | undefined, stale: boolean, doubted: boolean): ReadCall {
  const { id, start, end, whole } = site;
  const dropped = doubted && done?.fromLog === true;
  const args = ((dropped ? done.read : done?.args) ?? []).map(argument);
  const outcome = dropped ? undefined : done?.outcome;
  return { id, start, end, whole, args, ...(outcome === undefined ? {} : { outcome }), stale };
}

/**
 * Reads many cells with few round trips. Cells without a call of ours have no calls in the answer.
 */
export async function readCells(
  book: BookReader,
  cells: readonly CellToRead[],
  engine: Engine,
  waiting?: WaitOptions,
): Promise<readonly Reading[]> {
  const prepared = cells.map((cell) => prepare(cell, engine.known));
  const resolved = resolveFormulaReferences(book);
  await resolved.load(prepared.flatMap(wantedBy));
  const readings: Reading[] = [];
  for (const one of prepared) readings.push(await resumeWhenReady(() => readOne(one, resolved, engine), waiting));
  return readings;
}
