/** Sun and cloud of the days. Expected values by hand from the published relations that the equations name. */
import { describe, expect, test } from "vitest";
import { clearestDay, clearnessExponent } from "../../core/pool/year/sunEquations";
import { clearnessOfDays, cloudOfDay, cloudOfHours, orderOf, sunDay, type SunDay } from "../../core/pool/year/sun";

const DEGREE = Math.PI / 180;
/** Day 81 of the year has no declination; day 172 has 23.45°. */
const [EQUINOX, SOLSTICE] = [81, 172];
const sumOf = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0);

describe("the sun of a day", () => {
  const equinoxDay = (): SunDay => sunDay(EQUINOX, 0);

  test("shines from six to six on the equator, the same before noon and after, and its shares sum to 1", () => {
    const equinox = equinoxDay();
    expect(sumOf(equinox.shares)).toBeCloseTo(1, 12);
    equinox.shares.forEach((share, hour) => {
      expect(share).toBeCloseTo(equinox.shares[23 - hour] ?? NaN, 12);
      if (hour < 6 || hour >= 18) expect(share).toBe(0);
      else expect(share).toBeGreaterThan(0);
    });
    expect(equinox.shares[11]).toBe(Math.max(...equinox.shares));
  });

  test("below a clear sky is the sum of 910 × the height's sine − 30 W/m² over the hours' middles", () => {
    // The sines of 7.5°, 22.5° … 172.5° sum to 1/sin 7.5°.
    expect(equinoxDay().clear).toBeCloseTo(3600 * (910 / Math.sin(7.5 * DEGREE) - 12 * 30), 3);
  });

  test("outside the air on the equator at the equinox is the solar constant through a half sine", () => {
    const distance = 1 + 0.033 * Math.cos((2 * Math.PI * EQUINOX) / 365);
    expect(equinoxDay().outside).toBeCloseTo(((86_400 * 1367) / Math.PI) * distance, 0);
  });

  test("lasts longer in summer, and shines at midnight near the pole", () => {
    const lit = (day: number, latitude: number): number =>
      sunDay(day, latitude * DEGREE).shares.filter((share) => share > 0).length;
    // Sunset at acos(−tan 50° tan 23.45°) = 121.1° and acos(−tan 35° tan 23.45°) = 107.7°.
    expect([lit(SOLSTICE, 50), lit(SOLSTICE, 35), lit(EQUINOX, 50)]).toEqual([16, 14, 12]);
    expect(lit(SOLSTICE, 75)).toBe(24);
  });

  test("is none in the polar night, whose sky is half covered", () => {
    const night = sunDay(355, 80 * DEGREE);
    expect(night.shares).toEqual(Array<number>(24).fill(0));
    expect(night.clear).toBe(0);
    expect(night.outside).toBeCloseTo(0, 0);
    expect(cloudOfDay(0, night)).toBe(5);
  });
});

describe("cloud", () => {
  test.each([
    [1.1, 0],
    [1, 0],
    [0.625, 10 * 0.5 ** (1 / 3.4)],
    [0.25, 10],
    [0, 10],
  ])("of a day with %d of the clear sky's sun", (part, tenths) => {
    const day = sunDay(EQUINOX, 0);
    expect(cloudOfDay(part * day.clear, day)).toBeCloseTo(tenths, 9);
  });

  test("by the hour is that of its day by day and night", () => {
    const hours = new Float64Array(72);
    const second = sunDay(2, 0.4);
    second.shares.forEach((share, hour) => {
      hours[24 + hour] = (share * second.clear) / 3600;
      hours[48 + hour] = (0.625 * share * sunDay(3, 0.4).clear) / 3600;
    });
    const cloud = cloudOfHours(hours, 0.4);
    expect([...cloud.slice(0, 24)]).toEqual(Array<number>(24).fill(10));
    for (const tenths of cloud.slice(24, 48)) expect(tenths).toBeCloseTo(0, 3);
    for (const tenths of cloud.slice(48)) expect(tenths).toBeCloseTo(10 * 0.5 ** (1 / 3.4), 2);
  });
});

describe("the days of a month", () => {
  test.each([0.1, 0.15, 0.3, 0.5, 0.7, 0.75, 0.85])("have the month's mean clearness %d, ascending", (K) => {
    const days = clearnessOfDays(K, 30);
    expect(days).toHaveLength(30);
    expect(sumOf(days) / 30).toBeCloseTo(K, 12);
    for (let i = 1; i < 30; i++) expect(days[i]).toBeGreaterThan(days[i - 1] ?? NaN);
    expect(days[0]).toBeGreaterThan(0.03);
    expect(days[29]).toBeLessThan(1);
  });

  test("spread as the published distribution: a share f of them lies below (ln((1 − f) e^0.05γ + f e^γKx))/γ", () => {
    const [K, count] = [0.5, 2000];
    const Kx = clearestDay.code({ K });
    const g = clearnessExponent.code({ K, Kx });
    const days = clearnessOfDays(K, count);
    for (const f of [0.1, 0.5, 0.9]) {
      const below = Math.log((1 - f) * Math.exp(0.05 * g) + f * Math.exp(g * Kx)) / g;
      expect(Math.abs((days[Math.round(f * count)] ?? NaN) - below)).toBeLessThan(0.01);
    }
  });

  test("follow an order by the fractions of their number times a step", () => {
    // 0, 0.37, 0.74, 0.11, 0.48.
    expect(orderOf(5, 0.37)).toEqual([0, 2, 4, 1, 3]);
    expect([...orderOf(31, 0.2113)].sort((a, b) => a - b)).toEqual(Array.from({ length: 31 }, (_, i) => i));
  });
});
