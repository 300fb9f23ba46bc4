// Times POOL.UNCERTAINTY as a cell runs it and as the panel's worker does, bundled, in CPU time, and prints a table.
// Run: npx tsx bench/uncertainty.ts. Targets: 64 years under 1 s, 256 under 3 s, no slice of the worker over 200 ms.
import { join } from "node:path";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const HERE = fileURLToPath(new URL("..", import.meta.url));

/** Nine uncertain inputs: wind, evaporation, sun, air, load, exchanger, prices, cost. */
const ENTRY = `
import { CATALOGUE, COMPILED } from "./core/catalogue";
import { evaluate } from "./core/kernel/call/evaluate";
import { rawOfExample } from "./core/kernel/explain/describe";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "./core/pool/data/miami";
import { longStudy, STUDY_RUNS } from "./core/pictures";

const RANGES = [
  ["wind at water", "log-normal", 0.5, null, 1.7],
  ["evaporation factor", "log-normal", 0.84, null, 1.19],
  ["sun factor", "normal", 0.9, null, 1.1],
  ["air shift", "normal", -0.8, null, 0.8],
  ["design load", "triangular", 15, 22, 27],
  ["exchanger UA", "triangular", 2000, 2500, 2800],
  ["back up price", "rectangular", 0.04, null, 0.06],
  ["electricity price", "rectangular", 0.12, null, 0.18],
  ["installed cost", "triangular", 3000, 4000, 6000],
];
const block = rawOfExample({ ...MIAMI_POOL, ...MIAMI_MACHINE, designLoad: 22, backUpSource: "natural gas", backUpPrice: 0.05, electricityPrice: 0.15 });
const compiled = COMPILED.get("POOL.UNCERTAINTY");
const raw = (runs) => [block, MIAMI_MONTHS, RANGES, runs, "SI"];
const cpu = (work) => {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
};
const line = (what, years, time, more = "") =>
  console.log([what.padEnd(34), String(years).padStart(6), (time / 1000).toFixed(2).padStart(8), (time / years).toFixed(1).padStart(10), more].join("  "));
console.log("                                     years     CPU s   ms a year");
for (const runs of [64, 256, 64]) line(runs === 64 ? "cell (the first is the cold one)" : "cell", runs, cpu(() => evaluate(compiled, raw(runs + 0), CATALOGUE).code && process.exit(1)));
const study = longStudy(compiled, raw(64));
let longest = 0;
const slices = (years) => {
  for (let done = 0; done < years; ) {
    const began = performance.now();
    do { study.next(); done++; } while (done < years && performance.now() - began < 60);
    longest = Math.max(longest, performance.now() - began);
  }
};
line("worker: distribution", STUDY_RUNS, cpu(() => slices(STUDY_RUNS)), "longest slice " + longest.toFixed(0) + " ms of the clock");
line("worker: shares", study.total - STUDY_RUNS, cpu(() => slices(study.total - STUDY_RUNS)), "longest slice " + longest.toFixed(0) + " ms of the clock");
const began = performance.now();
study.pictures();
console.log("pictures: " + (performance.now() - began).toFixed(0) + " ms");
`;

async function main(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "uncertainty-"));
  try {
    const outfile = join(folder, "bench.cjs");
    await build({
      stdin: { contents: ENTRY, resolveDir: HERE, loader: "ts" },
      bundle: true,
      minify: true,
      platform: "node",
      format: "cjs",
      outfile,
      logLevel: "error",
    });
    process.exitCode = spawnSync(process.execPath, [outfile], { stdio: "inherit" }).status ?? 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
void main();
