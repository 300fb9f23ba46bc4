/** The worked examples of JCGM 101 and the job's own models against exact values. */
import { describe, expect, test } from "vitest";
import { ascending, sampleQuantile, shortestInterval } from "../../core/numeric/sample";
import { mean, standardDeviation } from "../../core/numeric/series";
import { addRun, noRuns, type Runs, type UncertainModel } from "../../core/uncertainty/study";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";
import { goldenModel } from "./goldenModels";

const RUNS = 2 ** 14;

/** First-order rows are another method; the rest is what a sample shows. */
const ROWS = cellsIn("uncertainty.csv").filter(
  (row) => wordIn(row, "kind") === "propagation" && !wordIn(row, "quantity").startsWith("gum_"),
);

function runAll(model: UncertainModel, runs: number): Runs {
  const into = noRuns(model, 1);
  for (let run = 0; run < runs; run++) addRun(model, run, into);
  return into;
}

const models = new Map<string, UncertainModel>();
const known = new Map<string, Runs>();

/** The outcomes of a row's model in a number of runs; rows of one model share them. */
const sampleOf = (row: GoldenCells, runs = RUNS): readonly number[] => {
  const key = `${wordIn(row, "model")} ${wordIn(row, "inputs")}`;
  const model = models.get(key) ?? goldenModel(wordIn(row, "model"), wordIn(row, "inputs"));
  models.set(key, model);
  const found = known.get(`${runs} ${key}`) ?? runAll(model, runs);
  known.set(`${runs} ${key}`, found);
  expect(found.refused).toBe(0);
  return found.outcomes[0] ?? [];
};

const STATISTICS: Readonly<Record<string, (sorted: Float64Array, confidence: number) => number>> = {
  mean,
  sd: (sorted) => standardDeviation([...sorted]),
  p10: (sorted) => sampleQuantile(sorted, 0.1),
  median: (sorted) => sampleQuantile(sorted, 0.5),
  p90: (sorted) => sampleQuantile(sorted, 0.9),
  sym_low: (sorted, P) => sampleQuantile(sorted, (1 - P) / 2),
  sym_high: (sorted, P) => sampleQuantile(sorted, (1 + P) / 2),
  short_low: (sorted, P) => shortestInterval(sorted, P)[0],
  short_high: (sorted, P) => shortestInterval(sorted, P)[1],
  share_below_0: (sorted) => sorted.filter((value) => value < 0).length / sorted.length,
};

/** What random trials of this number may miss by; even points must not miss by more. */
const allowed = (row: GoldenCells): number =>
  4 * numberIn(row, "se_1e5") * Math.sqrt(1e5 / RUNS) + numberIn(row, "tolerance");

describe("Sampled distributions", () => {
  test("are compared on all rows", () => expect(ROWS.length).toBeGreaterThan(120));

  test.each(ROWS.map((row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const))(
    "%s lies where closed form or quadrature puts it",
    (_, row) => {
      const confidence = Number(/P=([\d.]+)/.exec(wordIn(row, "inputs"))?.[1]);
      const got = STATISTICS[wordIn(row, "quantity")]?.(ascending(sampleOf(row)), confidence);
      expect(Math.abs((got ?? NaN) - numberIn(row, "value")), `got ${got}`).toBeLessThanOrEqual(allowed(row));
    },
  );

  test("of 256 even points are as good as those of a thousand random ones", () => {
    const rows = ROWS.filter((row) => ["p10", "median", "p90"].includes(wordIn(row, "quantity")));
    const misses = rows.flatMap((row) => {
      const got = STATISTICS[wordIn(row, "quantity")]?.(ascending(sampleOf(row, 256)), 0) ?? NaN;
      const random = numberIn(row, "se_1e5") * Math.sqrt(1e5 / 1000);
      return random > 0 ? [(got - numberIn(row, "value")) / random] : [];
    });
    expect(misses.length).toBeGreaterThan(30);
    expect(Math.sqrt(mean(misses.map((miss) => miss ** 2)))).toBeLessThan(1);
  });
});
