/** Hours made from months, and what a place makes of its climate. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { daySpread } from "../../core/aircon/climate";
import type { Climate } from "../../core/pool/year/climate";
import { hoursFromMonths } from "../../core/pool/year/madeHours";
import { sunDay } from "../../core/pool/year/sun";
import { hourOfWarmth, hourOfWind, mainsWater } from "../../core/pool/year/sunEquations";
import { dewPointOver, vapourPressureAt } from "../../core/pool/year/vapourTable";
import { monthlyMeans, weatherOf, windOf, type Site } from "../../core/pool/year/weather";

const LATITUDE = 0.6;
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const MJ = 1e6;

/** 10 °C in January, a kelvin more each month. */
const AIR = Float64Array.from(DAYS, (_, month) => 283.15 + month);
const all = (value: number): Float64Array => new Float64Array(12).fill(value);
const climateOf = (columns: Climate["columns"] = {}): Climate => ({
  monthly: true,
  columns: { air: AIR, swing: all(8), humidity: all(0.6), windAt10m: all(3), sun: all(12 * MJ), ...columns },
});
const made = (columns: Climate["columns"] = {}) => hoursFromMonths(climateOf(columns), LATITUDE);
const dayMean = (values: Float64Array, day: number): number =>
  values.subarray(24 * day, 24 * day + 24).reduce((sum, each) => sum + each / 24, 0);

describe("hours made from months", () => {
  test("keep the month's means of air, humidity, wind and sun", () => {
    const hours = made();
    monthlyMeans(hours.air).forEach((mean, month) => expect(mean).toBeCloseTo(AIR[month] ?? NaN, 1));
    for (const mean of monthlyMeans(hours.wind)) expect(mean).toBeCloseTo(3, 6);
    for (const mean of monthlyMeans(hours.sun)) expect(mean * 86_400).toBeCloseTo(12 * MJ, -1);
    const humidity = hours.vapour.map((vapour, hour) => vapour / vapourPressureAt(hours.air[hour] ?? NaN));
    for (const mean of monthlyMeans(humidity)) expect(mean).toBeCloseTo(0.6, 6);
  });

  test("follow the shapes of warmth and wind at the middle of each hour", () => {
    const { air, wind } = made();
    const mean = dayMean(air, 3);
    const shape = Array.from({ length: 24 }, (_, hour) => hourOfWarmth.code({ A: 8, t: hour + 0.5 }));
    const level = shape.reduce((sum, each) => sum + each / 24, 0);
    shape.forEach((warmth, hour) => {
      expect(air[72 + hour]).toBeCloseTo(mean - level + warmth, 9);
      expect(wind[72 + hour]).toBeCloseTo(hourOfWind.code({ m: 3, t: hour + 0.5 }), 9);
    });
  });

  test("begin each month with its coldest day, its days spread by a logistic distribution", () => {
    const { air } = made();
    const means = Array.from({ length: 31 }, (_, day) => dayMean(air, day));
    expect(means[0]).toBe(Math.min(...means));
    const sigma = Math.sqrt(AIR.reduce((sum, T) => sum + (T - 288.65) ** 2, 0) / 12);
    const spread = daySpread.code({ T: AIR[0] ?? NaN, sigma, N: 31 });
    // The lowest of 31 evenly spread shares is 0.5/31.
    const level = means.reduce((sum, each) => sum + each / 31, 0);
    expect((means[0] ?? NaN) - level).toBeCloseTo(spread * Math.log(0.5 / 30.5), 1);
  });

  test("hold one dew point through the day, but for hours that are colder", () => {
    const { air, vapour, dewPoint } = made({ humidity: all(0.97) });
    let saturated = 0;
    for (let hour = 0; hour < 8760; hour++) {
      const most = vapourPressureAt(air[hour] ?? NaN);
      expect(vapour[hour]).toBeLessThanOrEqual(most);
      if ((vapour[hour] ?? NaN) === most) saturated++;
      expect(dewPoint[hour]).toBeCloseTo(dewPointOver(vapour[hour] ?? NaN), 9);
    }
    expect(saturated).toBeGreaterThan(1000);
    expect(saturated).toBeLessThan(6000);
    const dry = made();
    expect(new Set(dry.dewPoint.subarray(0, 24)).size).toBe(1);
    expect(dry.dewPoint[0]).not.toBe(dry.dewPoint[24]);
  });

  test("keep the month's mean vapour pressure where that is given", () => {
    const { vapour } = made({ vapourPressure: all(900) });
    for (const mean of monthlyMeans(vapour)) expect(mean).toBeCloseTo(900, 3);
  });

  test("shine as the month's middle day does, and are the cloudier the less sun there is", () => {
    const { sun, cloud } = made();
    // 16 January.
    const { shares } = sunDay(16, LATITUDE);
    const total = dayMean(sun, 5) * 24;
    shares.forEach((share, hour) => expect(sun[120 + hour]).toBeCloseTo(share * total, 9));
    const dull = made({ sun: all(6 * MJ) });
    expect(dull.cloud[0]).toBeGreaterThan(cloud[0] ?? NaN);
    expect(new Set(cloud.subarray(0, 744)).size).toBe(1);
  });

  test("have no sun in the polar night", () => {
    const { sun, cloud } = hoursFromMonths(climateOf({ sun: all(0) }), 1.4);
    expect(Math.max(...sun)).toBe(0);
    expect(cloud[0]).toBe(5);
  });
});

describe("the weather at a place", () => {
  const site: Site = { latitude: LATITUDE, altitude: 0, shelter: 0.5, windAtWater: undefined, mains: undefined };
  const at = (more: Partial<Site> = {}, columns: Climate["columns"] = {}) =>
    weatherOf(climateOf(columns), { ...site, ...more });

  test("has a share of the wind by its shelter, or the wind at the water itself", () => {
    const wind10m = new Float64Array(8760).fill(4);
    expect(windOf(site, wind10m)[100]).toBeCloseTo(2, 9);
    expect(windOf({ ...site, windAtWater: 1.5 }, wind10m)[100]).toBe(1.5);
    expect(monthlyMeans(at().wind)[0]).toBeCloseTo(1.5, 6);
  });

  test("has the standard atmosphere's pressure at its altitude", () => {
    expect(at().pressure[0]).toBeCloseTo(101_325, 0);
    // ISO 2533: 84.556 kPa at 1,500 m.
    expect(at({ altitude: 1500 }).pressure[0]).toBeCloseTo(84_556, -2);
  });

  test("has mains water by one value, by twelve, by a column or by the estimate from its air", () => {
    expect(new Set(at({ mains: [288] }).mains)).toEqual(new Set([288]));
    const twelve = at({ mains: Array.from(AIR) }).mains;
    expect([twelve[0], twelve[743], twelve[744], twelve[8759]]).toEqual([AIR[0], AIR[0], AIR[1], AIR[11]]);
    expect(at({}, { mains: AIR }).mains[744]).toBe(AIR[1]);
    expect(at({ mains: [288] }, { mains: AIR }).mains[744]).toBe(288);
    const { mains, air } = at();
    const mean = air.reduce((sum, T) => sum + T / 8760, 0);
    // 6 °F above the air in the mean of the year.
    expect(mains.reduce((sum, T) => sum + T / 8760, 0)).toBeCloseTo(mean + 6 / 1.8, 1);
    expect(new Set(mains.subarray(0, 24)).size).toBe(1);
    const means = monthlyMeans(air);
    const [Tf, D] = [1.8 * mean - 459.67, Math.max(...means) - Math.min(...means)];
    for (const day of [0, 1, 364]) expect(mains[24 * day]).toBeCloseTo(mainsWater.code({ Tf, D, n: day + 1 }), 9);
    const cold = at({}, { air: AIR.map((T) => T - 40) }).mains;
    expect(Math.min(...cold)).toBe(273.15);
  });

  test("needs a latitude for months, and for hours without cloud", () => {
    expect(() => at({ latitude: undefined })).toThrow('inputs: the label "latitude" is needed with monthly rows');
    const hour = (value: number): Float64Array => new Float64Array(8760).fill(value);
    const columns = { air: hour(290), humidity: hour(0.5), windAt10m: hour(2), sun: hour(100) };
    const hourly = (more: Climate["columns"], latitude?: number) =>
      weatherOf({ monthly: false, columns: { ...columns, ...more } }, { ...site, latitude });
    expect(() => hourly({})).toThrow('"latitude" is needed where the climate has no column of cloud');
    const weather = hourly({ cloud: hour(4) });
    expect(weather.cloud[0]).toBe(4);
    expect(weather.vapour[0]).toBeCloseTo(0.5 * vapourPressureAt(290), 6);
    expect(weather.dewPoint[0]).toBeCloseTo(dewPointOver(0.5 * vapourPressureAt(290)), 9);
    expect(weather.pressure[0]).toBeCloseTo(101_325, 0);
    const byDewPoint = hourly({ cloud: hour(4), dewPoint: hour(280), pressure: hour(90_000), mains: hour(281) });
    expect([byDewPoint.dewPoint[0], byDewPoint.pressure[0], byDewPoint.mains[0]]).toEqual([280, 90_000, 281]);
    expect(byDewPoint.vapour[0]).toBeCloseTo(vapourPressureAt(280), 9);
    expect(hourly({ cloud: hour(4), vapourPressure: hour(700) }).vapour[0]).toBe(700);
    expect(hourly({}, 0.5).cloud[0]).toBeGreaterThan(0);
  });
});
