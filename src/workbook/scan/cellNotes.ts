/** What a scan records of each cell. */
import type { CellFault } from "../port";
import { isCellFault } from "../port";
import type { CellToRead, Prepared } from "../reader/prepare";
import type { ReadCall, Reading } from "../reader/read";
import type { FailingCell, SheetNotes } from "./report";
import { isOutcomeFault } from "../values";

const isRead = (call: ReadCall): boolean => call.args.every((argument) => !("unreadable" in argument));

function failing({ address, calls }: Reading, value: CellFault): FailingCell {
  const { code } = value;
  const outcome = calls.find(
    ({ outcome: one }) => one !== undefined && isOutcomeFault(one) && one.code === code,
  )?.outcome;
  const again = outcome !== undefined && isOutcomeFault(outcome) ? outcome.message : undefined;
  const message = value.message ?? again;
  return { address, error: code, ...(message === undefined ? {} : { message }) };
}

/** What one sheet raises, as the scan collects it. */
export type Notes = { -readonly [K in keyof SheetNotes]: SheetNotes[K][number][] };

export const noNotes = (): Notes => ({ raised: [], cells: [], failing: [], unreadable: [], uncomputed: [], stale: [] });

/** What a scan found in one cell. */
export interface CellFindings {
  readonly reading: Reading;
  readonly raised: Notes["raised"];
}

const idsOf = (calls: readonly Pick<ReadCall, "id">[]): readonly string[] =>
  calls.length === 1 && calls[0] ? [calls[0].id] : [...new Set(calls.map(({ id }) => id))];

/** Adds one cell's findings to its sheet's notes. */
export function noteCall(cell: CellToRead, { reading, raised }: CellFindings, notes: Notes): void {
  const { address, formula, calls, refusal, stale } = reading;
  notes.raised.push(...raised);
  const ours = calls.length > 0;
  if (ours) notes.cells.push({ address, formula, ids: idsOf(calls) });
  if (isCellFault(cell.value) && (ours || refusal !== undefined)) notes.failing.push(failing(reading, cell.value));
  if (refusal !== undefined || !calls.every(isRead)) notes.unreadable.push(address);
  if (stale) notes.stale.push(address);
}

/** Adds a cell with a call whose calculation stopped. */
export function noteUncomputed({ cell: { address, formula }, sites }: Prepared, notes: Notes): void {
  notes.cells.push({ address, formula, ids: idsOf(sites) });
  notes.uncomputed.push(address);
}
