/** What a workbook of another edition holds against what this edition gives, each difference beside its line of the change log. */
import type { Address, CellValue, Workbook } from "../port";
import { mentionsUs } from "../reader/calls";
import type { CellToRead, Engine } from "../reader/prepare";
import { readCells, type Reading } from "../reader/read";
import { readFormulas } from "../reader/sheets";
import { isOutcomeFault, topLeft } from "../values";
import { timeSlices } from "../timeSlices";
import { stampsIn, type FoundStamp } from "./stamp";

/** A line of the change log. */
export interface LoggedChange {
  readonly edition: string;
  readonly text: string;
  /** The functions that it names. */
  readonly ids: readonly string[];
}

export interface EditionDifference {
  readonly address: Address;
  readonly formula: string;
  readonly ids: readonly string[];
  readonly stored: CellValue;
  /** What the call gives now; undefined where it is a part of a larger formula. */
  readonly now: CellValue | undefined;
  /** The lines that name one of its functions; none: the difference is unexplained. */
  readonly changes: readonly LoggedChange[];
}

export interface EditionReport {
  readonly stamps: readonly FoundStamp[];
  readonly compared: number;
  /** Cells that hold calls whose value can't be compared. */
  readonly unread: readonly Address[];
  readonly differences: readonly EditionDifference[];
}

interface Options {
  readonly signal?: AbortSignal | undefined;
  onProgress?(done: number, of: number): void;
}

/** Cells that are read together: their references share the round trips. */
const GROUP = 512;

function nowOf({ calls }: Reading): CellValue | undefined {
  const outcome = calls.find(({ whole }) => whole)?.outcome;
  if (outcome === undefined) return undefined;
  return isOutcomeFault(outcome) ? outcome : topLeft(outcome.value);
}

function differenceOf(reading: Reading, stored: CellValue, changes: readonly LoggedChange[]): EditionDifference {
  const ids = [...new Set(reading.calls.map(({ id }) => id))];
  return {
    address: reading.address,
    formula: reading.formula,
    ids,
    stored,
    now: nowOf(reading),
    changes: changes.filter((change) => change.ids.some((id) => ids.includes(id))),
  };
}

/** Reads the whole workbook and changes nothing. */
export async function editionCheck(
  book: Workbook,
  engine: Engine,
  changes: readonly LoggedChange[],
  { signal, onProgress }: Options = {},
): Promise<EditionReport> {
  const pause = timeSlices({}, signal === undefined ? [] : [signal]);
  const names = (await book.sheets()).map(({ name }) => name);
  const blocks = [...(await readFormulas(book, names, pause, true)).values()].flatMap((one) => one.blocks);
  const cells: CellToRead[] = [];
  for (const { area, formulas, values } of blocks)
    for (const [down, line] of formulas.entries()) {
      await pause();
      for (const [over, formula] of line.entries()) {
        if (formula === "" || !mentionsUs(formula)) continue;
        const address = { sheet: area.sheet, row: area.row + down, column: area.column + over };
        cells.push({ address, formula, value: values[down]?.[over] ?? null });
      }
    }
  const differences: EditionDifference[] = [];
  const unread: Address[] = [];
  let compared = 0;
  for (let from = 0; from < cells.length; from += GROUP) {
    await pause();
    onProgress?.(from, cells.length);
    const some = cells.slice(from, from + GROUP);
    for (const [at, reading] of (await readCells(book, some, engine, { signal })).entries()) {
      if (reading.calls.length === 0 && reading.refusal === undefined) continue;
      if (!reading.checked) unread.push(reading.address);
      else compared++;
      if (reading.stale) differences.push(differenceOf(reading, some[at]?.value ?? null, changes));
    }
  }
  return { stamps: stampsIn(blocks), compared, unread, differences };
}
