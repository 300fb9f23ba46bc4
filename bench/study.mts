/**
 * How long the page's main thread is held up by a study of many years and by a weather file, in Chromium.
 * Run: npx tsx bench/study.mts [build folder]; without one the newest build in dist/.
 */
import { existsSync } from "node:fs";
import { loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { chromium, type Page } from "playwright-core";
import { MIAMI_MONTHS } from "../core/pool/data/miami";
import { serve } from "../scripts/serve";
import type {} from "../src/preview/page";

const CHROMIUM = "/usr/bin/chromium";
const WEATHER = fileURLToPath(new URL("../test/golden/weather-denver-co.epw.gz", import.meta.url));
/** A slice of the main thread may be so long, ms. */
const LIMIT = 200;
const WAIT = { timeout: 300_000 };

/** An invented pool's year, its climate and three ranges, from row 501 on. */
const FIRST_ROW = 500;
const BLOCKS = {
  6: [
    ["pool area", 1076],
    ["water depth", 5],
    ["latitude", 25.82],
    ["rated cooling", 90_000],
    ["rated power", 8.1],
    ["outdoor fan", 0.6],
    ["exchanger UA", 5000],
  ],
  9: MIAMI_MONTHS,
  16: [
    ["wind at water", "log-normal", 1, null, 3.8],
    ["design load", "triangular", 50_000, 75_000, 90_000],
    ["evaporation factor", "log-normal", 0.84, null, 1.19],
  ],
};
const call = (years: number): string => `=WARMBACK.POOL.UNCERTAINTY(G501:H507,J501:O513,Q501:U503,${years})`;

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

/** The page's tasks over 50 ms while something is done. */
async function measure(page: Page, what: string, run: () => Promise<void>): Promise<void> {
  await page.evaluate(() => (globalThis.longTasks = []));
  const began = performance.now();
  await run();
  await page.waitForTimeout(500);
  const tasks = (await page.evaluate(() => globalThis.longTasks)).sort((a, b) => b - a);
  const over = tasks.filter((each) => each > LIMIT).length;
  const cells = [tasks.length, over, (tasks[0] ?? 0).toFixed(0), ((performance.now() - began) / 1000).toFixed(1)];
  console.log(what.padEnd(44) + cells.map((each) => String(each).padStart(12)).join(""));
}

declare global {
  var longTasks: number[];
}

async function run(folder: string): Promise<void> {
  const served = await serve({ folder, port: 0, open: false });
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: ["--no-sandbox", "--disable-gpu"] });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(() => {
    globalThis.longTasks = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) globalThis.longTasks.push(duration);
    }).observe({ type: "longtask" });
  });
  await page.goto(served.address);
  await page.locator("#said", { hasText: /^A1 / }).waitFor(WAIT);
  await page.locator("#save:enabled").waitFor(WAIT);
  for (const [column, rows] of Object.entries(BLOCKS)) await write(page, FIRST_ROW, Number(column), rows);
  console.log(
    ["", "over 50 ms", `over ${LIMIT} ms`, "longest ms", "all s"]
      .map((each, at) => each.padEnd(at ? 0 : 44).padStart(12))
      .join(""),
  );
  await page.getByRole("tab", { name: "Workbook" }).click();
  await page.locator("#weather-rows").selectOption("hours");
  await measure(page, "a weather file of 8,760 rows", async () => {
    await page.locator('input[type="file"][accept*="epw"]').setInputFiles(WEATHER);
    await page
      .getByText(/8,760 hourly rows on the sheet/)
      .first()
      .waitFor(WAIT);
  });
  await page.getByRole("tab", { name: "Explain" }).click();
  await write(page, FIRST_ROW, 26, [[call(8)]]);
  await page.getByRole("button", { name: /^Run 2,048 times/ }).waitFor(WAIT);
  await measure(page, "a study of 2,048 years", async () => {
    await page.getByRole("button", { name: /^Run 2,048 times/ }).click();
    await page
      .getByText(/^Shares in the spread/)
      .first()
      .waitFor(WAIT);
  });
  console.log(`load ${(loadavg()[0] ?? 0).toFixed(1)} at the end: times of a busy machine are upper bounds`);
  await browser.close();
  await served.close();
}

if (existsSync(CHROMIUM)) await run(process.argv[2] ?? "dist");
else console.log("NOT RUN: the page in Chromium (apt-get install chromium)");
