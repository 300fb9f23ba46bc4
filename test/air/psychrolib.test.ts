/** Beside PsychroLib 2.5.0 (npm psychrolib 1.1.1), another program on the same equations of the handbook. */
import { assert, double, property } from "fast-check";
import psychrolib from "psychrolib";
import { beforeAll, describe, expect, test } from "vitest";
import { DRIEST, dewPointAt, saturationPressure, wetBulbAt } from "../../core/air/psychrometrics";

const ZERO = 273.15;
const AIR = double({ min: -60, max: 65, noNaN: true });
const HUMIDITY = double({ min: 0.001, max: 1, noNaN: true });

describe("moist air beside PsychroLib", () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

  test("has the same vapour pressure of saturation to rounding, from -100 to 200 °C", () =>
    assert(
      property(double({ min: -100, max: 200, noNaN: true }), (t) => {
        expect(Math.abs(saturationPressure(t + ZERO) / psychrolib.GetSatVapPres(t) - 1)).toBeLessThan(1e-11);
      }),
    ));

  test("has its dew point within the 0.001 K to which it works", () =>
    assert(
      property(AIR, HUMIDITY, (t, humidity) => {
        const pv = Math.max(DRIEST, humidity * saturationPressure(t + ZERO));
        expect(Math.abs(dewPointAt(t + ZERO, pv) - ZERO - psychrolib.GetTDewPointFromVapPres(t, pv))).toBeLessThan(
          1e-3,
        );
      }),
    ));

  test("has its wet bulb within the 0.001 K to which it works", () =>
    assert(
      property(AIR, HUMIDITY, double({ min: 54_000, max: 107_000, noNaN: true }), (t, humidity, p) => {
        const pv = humidity * saturationPressure(t + ZERO);
        const W = (0.621945 * pv) / (p - pv);
        expect(Math.abs(wetBulbAt(t + ZERO, W, p) - ZERO - psychrolib.GetTWetBulbFromHumRatio(t, W, p))).toBeLessThan(
          1.1e-3,
        );
      }),
      { numRuns: 500 },
    ));
});
