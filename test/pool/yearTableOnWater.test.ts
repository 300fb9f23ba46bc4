/** A maker's rows, met on water. R-32 has no glide, so that its mean condensing temperature is its dew point. By hand. */
import { describe, expect, test } from "vitest";
import { tableOnWater } from "../../core/pool/year/tableOnWater";
import { densityOfWater, heatCapacityOfWater } from "../../core/water/equations";
import { RATING } from "./yearPools";

/** 95 °F, K; condensing 11 K above it, at which 26 + 7 − 0.6 kW are rejected. */
const RATED = 308.15;
const ROWS = { outdoor: [300, RATED, 316], cooling: [28_000, 26_000, 24_000], power: [6000, 7000, 8000] };
const rating = { ...RATING, refrigerant: "R-32", condensing: RATED + 11, outdoorFan: 600 };
const named = { ua: "exchanger UA", flow: "water flow", limit: "the high limit", limitIs: 304 };
const UA = 5000;
const FLOW = 0.002;

const onWater = (more: { readonly leastCondensing?: number; readonly warmest?: number } = {}) =>
  tableOnWater(ROWS, rating, { ua: UA, waterFlow: FLOW, leastCondensing: 290, warmest: 304, named, ...more });

const C = FLOW * densityOfWater.code({ T: 300 }) * heatCapacityOfWater.code({ T: 300 });
/** Of an exchanger that condenses, per kelvin between condensing and entering water, W/K. */
const CONDUCTANCE = C * (1 - Math.exp(-UA / C));

const condensingAt = (outdoor: number, rejected: number): number => outdoor + (11 * rejected) / 32_400;
const COLD = condensingAt(300, 33_400);
const HOT = condensingAt(316, 31_400);

describe("a maker's rows on water", () => {
  test("condense above each row's air by the rating's difference, as the heat does", () => {
    const { condensing, water, capacityRate } = onWater();
    expect(condensing).toHaveLength(13);
    expect([condensing[0], condensing[12]]).toEqual([expect.closeTo(COLD, 9), expect.closeTo(HOT, 9)]);
    expect(water[0]).toBeCloseTo(COLD - 33_400 / CONDUCTANCE, 6);
    expect(water[12]).toBeCloseTo(HOT - 31_400 / CONDUCTANCE, 6);
    expect(capacityRate).toBeCloseTo(C, 9);
  });

  test("cool as in the air, and need the power less that of the outdoor fan", () => {
    const { coolings, powers } = onWater();
    expect([coolings[0], coolings.at(-1)]).toEqual([expect.closeTo(28_000, 6), expect.closeTo(24_000, 6)]);
    expect([powers[0], powers.at(-1)]).toEqual([expect.closeTo(5400, 6), expect.closeTo(7400, 6)]);
  });

  test("begin at the least condensing temperature, itself included", () => {
    const all = onWater().condensing;
    const third = all[3] ?? NaN;
    expect(onWater({ leastCondensing: third }).condensing).toEqual(all.slice(3));
    expect(onWater({ leastCondensing: third + 1e-9 }).condensing).toEqual(all.slice(4));
  });

  test("reach the warmest water, or are refused by the labels that make the exchanger too small", () => {
    const last = onWater().water[12] ?? NaN;
    expect(onWater({ warmest: last }).water[12]).toBe(last);
    expect(() => onWater({ warmest: last + 1e-6 })).toThrow(
      expect.objectContaining({
        message: expect.stringMatching(
          /^inputs: with water at the high limit, .*, condensing would reach ⟦temperature\|326\.66\d*⟧, at the end of the maker's rows: exchanger UA or water flow is too small/,
        ),
      }),
    );
  });

  test("of which one row is left, or none, are no curve", () => {
    expect(onWater({ leastCondensing: onWater().condensing[11] ?? NaN }).condensing).toHaveLength(2);
    const refusal = (leastCondensing: number): string => {
      try {
        return String(onWater({ leastCondensing, warmest: 280 }).condensing);
      } catch (thrown) {
        return (thrown as Error).message;
      }
    };
    expect(refusal(HOT - 0.1)).toMatch(/would reach ⟦temperature\|326\.66/);
    // No row condenses so warm: the rating's temperature is named.
    expect(refusal(HOT + 1)).toMatch(/would reach ⟦temperature\|319\.15⟧/);
  });
});
