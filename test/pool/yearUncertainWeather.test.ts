/** The weather of years that differ in wind, sun and air. Expected values by hand. */
import { describe, expect, test } from "vitest";
import type { Climate } from "../../core/pool/year/climate";
import type { UncertainEntries } from "../../core/pool/year/uncertainInputs";
import { uncertainWeather } from "../../core/pool/year/uncertainWeather";
import { vapourPressureOfWater } from "../../core/water/saturation";
import { allYear } from "./yearHandMade";
import { DEFAULTS } from "./yearPools";

const CLIMATE: Climate = {
  monthly: false,
  columns: {
    air: allYear(290),
    vapourPressure: allYear(1200),
    windAt10m: allYear(4),
    sun: allYear(200),
    cloud: allYear(3),
    mains: allYear(285),
  },
};

const inputs = (values: Partial<UncertainEntries> = {}): UncertainEntries =>
  ({ ...DEFAULTS, altitude: 0, shelter: 0.5, sunFactor: 1, airShift: 0, ...values }) as UncertainEntries;

const weather = (values: Partial<UncertainEntries> = {}) => uncertainWeather(CLIMATE)(inputs(values));
const pressureAt = (T: number): number => vapourPressureOfWater.code({ T });

describe("the weather of an uncertain year", () => {
  test("is the climate's, with the wind that its shelter or the input leaves at the water", () => {
    const { air, vapour, sun, wind, mains } = weather();
    expect([air[7], vapour[7], sun[7], wind[7], mains[7]]).toEqual([290, 1200, 200, 2, 285]);
    expect(weather({ shelter: 1 }).wind[8759]).toBe(4);
    expect(weather({ windAtWater: 1.5 }).wind[8759]).toBe(1.5);
  });

  test("takes the sun by its factor", () => {
    const { sun } = weather({ sunFactor: 1.1 });
    expect([sun[0], sun[8759]]).toEqual([expect.closeTo(220, 9), expect.closeTo(220, 9)]);
    expect(weather({ sunFactor: 1.1 }).air[0]).toBe(290);
  });

  test.each([5, -5])("of air %d K warmer keeps its relative humidity, and the dew point follows", (airShift) => {
    const { air, vapour, dewPoint, sun } = weather({ airShift });
    expect([air[0], air[8759], sun[0]]).toEqual([290 + airShift, 290 + airShift, 200]);
    const expected = (1200 * pressureAt(290 + airShift)) / pressureAt(290);
    expect((vapour[4000] ?? NaN) / expected).toBeCloseTo(1, 5);
    expect(pressureAt(dewPoint[4000] ?? NaN) / expected).toBeCloseTo(1, 5);
  });

  test("of warmer air takes the sun by its factor too", () =>
    expect(weather({ airShift: 1, sunFactor: 0.5 }).sun[12]).toBe(100));
});

describe("years of one place", () => {
  test("share what the climate makes, whatever the wind, the sun's factor and the air", () => {
    const at = uncertainWeather(CLIMATE);
    const { pressure, air, sun } = at(inputs());
    for (const values of [{ shelter: 1 }, { windAtWater: 1 }, { sunFactor: 2 }, { airShift: 3 }])
      expect(at(inputs(values)).pressure).toBe(pressure);
    expect(at(inputs({ airShift: 3 })).sun).toBe(sun);
    expect(at(inputs({ sunFactor: 2 })).air).toBe(air);
    const again = at(inputs());
    expect([again.air[0], again.sun[0], again.wind[0]]).toEqual([290, 200, 2]);
  });

  test("another place has weather of its own", () => {
    const at = uncertainWeather(CLIMATE);
    at(inputs());
    expect(at(inputs({ mainsTemperature: [280] })).mains[0]).toBe(280);
    // ICAO standard atmosphere: 89,874.6 Pa at 1,000 m.
    expect((at(inputs({ altitude: 1000 })).pressure[0] ?? NaN) / 89_874.6).toBeCloseTo(1, 4);
    expect(at(inputs()).mains[0]).toBe(285);
  });
});

test("sun that no place gets is refused, once the latitude says which place", () => {
  const bright: Climate = { ...CLIMATE, columns: { ...CLIMATE.columns, sun: allYear(900) } };
  expect(() => uncertainWeather(bright)(inputs({ latitude: 30 }))).toThrow(
    expect.objectContaining({ message: expect.stringMatching(/^climate, .*sun/) }),
  );
  expect(uncertainWeather(bright)(inputs({ latitude: undefined })).sun[0]).toBe(900);
});
