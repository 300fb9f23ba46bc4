import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { balanceOf } from "../../core/exchanger/balance/balance";
import { si } from "../../core/kernel/values/quantity";
import { bracketedRoot } from "../../core/numeric/root";
import { admitClimate } from "../../core/pool/year/climate";
import { runPool } from "../../core/pool/year/hourLoop";
import type { YearInputs } from "../../core/pool/year/inputs";
import { emptyLosses, lossesAt } from "../../core/pool/year/lossesAt";
import { yearRows } from "../../core/pool/year/monthlyTable";
import { repeatingYear } from "../../core/pool/year/repeat";
import type { Year } from "../../core/pool/year/results";
import { capacityOf } from "../../core/pool/year/setUp";
import type { State } from "../../core/pool/year/state";
import { totalOf } from "../../core/pool/year/sums";
import { yearSurface } from "../../core/pool/year/surface";
import { dewPointOver, vapourPressureAt } from "../../core/pool/year/vapourTable";
import { compressorOf, coolingAt, onWaterCurve, powerAt } from "../../core/pool/year/waterCurve";
import { yearOf } from "../../core/pool/year/year";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { POOL_HEAT_CAPACITY } from "../../core/pool/equations";
import { lossesByParts, type PoolState } from "../../core/pool/losses/losses";
import { surfaceLoss } from "../../core/pool/losses/surface";
import { DEFAULTS, RATING, bareRun, imbalance, openPool, steady } from "./yearPools";

const AIR = 295;
const VAPOUR = 1500;
const STEADY = {
  air: AIR,
  vapour: VAPOUR,
  dewPoint: dewPointOver(VAPOUR),
  wind: 1.2,
  sun: 200,
  cloud: 3,
  pressure: 101_000,
  mains: 288,
};
const START: State = { temperature: 300, ice: 0, onPool: false, since: 3600, tank: 290 };

const inputsOf = (values: Partial<YearInputs>): YearInputs =>
  ({
    ...DEFAULTS,
    poolArea: 100,
    waterDepth: 1.5,
    setPoint: 300.15,
    latitude: 25.82,
    altitude: 11,
    ...values,
  }) as YearInputs;

const MACHINE = { ratedCooling: 26_400, ratedPower: 8100, outdoorFan: 600, exchangerUA: 5000 } as const;
const MIAMI = admitClimate(MIAMI_MONTHS, "SI");
const runsOf = ({ free, held }: Year) => [free.without, free.with, held.without, held.with];

describe("a year in steady weather", () => {
  const pool = { ...openPool(), ground: { coefficient: 0.5, temperature: 286 }, water: { drawn: 1e-6, rain: 0 } };
  const state = (water: number): PoolState => ({
    weather: { ...STEADY, area: 100, water, vapourPressure: VAPOUR },
    surface: pool.surface,
    cover: { kind: "none", time: 0, sunTime: 0, covered: 1, convectionCut: 0, radiationCut: 0 },
    ground: { coefficient: 0.5, temperature: 286, depth: 1.5 },
    water: { splash: 1e-4, backwash: 0, leak: 0, rain: 0, mains: STEADY.mains },
    sun: { daily: STEADY.sun * 86_400, absorbed: 0.8, shaded: 0 },
  });

  test("settles where the steady losses come to nothing, within 0.01 °F", () => {
    const settles = bracketedRoot((T) => lossesByParts(state(T)).net, 280, 320, { tolerance: 1e-9 });
    const year = repeatingYear(bareRun(yearSurface(pool, steady(STEADY))), 290);
    expect(settles.found).toBe(true);
    expect(Math.abs(year.end.temperature - settles.x)).toBeLessThan(0.01 / 1.8);
  });

  test("the surface rule nears its end exponentially, whatever the step", () => {
    const U = 59.6;
    const surface = yearSurface(openPool({}, U), steady(STEADY));
    const run = bareRun(surface);
    const settles = AIR + (0.8 * STEADY.sun) / U;
    for (const hours of [1, 7, 100])
      expect(runPool(run, START, 0, hours).end.temperature).toBeCloseTo(
        settles + (START.temperature - settles) * Math.exp((-U * 3600 * hours) / run.capacity),
        8,
      );
  });

  test("a pool without losses warms by heat over capacity", () => {
    const surface = yearSurface(openPool({}, 0), steady({ ...STEADY, sun: 0 }));
    const run = { ...bareRun(surface), extra: new Float64Array(8760).fill(25) };
    const { end } = runPool(run, START, 0, 240);
    expect(end.temperature - START.temperature).toBeCloseTo((25 * 240 * 3600) / run.capacity, 9);
  });

  test("the pool freezes and thaws by its heat: never below 0 °C, none lost", () => {
    const cold = yearSurface(openPool({}, 20), steady({ ...STEADY, air: 263.15, sun: 0 }));
    const run = bareRun(cold);
    const frozen = runPool(run, { ...START, temperature: 274 }, 0, 500);
    expect(frozen.end.temperature).toBe(273.15);
    expect(frozen.end.ice).toBeGreaterThan(0);
    expect(Math.abs(imbalance(frozen, run.capacity))).toBeLessThan(1e-9);
    const thawed = runPool({ ...run, extra: new Float64Array(8760).fill(2000) }, frozen.end, 0, 500);
    expect(thawed.end.ice).toBe(0);
    expect(thawed.end.temperature).toBeGreaterThan(300);
  });
});

describe("the losses prepared for the hours", () => {
  test("the losses prepared for the hours equal the steady losses in any state, and their slopes the differences", () => {
    fc.assert(
      fc.property(
        fc.record({
          water: fc.double({ min: 275, max: 313, noNaN: true }),
          air: fc.double({ min: 250, max: 315, noNaN: true }),
          humidity: fc.double({ min: 0.05, max: 1, noNaN: true }),
          wind: fc.double({ min: 0, max: 8, noNaN: true }),
          cloud: fc.double({ min: 0, max: 10, noNaN: true }),
          pressure: fc.double({ min: 70_000, max: 105_000, noNaN: true }),
          hiddenSky: fc.double({ min: 0, max: 1, noNaN: true }),
          method: fc.constantFrom("Smith-Lof-Jones" as const, "Carrier" as const, "McMillan" as const),
          convection: fc.constantFrom("by evaporation" as const, "by wind" as const),
        }),
        ({ water, air, humidity, wind, cloud, pressure, hiddenSky, method, convection }) => {
          const vapour = humidity * vapourPressureAt(air);
          const dewPoint = dewPointOver(vapour);
          const surface = { method, activity: 1.3, convection, hiddenSky };
          const weather = { ...STEADY, air, vapour, dewPoint, wind, cloud, pressure };
          const made = yearSurface(openPool(surface), { ...steady(weather), hours: 1 });
          const at = emptyLosses();
          const beside = emptyLosses();
          lossesAt(made, 0, water, at);
          lossesAt(made, 0, water + 1e-3, beside);
          const state = { area: 1, water, air, vapourPressure: vapour, dewPoint, wind, cloud, pressure };
          // McMillan's area term belongs to the pool's own area.
          const open = surfaceLoss(surface, { ...state, area: 100 });
          for (const part of ["evaporation", "convection", "radiation"] as const) {
            const each = open[part] / 100;
            expect(Math.abs(at[part] - each)).toBeLessThan(2e-3 + 2e-5 * Math.abs(each));
            const slope = (beside[part] - at[part]) / 1e-3;
            expect(Math.abs(at[`${part}Slope`] - slope)).toBeLessThan(2e-3 * (1 + Math.abs(slope)));
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe("a year in Miami", () => {
  const machine = inputsOf({
    ...MACHINE,
    cover: "bubble",
    splash: 0.2,
    rain: 0.003,
    pumpPower: 900,
    pumpHours: 6 * 3600,
  });

  test("closes its heat balance to 1e-6 in all four pools", () => {
    const year = yearOf(machine, MIAMI);
    for (const run of runsOf(year)) expect(Math.abs(imbalance(run, capacityOf(machine)))).toBeLessThan(1e-6);
  });

  test("a year without an air conditioner has two equal pools, and takes no heat", () => {
    const year = yearOf(inputsOf({}), MIAMI);
    expect(year.free.with.temperature).toEqual(year.free.without.temperature);
    expect(totalOf(year.free.with.sums.taken)).toBe(0);
    expect(totalOf(year.held.with.sums.backUp)).toBe(totalOf(year.held.without.sums.backUp));
  });

  test("a year is the same from run to run", () => {
    expect(yearRows(yearOf(machine, MIAMI))).toEqual(yearRows(yearOf(machine, MIAMI)));
  });

  test("moves its heats by less than 0.5 % when the step is halved", () => {
    const year = yearOf(machine, MIAMI);
    const run = {
      ...bareRun(year.surface),
      capacity: capacityOf(machine),
      machine: year.machine,
      recovery: {
        limit: machine.highLimit,
        band: machine.deadBand,
        leastTime: machine.leastTime,
        onCall: true,
        lost: 0,
      },
      backUp: { set: machine.setPoint, most: 1e9, months: Array<boolean>(12).fill(true) },
    };
    const whole = repeatingYear(run, 300);
    const halves = repeatingYear({ ...run, steps: 2 }, 300);
    for (const figure of ["backUp", "taken", "evaporation", "electricity"] as const) {
      const [one, two] = [totalOf(whole.sums[figure]), totalOf(halves.sums[figure])];
      expect(Math.abs(one / two - 1), figure).toBeLessThan(0.005);
    }
  });

  test("never lets the pool rise far above its limit by the machine alone, nor fall below the set point in season", () => {
    const year = yearOf(inputsOf({ ...MACHINE, highLimit: 303, setPoint: 300.15 }), MIAMI);
    const { free, held } = year;
    const sunOnly = Math.max(...free.without.highest);
    expect(Math.max(...free.with.highest)).toBeLessThan(Math.max(303, sunOnly) + 1);
    expect(Math.min(...held.with.temperature)).toBeGreaterThan(300.15 - 0.05);
    expect(totalOf(held.with.sums.backUp)).toBeLessThan(totalOf(held.without.sums.backUp));
  });

  test("takes sub-steps only where an hour is too long", () => {
    expect(yearOf(inputsOf({}), MIAMI).free.without.subSteps).toBe(0);
    expect(yearOf(inputsOf({ waterDepth: 0.15 }), MIAMI).free.without.subSteps).toBeGreaterThan(100);
  });
});

const WORDS = { ua: "exchanger UA", flow: "water flow", limit: "high limit", limitIs: 304 };

describe("the machine on the pool", () => {
  test("the machine at its rating has the rating's own cooling and power", () => {
    const compressor = compressorOf(RATING);
    const { rated } = compressor;
    expect(compressor.rating.cooling / rated.cop).toBeCloseTo(8100 - 600 - 500, 3);
  });

  test.each([
    ["R-410A", 3000, si("water flow", 5)],
    ["R-410A", 9000, si("water flow", 8)],
    ["R-22", 4000, si("water flow", 6)],
    ["R-32", 5000, si("water flow", 6)],
  ])(
    "%s with %s W/K follows the balance itself within 0.5 % of duty, between the curve's points too",
    (name, ua, flow) => {
      const own = { ...RATING, refrigerant: name };
      const compressor = compressorOf(own);
      const curve = onWaterCurve(compressor, { ua, waterFlow: flow, leastCondensing: 299.8 }, own, 305, WORDS);
      const least = curve.water[0] ?? 0;
      for (let water = Math.max(279, least + 0.3); water < 305; water += 1.7) {
        const exact = balanceOf(compressor, { ua, waterFlow: flow }, { enteringWater: water, wetBulb: own.wetBulb });
        const duty = coolingAt(curve, water) + powerAt(curve, water);
        expect(Math.abs(duty / exact.rejected - 1), `${water} K`).toBeLessThan(0.005);
        expect(Math.abs((powerAt(curve, water) - 500) / exact.power - 1), `${water} K`).toBeLessThan(0.01);
      }
    },
  );

  test("holds what it does at the least condensing temperature in colder water", () => {
    const exchanger = { ua: 5000, waterFlow: 0.002, leastCondensing: 303 };
    const curve = onWaterCurve(compressorOf(RATING), exchanger, RATING, 305, WORDS);
    const first = curve.water[0] ?? 0;
    expect(curve.condensing[0]).toBe(303);
    expect(powerAt(curve, first - 10)).toBe(powerAt(curve, first));
  });
});

test("a cubic metre of pool water holds the heat that a steady warm-up takes", () => {
  expect(capacityOf(inputsOf({ waterDepth: 2 }))).toBe(2 * POOL_HEAT_CAPACITY);
});
