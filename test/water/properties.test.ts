import { assert, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";
import { conductivityOfWater, densityOfWater, heatCapacityOfWater, viscosityOfWater } from "../../core/water/equations";
import { latentHeatOfWater } from "../../core/water/models/latentHeat";
import { saturatedLiquidDensity, vapourPressureOfWater, vapourPressureSlope } from "../../core/water/saturation";
import { goldenRows } from "../refrigerant/goldenRows";

const rows = goldenRows("water-properties.csv");
const atOneAtmosphere = rows.filter((row) => row.number("p_Pa") === 101_325);

/** Column, computation, and the relative uncertainty that the source claims. */
const PROPERTIES = [
  ["rho_kg/m3", (T: number) => densityOfWater.code({ T }), 1e-4],
  ["cp_J/kg/K", (T: number) => heatCapacityOfWater.code({ T }), 1e-3],
  ["mu_Pa.s", (T: number) => viscosityOfWater.code({ T }), 1e-2],
  ["k_W/m/K", (T: number) => conductivityOfWater.code({ T }), 1.5e-2],
  ["p_sat_Pa", (T: number) => vapourPressureOfWater.code({ T }), 5e-4],
  ["h_fg_J/kg", (T: number) => latentHeatOfWater(T), 1e-3],
] as const;

const TEMPERATURES = double({ min: 273.15, max: 373.1, noNaN: true });
const falls = (f: (T: number) => number) =>
  assert(
    property(TEMPERATURES, (T) => {
      expect(f(T + 0.05)).toBeLessThan(f(T));
    }),
  );

describe("water", () => {
  it.each(PROPERTIES)("%s agrees with IAPWS-95 on every row at one atmosphere", (column, compute, within) => {
    expect(atOneAtmosphere).toHaveLength(75);
    for (const row of atOneAtmosphere) {
      const T = row.number("T_K");
      const expected = row.number(column);
      expect(Math.abs(compute(T) / expected - 1), `${column} at ${T} K`).toBeLessThanOrEqual(within);
    }
  });

  it("every property at 3 bar stays within its uncertainty of one atmosphere", () => {
    const pressed = rows.filter((row) => row.number("p_Pa") === 300_000);
    expect(pressed).toHaveLength(67);
    for (const row of pressed)
      for (const [column, compute, within] of PROPERTIES)
        expect(Math.abs(compute(row.number("T_K")) / row.number(column) - 1), column).toBeLessThanOrEqual(
          Math.max(within, 1.2e-4),
        );
  });

  it("water grows thinner with temperature", () => falls((T) => viscosityOfWater.code({ T })));

  it("water takes less heat to evaporate as it warms", () => falls(latentHeatOfWater));

  it("water's vapour pressure rises with temperature", () => falls((T) => -vapourPressureOfWater.code({ T })));

  it("water conducts heat better as it warms", () => falls((T) => -conductivityOfWater.code({ T })));

  it("water is densest near 4 °C", () => {
    const densest = Array.from({ length: 200 }, (_, each) => 273.15 + each * 0.05).reduce((best, T) =>
      densityOfWater.code({ T }) > densityOfWater.code({ T: best }) ? T : best,
    );
    expect(densest - 273.15).toBeCloseTo(3.98, 1);
  });

  it("has the slope of its own vapour pressure curve", () =>
    assert(
      property(double({ min: 274, max: 640, noNaN: true }), (T) => {
        const p = vapourPressureOfWater.code({ T });
        const step = 1e-3;
        const difference =
          (vapourPressureOfWater.code({ T: T + step }) - vapourPressureOfWater.code({ T: T - step })) / (2 * step);
        expect(vapourPressureSlope.code({ p, T }) / difference).toBeCloseTo(1, 6);
      }),
    ));

  it("water is as dense at saturation as under one atmosphere, within compressibility", () =>
    assert(
      property(double({ min: 273.16, max: 373.15, noNaN: true }), (T) => {
        expect(saturatedLiquidDensity.code({ T }) / densityOfWater.code({ T })).toBeCloseTo(1, 3);
      }),
    ));

  it("ice and steam are refused with the limit", () => {
    const properties = compile(lookUp(CATALOGUE, "WATER.PROPERTIES")!);
    for (const [raw, limit] of [
      [31, "32 °F"],
      [213, "212 °F"],
    ] as const) {
      const out = evaluate(properties, [raw], CATALOGUE);
      expect(isFault(out) ? out.message : out).toContain(limit);
    }
  });
});
