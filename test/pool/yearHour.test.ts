/** The pool within an hour: steps, ice, back-up heat and what is kept of them. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { meanPart } from "../../core/pool/year/exponential";
import { runPool } from "../../core/pool/year/hourLoop";
import type { PoolRun } from "../../core/pool/year/run";
import type { Sums } from "../../core/pool/year/sums";
import { allYear, flatCurve, from, machineOf, recoveryOf, ruledSurface, runOf, tankOf } from "./yearHandMade";

/** As many steps as the hour needs. */
const stepped = (more: Partial<PoolRun>): PoolRun => {
  const { steps, ...run } = runOf(more);
  expect(steps).toBe(1);
  return run;
};
const noMachine = { machine: undefined, recovery: undefined } as const;
const subSteps = (run: PoolRun, temperature: number, onPool = false): number =>
  runPool(run, from(temperature, { onPool }), 0, 1).subSteps;

test.each([
  [0, 0.5],
  [0.001, 0.499833374991668],
  [0.1, 0.483741803595957],
  [0.199, 0.468419821037995],
  [0.2, 0.468268826949546],
  [0.5, 0.426122638850534],
  [1, 0.367879441171442],
  [2, 0.283833820809153],
  [10, 0.0900004539992976],
])("a step's mean lies above its start by (1 − (1 − e^−z)/z)/z: z = %d, worked to 40 digits", (z, expected) => {
  expect(Math.abs(meanPart(z) - expected)).toBeLessThan(1e-7);
  expect(Math.abs(meanPart(z + 1e-9) - meanPart(z))).toBeLessThan(1e-7);
});

describe("an hour has one step", () => {
  test("where no loss bends, however much the water warms", () => {
    expect(subSteps(stepped({ ...noMachine, extra: allYear(40_000) }), 290)).toBe(0);
  });

  test("where the valve is outdoors, however warm the sun makes the water", () => {
    expect(subSteps(stepped({ extra: allYear(4000) }), 299)).toBe(0);
  });

  test("where the pool ends within a quarter of the dead band above the limit", () => {
    expect(subSteps(stepped({}), 299.9, true)).toBe(0);
  });
});

describe("an hour has more steps", () => {
  // 100 W/(m²·K) and 4 K: an error of 100 × 0.07 × 4² × 3600/(6 × 3.6e6) = 0.0187 K, 18.7 times what is let pass.
  const bent = { ...noMachine, surface: ruledSurface(100), extra: allYear(4000) };

  test("where the losses bend: the root of how many times too large the error is", () => {
    expect(subSteps(stepped(bent), 290)).toBe(5 - 1);
    expect(subSteps(stepped({ ...bent, extra: allYear(2000) }), 290)).toBe(3 - 1);
    expect(subSteps(stepped({ ...bent, extra: allYear(900) }), 290)).toBe(0);
  });

  test("but never more than twelve", () => {
    expect(subSteps(stepped({ ...bent, extra: allYear(40_000) }), 290)).toBe(12 - 1);
    const strong = machineOf(allYear(8_000_000), { poolCurve: undefined });
    expect(subSteps(stepped({ ...bent, machine: strong, extra: allYear(40_000) }), 290)).toBe(12 - 1);
  });

  // 450 W/m² beside the machine's 500 warm the pool by 0.95 K.
  test("where the pool would pass the limit: each a quarter of the dead band", () => {
    expect(subSteps(stepped({ extra: allYear(450) }), 299.9, true)).toBe(2 - 1);
    expect(subSteps(stepped({ extra: allYear(3500) }), 299, true)).toBe(6 - 1);
    expect(subSteps(stepped({ extra: allYear(3500), recovery: recoveryOf({ band: 4 }) }), 299, true)).toBe(3 - 1);
    expect(subSteps(stepped({ extra: allYear(99_500) }), 299, true)).toBe(12 - 1);
  });

  test("where both ask for steps: the more of both", () => {
    const both = { surface: ruledSurface(100, { air: 299 }), extra: allYear(3500) };
    expect(subSteps(stepped(both), 299, true)).toBe(6 - 1);
    const wide = { ...both, recovery: recoveryOf({ band: 50, limit: 330 }) };
    expect(subSteps(stepped(wide), 299, true)).toBe(5 - 1);
  });

  test("in which the valve moves where the limit is reached", () => {
    // Steps of ten minutes of 4 K an hour: on the pool at 299.0 and 299.67 K, off it at 300.33 K.
    const year = runPool(stepped({ extra: allYear(3500) }), from(299, { onPool: true }), 0, 1);
    expect(year.taken[0]).toBeCloseTo((2 / 6) * 50_000, 6);
    expect(year.end.temperature).toBeCloseTo(299 + 3.5 + 0.5 / 3, 9);
    expect(year.end.since).toBeCloseTo(4 * 600, 9);
  });
});

describe("what an hour comes to", () => {
  test("is the mean temperature of its steps, and the extremes at their ends", () => {
    for (const steps of [1, 4]) {
      const year = runPool(runOf({ ...noMachine, extra: allYear(1000), steps }), from(290), 0, 2);
      expect(year.temperature[0]).toBeCloseTo(290.5, 9);
      expect(year.temperature[1]).toBeCloseTo(291.5, 9);
      expect(year.highest[0]).toBeCloseTo(292, 9);
      expect(year.lowest[0]).toBeCloseTo(290 + 1 / steps, 9);
      expect((year.sums.warmth[0] ?? NaN) / 3600).toBeCloseTo(290.5 + 291.5, 6);
    }
  });

  test("has its warmest moment at the end of the first step where the water cools", () => {
    const year = runPool(runOf({ ...noMachine, extra: allYear(-1000) }), from(300), 0, 3);
    expect([year.highest[0], year.lowest[0]].map((each) => each?.toFixed(6))).toEqual(["299.000000", "297.000000"]);
  });

  test("goes to the month in which it lies", () => {
    // March begins with hour 1416.
    const run = runOf({ ...noMachine, surface: ruledSurface(0, { sun: 100 }) });
    const year = runPool(run, from(290), 1414, 1419);
    expect([...year.sums.sun.slice(0, 4)].map((each) => each / 3600)).toEqual([0, 2 * 80, 3 * 80, 0]);
    expect([year.lowest[1], year.lowest[2]].map((each) => each?.toFixed(2))).toEqual(["290.08", "290.24"]);
    expect([year.highest[1], year.highest[2]].map((each) => each?.toFixed(2))).toEqual(["290.16", "290.40"]);
  });
});

test("a pool that warms loses more to the ground, by the mean of the hour", () => {
  const surface = { ...ruledSurface(0), ground: 2, groundTemperature: 285 };
  const year = runPool(runOf({ ...noMachine, surface, extra: allYear(1010) }), from(290), 0, 1);
  // 1000 W/m² net: 1 K in the hour, but for the ground's own slope: 2 × 5.5 W/m².
  expect(year.sums.ground[0]).toBeCloseTo(3600 * 10.9993, 0);
});

test("an hour in four steps adds up to what one step does, while its rates hold", () => {
  const machine = machineOf(allYear(100_000), { tankCurve: flatCurve(80_000, 40_000) });
  const run = runOf({
    machine,
    surface: ruledSurface(0, { sun: 100 }),
    pump: { schedule: allYear(0.25).slice(0, 24), power: 1000, heat: 400 },
    recovery: recoveryOf({ lost: 1000 }),
    tank: tankOf({ order: "tank first", draw: allYear(10).slice(0, 24), limit: 300, pump: 100 }),
    backUp: { set: 350, most: 100, months: Array<boolean>(12).fill(true) },
  });
  const [one, four] = [1, 4].map((steps) => runPool({ ...run, steps }, from(290, { tank: 300 }), 0, 3));
  expect(four?.subSteps).toBe(9);
  for (const figure of Object.keys(one?.sums ?? {}) as (keyof Sums)[]) {
    const [whole = NaN, parts = NaN] = [one?.sums[figure][0], four?.sums[figure][0]];
    expect(Math.abs(parts - whole), figure).toBeLessThan(2e-3 * Math.abs(whole) + 1e-6);
  }
  for (const name of ["temperature", "taken", "outdoors", "backUp", "electricity", "toTank", "tank"] as const)
    for (let hour = 0; hour < 3; hour++) {
      const [whole = NaN, parts = NaN] = [one?.[name][hour], four?.[name][hour]];
      expect(Math.abs(parts - whole), name).toBeLessThan(2e-3 * Math.abs(whole) + 1e-6);
    }
});

describe("ice", () => {
  // 2000 W/m² are lost to air 20 K below freezing by 100 W/(m²·K): 2 K of water an hour.
  const cold = { ...noMachine, surface: ruledSurface(100, { air: 253.15 }) };

  test("forms in place of water below freezing, from the loss at freezing", () => {
    const year = runPool(runOf(cold), from(273.15, { ice: 3.6e6 }), 0, 3);
    expect(year.end.temperature).toBe(273.15);
    expect(year.end.ice).toBeCloseTo(3.6e6 + 3 * 7.2e6, 3);
    expect(year.sums.frozen[0]).toBe(3 * 3600);
    expect(year.sums.convection[0]).toBeCloseTo(3 * 7.2e6, 3);
    expect((year.sums.warmth[0] ?? NaN) / 3600).toBeCloseTo(3 * 273.15, 6);
  });

  test("melts before the water warms", () => {
    const run = runOf({ ...noMachine, extra: allYear(1000) });
    const year = runPool(run, from(273.15, { ice: 5.4e6 }), 0, 2);
    expect(year.end.ice).toBe(0);
    expect(year.end.temperature).toBeCloseTo(273.65, 9);
    expect(year.sums.frozen[0]).toBe(3600);
  });

  test("keeps the hour's mean from falling below freezing", () => {
    const year = runPool(runOf(cold), from(274.15), 0, 1);
    expect(year.end.temperature).toBe(273.15);
    expect(year.temperature[0]).toBe(273.15);
  });
});

describe("back-up heat", () => {
  const months = Array<boolean>(12).fill(true);
  const backUp = { set: 300, most: 1e9, months };

  test("brings the pool to its set point at the end of the step, and no further", () => {
    const year = runPool(runOf({ ...noMachine, backUp }), from(299), 0, 2);
    expect(year.end.temperature).toBeCloseTo(300, 9);
    expect(year.backUp[0]).toBeCloseTo(100_000, 3);
    expect(year.backUp[1]).toBeCloseTo(0, 3);
    expect(runPool(runOf({ ...noMachine, backUp }), from(301), 0, 1).backUp[0]).toBe(0);
  });

  test("makes good the losses of the step", () => {
    const run = runOf({ ...noMachine, backUp, surface: ruledSurface(100) });
    const year = runPool(run, from(300), 0, 1);
    expect(year.end.temperature).toBeCloseTo(300, 9);
    expect(year.backUp[0]).toBeCloseTo(100_000, 3);
  });

  test("melts the ice first", () => {
    const run = runOf({ ...noMachine, backUp: { ...backUp, set: 275.15 } });
    const year = runPool(run, from(273.15, { ice: 3.6e6 }), 0, 1);
    expect(year.end).toMatchObject({ ice: 0 });
    expect(year.end.temperature).toBeCloseTo(275.15, 9);
    expect(year.backUp[0]).toBeCloseTo(300_000, 3);
  });

  test("gives no more than its most, and nothing out of season", () => {
    const weak = runPool(runOf({ ...noMachine, backUp: { ...backUp, most: 250 } }), from(299), 0, 1);
    expect(weak.end.temperature).toBeCloseTo(299.25, 9);
    const out = { ...backUp, months: months.map((_, month) => month !== 0) };
    expect(runPool(runOf({ ...noMachine, backUp: out }), from(299), 0, 1).end.temperature).toBe(299);
    expect(runPool(runOf(noMachine), from(299), 0, 1).backUp[0]).toBe(0);
  });
});
