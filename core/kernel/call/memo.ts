/** A bounded memory of results by raw arguments, for heavy functions. */

const hashInto = (hash: Int32Array, bits: Int32Array): void => {
  let low = hash[0] ?? 0;
  let high = hash[1] ?? 0;
  for (let i = 0; i < bits.length; i++) {
    const word = bits[i] ?? 0;
    low = Math.imul(low ^ word, 0x01000193);
    high = Math.imul(high ^ (word + i), 0x5bd1e995) ^ (high >>> 13);
  }
  hash[0] = low;
  hash[1] = high;
};

const keyOfMatrix = (matrix: readonly (readonly unknown[])[]): string => {
  const hash = new Int32Array([0x811c9dc5 | 0, matrix.length]);
  const numbers = new Float64Array(matrix.length * (matrix[0]?.length ?? 0));
  const bits = new Int32Array(numbers.buffer);
  let place = 0;
  let words = "";
  for (const line of matrix)
    for (const cell of line)
      if (typeof cell === "number") numbers[place++] = cell;
      else words += `${place++}:${String(cell)};`;
  hashInto(hash, bits);
  return `[${matrix.length}x${matrix[0]?.length ?? 0}|${hash[0] ?? 0}.${hash[1] ?? 0}|${words}]`;
};

const keyOf = (raw: readonly unknown[]): string =>
  raw
    .map((each) => (Array.isArray(each) ? keyOfMatrix(each as unknown[][]) : `${typeof each}:${String(each)}`))
    .join("|");

const same = (a: unknown, b: unknown): boolean =>
  Array.isArray(a) && Array.isArray(b)
    ? a.length === b.length && a.every((each, place) => same(each, b[place]))
    : Object.is(a, b);

export interface ResultMemo<T> {
  /** The remembered or computed result for these raw arguments. */
  getOrCompute(raw: readonly unknown[], compute: () => T): T;
}

/** Remembers the last `most` results; the oldest unused goes first. A hit is compared in full. */
export const boundedMemo = <T>(most: number): ResultMemo<T> => {
  const kept = new Map<string, { readonly raw: readonly unknown[]; readonly result: T }>();
  return {
    getOrCompute: (raw, compute) => {
      const key = keyOf(raw);
      const hit = kept.get(key);
      kept.delete(key);
      const entry = hit && same(hit.raw, raw) ? hit : { raw, result: compute() };
      kept.set(key, entry);
      if (kept.size > most) kept.delete(kept.keys().next().value ?? key);
      return entry.result;
    },
  };
};
