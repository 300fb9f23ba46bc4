/** The year that repeats itself. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { repeatingYear } from "../../core/pool/year/repeat";
import { allYear, flatCurve, machineOf, ruledSurface, runOf, tankOf } from "./yearHandMade";

const noMachine = { machine: undefined, recovery: undefined } as const;

describe("the year that repeats itself", () => {
  test("ends within 0.002 K of where it began, whatever it began with", () => {
    // 3.6e6 J/(m²·K) over 0.5 W/(m²·K): 2000 hours.
    const run = runOf({ ...noMachine, surface: ruledSurface(0.5), extra: allYear(5) });
    for (const guess of [280, 390]) {
      const { start, end } = repeatingYear(run, guess);
      expect(Math.abs(end.temperature - start.temperature)).toBeLessThan(0.002);
      expect(end.temperature).toBeCloseTo(300, 2);
    }
  });

  test("is the eighth where none repeats, and the last month is run ahead of the first", () => {
    // 1 W/m² without loss: 0.001 K an hour.
    const { start, end, temperature } = repeatingYear(runOf({ ...noMachine, extra: allYear(1) }), 280);
    expect(start.temperature).toBeCloseTo(280 + 0.001 * (720 + 7 * 8760), 6);
    expect(end.temperature - start.temperature).toBeCloseTo(8.76, 6);
    expect(temperature[0]).toBeCloseTo(start.temperature + 0.0005, 6);
  });

  test("waits for the ice of a pool that goes on freezing", () => {
    // 20 K and 0.01 W/(m²·K): 720 J/m² an hour, in the month ahead and in eight years.
    const run = runOf({ ...noMachine, surface: ruledSurface(0.01, { air: 253.15 }) });
    const { end } = repeatingYear(run, 273.15);
    expect(end.ice).toBeCloseTo(720 * (720 + 8 * 8760), -1);
  });

  test("waits for a slow tank, which begins at the temperature of the mains", () => {
    const machine = machineOf(allYear(0), { tankCurve: flatCurve(80_000, 40_000) });
    // 3.6e8 J/K over 1e8/26280 W/K: three years to 1/e of the 5 K to the air.
    const tank = tankOf({ loss: 3.6e8 / (3 * 8760 * 3600) });
    const { end } = repeatingYear(runOf({ machine, tank }), 290);
    expect(end.tank).toBeCloseTo(290 - 5 * Math.exp(-(8 + 720 / 8760) / 3), 6);
    expect(end.onPool).toBe(false);
  });

  test("takes the arrays of a year that nobody needs any more, and clears them", () => {
    const run = runOf({ ...noMachine, surface: ruledSurface(50), extra: allYear(500) });
    const fresh = repeatingYear(run, 290);
    const used = repeatingYear(runOf({ extra: allYear(2) }), 280);
    const again = repeatingYear(run, 290, used);
    expect(again.temperature).toBe(used.temperature);
    expect(again).toEqual(fresh);
  });
});
