/** Losses of an hour with all parts at once, and what a pool kept at one temperature needs. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { emptyLosses, heldExactly, lossesAt, type Losses } from "../../core/pool/year/lossesAt";
import type { YearSurface } from "../../core/pool/year/surface";
import { dewPointOver, vapourPressureAt, vapourSlopeAt } from "../../core/pool/year/vapourTable";
import { vapourPressureOfWater, vapourPressureSlope } from "../../core/water/saturation";
import { allYear, ruledSurface } from "./yearHandMade";

/** Vapour pressure at 300 K, Pa (IAPWS-IF97, table 35). */
const PRESSURE_300 = 3536.58941;
/** J/(kg·K), as the hand calculation of make-up water counts it. */
const WATER = 4186.8;

const SURFACE: YearSurface = {
  ...ruledSurface(0),
  evaporationFilm: allYear(0.1),
  airFilm: allYear(5),
  emission: allYear(5e-8),
  sky: allYear(300),
  ground: 2,
  groundTemperature: 285,
  drawn: 1e-5,
  rain: 2e-5,
  latentHeatAt0K: 3.1e6,
  latentHeatSlope: -2300,
  air: allYear(290),
  mains: allYear(280),
  vapour: allYear(1000),
  sun: allYear(150),
};

const at = (T: number, surface = SURFACE): Losses => {
  const losses = emptyLosses();
  lossesAt(surface, 7, T, losses);
  return losses;
};

const PARTS = ["evaporation", "convection", "radiation", "ground", "makeUp"] as const;
const sumOf = (losses: Losses): number => PARTS.reduce((sum, part) => sum + losses[part], 0);

describe("losses of an hour", () => {
  const evaporation = 0.1 * (PRESSURE_300 - 1000);
  const evaporated = evaporation / (3.1e6 - 2300 * 300);

  test("are film × pressure, film × kelvins, fourth powers, ground and make-up water", () => {
    const losses = at(300);
    // The two equations of state agree within 0.01 %.
    expect(Math.abs(losses.evaporation / evaporation - 1)).toBeLessThan(1e-4);
    expect(losses.convection).toBeCloseTo(50, 9);
    expect(losses.radiation).toBeCloseTo(105, 9);
    expect(losses.ground).toBeCloseTo(30, 9);
    expect(losses.makeUp).toBeCloseTo(WATER * ((evaporated + 1e-5) * 20 + 2e-5 * 10), 3);
    expect(losses.all).toBeCloseTo(sumOf(losses), 9);
  });

  test("cool the pool by rain, without mains water, where it rains more than is lost", () => {
    const losses = at(300, { ...SURFACE, drawn: -1, rain: 0.5 });
    expect(losses.makeUp).toBeCloseTo(WATER * 0.5 * 10, 6);
    expect(losses.makeUpSlope).toBeCloseTo(WATER * 0.5, 6);
  });

  test.each([
    ["with make-up water", SURFACE],
    ["with more rain than is lost", { ...SURFACE, drawn: -1, rain: 0.5 }],
    ["with much make-up water", { ...SURFACE, drawn: 1e-3, mains: allYear(270) }],
  ])("rise with the water by their slopes: %s", (_, surface) => {
    const [low, middle, high] = [299.9, 300, 300.1].map((T) => at(T, surface)) as [Losses, Losses, Losses];
    for (const part of PARTS) {
      const slope = (high[part] - low[part]) / 0.2;
      // The slope of make-up water takes the latent heat as constant.
      expect(Math.abs(middle[`${part}Slope`] / slope - 1), part).toBeLessThan(part === "makeUp" ? 0.01 : 1e-4);
    }
    expect(middle.allSlopes).toBeCloseTo(
      PARTS.reduce((sum, part) => sum + middle[`${part}Slope`], 0),
      9,
    );
  });
});

describe("the table of vapour pressure", () => {
  const temperatures = Array.from({ length: 140 }, (_, i) => 195.07 + i * 1.05);

  test("is within 1e-6 of the equation of state, its slope within 1.5e-4", () => {
    expect(Math.abs(vapourPressureAt(300) / PRESSURE_300 - 1)).toBeLessThan(1e-4);
    for (const T of temperatures) {
      const p = vapourPressureOfWater.code({ T });
      expect(Math.abs(vapourPressureAt(T) / p - 1), `${T} K`).toBeLessThan(1e-6);
      expect(Math.abs(vapourSlopeAt(T) / vapourPressureSlope.code({ p, T }) - 1), `${T} K`).toBeLessThan(1.5e-4);
    }
  });

  test("gives the dew point back within 0.001 K", () => {
    for (const T of temperatures)
      expect(Math.abs(dewPointOver(vapourPressureOfWater.code({ T })) - T), `${T} K`).toBeLessThan(1e-3);
  });
});

describe("a pool kept at one temperature", () => {
  test("needs its losses less its sun, month by month", () => {
    const held = heldExactly(SURFACE, 300);
    const each = at(300);
    const january = 31 * 86_400;
    for (const part of PARTS) expect(held.losses[part][0]).toBeCloseTo(january * each[part], -1);
    expect(held.losses.sun[0]).toBeCloseTo(january * 150, -1);
    expect(held.balance[0]).toBeCloseTo(january * (each.all - 150), -1);
    expect(held.hourly[0]).toBe(held.balance[0]);
    expect((held.balance[1] ?? NaN) / (held.balance[0] ?? NaN)).toBeCloseTo(28 / 31, 9);
    expect(held.balance[11]).toBeCloseTo(held.balance[0] ?? NaN, -1);
  });

  test("needs no heat in hours whose sun is more than the losses, and counts them in the balance", () => {
    const held = heldExactly({ ...SURFACE, sun: allYear(1000) }, 300);
    expect(held.hourly[5]).toBe(0);
    expect(held.balance[5]).toBeCloseTo(30 * 86_400 * (at(300).all - 1000), -1);
  });
});
