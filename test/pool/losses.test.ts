import { assert, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { rawByPlace } from "../../core/kernel/describe";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import type { Example } from "../../core/kernel/cellFunction";
import { coverOf } from "../../core/pool/data/covers";
import { coverReduction, skyEmissivity, skyRadiation } from "../../core/pool/losses/equations";
import { bracketedRoot } from "../../core/numeric/root";
import { cellsIn, numberIn, wordIn, type GoldenCells } from "../golden/rows";

type Inputs = Readonly<Record<string, string | number>>;

const run = (id: string, at: Readonly<Record<string, Example>>): unknown => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  const out = evaluate(compile(definition), rawByPlace(definition, at), CATALOGUE);
  return isFault(out) ? `${out.code} ${out.message}` : out;
};

/** kind of loss → heat rate (kW or BTU/h) and share */
const losses = (inputs: Inputs, units: "US" | "SI" = "SI"): Map<string, readonly [number, number]> => {
  const out = run("POOL.LOSSES", { inputs, units });
  if (!Array.isArray(out)) throw new Error(String(out));
  return new Map((out as [string, number, number][]).slice(1).map(([kind, heat, share]) => [kind, [heat, share]]));
};

/** Heat rate of one kind, kW or BTU/h. */
const heatOf = (inputs: Inputs, kind: string, units: "US" | "SI" = "SI"): number =>
  losses(inputs, units).get(kind)?.[0] ?? NaN;

const examples = new Map(cellsIn("pool-worked-examples.csv").map((row) => [wordIn(row, "id"), row]));
const exampleOf = (id: string): GoldenCells => {
  const row = examples.get(id);
  if (row === undefined) throw new Error(`no example ${id}`);
  return row;
};
const printed = (id: string): number => numberIn(exampleOf(id), "expected");
const within = (id: string): number => numberIn(exampleOf(id), "tolerance");

const POOL = { poolArea: 100, poolTemperature: 27, airTemperature: 20, humidity: 0.5, windAtWater: 1.5 } as const;

describe("sky radiation", () => {
  // The print counts 0 °C as 273 K in this example.
  const air = 20 + 273;
  const es = skyEmissivity.code({ Td: 10 + 273, N: 0 });

  it("gives the printed emissivity, and from it the printed infrared and sky temperature", () => {
    expect(Math.abs(es - printed("P19"))).toBeLessThan(within("P19"));
    expect(Math.abs(es * 5.670374419e-8 * air ** 4 - 340.6)).toBeLessThan(0.5);
    expect(Math.abs(es ** 0.25 * air - 273.15 - printed("P21"))).toBeLessThan(within("P21"));
  });

  it("sky radiation falls with cloud, and to nothing where all of the sky is hidden by things as warm as the water", () => {
    expect(heatOf({ ...POOL, cloud: 10 }, "sky radiation")).toBeLessThan(
      heatOf({ ...POOL, cloud: 2 }, "sky radiation"),
    );
    expect(skyRadiation.code({ A: 10, Tw: 295, Ta: 295, f: 1, es: 0.7 })).toBe(0);
    expect(heatOf({ ...POOL, hiddenSky: 0.5 }, "sky radiation")).toBeLessThan(heatOf(POOL, "sky radiation"));
  });
});

describe("covers", () => {
  it("a cover cuts evaporation by covered share times cover factor, as printed", () => {
    expect(100 * coverReduction.code({ c: 0.5, t: 1, f: 0.5 })).toBeCloseTo(printed("P32"), 9);
  });

  it.each([
    ["P27", "foam"],
    ["P28", "bubble"],
    ["P29", "solid"],
    ["P30", "disks"],
  ] as const)("the cover of row %s cuts the evaporation as measured: %s", (id, kind) => {
    expect(coverOf(kind).evaporation * 100).toBeCloseTo(printed(id), 9);
  });

  it("a cover in place all day saves that share of the evaporation and of its make-up, no more", () => {
    const inputs = { ...POOL, cover: "foam", coverHours: 24, mainsTemperature: 27 };
    const found = losses(inputs);
    expect(found.get("cover effect")?.[0]).toBeCloseTo(-0.959 * (found.get("evaporation")?.[0] ?? NaN), 9);
  });

  it("a cover at night does not affect the sun; by day it keeps part of it out", () => {
    const sunny = { ...POOL, sunOnWater: 5, cover: "solid" };
    const night = heatOf({ ...sunny, coverHours: 12 }, "cover effect");
    const dark = heatOf({ ...POOL, cover: "solid", coverHours: 12 }, "cover effect");
    expect(night).toBeCloseTo(dark, 12);
    const kept = heatOf({ ...sunny, coverHours: 24 }, "cover effect") - 2 * dark;
    expect(kept).toBeCloseTo((0.3 * 100 * 5) / 24, 6);
  });
});

describe("losses", () => {
  const amount = double({ min: 0, max: 1, noNaN: true });
  const temperature = double({ min: 5, max: 35, noNaN: true });

  it("the losses sum up to the net, and the net's share to its part of the losses", () => {
    assert(
      property(temperature, temperature, amount, amount, amount, (water, air, humidity, cloud, share) => {
        const inputs = {
          ...POOL,
          poolTemperature: water,
          airTemperature: air,
          humidity: 0.05 + 0.9 * humidity,
          cloud: 10 * cloud,
          sunOnWater: 4 * share,
          splash: share,
          rain: 3 * cloud,
          cover: "bubble",
          coverHours: 24 * share,
          groundCoefficient: share,
          groundTemperature: 15,
        };
        const found = losses(inputs);
        const parts = [...found].filter(([kind]) => kind !== "net").map(([, [heat]]) => Number(heat) || 0);
        expect(parts.reduce((sum, each) => sum + each, 0)).toBeCloseTo(found.get("net")?.[0] ?? NaN, 9);
      }),
      { numRuns: 60 },
    );
  });

  it("convection is Bowen's share of evaporation where that ratio exists", () => {
    const found = losses({ ...POOL, evaporationMethod: "Carrier" });
    // 0.0615646 kPa/K; vapour pressure 3.567 kPa at 27 °C, 2.339 kPa at 20 °C (IAPWS).
    const ratio = (0.0615646 * 7) / (3.567 - 0.5 * 2.339);
    expect((found.get("convection")?.[0] ?? 0) / (found.get("evaporation")?.[0] ?? 1)).toBeCloseTo(ratio, 3);
  });

  it("convection by wind is 3.1 + 4.1 v", () => {
    expect(heatOf({ ...POOL, convectionMethod: "by wind" }, "convection")).toBeCloseTo(
      ((3.1 + 4.1 * 1.5) * 100 * 7) / 1000,
      9,
    );
  });

  it("the losses split in mild weather about as published: evaporation 70 %, radiation 20 %", () => {
    const found = losses({ ...POOL, windAt10m: 4, airTemperature: 24, cloud: 4 });
    expect(Math.abs(100 * (found.get("evaporation")?.[1] ?? 0) - printed("P34"))).toBeLessThan(10);
    expect(Math.abs((found.get("sky radiation")?.[1] ?? 0) - 0.2)).toBeLessThan(0.1);
  });

  it("the pool absorbs the published share of the sun", () => {
    expect(-heatOf({ ...POOL, sunOnWater: 2.4 }, "sun gained") * 10).toBeCloseTo(printed("P33"), 6);
  });

  it("make-up covers evaporation, splash, backwash and leak less rain, never less than nothing", () => {
    const base = { ...POOL, mainsTemperature: 15, airTemperature: 27 };
    const dry = heatOf(base, "make-up water");
    const more = heatOf({ ...base, splash: 1, backwash: 0.5, leak: 0.5 }, "make-up water");
    // 2 m³ a day by 12 K.
    expect(more - dry).toBeCloseTo((2 * 998.15 * 4.1868 * 12) / 86_400, 2);
    // Rain as warm as the pool replaces cold make-up water: 100 mm is more than all the pool gives up.
    expect(heatOf({ ...base, rain: 100 }, "make-up water")).toBeCloseTo(0, 9);
  });

  it("losses by the surface rule are zero where POOL.SETTLES says, and have no other part", () => {
    const base = { poolArea: 800, airTemperature: 70, humidity: 0.5, lossMethod: "surface rule" };
    const settled = Number(run("POOL.SETTLES", { area: 800, air: 70, heat: 60_000 }));
    expect(heatOf({ ...base, poolTemperature: settled }, "net", "US")).toBeCloseTo(60_000, 5);
    expect(losses({ ...base, poolTemperature: 80 }, "US").get("evaporation")?.[0]).toBe("");
  });

  it("losses by parts are zero at one temperature only", () => {
    const net = (t: number): number => heatOf({ ...POOL, sunOnWater: 4, poolTemperature: t }, "net");
    const root = bracketedRoot(net, 1, 45, { tolerance: 1e-6 });
    expect(root.found).toBe(true);
    expect(net(root.x - 1)).toBeLessThan(0);
    expect(net(root.x + 1)).toBeGreaterThan(0);
  });

  it("the losses use wind at the water before the weather station's, and are refused without either", () => {
    expect(heatOf({ ...POOL, windAt10m: 20 }, "net")).toBe(heatOf(POOL, "net"));
    const calm = { poolArea: 100, poolTemperature: 27, airTemperature: 20, humidity: 0.5 };
    expect(heatOf({ ...calm, windAt10m: 5, shelter: "suburban" }, "net")).toBeCloseTo(heatOf(POOL, "net"), 9);
    expect(run("POOL.LOSSES", { inputs: calm, units: "SI" })).toMatch(
      /#VALUE! inputs: one of the labels "wind at water"/,
    );
  });
});

describe("refusals", () => {
  it("a refusal names argument, rule, limit and what came", () => {
    const pool = { volume: 40_000, from: 70, to: 82, heat: 50_000 };
    expect(run("POOL.WARMUP", { ...pool, area: 800, air: 70 })).toMatch(/#N\/A heat: .*82 °F.*settles at 75\.95/);
    expect(run("POOL.WARMUP", { ...pool, to: 70 })).toMatch(/#VALUE! to: must be above from, 70 °F, got 70 °F/);
    expect(run("POOL.WARMUP", { ...pool, area: 800 })).toMatch(/#VALUE! air: is needed with area/);
    const water = { area: 800, water: 82, air: 80, humidity: 0.6 };
    expect(run("POOL.EVAPORATION", { ...water, wind: 0, activity: 0.5 })).toMatch(/#VALUE! activity: .*quiet-water/);
    expect(run("POOL.EVAPORATION", { ...water, wind: 0, activity: 0.5, method: "Carrier" })).toBeTypeOf("number");
    expect(run("POOL.EVAPORATION", { ...water, wind: 5, method: "Shah" })).toMatch(
      /#N\/A wind: .*0\.335.* mph, got 5 mph/,
    );
  });
});

describe("warm-up against the surface rule", () => {
  it("nears the settling temperature and is slower than without loss", () => {
    const pool = { volume: 40_000, from: 70, heat: 120_000 };
    assert(
      property(double({ min: 71, max: 83, noNaN: true }), (to) => {
        const open = Number(run("POOL.WARMUP", { ...pool, to }));
        const against = Number(run("POOL.WARMUP", { ...pool, to, area: 800, air: 70 }));
        expect(against).toBeGreaterThan(open);
      }),
      { numRuns: 40 },
    );
  });
});
