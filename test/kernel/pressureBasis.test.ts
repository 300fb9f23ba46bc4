/** What pressure readings count from: absolute zero, the standard atmosphere, or the air at an altitude. */
import { describe, expect, test } from "vitest";
import {
  BASIS,
  STANDARD_PRESSURE,
  gaugeReading,
  gaugeZero,
  standardAtmosphere,
} from "../../core/kernel/define/pressureBasis";
import { recorder } from "../../core/kernel/define/steps";
import { argText } from "../../core/kernel/explain/describe";
import { workingLines } from "../../core/kernel/explain/working";
import { cite } from "../../core/kernel/reference";
import { admitted } from "./oneArgument";

describe("The pressure that a reading counts from", () => {
  test("is nothing for absolute ones, else that of the air at sea level or at an altitude", () => {
    expect([gaugeZero("absolute"), gaugeZero("gauge"), gaugeZero(undefined)]).toEqual([0, 101_325, 101_325]);
    expect([gaugeZero(0), STANDARD_PRESSURE]).toEqual([101_325, 101_325]);
  });

  // U.S. Standard Atmosphere, 1976, table I: pressures at geopotential altitudes.
  test.each([
    [1000, 89_874.6],
    [2000, 79_495.2],
    [5000, 54_019.9],
    [8000, 35_599.8],
  ])("at %d m is %d Pa", (altitude, pressure) => {
    expect(gaugeZero(altitude) / pressure).toBeCloseTo(1, 4);
    expect(standardAtmosphere.code({ z: altitude })).toBe(gaugeZero(altitude));
  });

  test("is taken off for what a gauge shows", () =>
    expect(gaugeReading.code({ p: 250_000, p0: 101_325 })).toBe(148_675));

  test("is shown in the working with equation, numbers, unit and source", () => {
    const { trace, steps } = recorder();
    trace.step(standardAtmosphere, { z: 1000 });
    trace.step(gaugeReading, { p: 250_000, p0: 101_325 });
    expect(workingLines(steps, "SI")).toMatchObject([
      {
        text: "Pressure of the standard atmosphere: p = p0 * (1 - 2.25577e-5 * z)^5.25588",
        numbers: "101325 * (1 - 2.25577e-5 * 1000)^5.25588",
        value: expect.closeTo(89.875, 3) as number,
        unit: "kPa absolute",
        source: cite("standardAtmosphere1976"),
      },
      {
        text: "Gauge reading over the air's pressure: pg = p - p0",
        numbers: "250000 - 101325",
        value: 148.675,
        unit: "kPa gauge",
        source: cite("identity"),
      },
    ]);
  });

  test("is explained on help pages by its symbols, with where the atmosphere's equation holds", () => {
    expect(standardAtmosphere.symbols).toEqual({
      z: { kind: "altitude", description: "altitude above sea level", span: [-300, 5000] },
    });
    expect(standardAtmosphere.validity).toBe("-5,000 to 11,000 m");
    expect(gaugeReading.symbols).toMatchObject({
      p: { kind: "pressure", description: "absolute pressure" },
      p0: { kind: "pressure", description: "pressure of the air that the gauge counts from" },
    });
  });

  test("is described as an argument with its words and default", () => {
    expect(argText(BASIS)).toBe(
      "ft (SI: m): gauge (over 101.325 kPa), absolute, or an altitude with its unit for gauge over the air there [gauge]",
    );
    expect(BASIS.shape).toMatchObject({ choice: { name: "PressureBasis" } });
  });

  test.each([
    ["gauge", ["psig", "bar g", "kPa g", "BAR-G", null]],
    ["absolute", ["abs", "psia", "bar a", "kPa a", "kpa(a)"]],
  ])("is %s by the trade's words too", (word, spellings) => {
    for (const spelling of [word, ...spellings]) expect(admitted(BASIS, spelling)).toBe(word);
  });

  test("may be an altitude with its unit, between -500 and 9000 m", () => {
    expect(admitted(BASIS, "5000 ft")).toBeCloseTo(1524, 9);
    expect(admitted(BASIS, "-500 m", "SI")).toBe(-500);
    expect(admitted(BASIS, "9000 m", "SI")).toBe(9000);
    expect(admitted(BASIS, "-501 m", "SI")).toMatch(/must be at least -500 m/);
    expect(admitted(BASIS, "9001 m", "SI")).toMatch(/must be at most 9000 m/);
  });
});
