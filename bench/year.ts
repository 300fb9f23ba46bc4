// Times the pool's year as cell calls, bundled as it ships, and prints a table. Run: npx tsx bench/year.ts [other checkout]
// With another checkout the calls of both alternate in one process, and the first calls in fresh ones.
// Targets: 12 rows under 15 ms, 8,760 rows under 25 ms, first call under 40 ms, POOL.SPREAD of 20 values under 400 ms.
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { runInThisContext } from "node:vm";
import { build } from "esbuild";
import { rawOfExample } from "../core/kernel/explain/describe";
import { MIAMI_MONTHS } from "../core/pool/data/miami";

const HERE = fileURLToPath(new URL("..", import.meta.url));
const RUNS = 15;
const FIRST_CALLS = 5;

type Call = (id: string, raw: readonly unknown[]) => void;

/** A module that calls any function of a checkout's catalogue, and throws a fault; checkouts before 0.1.0 had no call/. */
const entryOf = (root: string): string => {
  const [runner, faults] = existsSync(join(root, "core/kernel/call"))
    ? ["call/evaluate", "values/fault"]
    : ["evaluate", "fault"];
  return `import { CATALOGUE } from "./core/catalogue";
import { compile, evaluate } from "./core/kernel/${runner}";
import { isFault } from "./core/kernel/${faults}";
const compiled = new Map();
globalThis.callCell = (id, raw) => {
  if (!compiled.has(id)) compiled.set(id, compile(CATALOGUE.find((each) => each.id === id)));
  const out = evaluate(compiled.get(id), raw, CATALOGUE);
  if (isFault(out)) throw new Error(id + " refused: " + out.message);
};`;
};

const bundle = async (root: string, to: string): Promise<string> => {
  await build({
    stdin: { contents: entryOf(root), resolveDir: root, loader: "ts" },
    bundle: true,
    minify: true,
    format: "iife",
    outfile: to,
    logLevel: "error",
  });
  return to;
};

const load = (path: string): Call => {
  runInThisContext(readFileSync(path, "utf8"), { filename: path });
  return (globalThis as unknown as { readonly callCell: Call }).callCell;
};

const pool = (set: number, ua = 5000) =>
  rawOfExample({
    poolArea: 167,
    waterDepth: 1.5,
    setPoint: set,
    latitude: 25.82,
    altitude: 11,
    ratedCooling: 26.4,
    ratedPower: 8.1,
    outdoorFan: 0.6,
    exchangerUA: ua,
  });

const hours = (): readonly (readonly (string | number)[])[] => {
  const text = readFileSync(join(HERE, "test/golden/weather-miami-fl.csv"), "utf8");
  const lines = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
  const rows = lines.slice(1).map((line) => line.split(",").map(Number));
  const pick = [3, 4, 6, 7, 9, 8];
  const head = ["air (°C)", "dew point (°C)", "wind at 10 m (m/s)", "sun (W/m²)", "cloud", "pressure (Pa)"];
  return [head, ...rows.map((row) => pick.map((at) => row[at] ?? 0))];
};

/** The very first call, in a process that has just loaded the script. */
const FIRST = `const { readFileSync } = require("node:fs");
const [script, call] = process.argv.slice(1).map((path) => readFileSync(path, "utf8"));
require("node:vm").runInThisContext(script);
const raw = JSON.parse(call);
const began = performance.now();
callCell("POOL.YEAR", raw);
process.stdout.write(String(performance.now() - began));`;

const firstCall = (script: string, call: string): number =>
  Number(spawnSync(process.execPath, ["-e", FIRST, script, call], { encoding: "utf8" }).stdout);

const once = (work: () => void): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

const median = (times: readonly number[]): number => [...times].sort((a, b) => a - b)[times.length >> 1] ?? NaN;

const print = (what: string, target: number, times: readonly (readonly number[])[]): void => {
  const cells = times.flatMap((each) => [Math.min(...each), median(each)]).map((ms) => ms.toFixed(2).padStart(9));
  const met = Math.min(...(times[0] ?? [])) < target ? "met" : "MISSED";
  console.log(`${what.padEnd(48)}${cells.join("")}${String(target).padStart(8)}  ${met}`);
};

/** The times of each script, alternating: the order changes from round to round. */
const byTurns = (scripts: number, runs: number, time: (script: number, run: number) => number): number[][] => {
  const times = Array.from({ length: scripts }, (): number[] => []);
  for (let run = 0; run < runs; run++)
    for (let turn = 0; turn < scripts; turn++) {
      const script = (run + turn) % scripts;
      times[script]?.push(time(script, run));
    }
  return times;
};

const main = async (folder: string): Promise<void> => {
  const roots = [HERE, ...process.argv.slice(2).map((root) => resolve(root))];
  const scripts = await Promise.all(roots.map((root, place) => bundle(root, join(folder, `${String(place)}.js`))));
  const call = join(folder, "call.json");
  writeFileSync(call, JSON.stringify([pool(27), MIAMI_MONTHS, "SI"]));
  const columns = roots.map((_, place) => (place === 0 ? "here" : "other").padStart(13) + "     ").join("");
  console.log(`ms, least and median of some calls${"".padEnd(14)}${columns}  target`);
  const first = (script: number): number => firstCall(scripts[script] ?? "", call);
  print("POOL.YEAR, first call of a fresh process", 40, byTurns(roots.length, FIRST_CALLS, first));

  const calls = scripts.map(load);
  const weather = hours();
  const time = (what: string, target: number, id: string, raw: (run: number) => readonly unknown[], runs = RUNS) =>
    print(
      what,
      target,
      byTurns(roots.length, runs, (script, run) => once(() => calls[script]?.(id, raw(run)))),
    );
  const values = (run: number) => Array.from({ length: 20 }, (_, k) => [24 + k / 4 + run / 100]);
  time("POOL.YEAR, 12 rows, another machine", 40, "POOL.YEAR", (run) => [
    pool(27, 4000 + 100 * run),
    MIAMI_MONTHS,
    "SI",
  ]);
  time("POOL.YEAR, 12 rows", 15, "POOL.YEAR", (run) => [pool(25 + run / 19), MIAMI_MONTHS, "SI"]);
  time("POOL.YEAR, 8,760 rows", 25, "POOL.YEAR", (run) => [pool(25 + run / 19), weather, "SI"]);
  const spread = (climate: unknown) => (run: number) => [pool(27), climate, "set point", values(run), "SI"];
  time("POOL.SPREAD, 20 values, 12 rows", 400, "POOL.SPREAD", spread(MIAMI_MONTHS), 5);
  time("POOL.SPREAD, 20 values, 8,760 rows", 400, "POOL.SPREAD", spread(weather), 5);
};

const folder = mkdtempSync(join(tmpdir(), "year-"));
void main(folder).finally(() => rmSync(folder, { recursive: true }));
