/**
 * The calls of this session: function, raw arguments, result. Every cell call adds an entry, so adding is one store into a
 * ring and copies nothing. It is bounded by its entries and by the matrix cells that they keep alive.
 */
import type { CellInput } from "../../core";
import type { CellOutcome } from "./values";

export interface LoggedCall {
  readonly id: string;
  readonly args: readonly CellInput[];
  readonly result: CellOutcome;
}

export interface SessionLog {
  /** Adds a call; drops the oldest ones if there is no room. */
  add(id: string, args: readonly CellInput[], result: CellOutcome): void;
  /** The kept calls of one function, newest first. */
  of(id: string): readonly LoggedCall[];
  /** How many calls are kept. */
  size(): number;
}

export const MOST_CALLS = 4_096;
/** Eight bytes and up for each: a year of hourly rows is about 50,000 cells. */
export const MAX_LOGGED_CELLS = 2_000_000;

const matrixCells = (value: unknown): number =>
  Array.isArray(value) && Array.isArray(value[0]) ? value.length * value[0].length : 0;

function cellsOf(args: readonly CellInput[], result: CellOutcome): number {
  let cells = "value" in result ? matrixCells(result.value) : 0;
  for (let at = 0; at < args.length; at++) cells += matrixCells(args[at]);
  return cells;
}

/** A log of at most `most` calls that hold at most `mostCells` matrix cells together (always keeps the newest call). */
export function sessionLog(most: number = MOST_CALLS, mostCells: number = MAX_LOGGED_CELLS): SessionLog {
  const ring: (LoggedCall | undefined)[] = new Array<LoggedCall | undefined>(most).fill(undefined);
  const weights = new Float64Array(most);
  let oldest = 0;
  let size = 0;
  let cells = 0;

  function drop(): void {
    ring[oldest] = undefined;
    cells -= weights[oldest] ?? 0;
    oldest = (oldest + 1) % most;
    size -= 1;
  }

  return {
    add(id, args, result) {
      if (size === most) drop();
      const weight = cellsOf(args, result);
      while (size > 0 && cells + weight > mostCells) drop();
      const at = (oldest + size) % most;
      ring[at] = { id, args, result };
      weights[at] = weight;
      cells += weight;
      size += 1;
    },
    of(id) {
      const found: LoggedCall[] = [];
      for (let back = size - 1; back >= 0; back--) {
        const call = ring[(oldest + back) % most];
        if (call?.id === id) found.push(call);
      }
      return found;
    },
    size: () => size,
  };
}
