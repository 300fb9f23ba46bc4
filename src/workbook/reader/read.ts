/** Reads the arguments of our calls in cells and checks that the cells still hold the results. */
import type { CellInput } from "../../../core";
import { resumeWhenReady, type WaitOptions } from "../pending";
import type { Address, BookReader, CellFault } from "../port";
import { collapse, faultIn, type CellOutcome } from "../values";
import type { FormulaCall } from "./calls";
import { isUnsupported, type Operand } from "./operators";
import { bestPass, type Worked } from "./passes";
import { prepare, wantedBy, type CellToRead, type Engine, type Prepared } from "./prepare";
import { resolveFormulaReferences, type Resolved } from "./resolve";
import { isRefusal, type FormulaRefusal } from "./tokens";

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

function argument(answer: Operand, at: number): ReadArgument {
  if (isUnsupported(answer)) return { unreadable: `argument ${String(at + 1)} ${answer.unsupported}` };
  const value = collapse(answer);
  const bad = faultIn(value);
  return bad === undefined ? { value: value as CellInput } : { fault: bad };
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
