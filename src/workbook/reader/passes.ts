/** Passes over a formula: one for each way in which a blank cell may have reached our functions. */
import { isPending } from "../pending";
import { isCellFault, type CellValue } from "../port";
import { collapse, faultIn, isMatrix, inputOf, sameCell, sameValue, topLeft, valueOf } from "../values";
import type { CellOutcome, Value } from "../values";
import { wholeCall } from "./calls";
import { evaluateTree, type EvaluationContext } from "./evaluate";
import { loggedCall } from "./loggedCall";
import { isUnsupported, UNSUPPORTED, type Operand } from "./operators";
import type { CellToRead, Engine, Prepared } from "./prepare";
import type { Resolved } from "./resolve";
import { isRefusal } from "./tokens";
import type { CallTree, Tree } from "./tree";

export interface Worked {
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

export interface Pass {
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

/** The answer of a pass; undefined while it lacks a result. */
function unlessPending<T>(pass: () => T): T | undefined {
  try {
    return pass();
  } catch (thrown) {
    if (isPending(thrown)) return undefined;
    throw thrown;
  }
}

/** The pass whose reading of blank cells gives what the cell holds; the first one where neither does. */
export function bestPass(prepared: Prepared, tree: Tree, resolved: Resolved, engine: Engine): Pass {
  const read = (blank: Blank): Pass => passOver(prepared, tree, resolved, engine, blank);
  let first = unlessPending(() => read(null));
  if (first === undefined) {
    // What a cell got on the desktop is in the session with 0 for a blank cell: nothing need be worked then.
    const other = unlessPending(() => read(0));
    if (other?.agreed === true) return other;
    first = read(null);
  }
  const blanks = [...first.worked].some(([node, { read }]) => read.some((one, at) => holdsBlank(one, node.args[at])));
  if (first.agreed !== false || !blanks) return first;
  const second = read(0);
  return second.agreed === true ? second : first;
}
