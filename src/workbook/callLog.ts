/**
 * The calls of this session: function, raw arguments, result. Every cell call adds an entry, so adding is one store into a
 * ring and copies nothing. It is bounded by its entries and by the matrix cells and texts that they keep in memory.
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
/** Two bytes each. */
export const MAX_LOGGED_CHARACTERS = 8_000_000;

const matrixCells = (value: unknown): number =>
  Array.isArray(value) && Array.isArray(value[0]) ? value.length * value[0].length : 0;

function cellsOf(args: readonly CellInput[], result: CellOutcome): number {
  let cells = "value" in result ? matrixCells(result.value) : 0;
  for (let at = 0; at < args.length; at++) cells += matrixCells(args[at]);
  return cells;
}

/** The characters of a text, or of all texts in a list, a matrix or a list of matrices. */
function characters(value: unknown): number {
  if (typeof value === "string") return value.length;
  if (!Array.isArray(value)) return 0;
  let count = 0;
  for (let at = 0; at < value.length; at++) {
    const item: unknown = value[at];
    // A matrix of numbers costs one look at each cell and no call.
    if (typeof item === "string") count += item.length;
    else if (typeof item === "object") count += characters(item);
  }
  return count;
}

function charactersOf(args: readonly CellInput[], result: CellOutcome): number {
  return characters(args) + ("value" in result ? characters(result.value) : (result.message?.length ?? 0));
}

/**
 * A log of at most `most` calls that hold at most `mostCells` matrix cells and `mostCharacters` of text together (the newest
 * call always stays).
 */
export function sessionLog(
  most: number = MOST_CALLS,
  mostCells: number = MAX_LOGGED_CELLS,
  mostCharacters: number = MAX_LOGGED_CHARACTERS,
): SessionLog {
  const ring: (LoggedCall | undefined)[] = new Array<LoggedCall | undefined>(most).fill(undefined);
  const weights = new Float64Array(most);
  const lengths = new Float64Array(most);
  let oldest = 0;
  let size = 0;
  let cells = 0;
  let text = 0;

  function drop(): void {
    ring[oldest] = undefined;
    cells -= weights[oldest] ?? 0;
    text -= lengths[oldest] ?? 0;
    oldest = (oldest + 1) % most;
    size -= 1;
  }

  return {
    add(id, args, result) {
      if (size === most) drop();
      const weight = cellsOf(args, result);
      const length = charactersOf(args, result);
      while (size > 0 && (cells + weight > mostCells || text + length > mostCharacters)) drop();
      const at = (oldest + size) % most;
      ring[at] = { id, args, result };
      weights[at] = weight;
      lengths[at] = length;
      cells += weight;
      text += length;
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
