/**
 * What the page costs until it can be used: processor time of its main thread and bytes over the network, in Chromium.
 * Run: npx tsx bench/page.mts [build folder …]; without one the newest build in dist/. Every folder in the same run.
 */
import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";
import { serve } from "../scripts/serve";

const RUNS = 3;
const CHROMIUM = "/usr/bin/chromium";
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];

interface Cost {
  /** Main thread, s. */
  readonly processor: number;
  readonly kilobytes: number;
  /** From the request on, ms. */
  readonly painted: number;
  readonly usable: number;
}

async function costOf(browser: Browser, address: string): Promise<Cost> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Performance.enable");
  await session.send("Network.enable");
  let bytes = 0;
  session.on("Network.loadingFinished", ({ encodedDataLength }) => (bytes += encodedDataLength));
  const began = performance.now();
  await page.goto(address);
  await page.locator("#said", { hasText: /^A1 / }).waitFor({ timeout: 120_000 });
  await page.locator("#save:enabled").waitFor();
  const usable = performance.now() - began;
  const { metrics } = await session.send("Performance.getMetrics");
  const processor = metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN;
  const painted = await page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0);
  await context.close();
  return { processor, kilobytes: bytes / 1000, painted, usable };
}

const least = (costs: readonly Cost[], of: (cost: Cost) => number): number => Math.min(...costs.map(of));

const row = (...cells: readonly string[]): void =>
  console.log(cells.map((cell, at) => (at === 0 ? cell.padEnd(40) : cell.padStart(16))).join(""));

async function run(folders: readonly string[]): Promise<void> {
  row(`least of ${RUNS}`, "processor s", "kB transferred", "painted ms", "usable ms");
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
  for (const folder of folders) {
    const served = await serve({ folder, port: 0, open: false });
    const costs: Cost[] = [];
    for (let time = 0; time < RUNS; time++) costs.push(await costOf(browser, served.address));
    await served.close();
    row(
      folder.slice(-38),
      least(costs, ({ processor }) => processor).toFixed(2),
      least(costs, ({ kilobytes }) => kilobytes).toFixed(0),
      least(costs, ({ painted }) => painted).toFixed(0),
      least(costs, ({ usable }) => usable).toFixed(0),
    );
  }
  await browser.close();
}

const named = process.argv.slice(2);
if (existsSync(CHROMIUM)) await run(named.length > 0 ? named : ["dist"]);
else console.log("NOT RUN: the page in Chromium (apt-get install chromium)");
