/**
 * Cautions over a workbook. Each sheet is read once, in blocks; equal calls are worked out once; the work is cut into
 * slices so that the panel stays alive, and a newer scan ends the one before it.
 */
import { resumeWhenReady, type WaitOptions } from "../pending";
import { noteCall, noNotes, noteUnworked, type Noted, type Notes } from "./cellNotes";
import type { Block, ReferenceText, Workbook } from "../port";
import { mentionsUs, readCalls } from "../reader/calls";
import { prepare, readOne, wantedBy } from "../reader/read";
import type { CellToRead, Prepared } from "../reader/read";
import type { References } from "../reader/resolve";
import { resolveFormulaReferences } from "../reader/resolve";
import { readFormulas } from "../reader/sheets";
import { cachedEngine } from "./cachedEngine";
import type { CautionEngine, CachedEngine } from "./cachedEngine";
import { report } from "./report";
import type { CautionReport, SheetNotes } from "./report";
import { ENDED, timeSlices } from "../timeSlices";
import type { NextSlice, SliceOptions } from "../timeSlices";

export type { CautionEngine } from "./cachedEngine";
export type { SliceOptions as ScanOptions } from "../timeSlices";

/** What is heard of a scan that goes on. */
export interface Hearing extends Pick<WaitOptions, "onWait"> {
  /** Hears now and then how many of the cells that use us are done. */
  tell?(done: number, of: number): void;
}

export interface Scanner {
  /**
   * Scans the named sheets again (all of them at first, or where none is named) and answers the whole workbook's report;
   * undefined where a newer scan or `signal` ended this one. Sheets that an ended scan left, or that hold a cell that could
   * not be worked out, are done by the next one.
   */
  scan(sheets?: readonly string[], signal?: AbortSignal, hearing?: Hearing): Promise<CautionReport | undefined>;
}

/** The cells of blocks that may hold a call of ours. */
async function cellsWithUs(blocks: readonly Block[], pause: NextSlice): Promise<readonly CellToRead[]> {
  const found: CellToRead[] = [];
  for (const { area, formulas, values } of blocks) {
    for (let row = 0; row < formulas.length; row++) {
      if (row % 64 === 0) await pause();
      formulas[row]?.forEach((formula, column) => {
        if (formula === "" || !mentionsUs(formula)) return;
        const address = { sheet: area.sheet, row: area.row + row, column: area.column + column };
        found.push({ address, formula, value: values[row]?.[column] ?? null });
      });
    }
  }
  return found;
}

/** One pass over a cell: its reading, and what its calls raise. */
function passOver(one: Prepared, resolved: References, engine: CachedEngine): Noted {
  const reading = readOne(one, resolved, engine);
  const { address, calls } = reading;
  const raised = calls.flatMap((call) =>
    engine.cautionsFor(call).map((caution) => ({ caution, id: call.id, address })),
  );
  return { reading, raised };
}

/** Undefined where work elsewhere broke off: one cell's must not take the whole scan with it. */
const orUnworked = (noted: Promise<Noted>, { signal }: Turns): Promise<Noted | undefined> =>
  noted.catch((error: unknown) => {
    if (signal.aborted) throw error;
    return undefined;
  });

/** So many cells are prepared and read together: their references share the round trips. */
const GROUP = 512;

/** Cells with heavy calls come last: they must not hold the others up. */
function lightFirst(cells: readonly CellToRead[], engine: CautionEngine): readonly CellToRead[] {
  const { heavy } = engine;
  if (heavy === undefined) return cells;
  const late = cells.filter(({ formula }) => readCalls(formula, engine.known).some(({ id }) => heavy(id)));
  const set = new Set(late);
  return [...cells.filter((cell) => !set.has(cell)), ...late];
}

interface Turns extends Hearing {
  readonly pause: NextSlice;
  /** Ends the work on calls whose results are awaited. */
  readonly signal: AbortSignal;
}

async function scanSheets(
  book: Workbook,
  sheets: readonly string[],
  engine: CachedEngine,
  turns: Turns,
): Promise<ReadonlyMap<string, SheetNotes>> {
  const { pause, tell } = turns;
  const held = new Map<string, readonly Block[]>();
  const cells: CellToRead[] = [];
  for (const [sheet, { blocks, whole }] of await readFormulas(book, sheets, pause)) {
    // What lies outside a held sheet's blocks counts as blank.
    if (whole) held.set(sheet, blocks);
    for (const cell of await cellsWithUs(blocks, pause)) cells.push(cell);
  }
  const notes = new Map<string, Notes>(sheets.map((sheet) => [sheet, noNotes()]));
  const resolved = resolveFormulaReferences(book, held);
  const ordered = lightFirst(cells, engine);
  for (let from = 0; from < ordered.length; from += GROUP) {
    const told: Turns = { ...turns, tell: (done) => tell?.(from + done, ordered.length) };
    await scanGroup(ordered.slice(from, from + GROUP), resolved, engine, notes, told);
  }
  return notes;
}

async function scanGroup(
  cells: readonly CellToRead[],
  resolved: References,
  engine: CachedEngine,
  notes: ReadonlyMap<string, Notes>,
  turns: Turns,
): Promise<void> {
  const { pause, tell } = turns;
  const prepared: Prepared[] = [];
  const wanted: ReferenceText[] = [];
  for (const cell of cells) {
    const waiting = pause();
    if (waiting !== undefined) await waiting;
    const one = prepare(cell, engine.known);
    prepared.push(one);
    wanted.push(...wantedBy(one));
  }
  await resolved.bring(wanted);
  for (const [at, one] of prepared.entries()) {
    const waiting = pause();
    if (waiting !== undefined) {
      tell?.(at, prepared.length);
      await waiting;
    }
    const own = notes.get(one.cell.address.sheet);
    const noted = resumeWhenReady(() => passOver(one, resolved, engine), turns);
    if (noted instanceof Promise) tell?.(at, prepared.length);
    const come = noted instanceof Promise ? await orUnworked(noted, turns) : noted;
    if (own === undefined) continue;
    if (come === undefined) noteUnworked(one, own);
    else noteCall(one.cell, come, own);
  }
}

/** A scanner that keeps what each sheet raises between scans. */
export function scanner(book: Workbook, engine: CautionEngine, options: SliceOptions = {}): Scanner {
  const memory = cachedEngine(engine);
  const kept = new Map<string, SheetNotes>();
  const due = new Set<string>();
  let current: AbortController | undefined;
  let complete = false;

  async function run(
    named: readonly string[] | undefined,
    signal: AbortSignal,
    hearing: Hearing,
  ): Promise<CautionReport> {
    const there = (await book.sheets()).map(({ name }) => name);
    for (const name of complete && named !== undefined ? named : there) due.add(name);
    for (const name of [...kept.keys()]) if (!there.includes(name)) kept.delete(name);
    const sheets = there.filter((name) => due.has(name));
    for (const name of [...due]) if (!there.includes(name)) due.delete(name);
    const found = await scanSheets(book, sheets, memory, { ...hearing, pause: timeSlices(options, [signal]), signal });
    for (const [sheet, notes] of found) {
      kept.set(sheet, notes);
      if (notes.unworked.length === 0) due.delete(sheet);
    }
    complete = true;
    return report(there.flatMap((name) => kept.get(name) ?? []));
  }

  return {
    async scan(sheets, signal, hearing = {}) {
      current?.abort();
      const own = new AbortController();
      current = own;
      const end = (): void => own.abort();
      signal?.addEventListener("abort", end);
      try {
        if (signal?.aborted === true) return undefined;
        const answer = await run(sheets, own.signal, hearing);
        return own.signal.aborted ? undefined : answer;
      } catch (error) {
        // Whatever broke off ended work is no fault.
        if (error === ENDED || own.signal.aborted) return undefined;
        throw error;
      } finally {
        signal?.removeEventListener("abort", end);
      }
    },
  };
}
