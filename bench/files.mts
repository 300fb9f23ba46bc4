/**
 * What opening, saving and handing over a large workbook cost the page's main thread in Chromium: its processor time and
 * its longest task (thread time of the tasks in the browser's trace), and the time until it is done.
 * Run: npx tsx bench/files.mts [build folder …]; without one the newest build in dist/. Every folder in the same run.
 * Target: no task over 200 ms.
 */
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser, type Page } from "playwright-core";
import { serve } from "../scripts/serve";
import { panelEngine } from "../src/taskpane/engine";
import { sessionLog } from "../src/workbook/callLog";
import { newWorkbook, packageBytes } from "../src/workbook/package";
import { FORMULA_COUNT, largeSheets } from "./largeBook";

const RUNS = 2;
const CHROMIUM = "/usr/bin/chromium";
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];
const LIMIT = 240_000;

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Thread time, µs. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Milliseconds. */
interface Cost {
  readonly processor: number;
  readonly longest: number;
  readonly passed: number;
}

/** The tasks of the main thread that did most: the page's own. */
function tasksOf(events: readonly TraceEvent[]): readonly number[] {
  const mains = events.filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain");
  const tasks = mains.map(({ pid, tid }) =>
    events.filter((event) => event.pid === pid && event.tid === tid && event.name.endsWith("RunTask")),
  );
  const times = tasks.map((those) => those.map(({ tdur = 0 }) => tdur / 1000));
  const sum = (list: readonly number[]): number => list.reduce((total, time) => total + time, 0);
  return times.sort((a, b) => sum(b) - sum(a))[0] ?? [];
}

async function traced(browser: Browser, page: Page, step: () => Promise<void>): Promise<Cost> {
  await browser.startTracing(page, { categories: ["toplevel", "disabled-by-default-devtools.timeline"] });
  const began = performance.now();
  await step();
  const passed = performance.now() - began;
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: TraceEvent[] };
  const tasks = tasksOf(traceEvents.filter(({ name }) => name !== "ThreadControllerImpl::RunTask"));
  return { processor: tasks.reduce((sum, time) => sum + time, 0), longest: Math.max(0, ...tasks), passed };
}

/** The steps in their order, by what they are called. */
function stepsOn(page: Page, path: string): readonly (readonly [string, () => Promise<void>])[] {
  const status = (text: RegExp): Promise<void> =>
    page.locator("#status", { hasText: text }).waitFor({ timeout: LIMIT });
  const button = (name: string | RegExp) => page.getByRole("button", { name });
  return [
    // The engine asks for every frame, whatever happens.
    ["nothing, for ten seconds", () => page.waitForTimeout(10_000)],
    [
      "open",
      async () => {
        await page.locator("#file").setInputFiles(path);
        await status(/is open\./);
      },
    ],
    [
      "save",
      async () => {
        await page.locator("#save").click();
        await status(/is saved\./);
      },
    ],
    [
      "hand over: look through",
      async () => {
        await page.getByRole("tab", { name: "Workbook" }).click();
        await button("Make a hand-over copy").click();
        await button(/^Make the copy/).waitFor({ timeout: LIMIT });
        await page.waitForTimeout(1500);
      },
    ],
    [
      "hand over: copy",
      async () => {
        await button(/^Make the copy/).click();
        await page
          .getByText(/^The copy is /)
          .first()
          .waitFor({ timeout: LIMIT });
      },
    ],
  ];
}

async function costsOf(browser: Browser, address: string, path: string): Promise<ReadonlyMap<string, Cost>> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator("#said", { hasText: /^A1 / }).waitFor({ timeout: LIMIT });
  await page.locator("#save:enabled").waitFor();
  // What the page shows first is worked out, and the panel has looked through it.
  await page.evaluate(() => globalThis.warmbackPreview?.workbook.recalculate([]));
  await page.waitForTimeout(5000);
  const costs = new Map<string, Cost>();
  for (const [what, step] of stepsOn(page, path)) costs.set(what, await traced(browser, page, step));
  await context.close();
  return costs;
}

const row = (...cells: readonly string[]): void =>
  console.log(cells.map((cell, at) => (at === 0 ? cell.padEnd(40) : cell.padStart(16))).join(""));

async function run(folders: readonly string[]): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "warmback-bench-"));
  const path = join(folder, "large.xlsx");
  writeFileSync(path, await packageBytes(await newWorkbook(largeSheets(panelEngine(sessionLog())))));
  row(
    `${FORMULA_COUNT.toLocaleString("en")} formulas, least of ${RUNS}`,
    "main thread ms",
    "longest task ms",
    "passed ms",
  );
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
  for (const build of folders) {
    const served = await serve({ folder: build, port: 0, open: false });
    const runs: ReadonlyMap<string, Cost>[] = [];
    for (let time = 0; time < RUNS; time++) runs.push(await costsOf(browser, served.address, path));
    await served.close();
    console.log(build);
    for (const what of runs[0]?.keys() ?? []) {
      const least = (of: (cost: Cost) => number): string =>
        Math.min(...runs.flatMap((costs) => costs.get(what) ?? []).map(of)).toFixed(0);
      row(
        `  ${what}`,
        least((one) => one.processor),
        least((one) => one.longest),
        least((one) => one.passed),
      );
    }
  }
  await browser.close();
  rmSync(folder, { recursive: true });
}

const named = process.argv.slice(2);
if (existsSync(CHROMIUM)) await run(named.length > 0 ? named : ["dist"]);
else console.log("NOT RUN: the page's files in Chromium (apt-get install chromium)");
