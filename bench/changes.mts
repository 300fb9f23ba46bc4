/**
 * What a change costs in the page with a workbook of 10,000 formulas, and whose the time is: ours, the sheet engine's or the
 * browser's. Until the panel has looked for cautions and the browser's store has its copy.
 * Run: npx tsx bench/changes.mts [build folder …]; without one the newest build in dist/. Every folder in the same run.
 */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Browser, type Page } from "playwright-core";
import { serve } from "../scripts/serve";
import type { CellWrite } from "../src/workbook/port";
import { mainThreadTasks } from "./mainThread";
import { mixedLines, OF_FIRST, SHARED } from "./mixedBook";
import { calculated, callCount, countCalls, inputCell, openBook, quiet, sharedCell, write } from "./mixedPage";
import { mixedSheets, writeMixed } from "./mixedSheets";
import { profiled, type Shares } from "./profileShares";

const RUNS = 3;
const CHROMIUM = "/usr/bin/chromium";
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];

const lines = mixedLines();
/** No change makes a number that was there before. */
let made = 0;
const factor = (): number => 1 + ++made * 0.0003;

const varied = lines.filter((line) => line.varied !== undefined).length;
const ONE = "PIPE.HEADLOSS";
const one = lines.findIndex(({ id }) => id === ONE);

/** What is changed, with how many calls it leads to at least. */
const CHANGES: readonly (readonly [string, number, () => readonly CellWrite[]])[] = [
  [`an input of one ${ONE}`, 1, () => [inputCell(one, (lines[one]?.input ?? 1) * factor())]],
  [`an input of ${OF_FIRST.toLocaleString("en")} calls`, OF_FIRST, () => [sharedCell(0, factor())]],
  ["all inputs", varied, () => Array.from({ length: SHARED }, (_, at) => sharedCell(at, factor()))],
];

interface Cost {
  /** Main thread, ms. */
  readonly processor: number;
  readonly longest: number;
  /** From the change to its results, ms. */
  readonly passed: number;
  readonly calls: number;
  readonly shares: Shares;
}

const row = (what: string, cells: readonly (string | number)[]): void =>
  console.log(
    what.padEnd(28) + cells.map((each) => (typeof each === "number" ? each.toFixed(0) : each).padStart(11)).join(""),
  );

const HEADS = ["processor", "longest", "results", "calls", "functions", "page", "panel", "engine", "browser", "ours %"];

/** Once by the trace and once by the profile, which slows what it looks at. */
async function costOf(browser: Browser, page: Page, change: () => readonly CellWrite[]): Promise<Cost> {
  let passed = 0;
  const run = async (): Promise<void> => {
    const began = performance.now();
    await write(page, change());
    await calculated(page);
    passed = performance.now() - began;
    await quiet(page);
  };
  const before = await callCount(page);
  const tasks = await mainThreadTasks(browser, page, run);
  const calls = (await callCount(page)) - before;
  const took = passed;
  const session = await page.context().newCDPSession(page);
  const shares = await profiled(session, run);
  await session.detach();
  return { processor: tasks.reduce((sum, each) => sum + each, 0), longest: tasks[0] ?? 0, passed: took, calls, shares };
}

const sumOf = ({ functions, page, panel, engine, browser }: Shares): number =>
  functions + page + panel + engine + browser;

function print(what: string, costs: readonly Cost[]): void {
  const least = (of: (cost: Cost) => number): number => Math.min(...costs.map(of));
  const [first] = [...costs].sort((a, b) => sumOf(a.shares) - sumOf(b.shares));
  if (first === undefined) return;
  const { functions, page, panel, engine, browser } = first.shares;
  row(what, [
    least(({ processor }) => processor),
    least(({ longest }) => longest),
    least(({ passed }) => passed),
    least(({ calls }) => calls),
    ...[functions, page, panel, engine, browser],
    (100 * (functions + page + panel)) / sumOf(first.shares),
  ]);
}

async function run(folder: string, path: string): Promise<void> {
  const served = await serve({ folder, port: 0, open: false });
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await countCalls(page);
  await page.goto(served.address);
  await openBook(page, path);
  await quiet(page);
  row(folder.slice(-25), HEADS);
  for (const [what, atLeast, change] of CHANGES) {
    const costs: Cost[] = [];
    for (let time = 0; time < RUNS; time++) costs.push(await costOf(browser, page, change));
    if (costs.some(({ calls }) => calls < atLeast)) throw new Error(`${what}: a change led to too few calls`);
    print(what, costs);
  }
  await browser.close();
  await served.close();
}

const HOW = [
  `Milliseconds, least of ${RUNS}. Processor and longest task: thread time of the main thread's tasks in the browser's trace.`,
  "Results: by the clock, from the change until the engine has calculated. Calls: counted where functions.js associates.",
  "The parts: samples of a second run's profile (200 µs apart, by the clock) by script: functions.js as the sheet calls it,",
  "the page's own scripts, the panel's with what it calls, the engine's packages, the browser (drawing, garbage).",
];

const named = process.argv.slice(2);
if (existsSync(CHROMIUM)) {
  for (const line of HOW) console.log(line);
  const folder = mkdtempSync(join(tmpdir(), "warmback-bench-"));
  const path = join(folder, "mixed.xlsx");
  await writeMixed(mixedSheets(lines), path);
  for (const build of named.length > 0 ? named : ["dist"]) await run(build, path);
  rmSync(folder, { recursive: true });
} else console.log("NOT RUN: changes in the page in Chromium (apt-get install chromium)");
