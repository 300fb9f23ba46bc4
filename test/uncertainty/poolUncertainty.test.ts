/** POOL.UNCERTAINTY beside POOL.YEAR, and what it refuses. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { explain } from "../../core/kernel/explain/explain";
import { rawOfExample } from "../../core/kernel/explain/describe";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { BLOCK, compiledOf, raw, refusalOf, tableOf, type Row } from "./poolCalls";

/** The number in a row and column of a table. */
const at = (table: readonly (readonly unknown[])[], row: string, column: string): unknown => {
  const place = (table[0] ?? []).findIndex((head) => String(head).split(" (")[0] === column);
  return table.find(([first]) => first === row)?.[place];
};

const WIND: Row = ["wind at water", "log-normal", 0.5, null, 1.7];

describe("POOL.UNCERTAINTY", () => {
  test.each([
    ["held by back-up heat", {}],
    ["without a back-up heater", { backUpSource: "none", backUpPrice: "" }],
    ["with a preheat tank", { secondSink: "preheat tank", hotWaterDraw: 800, tankVolume: 800, tankUA: 3000 }],
  ])("has POOL.YEAR's own totals at the likely inputs, for a pool %s", (_, more) => {
    const wind = Math.sqrt(0.5 * 1.7);
    const found = tableOf(raw([WIND], more));
    const year = tableOf([rawOfExample({ ...BLOCK, ...more, windAtWater: wind }), MIAMI_MONTHS, "SI"], "POOL.YEAR");
    const total = (column: string): number => Number(at(year, "Year", column));
    const likely = (column: string): number => Number(at(found, "likely inputs", column));
    expect(likely("heat taken") / (total("heat taken") + total("heat to tank"))).toBeCloseTo(1, 4);
    expect(likely("warm days")).toBe(total("warm days with"));
    expect(likely("money saved")).toBeCloseTo(total("money saved"), 0);
  });

  test("moves the year as factors and a shift of the air do in a climate of its own", () => {
    const warmer = MIAMI_MONTHS.map((line, row) =>
      row === 0
        ? line
        : line.map((cell, column) => (column === 0 ? Number(cell) + 1 : column === 4 ? Number(cell) * 1.1 : cell)),
    );
    const [shifted, moved] = [MIAMI_MONTHS, warmer].map((climate, place) =>
      tableOf([
        rawOfExample({ ...BLOCK, ...(place === 0 ? { airShift: 1, sunFactor: 1.1 } : {}) }),
        climate,
        [["installed cost", "rectangular", 1000, null, 2000]],
        8,
        "SI",
      ]),
    ) as [readonly Row[], readonly Row[]];
    const days = (table: readonly Row[]): number => Number(at(table, "P50", "warm days"));
    const heat = (table: readonly Row[]): number => Number(at(table, "P50", "heat taken"));
    // Mains, spells and the days' clearness follow the climate's own rows, so they agree only nearly.
    expect(Math.abs(days(shifted) - days(moved))).toBeLessThan(8);
    expect(heat(shifted) / heat(moved)).toBeCloseTo(1, 1);
  });

  test("takes the spread of a cost straight to the payback", () => {
    const found = tableOf(raw([["installed cost", "rectangular", 2000, null, 6000]], {}, 64));
    const saving = Number(at(found, "P50", "money saved"));
    for (const [row, cost] of [
      ["P10", 2400],
      ["P50", 4000],
      ["P90", 5600],
    ] as const)
      expect((Number(at(found, row, "payback")) * saving) / cost).toBeCloseTo(1, 1);
    expect(at(found, "P10", "money saved")).toBe(at(found, "P90", "money saved"));
    expect(at(found, "installed cost", "rank payback")).toBeCloseTo(1, 9);
    expect(at(found, "installed cost", "rank heat taken")).toBe(0);
  });

  test("says never where the upkeep eats the saving, and counts the share", () => {
    const found = tableOf(raw([["yearly upkeep", "rectangular", 0, null, 4000]], { installedCost: 3000 }, 64));
    const never = Number(at(found, "never pays back", "share"));
    expect(never).toBeGreaterThan(0.3);
    expect(never).toBeLessThan(0.8);
    expect(at(found, "P90", "payback")).toBe("never");
  });

  test("pays back later with a discount rate, by the closed formula", () => {
    const ranges: readonly Row[] = [["installed cost", "rectangular", 3999, null, 4001]];
    const [simple, discounted] = [0, 0.05].map((discountRate) => {
      const found = tableOf(raw(ranges, { discountRate }));
      return Number(at(found, "likely inputs", "payback"));
    }) as [number, number];
    expect(discounted).toBeCloseTo(-Math.log(1 - simple * 0.05) / Math.log(1.05), 6);
  });

  test("leaves money and payback blank without prices and cost", () => {
    const found = tableOf(raw([WIND], { backUpPrice: "", electricityPrice: "" }));
    expect(at(found, "P50", "money saved")).toBe("");
    expect(at(found, "P50", "payback")).toBe("");
    expect(at(found, "pays back within", "share")).toBe("");
    expect(Number(at(found, "P50", "heat taken"))).toBeGreaterThan(0);
  });

  test("gives 64 years that 256 confirm within 6 % of the spread", () => {
    const ranges: readonly Row[] = [
      WIND,
      ["design load", "triangular", 15, 22, 27],
      ["back up price", "rectangular", 0.04, null, 0.06],
    ];
    const [few, many] = [64, 256].map((runs) => tableOf(raw(ranges, {}, runs))) as [readonly Row[], readonly Row[]];
    const spread = Number(at(many, "P90", "money saved")) - Number(at(many, "P10", "money saved"));
    for (const row of ["P10", "P50", "P90"])
      expect(Math.abs(Number(at(few, row, "money saved")) - Number(at(many, row, "money saved")))).toBeLessThan(
        0.06 * spread,
      );
  }, 120_000);

  test("reads a unit of its own behind a range", () => {
    const bare = tableOf(raw([["design load", "rectangular", 20, null, 24]]));
    const own = tableOf(raw([["design load", "rectangular", 20_000, null, 24_000, "W"]]));
    expect(Number(at(own, "P50", "heat taken")) / Number(at(bare, "P50", "heat taken"))).toBeCloseTo(1, 9);
  });

  test("shows the distributions in its working", () => {
    const { steps } = explain(compiledOf("POOL.UNCERTAINTY"), raw([WIND]), CATALOGUE);
    expect(JSON.stringify(steps)).toContain("Log-normal distribution");
  });

  test.each<readonly [string, readonly Row[], object, number, RegExp]>([
    [
      "high below low",
      [["wind at water", "normal", 2, null, 1]],
      {},
      8,
      /wind at water, high: must be above low, 2, got 1/,
    ],
    ["a likely value off the middle", [["wind at water", "normal", 1, 1.1, 2]], {}, 8, /middle at 1\.5, got 1\.1/],
    [
      "a triangle without its peak",
      [["wind at water", "triangular", 1, null, 2]],
      {},
      8,
      /likely: must be from low to high/,
    ],
    ["a log-normal below 0", [["air shift", "log-normal", -1, null, 2]], {}, 8, /needs values above 0, got -1/],
    ["a log-normal temperature", [["set point", "log-normal", 20, null, 30]], {}, 8, /true zero, not a temperature/],
    ["a label twice", [WIND, WIND], {}, 8, /appears twice/],
    ["a misspelt label", [["wind at watr", "normal", 1, null, 2]], {}, 8, /nearest is "wind at water"/],
    ["a word's label", [["cover", "normal", 1, null, 2]], {}, 8, /cover: takes no single number/],
    ["runs that are no power of two", [WIND], {}, 48, /runs: must be 8, 16/],
    ["ranges mostly beyond a limit", [["sun share", "normal", 0.9, null, 1.2]], {}, 16, /sun share/],
    ["a pool that recovers nothing", [WIND], { exchangerUA: "" }, 8, /exchanger UA/],
    ["a unit of another kind", [["design load", "normal", 1, null, 2, "ft"]], {}, 8, /design load, unit/],
  ])("refuses %s", (_, ranges, more, runs, message) => {
    expect(refusalOf(raw(ranges, more, runs))).toMatch(message);
  });
});
