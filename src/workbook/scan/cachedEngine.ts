/** The calculation as a scan uses it: equal calls and their cautions are computed once. */
import { type CellInput, type RaisedCaution, boundedMemo } from "../../../core";
import type { SessionLog } from "../callLog";
import type { ReadCall } from "../reader/read";
import type { CellOutcome } from "../values";

/** `call` and `cautionsOf` may throw `Pending`. */
export interface CautionEngine {
  readonly known: ReadonlySet<string>;
  readonly log: SessionLog;
  call(id: string, args: readonly CellInput[]): CellOutcome;
  cautionsOf(id: string, args: readonly CellInput[]): readonly RaisedCaution[];
  /** Functions that take long: the scan leaves them for last. */
  heavy?(id: string): boolean;
}

/** The raw arguments of a call; undefined if one is an error or can't be read. */
function rawArguments({ args }: ReadCall): readonly CellInput[] | undefined {
  const values: CellInput[] = [];
  for (const argument of args) {
    if (!("value" in argument)) return undefined;
    values.push(argument.value);
  }
  return values;
}

/** Light calls of a large workbook, and the ranges of its heavy ones. */
const BOUNDS = { entries: 200_000, cells: 2_000_000 };

/** Beside a workbook's own calls so many earlier ones are kept: a quarter of its own, and these. */
const EARLIER = 500;

interface Caching {
  cautionsFor(call: ReadCall): readonly RaisedCaution[];
  /** A scan has ended. Drops what no scan has asked for lately. @param calls of the whole workbook */
  scanned(calls: number): void;
}

/** Outcomes in two halves: what is asked for moves to the newer one, and the older one is dropped as a whole. */
function recentOutcomes() {
  let [newer, older] = [boundedMemo<CellOutcome>(BOUNDS), boundedMemo<CellOutcome>(BOUNDS)];
  let stored = 0;
  return {
    getOrCompute: (id: string, args: readonly CellInput[], compute: () => CellOutcome): CellOutcome =>
      newer.getOrCompute(id, args, () => {
        const outcome = older.get(id, args) ?? compute();
        stored += 1;
        return outcome;
      }),
    scanned: (calls: number): void => {
      if (stored <= calls * 1.25 + EARLIER) return;
      [newer, older] = [boundedMemo<CellOutcome>(BOUNDS), newer];
      stored = 0;
    },
  };
}

/** An engine that computes equal calls once. Cautions are cached by the outcome of their call. */
export function cachedEngine(engine: CautionEngine): CautionEngine & Caching {
  const outcomes = recentOutcomes();
  const cautions = new WeakMap<CellOutcome, readonly RaisedCaution[]>();
  const own = new WeakSet<CellOutcome>();
  return {
    ...engine,
    scanned: outcomes.scanned,
    call: (id, args) =>
      outcomes.getOrCompute(id, args, () => {
        const outcome = { ...engine.call(id, args) };
        own.add(outcome);
        return outcome;
      }),
    cautionsFor(call) {
      const known = call.outcome && cautions.get(call.outcome);
      if (known !== undefined) return known;
      const args = rawArguments(call);
      const raised = args === undefined ? [] : engine.cautionsOf(call.id, args);
      if (call.outcome !== undefined && args !== undefined && own.has(call.outcome)) cautions.set(call.outcome, raised);
      return raised;
    },
  };
}

export type CachedEngine = ReturnType<typeof cachedEngine>;
