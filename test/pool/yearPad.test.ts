/** The pump at several speeds and the heat lost on the way to the pool. */
import { describe, expect, test } from "vitest";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { admitClimate } from "../../core/pool/year/climate";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear } from "../../core/pool/year/monthlyTable";
import { powerByHour } from "../../core/pool/year/schedule";
import { yearOf } from "../../core/pool/year/year";
import { DEFAULTS } from "./yearPools";

const MIAMI = admitClimate(MIAMI_MONTHS, "SI");
const HOUR = 3600;
const KWH = 3.6e6;

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
} as const;

const totals = (values: Partial<YearInputs> = {}) =>
  totalOfYear(yearOf({ ...DEFAULTS, ...BASE, ...values } as YearInputs, MIAMI));

describe("a pump of several speeds", () => {
  test("at one speed gives the year of its power and hours, to the last digit", () => {
    const plain = totals({ pumpPower: 900, pumpHours: 8 * HOUR });
    expect(totals({ pumpSpeedEnergy: [7.2 * KWH], pumpSpeedHours: [8 * HOUR] })).toEqual(plain);
    expect(totals({ pumpPower: 900, pumpSpeedEnergy: [7.2 * KWH], pumpSpeedHours: [8 * HOUR] })).toEqual(plain);
  });

  test("runs through its speeds one after the other, through midnight too", () => {
    const mean = powerByHour(20, [3, 4], [3 * KWH, 1 * KWH]);
    expect([...mean].map(Math.round)).toEqual([250, 250, 250, ...Array<number>(17).fill(0), 1000, 1000, 1000, 250]);
  });

  test("warms a pool without machine by the share of its energy", () => {
    const { pumpHeat } = totals({
      ratedCooling: undefined,
      ratedPower: undefined,
      exchangerUA: undefined,
      pumpSpeedEnergy: [2 * KWH, 1.5 * KWH],
      pumpSpeedHours: [2 * HOUR, 10 * HOUR],
    });
    expect(pumpHeat / KWH).toBeCloseTo(0.5 * 3.5 * 365, 6);
  });

  test("counts as extra on call only what is above the schedule's speed", () => {
    const none = totals({ pumpPower: 1000, pumpHours: 0 });
    const slow = totals({ pumpPower: 1000, pumpSpeedEnergy: [0.25 * 24 * KWH], pumpSpeedHours: [24 * HOUR] });
    const perHour = (row: typeof none): number => row.extraPump / row.timeOnPool;
    expect(perHour(none)).toBeCloseTo(1000, 6);
    expect(perHour(slow)).toBeCloseTo(750, 6);
  });

  test.each([
    [{ pumpSpeedEnergy: [KWH] }, /one value for each speed/],
    [{ pumpSpeedEnergy: [KWH, KWH], pumpSpeedHours: [HOUR] }, /one value for each speed/],
    [{ pumpSpeedEnergy: [KWH, KWH], pumpSpeedHours: [20 * HOUR, 5 * HOUR] }, /at most/],
    [{ pumpPower: 500, pumpSpeedEnergy: [KWH], pumpSpeedHours: [HOUR] }, /at least that of every speed/],
  ] as const)("refuses %j", (values, message) => {
    expect(() => totals(values)).toThrow(message);
  });
});

describe("heat lost on the way", () => {
  const always = { highLimit: 315, pumpHours: 0 } as const;

  test("comes off the heat taken for the time on the pool, line and pipe alike", () => {
    const plain = totals(always);
    expect(plain.heatTaken).toBeCloseTo(plain.heatRejected, 0);
    const lossy = totals({ ...always, lineLoss: 600, pipeLoss: 400 });
    expect((lossy.heatTaken + 1000 * lossy.timeOnPool) / lossy.heatRejected).toBeCloseTo(1, 9);
    expect(totals({ ...always, lineLoss: 1000 })).toEqual(lossy);
    expect(lossy.heatTaken).toBeLessThan(plain.heatTaken);
    expect(lossy.backUpWithout).toBe(plain.backUpWithout);
  });

  test("never takes more than there is", () => {
    expect(totals({ ...always, lineLoss: 1e6 }).heatTaken).toBe(0);
  });
});
