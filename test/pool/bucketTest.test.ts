import { assert, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED } from "../../core/catalogue";
import { evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import type { CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

type Entries = Readonly<Record<string, number>>;

const compiled = () => {
  const found = COMPILED.get("POOL.BUCKETTEST");
  if (found === undefined) throw new Error("no such function");
  return found;
};
const raw = (entries: Entries, units: string) => [Object.entries(entries), units];
const run = (entries: Entries, units = "SI") => evaluate(compiled(), raw(entries, units), CATALOGUE);
const listOf = (entries: Entries, units = "SI"): Readonly<Record<string, number | string>> => {
  const out = run(entries, units);
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries((out as CellMatrix).map(([label, value]) => [label, value as number | string]));
};
const codes = (entries: Entries): readonly string[] =>
  explain(compiled(), raw(entries, "SI"), CATALOGUE, { steps: false }).cautions.map(({ code }) => code);

const ROWS = cellsIn("cooldown.csv");
const of = (kind: string) =>
  ROWS.filter((row) => row["kind"] === kind).map(
    (row) => [`${wordIn(row, "id")} ${wordIn(row, "quantity")}`, row] as const,
  );
const inputIn = (row: GoldenCells, name: string): number =>
  Number(new RegExp(`${name}=([-\\d.]+)`).exec(wordIn(row, "inputs"))?.[1]);

const bucketOf = (row: GoldenCells): Entries => ({
  poolArea: inputIn(row, "pool area"),
  testDays: inputIn(row, "days"),
  poolFell: inputIn(row, "pool level fell"),
  bucketFell: inputIn(row, "bucket level fell"),
  rain: inputIn(row, "rain"),
  fillWater: inputIn(row, "fill water"),
  backwashAndSplash: inputIn(row, "backwash and splash"),
  bucketRatio: inputIn(row, "evaporation ratio"),
});

/** The block's labels by key. */
const labelled = (entries: Entries): Entries =>
  Object.fromEntries(
    Object.entries(entries).map(([key, value]) => [key.replace(/[A-Z]/g, (l) => ` ${l.toLowerCase()}`), value]),
  );

const LABELS: Readonly<Record<string, readonly [label: string, error: string]>> = {
  evaporation: ["daily evaporation", "daily evaporation error"],
  leak: ["daily leak", "daily leak error"],
  leak_volume: ["daily leak volume", "daily leak volume error"],
  evaporation_heat: ["evaporation heat", ""],
  evaporation_heat_US: ["evaporation heat", ""],
};

/** A row in US units prints W/m² over this. */
const PER_US = 3.154591;

describe("POOL.BUCKETTEST", () => {
  test.each(of("bucket"))("agrees with the evaluated test %s", (_, row) => {
    const quantity = wordIn(row, "quantity");
    const [label = "", error = ""] = LABELS[quantity] ?? [];
    const found = listOf(labelled(bucketOf(row)));
    const value = numberIn(row, "value") * (quantity.endsWith("US") ? PER_US : 1);
    // The source's latent heat claims 0.022 % of the steam tables.
    const tolerance = quantity.startsWith("evaporation_heat") ? 2.2e-4 : 1e-5;
    expect(Math.abs(Number(found[label]) - value)).toBeLessThanOrEqual(tolerance * Math.abs(value));
    // Errors are printed to three digits.
    if (error !== "" && row["standard_uncertainty"] !== "")
      expect(Math.abs(Number(found[error]) / numberIn(row, "standard_uncertainty") - 1)).toBeLessThan(0.005);
  });

  test.each(of("make_up"))("agrees with the evaluated make-up water %s", (_, row) => {
    const [, makeUp = "", testDays = ""] = /make-up=([\d.]+) mm over ([\d.]+) days/.exec(wordIn(row, "inputs")) ?? [];
    const found = listOf({
      "pool area": inputIn(row, "area"),
      "test days": Number(testDays),
      "make up": Number(makeUp),
      "pool temperature": inputIn(row, "pool"),
      "mains temperature": inputIn(row, "mains"),
    });
    const got = Number(found[wordIn(row, "quantity") === "heat" ? "make up heat" : "make up loss"]);
    expect(Math.abs(got / numberIn(row, "value") - 1), String(got)).toBeLessThan(1e-5);
  });

  test("has every bucket and make-up row of the table", () =>
    expect([of("bucket").length, of("make_up").length]).toEqual([19, 4]));

  const DAY = { "pool area": 50, "pool fell": 6.5, "bucket fell": 6 };

  test("takes back the fall of the pool by what evaporates, leaks and flows in and out", () =>
    assert(
      property(
        double({ min: 0, max: 12, noNaN: true }),
        double({ min: 0, max: 30, noNaN: true }),
        double({ min: 0, max: 20, noNaN: true }),
        double({ min: 0, max: 2, noNaN: true }),
        double({ min: 0.5, max: 10, noNaN: true }),
        (evaporation, leak, rain, fill, days) => {
          const found = listOf({
            "pool area": 40,
            "test days": days,
            "pool fell": (evaporation + leak) * days - rain - (1000 * fill) / 40,
            "bucket fell": evaporation * days - rain,
            rain,
            "fill water": fill,
          });
          expect(found["daily evaporation"]).toBeCloseTo(evaporation, 8);
          expect(found["daily leak"]).toBeCloseTo(leak, 8);
          expect(found["daily leak volume"]).toBeCloseTo(40 * leak, 6);
        },
      ),
      { numRuns: 50 },
    ));

  test("says what the readings can and can't tell", () => {
    expect(listOf(DAY)["finding"]).toBe("none found");
    expect(listOf({ ...DAY, "pool fell": 14 })["finding"]).toBe("leak");
    expect(listOf({ ...DAY, "pool fell": 1 })["finding"]).toBe("gains water");
    expect(codes(DAY)).toContain("POOL-BUCKET-SHORT");
    expect(codes({ ...DAY, "pool fell": 14 })).toContain("POOL-LEAK");
  });

  test("counts what the pool fell and was filled as make-up water", () => {
    const found = listOf({
      ...DAY,
      "pool fell": 30,
      "fill water": 0.5,
      "pool temperature": 27,
      "mains temperature": 15,
    });
    expect(found["make up heat"]).toBeCloseTo((997 * 4180 * 50 * 0.04 * 12) / 3.6e6, 6);
  });

  test("leaves blank what its inputs don't tell, and refuses a block without any fall", () => {
    expect(listOf({ "pool area": 50, "bucket fell": 6 })).toMatchObject({
      "daily leak": "",
      finding: "",
      "make up heat": "",
    });
    const out = run({ "pool area": 50 });
    expect(isFault(out) ? out.message : "").toMatch(/bucket fell and make up/);
  });
});
