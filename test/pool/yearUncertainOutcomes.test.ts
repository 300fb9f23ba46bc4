/** What recovery comes to in a year of uncertain inputs, beside POOL.YEAR's own totals; paybacks by hand. */
import { describe, expect, test } from "vitest";
import type { BlockShape } from "../../core/kernel/define/argument";
import { recorder } from "../../core/kernel/define/steps";
import type { Climate } from "../../core/pool/year/climate";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import { UNCERTAIN_INPUTS, type UncertainEntries } from "../../core/pool/year/uncertainInputs";
import { uncertainYear } from "../../core/pool/year/uncertainYear";
import { yearOf } from "../../core/pool/year/year";
import type { UncertainRange } from "../../core/uncertainty/ranges";
import { allYear } from "./yearHandMade";

/** Warm and still, day and night. */
const CLIMATE: Climate = {
  monthly: false,
  columns: {
    air: allYear(303),
    vapourPressure: allYear(2000),
    windAt10m: allYear(2),
    sun: allYear(100),
    cloud: allYear(3),
    mains: allYear(290),
  },
};

const DEFAULTS = Object.fromEntries(
  Object.entries((UNCERTAIN_INPUTS.shape as BlockShape).entries).map(([key, { fallback }]) => [key, fallback]),
);

/** A pool that loses by a rule, and a machine of 26 kW that serves 20 kW at 308 K. */
const inputs = (more: Partial<UncertainEntries> = {}): UncertainEntries =>
  ({
    ...DEFAULTS,
    ...{ poolArea: 100, waterDepth: 1.5, setPoint: 306, highLimit: 307, altitude: 0, latitude: 20 },
    ...{ lossMethod: "surface rule", surfaceCoefficient: 60 },
    ...{ ratedCooling: 26_400, ratedPower: 8100, outdoorFan: 600, designLoad: 20_000, exchangerUA: 5000 },
    ...more,
  }) as UncertainEntries;

const GAS = { backUpSource: "natural gas", backUpPrice: 1e-8, electricityPrice: 4e-8 } as const;

const LOAD: UncertainRange = {
  ...{ label: "design load", distribution: "rectangular", low: 15, high: 25 },
  ...{ likely: undefined, unit: undefined },
};

const outcomesOf = (given: UncertainEntries): readonly number[] => uncertainYear(given, CLIMATE, [], "SI").compute([]);

const totalsOf = (given: UncertainEntries) => totalOfYear(yearOf(given, CLIMATE));

describe("a year of the likely inputs", () => {
  test("without a back-up heater has POOL.YEAR's heat and warm days; its saving is electricity", () => {
    const given = inputs({ electricityPrice: 4e-8 });
    const [heat = NaN, days, money = NaN, payback] = outcomesOf(given);
    const { heatTaken, warmDaysWith, moneySaved } = totalsOf(given);
    expect(heatTaken).toBeGreaterThan(1e10);
    expect(heat / heatTaken).toBeCloseTo(1, 4);
    expect(days).toBe(warmDaysWith);
    expect(money / Number(moneySaved)).toBeCloseTo(1, 4);
    expect(payback).toBeNaN();
  });

  test("with one has the saving of the pools that it holds, and the heat of the pool left to itself", () => {
    const given = inputs(GAS);
    const [heat = NaN, days, money = NaN] = outcomesOf(given);
    const { heatTaken, warmDaysWith, moneySaved, backUpWith, backUpWithout } = totalsOf(given);
    expect(backUpWith).toBeLessThan(backUpWithout);
    expect([heat / heatTaken, money / Number(moneySaved)]).toEqual([expect.closeTo(1, 4), expect.closeTo(1, 4)]);
    expect(days).toBe(warmDaysWith);
  });

  test("counts warm days of the season alone", () => {
    const at = (seasonStart: number, seasonEnd: number) =>
      outcomesOf(inputs({ setPoint: 290, seasonStart, seasonEnd }))[1];
    expect(at(1, 12)).toBe(365 * 86_400);
    expect(at(6, 7)).toBe(61 * 86_400);
    expect(at(12, 1)).toBe(62 * 86_400);
  });

  test("has no saving without the prices", () => {
    expect(outcomesOf(inputs(GAS))[2]).toBeGreaterThan(0);
    expect(outcomesOf(inputs({ ...GAS, backUpPrice: undefined }))[2]).toBeNaN();
    expect(outcomesOf(inputs({ ...GAS, backUpPrice: undefined, installedCost: 5000 }))[3]).toBeNaN();
  });

  test("takes the heat of the tank with that of the pool", () => {
    const given = inputs({
      ...{ secondSink: "preheat tank", sinkOrder: "tank first", hotWaterDraw: 1.5, tankVolume: 1.5, tankUA: 3000 },
    });
    const { heatTaken, heatToTank } = totalsOf(given);
    expect(heatToTank).toBeGreaterThan(0.01 * heatTaken);
    expect((outcomesOf(given)[0] ?? NaN) / (heatTaken + heatToTank)).toBeCloseTo(1, 4);
  });

  test("may recover for the tank alone", () => {
    const given = inputs({
      ...{ exchangerUA: undefined, secondSink: "preheat tank", hotWaterDraw: 1.5, tankVolume: 1.5, tankUA: 3000 },
    });
    expect((outcomesOf(given)[0] ?? NaN) / totalsOf(given).heatToTank).toBeCloseTo(1, 4);
  });

  test("is refused where nothing is recovered", () =>
    expect(() => outcomesOf(inputs({ exchangerUA: undefined }))).toThrow(
      expect.objectContaining({
        message: expect.stringContaining("the labels rated cooling, rated power and exchanger UA are needed"),
      }),
    ));
});

describe("the payback", () => {
  const money = outcomesOf(inputs(GAS))[2] ?? NaN;
  const payback = (more: Partial<UncertainEntries>) => outcomesOf(inputs({ ...GAS, ...more }))[3];

  test("is the cost over the saving less the upkeep", () => {
    expect(payback({ installedCost: 5 * money })).toBeCloseTo(5, 9);
    expect(payback({ installedCost: 5 * money, yearlyUpkeep: money / 2 })).toBeCloseTo(10, 9);
  });

  test("never comes where the upkeep takes the saving", () => {
    expect(payback({ installedCost: 1, yearlyUpkeep: money })).toBe(Infinity);
    expect(payback({ installedCost: 1, yearlyUpkeep: 2 * money })).toBe(Infinity);
  });

  test("at a discount takes as many years as the discounted savings need for the cost", () => {
    // Savings 1/1.05, 1/1.05², … of a cost of 5: (1 − 1.05^−n)/0.05 = 5.
    expect(payback({ installedCost: 5 * money, discountRate: 0.05 })).toBeCloseTo(-Math.log(0.75) / Math.log(1.05), 6);
  });

  test("at a discount never comes where all savings of all years don't reach the cost", () => {
    expect(payback({ installedCost: 20.01 * money, discountRate: 0.05 })).toBe(Infinity);
    expect(payback({ installedCost: 19.99 * money, discountRate: 0.05 })).toBeGreaterThan(100);
    expect(payback({ installedCost: 20.01 * money })).toBeCloseTo(20.01, 6);
  });

  test("is recorded step by step", () => {
    const working = (discountRate: number) => {
      const { trace, steps } = recorder();
      const given = inputs({ ...GAS, installedCost: 5 * money, discountRate });
      uncertainYear(given, CLIMATE, [], "SI").trace([], trace);
      return steps.map(({ type }) => type);
    };
    expect(working(0)).toEqual(["equation"]);
    expect(working(0.05)).toEqual(["equation", "equation"]);
  });
});

describe("uncertain inputs", () => {
  const model = (ranges: readonly UncertainRange[], system: "SI" | "US" = "SI") =>
    uncertainYear(inputs(), CLIMATE, ranges, system);

  test("take the place of the block's, in the unit of the call", () => {
    const [heat = NaN] = model([LOAD]).compute([16]);
    expect(heat / totalsOf(inputs({ designLoad: 16_000 })).heatTaken).toBeCloseTo(1, 4);
    const [same = NaN] = model([{ ...LOAD, low: 50_000, high: 60_000 }], "US").compute([16_000 / 0.29307107]);
    expect(same / heat).toBeCloseTo(1, 4);
  });

  test("each take their own place", () => {
    const depth: UncertainRange = { ...LOAD, label: "water depth", low: 1, high: 2 };
    const [heat = NaN] = model([depth, LOAD]).compute([1.2, 17]);
    expect(heat / totalsOf(inputs({ designLoad: 17_000, waterDepth: 1.2 })).heatTaken).toBeCloseTo(1, 4);
  });

  test("are refused by the name of their range", () => {
    expect(() => model([LOAD]).compute([-3])).toThrow(
      expect.objectContaining({ message: expect.stringMatching(/^ranges, design load: must be/) }),
    );
    expect(() => model([{ ...LOAD, label: "colour" }])).toThrow(
      expect.objectContaining({ message: expect.stringContaining("colour") }),
    );
  });

  test("give the same year whatever year ran before", () => {
    const years = model([LOAD]);
    const [first = NaN] = years.compute([15]);
    years.compute([25]);
    expect((years.compute([15])[0] ?? NaN) / first).toBeCloseTo(1, 4);
  });

  test("carry the correlations of their pairs", () => {
    const depth: UncertainRange = { ...LOAD, label: "water depth", low: 1, high: 2 };
    const pairs = [{ label: "water depth", with: "design load", r: 0.4 }];
    const { correlation } = uncertainYear(inputs(), CLIMATE, [depth, LOAD], "SI", pairs);
    expect(correlation?.matrix).toEqual([
      [1, 0.4],
      [0.4, 1],
    ]);
    expect(model([depth, LOAD]).correlation).toBeUndefined();
  });
});

describe("the factor on evaporation", () => {
  const parts = (more: Partial<UncertainEntries> = {}) =>
    inputs({ lossMethod: "parts", sunFactor: 1, setPoint: 295, ...more });
  const heat = (given: UncertainEntries): number => outcomesOf(given)[0] ?? NaN;

  test("is the activity's where convection follows evaporation", () => {
    const [doubled, active] = [parts({ evaporationFactor: 2 }), parts({ activity: 2 })].map(heat) as [number, number];
    expect(doubled / active).toBeCloseTo(1, 6);
    // On a colder pool the machine needs less power for the same load, and gives up less heat.
    expect(doubled / heat(parts())).toBeLessThan(0.99);
  });

  test("leaves convection by the wind, and a surface rule, as they are", () => {
    const byWind = { convectionMethod: "by wind" } as const;
    const [doubled, active] = [parts({ ...byWind, evaporationFactor: 2 }), parts({ ...byWind, activity: 2 })].map(
      heat,
    ) as [number, number];
    expect(doubled / active).toBeCloseTo(1, 6);
    expect(heat(inputs({ evaporationFactor: 2 }))).toBe(heat(inputs()));
  });
});
