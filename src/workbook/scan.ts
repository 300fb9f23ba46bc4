/**
 * Cautions over a workbook. Each sheet is read once, in blocks; equal calls are worked out once; the work is cut into
 * slices so that the panel stays alive, and a newer scan ends the one before it.
 */
import { settled } from "./awaited";
import type { Block, CellFault, ReferenceText, Workbook } from "./port";
import { isFault } from "./port";
import { mentionsUs, readCalls } from "./reader/calls";
import { prepare, readOne, wantedBy } from "./reader/read";
import type { CellToRead, Prepared, ReadCall, Reading } from "./reader/read";
import type { References } from "./reader/resolve";
import { references } from "./reader/resolve";
import { readSheet } from "./reader/sheets";
import { remembering } from "./remembering";
import type { CautionEngine, Remembering } from "./remembering";
import { report } from "./report";
import type { CautionReport, FailingCell, SheetNotes } from "./report";
import { ENDED, pauses } from "./slices";
import type { Pause, SliceOptions } from "./slices";
import { isOutcomeFault } from "./values";

export type { CautionEngine } from "./remembering";
export type { SliceOptions as ScanOptions } from "./slices";

export type Tell = (done: number, of: number) => void;

export interface Scanner {
  /**
   * Scans the named sheets again (all of them at first, or where none is named) and answers the whole workbook's report;
   * undefined where a newer scan or `signal` ended this one. Sheets that an ended scan left are done by the next one.
   * @param tell hears now and then how many of the cells that use us are done
   */
  scan(sheets?: readonly string[], signal?: AbortSignal, tell?: Tell): Promise<CautionReport | undefined>;
}

/** The cells of blocks that may hold a call of ours. */
async function cellsWithUs(blocks: readonly Block[], pause: Pause): Promise<readonly CellToRead[]> {
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

const isRead = (call: ReadCall): boolean => call.args.every((argument) => !("unread" in argument));

function failing({ address, calls }: Reading, value: CellFault): FailingCell {
  const { error } = value;
  const outcome = calls.find(
    ({ outcome: one }) => one !== undefined && isOutcomeFault(one) && one.error === error,
  )?.outcome;
  const again = outcome !== undefined && isOutcomeFault(outcome) ? outcome.message : undefined;
  const message = value.message ?? again;
  return { address, error, ...(message === undefined ? {} : { message }) };
}

type Notes = { -readonly [K in keyof SheetNotes]: SheetNotes[K][number][] };

const noNotes = (): Notes => ({ raised: [], cells: [], failing: [], unread: [], stale: [] });

interface Noted {
  readonly reading: Reading;
  readonly raised: Notes["raised"];
}

/** One pass over a cell: its reading, and what its calls raise. */
function passOver(one: Prepared, resolved: References, engine: Remembering): Noted {
  const reading = readOne(one, resolved, engine);
  const { address, calls } = reading;
  const raised = calls.flatMap((call) =>
    engine.cautionsFor(call).map((caution) => ({ caution, id: call.id, address })),
  );
  return { reading, raised };
}

/** Adds what was noted of one cell to its sheet's notes. */
function note(cell: CellToRead, { reading, raised }: Noted, notes: Notes): void {
  const { address, formula, calls, refusal, stale } = reading;
  notes.raised.push(...raised);
  const ours = calls.length > 0;
  if (ours) notes.cells.push({ address, formula, ids: idsOf(calls) });
  if (isFault(cell.value) && (ours || refusal !== undefined)) notes.failing.push(failing(reading, cell.value));
  if (refusal !== undefined || !calls.every(isRead)) notes.unread.push(address);
  if (stale) notes.stale.push(address);
}

const idsOf = (calls: readonly ReadCall[]): readonly string[] =>
  calls.length === 1 && calls[0] ? [calls[0].id] : [...new Set(calls.map(({ id }) => id))];

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

interface Turns {
  readonly pause: Pause;
  readonly tell: Tell;
  /** Ends the work on calls whose results are awaited. */
  readonly signal: AbortSignal;
}

async function scanSheets(
  book: Workbook,
  sheets: readonly string[],
  engine: Remembering,
  turns: Turns,
): Promise<ReadonlyMap<string, SheetNotes>> {
  const { pause, tell } = turns;
  const held = new Map<string, readonly Block[]>();
  const cells: CellToRead[] = [];
  for (const sheet of sheets) {
    const blocks = await readSheet(book, sheet);
    await pause();
    held.set(sheet, blocks);
    for (const cell of await cellsWithUs(blocks, pause)) cells.push(cell);
  }
  const notes = new Map<string, Notes>(sheets.map((sheet) => [sheet, noNotes()]));
  const resolved = references(book, held);
  const ordered = lightFirst(cells, engine);
  for (let from = 0; from < ordered.length; from += GROUP) {
    const told: Turns = { ...turns, tell: (done) => tell(from + done, ordered.length) };
    await scanGroup(ordered.slice(from, from + GROUP), resolved, engine, notes, told);
  }
  return notes;
}

async function scanGroup(
  cells: readonly CellToRead[],
  resolved: References,
  engine: Remembering,
  notes: ReadonlyMap<string, Notes>,
  { pause, signal, tell }: Turns,
): Promise<void> {
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
      tell(at, prepared.length);
      await waiting;
    }
    const own = notes.get(one.cell.address.sheet);
    const noted = settled(() => passOver(one, resolved, engine), signal);
    if (noted instanceof Promise) tell(at, prepared.length);
    if (own !== undefined) note(one.cell, noted instanceof Promise ? await noted : noted, own);
  }
}

/** A scanner that keeps what each sheet raises between scans. */
export function scanner(book: Workbook, engine: CautionEngine, options: SliceOptions = {}): Scanner {
  const memory = remembering(engine);
  const kept = new Map<string, SheetNotes>();
  const due = new Set<string>();
  let current: AbortController | undefined;
  let complete = false;

  async function run(named: readonly string[] | undefined, signal: AbortSignal, tell: Tell): Promise<CautionReport> {
    const there = (await book.sheets()).map(({ name }) => name);
    for (const name of complete && named !== undefined ? named : there) due.add(name);
    for (const name of [...kept.keys()]) if (!there.includes(name)) kept.delete(name);
    const sheets = there.filter((name) => due.has(name));
    for (const name of [...due]) if (!there.includes(name)) due.delete(name);
    const found = await scanSheets(book, sheets, memory, { pause: pauses(options, [signal]), signal, tell });
    for (const [sheet, notes] of found) {
      kept.set(sheet, notes);
      due.delete(sheet);
    }
    complete = true;
    return report(there.flatMap((name) => kept.get(name) ?? []));
  }

  return {
    async scan(sheets, signal, tell = () => undefined) {
      current?.abort();
      const own = new AbortController();
      current = own;
      const end = (): void => own.abort();
      signal?.addEventListener("abort", end);
      try {
        if (signal?.aborted === true) return undefined;
        const answer = await run(sheets, own.signal, tell);
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
