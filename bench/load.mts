// Size of the built functions script, and the time that Chromium takes to load and associate it; prints a table.
// Run: npx tsx bench/load.mts (after a build). Targets: the budget of size, and under 100 ms.
import { existsSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { chromium } from "playwright-core";
import { MOST_ZIPPED_BYTES } from "./budget";

const RUNS = 9;
const CHROMIUM = "/usr/bin/chromium";
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];

const HOST = `globalThis.made = new Map();
globalThis.CustomFunctions = { associate: (id, call) => made.set(id, call), ErrorCode: {}, Error: Error };`;

const script = readFileSync("dist/functions.js", "utf8");
const zipped = gzipSync(script, { level: 9 }).length;

const row = (what: string, value: string, target: string): void =>
  console.log(`${what.padEnd(44)}${value.padStart(12)}${target.padStart(16)}`);

const timed = async (): Promise<void> => {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
  const times: number[] = [];
  let functions = 0;
  for (let run = 0; run < RUNS; run++) {
    const page = await browser.newPage();
    await page.addScriptTag({ content: HOST });
    await page.addScriptTag({
      content: `globalThis.began = performance.now();\n${script}\nglobalThis.ended = performance.now();`,
    });
    const seen = await page.evaluate("({ took: ended - began, functions: made.size })");
    const { took, functions: made } = seen as { took: number; functions: number };
    times.push(took);
    functions = made;
    await page.close();
  }
  await browser.close();
  times.sort((a, b) => a - b);
  row("functions associated", String(functions), "");
  row(`load and associate, least of ${RUNS}, ms`, (times[0] ?? 0).toFixed(1), "< 100");
  row(`load and associate, median of ${RUNS}, ms`, (times[(RUNS - 1) / 2] ?? 0).toFixed(1), "< 100");
};

row("", "", "target");
row("functions.js, kB", (script.length / 1000).toFixed(1), "");
row("functions.js gzipped, kB", (zipped / 1000).toFixed(1), `< ${MOST_ZIPPED_BYTES / 1000}`);
if (existsSync(CHROMIUM)) await timed();
else console.log(`NOT RUN: loading in Chromium (apt-get install chromium)`);
