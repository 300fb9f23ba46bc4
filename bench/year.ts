// Times the pool's year as cell calls and prints a table. Run: npx tsx bench/year.ts
// Targets: 12 rows under 15 ms, 8,760 rows under 25 ms, first call under 40 ms, POOL.SPREAD of 20 values under 400 ms.
import { readFileSync } from "node:fs";
import { CATALOGUE } from "../core/catalogue";
import { rawOfExample } from "../core/kernel/explain/describe";
import { compile, evaluate } from "../core/kernel/call/evaluate";
import { isFault } from "../core/kernel/values/fault";
import { MIAMI_MONTHS } from "../core/pool/data/miami";

const RUNS = 15;

const inputs = (set: number, ua = 5000) =>
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
  const text = readFileSync(new URL("../test/golden/weather-miami-fl.csv", import.meta.url), "utf8");
  const lines = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
  const rows = lines.slice(1).map((line) => line.split(",").map(Number));
  const pick = [3, 4, 6, 7, 9, 8];
  const head = ["air (°C)", "dew point (°C)", "wind at 10 m (m/s)", "sun (W/m²)", "cloud", "pressure (Pa)"];
  return [head, ...rows.map((row) => pick.map((at) => row[at] ?? 0))];
};

const callOf = (id: string) => {
  const definition = CATALOGUE.find((each) => each.id === id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const compiled = compile(definition);
  return (raw: readonly unknown[]): void => {
    const out = evaluate(compiled, raw, CATALOGUE);
    if (isFault(out)) throw new Error(`${id} refused: ${out.message}`);
  };
};

const once = (work: () => void): number => {
  const began = performance.now();
  work();
  return performance.now() - began;
};

/** The least of some runs, each with inputs of its own. */
const time = (id: string, raw: (i: number) => readonly unknown[], runs = RUNS): number => {
  const call = callOf(id);
  return Math.min(...Array.from({ length: runs }, (_, i) => once(() => call(raw(i)))));
};

const weather = hours();
const first = once(() => callOf("POOL.YEAR")([inputs(27), MIAMI_MONTHS, "SI"]));
const values = (i: number) => Array.from({ length: 20 }, (_, k) => [24 + k / 4 + i / 100]);

const rows = [
  ["POOL.YEAR, first call of all, script engine cold", first, 40],
  [
    "POOL.YEAR, first call for a machine, 12 rows",
    time("POOL.YEAR", (i) => [inputs(27, 4000 + 100 * i), MIAMI_MONTHS, "SI"]),
    40,
  ],
  ["POOL.YEAR, 12 rows", time("POOL.YEAR", (i) => [inputs(26 + i / 9), MIAMI_MONTHS, "SI"]), 15],
  ["POOL.YEAR, 8,760 rows", time("POOL.YEAR", (i) => [inputs(26 + i / 9), weather, "SI"]), 25],
  [
    "POOL.SPREAD, 20 values, 12 rows",
    time("POOL.SPREAD", (i) => [inputs(27), MIAMI_MONTHS, "set point", values(i), "SI"], 5),
    400,
  ],
  [
    "POOL.SPREAD, 20 values, 8,760 rows",
    time("POOL.SPREAD", (i) => [inputs(27), weather, "set point", values(i), "SI"], 5),
    400,
  ],
] as const;

console.log(`${"ms per call".padEnd(50)}${"time".padStart(10)}${"target".padStart(10)}`);
for (const [what, took, target] of rows)
  console.log(
    `${what.padEnd(50)}${took.toFixed(2).padStart(10)}${String(target).padStart(10)}  ${took < target ? "met" : "MISSED"}`,
  );
