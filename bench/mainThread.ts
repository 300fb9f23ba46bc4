/** Tasks of a page's main thread by processor time, from Chromium's trace: how long they take whatever else runs. */
import type { Browser, Page } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, µs. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

const threadOf = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`;

const isMainThread = ({ name, args }: TraceEvent): boolean => name === "thread_name" && args.name === "CrRendererMain";

const isTask = ({ name, ph }: TraceEvent): boolean => name === "ThreadControllerImpl::RunTask" && ph === "X";

/** @returns processor time of each task while something is done, ms, longest first */
export async function mainThreadTasks(
  browser: Browser,
  page: Page,
  run: () => Promise<void>,
): Promise<readonly number[]> {
  await browser.startTracing(page, { categories: ["toplevel"] });
  await run();
  const trace = (await browser.stopTracing()).toString();
  const events = (JSON.parse(trace) as { readonly traceEvents: readonly TraceEvent[] }).traceEvents;
  const mains = new Set(events.filter(isMainThread).map(threadOf));
  return events
    .filter((event) => isTask(event) && mains.has(threadOf(event)))
    .map(({ tdur = 0 }) => tdur / 1000)
    .sort((a, b) => b - a);
}
