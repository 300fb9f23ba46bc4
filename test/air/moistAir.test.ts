import { assert, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { humidityRatio } from "../../core/air/equations";
import { dewPointOfAir, humidityRatioOfAir, vapourPressureOfAir, wetBulbOfAir } from "../../core/air/models/moistAir";
import { dewPointAt, saturationPressure, wetBulbAt } from "../../core/air/psychrometrics";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import { standardAtmosphere } from "../../core/kernel/pressureBasis";
import { vapourPressureOfWater } from "../../core/water/saturation";
import { goldenRows } from "../refrigerant/goldenRows";

const FREEZING = 273.15;
const SEA_LEVEL = 101_325;

const rows = goldenRows("moist-air.csv").map((row) => ({
  p: row.number("p_Pa"),
  T: row.number("T_K"),
  humidity: row.number("RH_-"),
  W: row.number("W_kg/kg"),
  wetBulb: row.number("Twb_K"),
  dewPoint: row.text("Tdp_K") === undefined ? undefined : row.number("Tdp_K"),
}));

const run = (id: string, ...raw: readonly (string | number | null)[]) =>
  evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);

const AIR = double({ min: 240, max: 335, noNaN: true });
const HUMIDITY = double({ min: 0.02, max: 1, noNaN: true });

describe("moist air against real-gas moist air (ASHRAE RP-1485)", () => {
  it("the golden file has rows at sea level and near 5,000 ft", () => {
    expect(rows.filter(({ p }) => p === SEA_LEVEL)).toHaveLength(266);
    expect(rows.filter(({ p }) => p === 84_000)).toHaveLength(266);
  });

  it("humidity ratio agrees within 0.7 %", () => {
    for (const { p, T, humidity, W } of rows) {
      const ours = humidityRatio.code({ pv: vapourPressureOfAir(T, humidity), p });
      expect(Math.abs(ours - W), `${p} Pa, ${T} K, ${humidity}`).toBeLessThanOrEqual(0.007 * W);
    }
  });

  it("dew point agrees within 0.1 K", () => {
    let compared = 0;
    for (const { T, humidity, dewPoint } of rows) {
      if (dewPoint === undefined || humidity === 0) continue;
      expect(Math.abs(dewPointOfAir(T, humidity) - dewPoint), `${T} K, ${humidity}`).toBeLessThanOrEqual(0.1);
      compared++;
    }
    expect(compared).toBe(487);
  });

  it("wet bulb agrees within 0.1 K, except where a wet and an iced wick both satisfy the balance", () => {
    let either = 0;
    for (const { p, T, humidity, wetBulb } of rows) {
      const W = humidityRatio.code({ pv: vapourPressureOfAir(T, humidity), p });
      const ours = wetBulbAt(T, W, p);
      const apart = p < SEA_LEVEL && Math.abs(ours - FREEZING) < 0.6 && ours - wetBulb > 0.1;
      if (apart) either++;
      expect(Math.abs(ours - wetBulb), `${p} Pa, ${T} K, ${humidity}`).toBeLessThanOrEqual(apart ? 0.85 : 0.1);
    }
    expect(either).toBe(2);
  });
});

describe("moist air", () => {
  it("gives its humidity ratio back at its dew point", () =>
    assert(
      property(AIR, HUMIDITY, (T, humidity) => {
        const W = humidityRatioOfAir(T, humidity, 0);
        const back = humidityRatio.code({ pv: saturationPressure(dewPointOfAir(T, humidity)), p: SEA_LEVEL });
        expect(Math.abs(back / W - 1)).toBeLessThan(1e-6);
      }),
    ));

  it("keeps dew point, wet bulb and temperature in order, all equal when saturated", () =>
    assert(
      property(AIR, HUMIDITY, double({ min: 0, max: 3000, noNaN: true }), (T, humidity, altitude) => {
        const wetBulb = wetBulbOfAir(T, humidity, altitude);
        expect(wetBulb).toBeLessThanOrEqual(T);
        expect(wetBulb).toBeGreaterThanOrEqual(dewPointOfAir(T, humidity) - 0.001);
        expect(Math.abs(wetBulbOfAir(T, 1, altitude) - T)).toBeLessThan(0.001);
        expect(Math.abs(dewPointOfAir(T, 1) - T)).toBeLessThan(1e-6);
      }),
    ));

  it("holds more vapour where it is warmer, moister or thinner", () =>
    assert(
      property(AIR, double({ min: 0.02, max: 0.9, noNaN: true }), (T, humidity) => {
        const W = humidityRatioOfAir(T, humidity, 0);
        expect(humidityRatioOfAir(T + 0.5, humidity, 0)).toBeGreaterThan(W);
        expect(humidityRatioOfAir(T, humidity + 0.05, 0)).toBeGreaterThan(W);
        expect(humidityRatioOfAir(T, humidity, 500)).toBeGreaterThan(W);
      }),
    ));

  it("saturates over water as the vapour pressure of water says", () =>
    assert(
      property(double({ min: 273.17, max: 373, noNaN: true }), (T) => {
        expect(Math.abs(saturationPressure(T) / vapourPressureOfWater.code({ T }) - 1)).toBeLessThan(5e-4);
      }),
    ));

  it("saturates without a jump at the triple point, and over ice below it", () => {
    expect(saturationPressure(273.1599) / saturationPressure(273.1601)).toBeCloseTo(1, 3);
    expect(saturationPressure(263.15)).toBeCloseTo(259.9, 0);
  });

  it("dry air has humidity ratio 0, a wet bulb and no dew point", () => {
    expect(run("AIR.HUMIDITYRATIO", 80, 0)).toBe(0);
    expect(run("AIR.VAPORPRESSURE", 80, 0)).toBe(0);
    expect(run("AIR.WETBULB", 80, 0)).toBeGreaterThan(40);
    const dew = run("AIR.DEWPOINT", 80, 0);
    expect(isFault(dew) ? [dew.code, dew.message] : dew).toEqual(["#N/A", expect.stringMatching(/^humidity: /)]);
  });

  it("air drier than saturated at -148 °F has no dew point; all other air has one, a wet bulb and a humidity ratio", () =>
    assert(
      property(
        double({ min: -60, max: 150, noNaN: true }),
        double({ min: 0, max: 1, noNaN: true }),
        double({ min: -500, max: 5000, noNaN: true }),
        (air, humidity, altitude) => {
          for (const id of ["AIR.WETBULB", "AIR.HUMIDITYRATIO"])
            expect(run(id, air, humidity, `${altitude} m`), id).toBeTypeOf("number");
          const dew = run("AIR.DEWPOINT", air, humidity);
          const vapour = humidity * saturationPressure((air - 32) / 1.8 + 273.15);
          if (vapour < saturationPressure(173.15)) expect(dew).toMatchObject({ code: "#N/A" });
          else expect(dew).toBeTypeOf("number");
        },
      ),
    ));

  it("refuses a relative humidity in percent with a hint", () => {
    const out = run("AIR.DEWPOINT", 80, 60);
    expect(isFault(out) ? out.message : out).toContain("type 60% or 0.6");
  });

  it("inverts its own saturation curve, ice and water alike", () =>
    assert(
      property(double({ min: 220, max: 330, noNaN: true }), (T) => {
        expect(Math.abs(dewPointAt(335, saturationPressure(T)) - T)).toBeLessThan(1e-4);
      }),
    ));
});

describe("the barometer", () => {
  it("falls with altitude and stands at the standard pressure at sea level", () => {
    expect(run("AIR.BAROMETER", 0, "SI")).toBeCloseTo(101.325, 9);
    assert(
      property(double({ min: -500, max: 4900, noNaN: true }), (z) => {
        expect(standardAtmosphere.code({ z: z + 10 })).toBeLessThan(standardAtmosphere.code({ z }));
      }),
    );
  });
});
