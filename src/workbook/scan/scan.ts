/**
 * Finds the cautions of a workbook. Each sheet is read once, in blocks; equal calls are computed once; the work runs in
 * slices so that the panel stays responsive, and a newer scan cancels the one before it.
 */
import { resumeWhenReady, type WaitOptions } from "../pending";
import { noteCall, noNotes, noteUncomputed, type CellFindings, type Notes } from "./cellNotes";
import type { Block, ReferenceText, Workbook } from "../port";
import { mentionsUs, readCalls } from "../reader/calls";
import { prepare, wantedBy, type CellToRead, type Prepared } from "../reader/prepare";
import { readOne } from "../reader/read";
import type { References } from "../reader/resolve";
import { resolveFormulaReferences } from "../reader/resolve";
import { readFormulas } from "../reader/sheets";
import { cachedEngine } from "./cachedEngine";
import type { CautionEngine, CachedEngine } from "./cachedEngine";
import { report } from "./report";
import type { CautionReport, SheetNotes } from "./report";
import { isCancelled, timeSlices } from "../timeSlices";
import type { NextSlice, SliceOptions } from "../timeSlices";

export type { CautionEngine } from "./cachedEngine";
export type { SliceOptions as ScanOptions } from "../timeSlices";

/** Callbacks of a running scan. */
export interface ScanCallbacks extends Pick<WaitOptions, "onWait"> {
  /** Reports now and then how many of the cells that use us are done. */
  onProgress?(done: number, of: number): void;
}

export interface Scanner {
  /**
   * Scans the named sheets again (all of them the first time, or if none is named) and returns the whole workbook's
   * report; undefined if a newer scan or `signal` cancelled this one. The next scan includes the sheets that a cancelled
   * scan missed and those with a cell whose calculation stopped.
   */
  scan(sheets?: readonly string[], signal?: AbortSignal, hearing?: ScanCallbacks): Promise<CautionReport | undefined>;
}

/** The cells of blocks that may call our functions. */
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

/** One pass over a cell: its reading and the cautions of its calls. */
function passOver(one: Prepared, resolved: References, engine: CachedEngine): CellFindings {
  const reading = readOne(one, resolved, engine);
  const { address, calls } = reading;
  const raised = calls.flatMap((call) =>
    engine.cautionsFor(call).map((caution) => ({ caution, id: call.id, address, call: call.outcome ?? address })),
  );
  return { reading, raised };
}

/** Undefined if the calculation stopped: one cell must not end the whole scan. */
const orUnworked = (noted: Promise<CellFindings>, { signal }: Turns): Promise<CellFindings | undefined> =>
  noted.catch((error: unknown) => {
    if (signal.aborted) throw error;
    return undefined;
  });

/** Cells that are prepared and read together: their references share the round trips. */
const GROUP = 512;

/** Puts cells with heavy calls last, so that they don't delay the others. */
function lightFirst(cells: readonly CellToRead[], engine: CautionEngine): readonly CellToRead[] {
  const { heavy } = engine;
  if (heavy === undefined) return cells;
  const late = cells.filter(({ formula }) => readCalls(formula, engine.known).some(({ id }) => heavy(id)));
  const set = new Set(late);
  return [...cells.filter((cell) => !set.has(cell)), ...late];
}

interface Turns extends ScanCallbacks {
  readonly pause: NextSlice;
  /** Cancels the work on pending results. */
  readonly signal: AbortSignal;
}

async function scanSheets(
  book: Workbook,
  sheets: readonly string[],
  engine: CachedEngine,
  turns: Turns,
): Promise<ReadonlyMap<string, SheetNotes>> {
  const { pause, onProgress } = turns;
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
    const inGroup: Turns = { ...turns, onProgress: (done) => onProgress?.(from + done, ordered.length) };
    await scanGroup(ordered.slice(from, from + GROUP), resolved, engine, notes, inGroup);
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
  const { pause, onProgress } = turns;
  const prepared: Prepared[] = [];
  const wanted: ReferenceText[] = [];
  for (const cell of cells) {
    const waiting = pause();
    if (waiting !== undefined) await waiting;
    const one = prepare(cell, engine.known);
    prepared.push(one);
    wanted.push(...wantedBy(one));
  }
  await resolved.load(wanted);
  for (const [at, one] of prepared.entries()) {
    const waiting = pause();
    if (waiting !== undefined) {
      onProgress?.(at, prepared.length);
      await waiting;
    }
    const own = notes.get(one.cell.address.sheet);
    const noted = resumeWhenReady(() => passOver(one, resolved, engine), turns);
    if (noted instanceof Promise) onProgress?.(at, prepared.length);
    const ready = noted instanceof Promise ? await orUnworked(noted, turns) : noted;
    if (own === undefined) continue;
    if (ready === undefined) noteUncomputed(one, own);
    else noteCall(one.cell, ready, own);
  }
}

/** A scanner that keeps each sheet's notes between scans. */
export function scanner(book: Workbook, engine: CautionEngine, options: SliceOptions = {}): Scanner {
  const memory = cachedEngine(engine);
  const kept = new Map<string, SheetNotes>();
  const due = new Set<string>();
  let current: AbortController | undefined;
  let complete = false;

  async function run(
    named: readonly string[] | undefined,
    signal: AbortSignal,
    hearing: ScanCallbacks,
  ): Promise<CautionReport> {
    const there = (await book.sheets()).map(({ name }) => name);
    for (const name of complete && named !== undefined ? named : there) due.add(name);
    for (const name of [...kept.keys()]) if (!there.includes(name)) kept.delete(name);
    const sheets = there.filter((name) => due.has(name));
    for (const name of [...due]) if (!there.includes(name)) due.delete(name);
    const pause = timeSlices(options, [signal]);
    const found = await scanSheets(book, sheets, memory, { ...hearing, pause, signal });
    for (const [sheet, notes] of found) {
      kept.set(sheet, notes);
      if (notes.uncomputed.length === 0) due.delete(sheet);
    }
    complete = true;
    memory.scanned([...kept.values()].reduce((sum, { cells }) => sum + cells.length, 0));
    return report(
      there.flatMap((name) => kept.get(name) ?? []),
      pause,
    );
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
        // An error of cancelled work doesn't matter.
        if (isCancelled(error) || own.signal.aborted) return undefined;
        throw error;
      } finally {
        signal?.removeEventListener("abort", end);
      }
    },
  };
}
