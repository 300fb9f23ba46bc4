/** 100,000 mixed calls of all functions, as a session of days makes them: the heap doesn't grow. */
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { expect, test } from "vitest";
import { CATALOGUE } from "../../core";
import { callCell, startHost } from "../fuzz/functionsHost";
import { listsOf } from "../fuzz/functionsLists";

const CALLS = 100_000;
/** More lists of a function than any memo holds, so that results come and go. */
const LISTS = 90;
const SEED = 20_260_612;
/** Caches and compiled code are filled by then. */
const WARM_UP = 30_000;
const MOST_GROWTH_MB = 4;

setFlagsFromString("--expose_gc");
const collect = runInNewContext("gc") as () => void;

function heapMb(): number {
  collect();
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}

test(`the heap is flat over ${String(CALLS)} mixed calls`, () => {
  startHost();
  const calls = CATALOGUE.flatMap((definition) =>
    fc.sample(listsOf(definition), { numRuns: LISTS, seed: SEED }).map((list) => [definition.id, list] as const),
  );
  const heap: number[] = [];
  for (let at = 0; at < CALLS; at++) {
    // A step that shares no factor with the number of calls mixes the functions and reaches every list.
    const [id, list] = calls[(at * 7919) % calls.length] ?? ["", []];
    callCell(id, list);
    if (at + 1 === WARM_UP || at + 1 === CALLS) heap.push(heapMb());
  }
  const [before = 0, after = 0] = heap;
  console.log(
    `soak: ${before.toFixed(1)} MB after ${String(WARM_UP)} calls, ${after.toFixed(1)} MB after ${String(CALLS)}`,
  );
  expect(after - before).toBeLessThan(MOST_GROWTH_MB);
});
