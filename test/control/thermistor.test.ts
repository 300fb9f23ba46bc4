import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SENSOR_SPAN, otherReadings, resistanceOf, temperatureOf, type Sensor } from "../../core/control/thermistor";
import { cellsIn, numberIn } from "../golden/rows";

const ZERO = 273.15;

describe("the 10K3 curve", () => {
  test.each(cellsIn("thermistor.csv").map((row) => [row["temperature_C"], row] as const))(
    "agrees with the table at %s °C both ways",
    (_, row) => {
      const [t, ohms] = [numberIn(row, "temperature_C"), numberIn(row, "ohms")];
      const found = resistanceOf(t + ZERO, "10K3");
      expect(Math.abs(found - ohms)).toBeLessThanOrEqual(numberIn(row, "tolerance_ohms"));
      expect(Math.abs(temperatureOf(ohms, "10K3") - ZERO - t)).toBeLessThan(0.02);
    },
  );
});

describe("every curve", () => {
  const sensors = fc.constantFrom<Sensor>("10K3", 3380, 3435, 3950, 3977, 4200);
  const temperatures = fc.double({ min: SENSOR_SPAN.from + 1e-6, max: SENSOR_SPAN.to - 1e-6, noNaN: true });

  test("leads back to the temperature that it came from", () => {
    fc.assert(
      fc.property(sensors, temperatures, (sensor, T) => {
        expect(temperatureOf(resistanceOf(T, sensor), sensor)).toBeCloseTo(T, 7);
      }),
    );
  });

  test("falls as it gets warmer", () => {
    fc.assert(
      fc.property(sensors, temperatures, temperatures, (sensor, a, b) => {
        fc.pre(Math.abs(a - b) >= 1e-6);
        expect(Math.sign(resistanceOf(a, sensor) - resistanceOf(b, sensor))).toBe(Math.sign(b - a));
      }),
    );
  });

  test("reads 25 °C at 10 kΩ by any beta value", () => {
    for (const beta of [3380, 3950, 4200]) expect(temperatureOf(10_000, beta)).toBeCloseTo(298.15, 9);
  });
});

describe("a wrong curve", () => {
  test("reads 40 °C of a 10K3 as 42.5 °C by a beta of 3380, as data sheets have it", () => {
    expect(temperatureOf(5325, 3380) - ZERO).toBeCloseTo(42.5, 1);
    expect(otherReadings(5325, "10K3").otherHighest - ZERO).toBeCloseTo(42.5, 1);
  });

  test("refuses a resistance that only an open or shorted sensor has", () => {
    expect(() => temperatureOf(5e6, "10K3")).toThrow(/open/);
    expect(() => temperatureOf(20, "10K3")).toThrow(/shorted/);
  });
});
