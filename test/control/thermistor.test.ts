import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SENSOR_SPAN, otherReadings, resistanceOf, temperatureOf, type Sensor } from "../../core/control/thermistor";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { cellsIn, numberIn } from "../golden/rows";

const ZERO = 273.15;

describe("the type II curve", () => {
  test.each(cellsIn("thermistor.csv").map((row) => [row["temperature_C"], row] as const))(
    "agrees with the table at %s °C both ways",
    (_, row) => {
      const [t, ohms] = [numberIn(row, "temperature_C"), numberIn(row, "ohms")];
      const found = resistanceOf(t + ZERO, "type II");
      expect(Math.abs(found - ohms)).toBeLessThanOrEqual(numberIn(row, "tolerance_ohms"));
      expect(Math.abs(temperatureOf(ohms, "type II") - ZERO - t)).toBeLessThan(0.02);
    },
  );
});

describe("the type III curve", () => {
  // Printed table of a 10 kΩ type III part, from memory: good to 0.2 % or 0.05 °C.
  test.each([
    [0, 29_490],
    [10, 18_780],
    [25, 10_000],
    [40, 5592],
    [60, 2760],
  ])("agrees with the table at %s °C both ways", (t, ohms) => {
    expect(Math.abs(resistanceOf(t + ZERO, "type III") / ohms - 1)).toBeLessThan(0.002);
    expect(Math.abs(temperatureOf(ohms, "type III") - ZERO - t)).toBeLessThan(0.05);
  });

  test("was read 3.6 °F warm at the frost limit and 2.2 °F cool at the high limit by type II", () => {
    expect(1.8 * (temperatureOf(29_490, "type II") - ZERO)).toBeCloseTo(3.6, 1);
    expect(1.8 * (temperatureOf(5592, "type II") - ZERO - 40)).toBeCloseTo(-2.2, 1);
  });
});

describe("the name of a sensor", () => {
  const read = (sensor: string) => {
    const definition = lookUp(CATALOGUE, "CONTROL.SENSORTEMP");
    if (!definition) throw new Error("no CONTROL.SENSORTEMP");
    return evaluate(compile(definition), [29_490, sensor], CATALOGUE);
  };

  test.each(["10K3", "10K-3", "10K 2", "10k"])("%s names either curve and is refused with the choice", (name) => {
    const out = read(name);
    expect(isFault(out) && out.message).toBe(
      `sensor: expected "type II" or "type III", or a number (number), got "${name}": it names either curve: at 32 °F type II shows 32,650 ohm, type III 29,490 ohm`,
    );
  });

  test.each(["type III", "Type 3", "10K type III", "10k Type-3"])("%s is the type III curve", (name) =>
    expect(read(name)).toBeCloseTo(32, 1),
  );
});

describe("every curve", () => {
  const sensors = fc.constantFrom<Sensor>("type II", "type III", 3380, 3435, 3950, 3977, 4200);
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
  test("reads 40 °C of type II as 42.5 °C by a beta of 3380, as data sheets have it", () => {
    expect(temperatureOf(5325, 3380) - ZERO).toBeCloseTo(42.5, 1);
    expect(otherReadings(5325, "type II").otherHighest - ZERO).toBeCloseTo(42.5, 1);
  });

  test("refuses a resistance that only an open or shorted sensor has", () => {
    expect(() => temperatureOf(5e6, "type II")).toThrow(/open/);
    expect(() => temperatureOf(20, "type II")).toThrow(/shorted/);
  });
});
