/** One bounded memory of results by function and arguments: for heavy cell functions, for scans and for the panel. */

/** What a memo may hold. The least recently used result is dropped first. */
export interface MemoBounds {
  readonly entries: number;
  /** Cells (and eighths of text characters) that all remembered arguments hold together. */
  readonly cells: number;
  /** Entries that stay whatever their size; 1 by default. */
  readonly least?: number;
}

export interface Memo<T> {
  get(id: string, args: readonly unknown[]): T | undefined;
  set(id: string, args: readonly unknown[], result: T): void;
  /** Returns the remembered result of a call with equal arguments, or computes and remembers it. */
  getOrCompute(id: string, args: readonly unknown[], compute: () => T): T;
}

interface Entry<T> {
  readonly args: readonly unknown[];
  readonly result: T;
  readonly weight: number;
}

const PRIME = 0x01000193;
const SEED = 0x811c9dc5;
const MIX = 0x5bd1e995;

const number = new Float64Array(1);
const words = new Int32Array(number.buffer);

const isRow = (line: unknown): line is readonly unknown[] => Array.isArray(line);

/** A matrix as its size, a 64-bit hash of its numbers and its other cells as text. Rows may be missing or differ in length. */
function matrixKey(matrix: readonly unknown[]): string {
  let low = SEED | 0;
  let high = matrix.length;
  let place = 0;
  let others = "";
  for (const line of matrix) {
    const cells = isRow(line) ? line : [line];
    for (const cell of cells) {
      place += 1;
      if (typeof cell === "number") {
        number[0] = cell;
        low = Math.imul(low ^ (words[0] ?? 0), PRIME);
        low = Math.imul(low ^ (words[1] ?? 0), PRIME);
        high = Math.imul(high ^ ((words[0] ?? 0) + place), MIX) ^ (high >>> 13);
        high = Math.imul(high ^ ((words[1] ?? 0) + place), MIX) ^ (high >>> 13);
      } else others += `${place}:${typeof cell}${String(cell)};`;
    }
  }
  return `[${matrix.length}x${place}|${low}.${high}|${others}]`;
}

function keyOf(id: string, args: readonly unknown[]): string {
  let key = id;
  for (const each of args) key += Array.isArray(each) ? `|${matrixKey(each)}` : `|${typeof each}:${String(each)}`;
  return key;
}

const same = (a: unknown, b: unknown): boolean =>
  Array.isArray(a) && Array.isArray(b)
    ? a.length === b.length && a.every((each, place) => same(each, b[place]))
    : Object.is(a, b);

const weightOf = (value: unknown): number => {
  if (Array.isArray(value)) return value.reduce((sum: number, each) => sum + weightOf(each), 0);
  return typeof value === "string" ? 1 + value.length / 8 : 1;
};

/** A memo within bounds. A hit is compared in full, so a hash collision can't return another call's result. */
export function boundedMemo<T>({ entries, cells, least = 1 }: MemoBounds): Memo<T> {
  const held = new Map<string, Entry<T>>();
  let weight = 0;

  function find(key: string, args: readonly unknown[]): Entry<T> | undefined {
    const hit = held.get(key);
    if (hit === undefined || !same(hit.args, args)) return undefined;
    held.delete(key);
    held.set(key, hit);
    return hit;
  }

  function store(key: string, args: readonly unknown[], result: T): void {
    const entry = { args, result, weight: weightOf(args) };
    weight += entry.weight - (held.get(key)?.weight ?? 0);
    held.delete(key);
    held.set(key, entry);
    for (const [oldest, { weight: freed }] of held) {
      if (held.size <= least || (held.size <= entries && weight <= cells)) return;
      held.delete(oldest);
      weight -= freed;
    }
  }

  return {
    get: (id, args) => find(keyOf(id, args), args)?.result,
    set: (id, args, result) => store(keyOf(id, args), args, result),
    getOrCompute(id, args, compute) {
      const key = keyOf(id, args);
      const hit = find(key, args);
      if (hit !== undefined) return hit.result;
      const result = compute();
      store(key, args, result);
      return result;
    },
  };
}
