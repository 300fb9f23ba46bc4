/**
 * Cuts work into requests of a size that every Excel takes. Excel on the web refuses requests and answers above 5 MB
 * (Microsoft Learn, "Resource limits and performance optimization for Office Add-ins").
 */
import { isTooLarge } from "./sentences";

/** Bytes that a request and its answer are planned for: costs are estimates. */
export const BUDGET = 1_500_000;

export interface Portions<T, R> {
  /** Estimated bytes of an item, the larger of request and answer. */
  cost(item: T): number;
  run(items: readonly T[]): Promise<readonly R[]>;
  /** Halves of an item that is too large by itself; undefined where it can't be cut. */
  split?(item: T): readonly T[] | undefined;
}

/** The next items that fit the budget, at least one. */
function take<T>(waiting: readonly T[], cost: (item: T) => number, budget: number): readonly T[] {
  let total = 0;
  const end = waiting.findIndex((item, at) => (total += cost(item)) > budget && at > 0);
  return end < 0 ? waiting : waiting.slice(0, end);
}

/** Does all items, portion by portion; where a portion is refused for its size, it and all later ones are halved. */
export async function inPortions<T, R>(
  items: readonly T[],
  { cost, run, split }: Portions<T, R>,
): Promise<readonly R[]> {
  const done: R[] = [];
  let waiting = items;
  let budget = BUDGET;
  while (waiting.length > 0) {
    const portion = take(waiting, cost, budget);
    try {
      for (const result of await run(portion)) done.push(result);
      waiting = waiting.slice(portion.length);
    } catch (error) {
      if (!isTooLarge(error)) throw error;
      budget = portion.reduce((sum, item) => sum + cost(item), 0) / 2;
      const [only] = portion;
      if (portion.length > 1 || only === undefined) continue;
      const halves = split?.(only);
      if (halves === undefined) throw error;
      waiting = [...halves, ...waiting.slice(1)];
    }
  }
  return done;
}
