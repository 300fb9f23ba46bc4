import { expect, test } from "vitest";
import { laterWorkbook } from "../../src/preview/page/laterWorkbook";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import type { Workbook } from "../../src/workbook/port";

/** Every method of the page's workbook; none of them is called. */
const asked = previewWorkbook({} as SheetBook, undefined, () => Promise.resolve(""));
const methods = Object.entries(asked).flatMap(([name, method]) => (typeof method === "function" ? [name] : []));
const events = methods.filter((name) => name.startsWith("on"));

function recording(calls: unknown[]): Workbook {
  const answer =
    (name: string) =>
    (...args: readonly unknown[]) => {
      calls.push([name, ...args]);
      return events.includes(name) ? () => calls.push([name, "ended"]) : Promise.resolve(`answer of ${name}`);
    };
  return Object.fromEntries(methods.map((name) => [name, answer(name)])) as unknown as Workbook;
}

type Called = (...args: readonly unknown[]) => unknown;
const methodOf = (book: Workbook, name: string): Called => (book as unknown as Record<string, Called>)[name] as Called;

test.each(methods.filter((name) => !events.includes(name)))(
  "%s waits for the workbook, gets the same arguments and gives its answer",
  async (name) => {
    const calls: unknown[] = [];
    let start: (book: Workbook) => void = () => undefined;
    const later = laterWorkbook(new Promise((resolve) => (start = resolve)));
    const args = Array.from({ length: methodOf(laterWorkbook(Promise.resolve(asked)), name).length }, (_, at) => ({
      at,
    }));
    const answer = methodOf(later, name)(...args);
    expect(calls).toEqual([]);
    start(recording(calls));
    // What answers nothing in the port may drop an answer.
    expect([`answer of ${name}`, undefined]).toContain(await answer);
    expect(calls).toEqual([[name, ...args]]);
  },
);

test.each(events)("%s is followed from the start, and no more once ended", async (name) => {
  const calls: unknown[] = [];
  const listener = (): void => undefined;
  const later = laterWorkbook(Promise.resolve(recording(calls)));
  const end = methodOf(later, name)(listener) as () => void;
  await Promise.resolve();
  expect(calls).toEqual([[name, listener]]);
  end();
  expect(calls).toEqual([
    [name, listener],
    [name, "ended"],
  ]);
});
