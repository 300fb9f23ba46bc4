/** The preheat tank beside the pool: its balance, its order, its limits. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { us } from "../../core/kernel/values/quantity";
import { admitClimate } from "../../core/pool/year/climate";
import { yearFacts } from "../../core/pool/year/facts";
import { runPool } from "../../core/pool/year/hourLoop";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear, yearRows } from "../../core/pool/year/monthlyTable";
import type { PoolYear, Year } from "../../core/pool/year/results";
import { capacityOf } from "../../core/pool/year/setUp";
import { totalOf } from "../../core/pool/year/sums";
import { yearSurface } from "../../core/pool/year/surface";
import { hotWaterLoad, tankOf } from "../../core/pool/year/tankSetUp";
import { yearOf } from "../../core/pool/year/year";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { HOT_WATER } from "../../core/sink/equations";
import { DEFAULTS, bareRun, imbalance, openPool, steady } from "./yearPools";

const MIAMI = admitClimate(MIAMI_MONTHS, "SI");

const BASE = {
  poolArea: 100,
  waterDepth: 1.5,
  setPoint: 300.15,
  latitude: 25.82,
  altitude: 11,
  ratedCooling: 26_400,
  ratedPower: 8100,
  outdoorFan: 600,
  exchangerUA: 5000,
  pumpPower: 900,
} as const;

const TANK = {
  secondSink: "preheat tank",
  hotWaterDraw: 1.5,
  tankVolume: 1.5,
  tankUA: 3000,
} as const;

const inputsOf = (values: Partial<YearInputs> = {}): YearInputs =>
  ({ ...DEFAULTS, ...BASE, ...TANK, ...values }) as YearInputs;

const yearWith = (values: Partial<YearInputs> = {}): Year => yearOf(inputsOf(values), MIAMI);

/** Heat taken less drawn, lost and stored, over what was taken. */
const offBalance = ({ sums, start, end }: PoolYear, inputs: YearInputs): number => {
  const capacity = (inputs.tankVolume ?? NaN) * HOT_WATER;
  const kept = (end.tank - start.tank) * capacity;
  const out = totalOf(sums.drawnHeat) + totalOf(sums.tankLoss) + kept;
  return (totalOf(sums.toTank) - out) / Math.max(1, totalOf(sums.toTank));
};

const ORDERS = ["pool first", "tank first"] as const;

describe("a preheat tank beside the pool", () => {
  test.each(ORDERS)("closes its own balance, and the pool's, to 1e-6: %s", (sinkOrder) => {
    const inputs = inputsOf({ sinkOrder, highLimit: 301 });
    const { free, held } = yearOf(inputs, MIAMI);
    for (const pool of [free.with, held.with]) {
      expect(totalOf(pool.sums.toTank)).toBeGreaterThan(1e9);
      expect(Math.abs(offBalance(pool, inputs))).toBeLessThan(1e-6);
      expect(Math.abs(imbalance(pool, capacityOf(inputs)))).toBeLessThan(1e-6);
    }
  });

  test.each(ORDERS)("shares out what the machine rejects, hour by hour: %s", (sinkOrder) => {
    const { free } = yearWith({ sinkOrder, highLimit: 301 });
    const { taken, outdoors, toTank, sums } = free.with;
    let shared = 0;
    taken.forEach((each, hour) => {
      expect(outdoors[hour] ?? NaN).toBeGreaterThan(-1e-6);
      shared += 3600 * (each + (outdoors[hour] ?? 0) + (toTank[hour] ?? 0));
    });
    expect(shared / totalOf(sums.rejected)).toBeCloseTo(1, 9);
  });

  test("a tank served after the pool leaves the pool as it is without a tank", () => {
    const alone = yearWith({ secondSink: "none" });
    const beside = yearWith();
    expect(beside.free.with.temperature).toEqual(alone.free.with.temperature);
    expect(totalOf(beside.held.with.sums.backUp)).toBe(totalOf(alone.held.with.sums.backUp));
  });

  test("a tank served before the pool takes more, and leaves the pool less", () => {
    const [after, before] = ORDERS.map((sinkOrder) => totalOfYear(yearWith({ sinkOrder })));
    expect(before?.heatToTank).toBeGreaterThan(after?.heatToTank ?? NaN);
    expect(before?.heatTaken).toBeLessThan(after?.heatTaken ?? NaN);
  });

  test("a tank without a pool exchanger is all that takes heat", () => {
    const year = yearWith({ exchangerUA: undefined });
    expect(totalOf(year.free.with.sums.taken)).toBe(0);
    expect(totalOf(year.free.with.sums.toTank)).toBeGreaterThan(1e9);
  });

  test("a tank without a pool exchanger raises no caution about the pool's limit or exchanger", () => {
    const { exchangerUA: given, ...rest } = inputsOf({ tankUA: 2000 });
    expect(given).toBeGreaterThan(0);
    const facts = yearFacts(yearOf(rest as YearInputs, MIAMI), MIAMI, "SI");
    expect(facts).toMatchObject({ warms: "the tank", recovers: true });
    expect(facts).not.toHaveProperty("sentOutdoors");
    expect(facts).not.toHaveProperty("usefulOfTaken");
  });

  test("heat from the room saves no money, and no tank saves none at all", () => {
    const gas = { hotWaterSource: "natural gas", hotWaterPrice: 4e-9, electricityPrice: 0 } as const;
    const idle = { ...gas, balanceOutdoor: 318, designOutdoor: 328, tankSurroundings: 325, exchangerUA: undefined };
    const warm = totalOfYear(yearWith(idle));
    expect(warm.heatToTank).toBe(0);
    expect(warm.hotWaterRecovered).toBeGreaterThan(1e8);
    expect(warm.moneySaved).toBeCloseTo(0, 6);
    const none = { secondSink: "none", hotWaterSource: "natural gas", electricityPrice: 0 } as const;
    expect(totalOfYear(yearWith(none)).moneySaved).toBe(0);
  });

  test("repeats its year though the tank is slow", () => {
    const inputs = inputsOf({ tankVolume: 10, hotWaterDraw: 0.2, tankLoss: 0.5, highLimit: 301 });
    const { free } = yearOf(inputs, MIAMI);
    expect(Math.abs(free.with.end.tank - free.with.start.tank)).toBeLessThan(0.01);
  });

  test("never grows warmer than its limit", () => {
    const limit = us("temperature", 105);
    const { free } = yearWith({ tankLimit: limit, sinkOrder: "tank first" });
    expect(Math.max(...free.with.tank)).toBeLessThanOrEqual(limit + 1e-9);
    expect(Math.max(...free.with.tank)).toBeGreaterThan(limit - 1);
  });

  test("recovers at most what the draw takes from mains to the limit", () => {
    for (const row of yearRows(yearWith({ sinkOrder: "tank first", tankLimit: 318, hotWater: 318 })))
      expect(row.hotWaterRecovered).toBeLessThanOrEqual(row.hotWaterLoad * (1 + 1e-9));
  });

  test("moves its heat by less than 0.5 % when the step is halved", () => {
    const inputs = inputsOf({ sinkOrder: "tank first" });
    const year = yearOf(inputs, MIAMI);
    const run = { ...bareRun(year.surface), machine: year.machine, tank: tankOf(inputs) };
    const start = { temperature: 300, ice: 0, onPool: false, since: 3600, tank: 300 };
    const [whole, halves] = [1, 2].map((steps) => runPool({ ...run, steps }, start, 0, 8760));
    for (const figure of ["toTank", "drawnHeat", "electricity"] as const) {
      const [one, two] = [whole, halves].map((each) => totalOf(each?.sums[figure] ?? []));
      expect(Math.abs((one ?? NaN) / (two ?? NaN) - 1), figure).toBeLessThan(0.005);
    }
  });

  test("a tank without heat settles where draw and loss meet", () => {
    const inputs = inputsOf({ drawHours: 24 * 3600, tankLoss: 20, tankSurroundings: 293.15 });
    const weather = steady({
      air: 280,
      vapour: 800,
      dewPoint: 276,
      wind: 1,
      sun: 0,
      cloud: 5,
      pressure: 101_000,
      mains: 283.15,
    });
    const tank = tankOf(inputs);
    const year = yearOf(inputs, MIAMI);
    const cold = { ...year.machine, load: new Float64Array(8760), hours: new Float64Array(3 * 8760) };
    const run = { ...bareRun(yearSurface(openPool(), weather)), machine: cold as Year["machine"], tank };
    const start = { temperature: 300, ice: 0, onPool: false, since: 3600, tank: 310 };
    const { end } = runPool(run, start, 0, 1000);
    const draw = (1.5 * HOT_WATER) / 86_400;
    expect(end.tank).toBeCloseTo((draw * 283.15 + 20 * 293.15) / (draw + 20), 8);
  });

  test("holds its volume, loses through the least insulation asked of it, and is drawn in its hours", () => {
    const tank = tankOf(inputsOf({ drawStart: 6, drawHours: 2 * 3600 }));
    // 8.2938 lb/gal, 993.8 kg/m³, at 1 BTU/(lb·°F).
    expect((tank?.capacity ?? NaN) / (1.5 * 993.8 * 4186.8)).toBeCloseTo(1, 2);
    // 1.5 m³, twice as high as wide: 2.5 π D² of 0.985 m, 7.616 m², through 12.5 °F·ft²·h/BTU, 2.2014 m²·K/W.
    expect(tank?.loss).toBeCloseTo(7.616 / 2.2014, 3);
    expect([5, 6, 7, 8].map((hour) => tank?.draw[hour])).toEqual(
      [0, 1, 1, 0].map((on) => (on * 1.5 * HOT_WATER) / (2 * 3600)),
    );
    expect(tankOf(inputsOf({ tankLoss: 3 }))?.loss).toBe(3);
  });

  test("has each month's load of hot water from its own mains", () => {
    const mains = Float64Array.from({ length: 8760 }, (_, hour) => (hour < 744 ? 280 + (hour % 2) : 290));
    const inputs = inputsOf({ hotWater: 320 });
    expect(hotWaterLoad(inputs, mains, 0)).toBeCloseTo(1.5 * 31 * HOT_WATER * 39.5, -1);
    expect(hotWaterLoad(inputs, mains, 1)).toBeCloseTo(1.5 * 28 * HOT_WATER * 30, -1);
    expect(hotWaterLoad({ ...inputs, hotWater: 285 }, mains, 1)).toBe(0);
  });

  test("recovers no less for more draw, a larger exchanger or a larger tank", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("hotWaterDraw" as const, "tankUA" as const, "tankVolume" as const),
        fc.constantFrom(...ORDERS),
        fc.double({ min: 1.1, max: 3, noNaN: true }),
        (label, sinkOrder, factor) => {
          const [small, large] = [1, factor].map((by) =>
            totalOfYear(yearWith({ sinkOrder, highLimit: 301, tankLoss: 0, [label]: by * TANK[label] })),
          );
          expect(large?.hotWaterRecovered).toBeGreaterThan((small?.hotWaterRecovered ?? NaN) * (1 - 2e-3));
        },
      ),
      { numRuns: 12 },
    );
  });

  test.each([
    [{ tankVolume: undefined }, /label "tank volume" is missing, blank or zero: it is needed with a preheat tank/],
    [{ tankUA: undefined }, /label "tank UA" is missing, blank or zero/],
    [{ hotWaterDraw: undefined }, /label "hot water draw" is missing, blank or zero/],
    [{ ratedCooling: undefined, exchangerUA: undefined }, /a preheat tank needs an air conditioner/],
    [{ hotWater: 310, tankLimit: 315 }, /tank limit must be at most the hot water's/],
    [{ tankUA: 300, tankLimit: 330 }, /tank UA or tank flow is too small/],
  ])("refuses %o by the label's name", (values, message) => {
    expect(() => yearWith(values as unknown as Partial<YearInputs>)).toThrow(message);
  });
});
