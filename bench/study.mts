/**
 * How long the page's main thread is held up by a weather file, by calls with ranges and by a study of many years, in
 * Chromium. Times are those of the thread's processor, so that other programs don't count; only "all s" is the clock.
 * Run: npx tsx bench/study.mts [build folder …]; without one the newest build in dist/. Every folder in the same run.
 */
import { existsSync } from "node:fs";
import { loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { chromium, type Browser, type Page } from "playwright-core";
import { MIAMI_MONTHS } from "../core/pool/data/miami";
import { serve } from "../scripts/serve";
import type {} from "../src/preview/page";
import { mainThreadTasks } from "./mainThread";

const CHROMIUM = "/usr/bin/chromium";
const WEATHER = fileURLToPath(new URL("../test/golden/weather-denver-co.epw.gz", import.meta.url));
/** A slice of the main thread may be so long, ms. */
const LIMIT = 200;
/** The page keeps an edited workbook in the browser's store 1.5 s after the last change. */
const KEEPING_MS = 3_000;
const WAIT = { timeout: 300_000 };

/** Where the calls go: below the blocks, beside the first sheet's own cells. */
const RESULT = { row: 170, column: 8 };

/** An invented pool's year, its climate and three ranges, beside the first sheet's own cells. */
const FIRST_ROW = 150;
const BLOCKS = {
  8: [
    ["pool area", 1076],
    ["water depth", 5],
    ["latitude", 25.82],
    ["rated cooling", 90_000],
    ["rated power", 8.1],
    ["outdoor fan", 0.6],
    ["exchanger UA", 5000],
  ],
  11: MIAMI_MONTHS,
  18: [
    ["wind at water", "log-normal", 1, null, 3.8],
    ["design load", "triangular", 50_000, 75_000, 90_000],
    ["evaporation factor", "log-normal", 0.84, null, 1.19],
  ],
};
const call = (years: number): string => `=WARMBACK.POOL.UNCERTAINTY(I151:J157,L151:Q163,S151:W153,${years})`;

async function write(page: Page, at: number, column: number, rows: readonly (readonly unknown[])[]): Promise<void> {
  await page.evaluate(
    async ([row, from, contents]) => {
      const workbook = globalThis.warmbackPreview?.workbook;
      const sheet = (await workbook?.sheets())?.[0]?.name ?? "";
      const cells = contents.flatMap((line, down) =>
        line.map((content, over) => ({ sheet, row: row + down, column: from + over, content: content as string })),
      );
      await workbook?.write(cells);
      await workbook?.select({ sheet, row, column: from });
    },
    [at, column, rows] as const,
  );
}

interface Watched {
  readonly browser: Browser;
  readonly page: Page;
}

const line = (what: string, cells: readonly (string | number)[]): void =>
  console.log(what.padEnd(44) + cells.map((each) => String(each).padStart(12)).join(""));

/** The page's long tasks, by processor time, while something is done and for as long as its workbook is kept afterwards. */
async function measure({ browser, page }: Watched, what: string, run: () => Promise<void>): Promise<void> {
  let seconds = 0;
  const tasks = await mainThreadTasks(browser, page, async () => {
    const began = performance.now();
    await run();
    seconds = (performance.now() - began) / 1000;
    await page.waitForTimeout(KEEPING_MS);
  });
  const over = (limit: number): number => tasks.filter((each) => each > limit).length;
  const sum = tasks.reduce((all, each) => all + each, 0) / 1000;
  line(what, [over(50), over(LIMIT), (tasks[0] ?? 0).toFixed(0), sum.toFixed(2), seconds.toFixed(1)]);
}

async function openPage(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.locator("#said", { hasText: /^A1 / }).waitFor(WAIT);
  await page.locator("#save:enabled").waitFor(WAIT);
  for (const [column, rows] of Object.entries(BLOCKS)) await write(page, FIRST_ROW, Number(column), rows);
  await page.waitForTimeout(KEEPING_MS);
  return page;
}

async function dropFile(page: Page): Promise<void> {
  await page.locator('input[type="file"][accept*="epw"]').setInputFiles(WEATHER);
  await page
    .getByText(/8,760 hourly rows on the sheet/)
    .first()
    .waitFor(WAIT);
}

async function runStudy(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^Run 2,048 times/ }).click();
  await page
    .getByText(/^Shares in the spread/)
    .first()
    .waitFor(WAIT);
}

async function run(folder: string): Promise<void> {
  const served = await serve({ folder, port: 0, open: false });
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await openPage(browser, served.address);
  const watched = { browser, page };
  line(folder.slice(-42), ["over 50 ms", `over ${LIMIT} ms`, "longest ms", "sum s", "all s"]);
  for (const years of [64, 256])
    await measure(watched, `POOL.UNCERTAINTY, ${years} years in a cell`, () =>
      write(page, RESULT.row, RESULT.column, [[call(years)]]),
    );
  await page.getByRole("tab", { name: "Workbook" }).click();
  await page.locator("#weather-rows").selectOption("hours");
  await measure(watched, "a weather file of 8,760 rows", () => dropFile(page));
  await page.getByRole("tab", { name: "Explain" }).click();
  await write(page, RESULT.row, RESULT.column, [[call(8)]]);
  await page.getByRole("button", { name: /^Run 2,048 times/ }).waitFor(WAIT);
  await page.waitForTimeout(KEEPING_MS);
  await measure(watched, "a study of 2,048 years", () => runStudy(page));
  await browser.close();
  await served.close();
}

const named = process.argv.slice(2);
if (existsSync(CHROMIUM)) {
  for (const folder of named.length > 0 ? named : ["dist"]) await run(folder);
  console.log(`load ${(loadavg()[0] ?? 0).toFixed(1)} at the end: times of a busy machine are upper bounds`);
} else console.log("NOT RUN: the page in Chromium (apt-get install chromium)");
