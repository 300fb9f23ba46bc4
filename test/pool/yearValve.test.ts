/** The air conditioner hour by hour: when its valve moves, and what the machine does meanwhile. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { runPool } from "../../core/pool/year/hourLoop";
import type { PoolYear } from "../../core/pool/year/results";
import { allYear, flatCurve, from, machineOf, recoveryOf, runOf, tankOf } from "./yearHandMade";

const WH = 3600;
const firstHours = (values: Float64Array, hours: number): readonly number[] =>
  [...values.slice(0, hours)].map((value) => Number(value.toFixed(6)));
const taken = (year: PoolYear, hours: number): readonly number[] => firstHours(year.taken, hours);
const january = (year: PoolYear, figure: keyof PoolYear["sums"]): number => (year.sums[figure][0] ?? NaN) / WH;

describe("the valve", () => {
  test("goes to the pool a dead band below the limit, and back at the limit", () => {
    const year = runPool(runOf(), from(297.9), 0, 8);
    expect(taken(year, 8)).toEqual([50_000, 50_000, 50_000, 50_000, 50_000, 0, 0, 0]);
    expect(year.end.temperature).toBeCloseTo(300.4, 9);
    expect(year.end.onPool).toBe(false);
  });

  test("stays outdoors at just a dead band below the limit", () => {
    expect(runPool(runOf(), from(298), 0, 1).end.onPool).toBe(false);
  });

  test("leaves the pool at just the limit", () => {
    expect(runPool(runOf(), from(300, { onPool: true }), 0, 1).end.onPool).toBe(false);
  });

  test("stays where it is until its least time is over", () => {
    const run = runOf({ recovery: recoveryOf({ leastTime: 7200 }) });
    expect(taken(runPool(run, from(290, { since: 0 }), 0, 4), 4)).toEqual([0, 0, 50_000, 50_000]);
    const warm = runPool(run, from(301, { onPool: true, since: 0 }), 0, 4);
    expect(taken(warm, 4)).toEqual([50_000, 50_000, 0, 0]);
    expect(warm.end.since).toBe(7200);
  });

  test("leaves the pool at once when the pump stops, and waits before it comes back", () => {
    const schedule = new Float64Array(24).fill(1);
    schedule[1] = 0;
    const pump = { schedule, power: 1000, heat: 0 };
    const run = runOf({ pump, recovery: recoveryOf({ leastTime: 7200, onCall: false }) });
    const year = runPool(run, from(290, { onPool: true, since: 0 }), 0, 5);
    expect(taken(year, 5)).toEqual([50_000, 0, 0, 50_000, 50_000]);
  });

  test("doesn't go to the pool in an hour in which the pump runs in part", () => {
    const pump = { schedule: new Float64Array(24).fill(0.5), power: 1000, heat: 0 };
    const run = runOf({ pump, recovery: recoveryOf({ onCall: false }) });
    expect(taken(runPool(run, from(290), 0, 1), 1)).toEqual([0]);
  });

  test("stays where it is in an hour without load", () => {
    const run = runOf({ machine: machineOf(allYear(0)) });
    expect(runPool(run, from(301, { onPool: true }), 0, 3).end.onPool).toBe(true);
    expect(runPool(run, from(290), 0, 3).end.onPool).toBe(false);
  });
});

describe("the machine", () => {
  test("on the pool gives its heat less what the pipes lose while it runs", () => {
    const year = runPool(runOf({ recovery: recoveryOf({ lost: 4000 }) }), from(290), 0, 2);
    expect(taken(year, 2)).toEqual([48_000, 48_000]);
    expect(firstHours(year.outdoors, 2)).toEqual([2000, 2000]);
    expect(firstHours(year.electricity, 2)).toEqual([10_000, 10_000]);
    expect(january(year, "rejected")).toBeCloseTo(100_000, 6);
    expect(january(year, "poolTime")).toBeCloseTo(1, 9);
    expect(january(year, "outdoorTime")).toBe(0);
    expect(year.end.temperature).toBeCloseTo(290.96, 9);
  });

  test("gives the pool nothing where the pipes would lose more than there is", () => {
    expect(taken(runPool(runOf({ recovery: recoveryOf({ lost: 1e6 }) }), from(290), 0, 1), 1)).toEqual([0]);
  });

  test("on its outdoor coil rejects no heat of the outdoor fan", () => {
    const year = runPool(runOf(), from(310), 0, 1);
    expect(firstHours(year.outdoors, 1)).toEqual([45_000]);
    expect(firstHours(year.electricity, 1)).toEqual([10_000]);
    expect(january(year, "outdoorTime")).toBeCloseTo(0.5, 9);
    expect(january(year, "poolTime")).toBe(0);
    expect(year.end.temperature).toBe(310);
  });

  test("leaves unmet what is beyond its cooling", () => {
    const year = runPool(runOf({ machine: machineOf(allYear(100_000)) }), from(290), 0, 2);
    expect(taken(year, 1)).toEqual([100_000]);
    expect(january(year, "unmet")).toBeCloseTo(40_000, 6);
    expect(january(year, "poolTime")).toBeCloseTo(2, 9);
  });

  test("counts the pump beyond its schedule for the time on the pool only", () => {
    const pump = { schedule: new Float64Array(24).fill(0.25), power: 1000, heat: 400 };
    const onPool = runPool(runOf({ pump }), from(290), 0, 1);
    expect(january(onPool, "extraPump")).toBeCloseTo(0.5 * 0.75 * 1000, 6);
    expect(january(onPool, "pumpHeat") * 100).toBeCloseTo(400 * (0.25 + 0.375), 6);
    expect(onPool.end.temperature).toBeCloseTo(290 + (50_000 + 250) / 100_000, 9);
    const outdoors = runPool(runOf({ pump }), from(310), 0, 1);
    expect(january(outdoors, "extraPump")).toBe(0);
    expect(january(outdoors, "pumpHeat") * 100).toBeCloseTo(100, 6);
  });

  test("stops in an hour without load", () => {
    const load = allYear(40_000);
    load[1] = 0;
    const pump = { schedule: new Float64Array(24), power: 1000, heat: 400 };
    const year = runPool(runOf({ machine: machineOf(load), pump }), from(290), 0, 2);
    expect(taken(year, 2)).toEqual([50_000, 0]);
    expect(firstHours(year.outdoors, 2)).toEqual([0, 0]);
    expect(firstHours(year.electricity, 2)).toEqual([10_000, 0]);
    expect(january(year, "extraPump")).toBeCloseTo(500, 6);
    expect(january(year, "pumpHeat") * 100).toBeCloseTo(200, 6);
    expect(january(year, "poolTime")).toBeCloseTo(0.5, 9);
    expect(year.end.temperature).toBeCloseTo(290.502, 9);
  });

  test("leaves no load unmet and gives the tank's turn back after it stops", () => {
    const load = allYear(100_000);
    load[1] = 0;
    const machine = machineOf(load, { tankCurve: flatCurve(80_000, 40_000) });
    const year = runPool(runOf({ machine, tank: tankOf() }), from(310), 0, 2);
    expect(january(year, "unmet")).toBeCloseTo(20_000, 6);
    expect(firstHours(year.toTank, 2)).toEqual([120_000, 0]);
    expect(firstHours(year.outdoors, 2)).toEqual([0, 0]);
  });

  test("without an exchanger on the pool never serves it", () => {
    const year = runPool(runOf({ machine: machineOf(undefined, { poolCurve: undefined }) }), from(290), 0, 2);
    expect(taken(year, 2)).toEqual([0, 0]);
    expect(firstHours(year.outdoors, 2)).toEqual([45_000, 45_000]);
  });
});

describe("a preheat tank", () => {
  const machine = machineOf(undefined, { tankCurve: flatCurve(80_000, 40_000) });

  test("served after the pool takes nothing while the valve is on the pool, and all that goes outdoors otherwise", () => {
    const run = runOf({ machine, tank: tankOf() });
    const cold = runPool(run, from(290), 0, 1);
    expect([taken(cold, 1), firstHours(cold.toTank, 1)]).toEqual([[50_000], [0]]);
    const warm = runPool(run, from(310), 0, 1);
    expect([taken(warm, 1), firstHours(warm.toTank, 1)]).toEqual([[0], [60_000]]);
    expect(warm.end.tank).toBeCloseTo(300.6, 9);
    expect(january(warm, "toTank")).toBeCloseTo(60_000, 6);
    expect(january(warm, "electricity")).toBeCloseTo(20_000, 6);
    expect(january(warm, "tankTime")).toBeCloseTo(0.5, 9);
    expect(january(warm, "outdoorTime")).toBe(0);
  });

  test("served before the pool takes all until it nears its limit, and the pool gets the rest of the hour", () => {
    const pump = { schedule: new Float64Array(24), power: 1000, heat: 800 };
    const run = runOf({ machine, pump, tank: tankOf({ order: "tank first", limit: 300.15 }) });
    const year = runPool(run, from(290), 0, 2);
    // A quarter of the hour brings the tank to its limit; the pool has three quarters of 50 kW, then all of it.
    expect(firstHours(year.toTank, 2)).toEqual([15_000, 0]);
    expect(taken(year, 2)).toEqual([37_500, 50_000]);
    expect(firstHours(year.electricity, 2)).toEqual([12_500, 10_000]);
    expect(january(year, "pumpHeat") * 100).toBeCloseTo(0.75 * 400 + 400, 6);
    expect(january(year, "poolTime")).toBeCloseTo(0.375 + 0.5, 9);
    expect(january(year, "tankTime")).toBeCloseTo(0.125, 9);
    expect(year.end.tank).toBeCloseTo(300.15, 9);
    expect(year.end.temperature).toBeCloseTo(290 + (37_500 + 300 + 50_000 + 400) / 100_000, 9);
  });

  test("is heated at the mean of its own temperature in the step", () => {
    // All of the time: 80 kW of cooling and 20 kW of power at 290 K, 1 kW more for each kelvin.
    const curve = { ...flatCurve(80_000, 0), coldest: 290, perKelvin: 0.05, powers: Float64Array.of(20_000, 40_000) };
    const warming = machineOf(allYear(80_000), { tankCurve: curve });
    const year = runPool(runOf({ machine: warming, tank: tankOf() }), from(310), 0, 1);
    // 110 kW at 300 K would make the mean 300.55 K.
    expect(firstHours(year.toTank, 1)).toEqual([110_550]);
  });

  test("leaves unmet by its share what the machine can't do on it, and on the pool by the rest", () => {
    const weak = machineOf(allYear(100_000), { tankCurve: flatCurve(60_000, 40_000) });
    const run = runOf({ machine: weak, tank: tankOf({ order: "tank first", limit: 300.25 }) });
    const year = runPool(run, from(290), 0, 1);
    expect(firstHours(year.toTank, 1)).toEqual([25_000]);
    expect(january(year, "unmet")).toBeCloseTo(0.75 * 20_000 + 0.25 * 40_000, 6);
  });

  test("takes no heat while there is no load, or while it is as warm as its limit", () => {
    const idle = machineOf(allYear(0), { tankCurve: flatCurve(80_000, 40_000) });
    expect(firstHours(runPool(runOf({ machine: idle, tank: tankOf() }), from(310), 0, 1).toTank, 1)).toEqual([0]);
    const full = runPool(runOf({ machine, tank: tankOf({ limit: 300 }) }), from(310), 0, 1);
    expect(firstHours(full.toTank, 1)).toEqual([0]);
    expect(firstHours(full.outdoors, 1)).toEqual([45_000]);
  });

  test("counts the time of its pump, and what it loses and gives to the draw", () => {
    const tank = tankOf({ loss: 1e-6, draw: new Float64Array(24).fill(1e-6), pump: 200 });
    const year = runPool(runOf({ machine, tank }), from(310), 0, 1);
    expect(january(year, "extraPump")).toBeCloseTo(100, 6);
    // Its mean is 300.3 K; the air is at 290 K, the mains at 285 K.
    expect(january(year, "tankLoss")).toBeCloseTo(10.3e-6, 12);
    expect(january(year, "drawnHeat")).toBeCloseTo(15.3e-6, 12);
    expect(january(year, "tankWarmth")).toBeCloseTo(300.3, 6);
    expect(firstHours(year.tank, 1)).toEqual([300.3]);
  });
});
