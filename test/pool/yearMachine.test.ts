/** The year's machine: its load, its stages outdoors by the hour, its curves on water, part load. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { curveStage, type Stage } from "../../core/aircon/machine/stage";
import { monotoneCubic } from "../../core/numeric/monotoneCubic";
import type { YearInputs } from "../../core/pool/year/inputs";
import { coolingAtDesign, yearMachine, type Load, type Machine, type Staging } from "../../core/pool/year/machine";
import { setUpMachine } from "../../core/pool/year/machineSetUp";
import { emptyPartLoad, meetLoad, type HeatSide, type PartLoad } from "../../core/pool/year/partLoad";
import {
  compressorOf,
  coolingAt,
  condensingAt,
  evenlySpaced,
  leavingWaterAt,
  powerAt,
  type WaterCurve,
} from "../../core/pool/year/waterCurve";
import type { Weather } from "../../core/pool/year/weather";
import { flatCurve, HOURS, machineOf, ruledSurface } from "./yearHandMade";
import { DEFAULTS, RATING } from "./yearPools";

/** Cooling and power straight over the outdoor temperature; the data end between two steps of a quarter of a kelvin. */
const straight = (factor: number): Stage => ({
  ...curveStage({ ...RATING, outdoorFan: 600 * factor }, undefined),
  from: 290.1,
  to: 310.24,
  outdoors: (T) => ({ cooling: factor * (60_000 - 100 * T), power: factor * (20 * T - 1000) }),
});
const NO_CURVES = { poolCurve: undefined, tankCurve: undefined };
const LOAD: Load = { balance: 290, designOutdoor: 310, design: 20_000, aperture: 8 };

/** Air from 280 to 320 K by a tenth of a kelvin. */
const WEATHER: Weather = {
  ...ruledSurface(0).weather,
  air: Float64Array.from({ length: HOURS }, (_, hour) => 280 + (hour % 401) / 10),
  sun: Float64Array.from({ length: HOURS }, (_, hour) => (hour % 2) * 500),
};
const yearOf = (staging?: Staging): Machine =>
  yearMachine({ stage: straight(1), curves: NO_CURVES }, staging, LOAD, 0.1, WEATHER);
const hourOf = (air: number): number => Math.round((air - 280) * 10);

describe("the building's load", () => {
  test("is nothing at its balance, the design at the design temperature, and a straight line between and on", () => {
    const { load, designLoad } = yearOf();
    expect(designLoad).toBe(20_000);
    expect([280, 290, 300, 310, 320].map((air) => load[hourOf(air)])).toEqual([0, 0, 10_000, 20_000, 30_000]);
  });

  test("has the sun let in on top, below the balance too", () => {
    const { load } = yearOf();
    expect(load[hourOf(300.1)]).toBeCloseTo(10_100 + 8 * 500, 6);
    expect(load[hourOf(289.9)]).toBeCloseTo(8 * 500 - 100, 6);
  });
});

describe("a stage outdoors by the hour", () => {
  test("follows its data, and holds their ends beyond", () => {
    const { outdoorCooling, outdoorPower, covers } = yearOf();
    expect(covers).toEqual([290.1, 310.24]);
    for (let air = 280; air <= 320; air += 0.1) {
      const T = Math.min(310.24, Math.max(290.1, Number(air.toFixed(1))));
      expect(outdoorCooling[hourOf(air)], `cooling at ${air}`).toBeCloseTo(60_000 - 100 * T, 6);
      expect(outdoorPower[hourOf(air)], `power at ${air}`).toBeCloseTo(20 * T - 1000, 6);
    }
  });

  test("has at the design temperature what its data have there, or at their end", () => {
    expect(coolingAtDesign(straight(1), 305)).toBeCloseTo(29_500, 6);
    expect(coolingAtDesign(straight(1), 330)).toBeCloseTo(60_000 - 31_024, 6);
    expect(coolingAtDesign(straight(1), 270)).toBeCloseTo(60_000 - 29_010, 6);
  });

  test("has a low stage of its own, locked out from its temperature on", () => {
    const low = { stage: straight(0.5), curves: NO_CURVES };
    const { low: staged, variable, middle, locked } = yearOf({ low, variable: false, middle: undefined, lockout: 305 });
    expect(staged?.outdoorCooling[hourOf(300)]).toBeCloseTo(15_000, 6);
    expect(staged?.outdoorFan).toBe(300);
    expect([variable, middle]).toEqual([false, undefined]);
    expect([304.9, 305, 305.1].map((air) => locked?.[hourOf(air)])).toEqual([0, 1, 1]);
    const any = yearOf({ low, variable: true, middle: [0.5, 0.4], lockout: undefined });
    expect([any.variable, any.middle, any.locked]).toEqual([true, [0.5, 0.4], undefined]);
    expect([yearOf().low, yearOf().variable]).toEqual([undefined, false]);
  });
});

describe("a curve on water", () => {
  const curve: WaterCurve = {
    coldest: 280,
    perKelvin: 4,
    coolings: Float64Array.of(100, 90, 70),
    powers: Float64Array.of(20, 22, 30),
    water: [280, 290, 310],
    condensing: [300, 305, 325],
    capacityRate: 10,
  };

  test("is straight between its points, and its ends hold beyond", () => {
    expect([270, 280, 280.125, 280.25, 280.4375, 280.5, 330].map((T) => coolingAt(curve, T))).toEqual([
      100, 100, 95, 90, 75, 70, 70,
    ]);
    expect([270, 280.125, 280.375, 330].map((T) => powerAt(curve, T))).toEqual([20, 21, 26, 30]);
  });

  test("condenses between its balances, at the least below them, and goes on in a straight line above", () => {
    expect([270, 280, 285, 290, 300, 310, 320].map((T) => condensingAt(curve, T))).toEqual([
      300, 300, 302.5, 305, 315, 325, 335,
    ]);
  });

  test("warms the water by its heat over the flow", () => {
    expect(leavingWaterAt(curve, 280.125)).toBeCloseTo(280.125 + (95 + 21) / 10, 9);
  });
});

describe("the points of a curve on water", () => {
  const balances = { water: [280, 290, 310.02], condensing: [300, 305, 325], capacityRate: 10 };
  const spaced = (): WaterCurve =>
    evenlySpaced(
      monotoneCubic(balances.water, [1000, 900, 700]),
      monotoneCubic(balances.water, [200, 220, 300]),
      balances,
      309,
    );

  test("lie at most 0.05 K apart, from the first balance to the last", () => {
    const { coldest, perKelvin, coolings, powers } = spaced();
    expect(coldest).toBe(280);
    // 30.02 K in 601 intervals.
    expect([coolings.length, powers.length]).toEqual([602, 602]);
    expect(perKelvin).toBeCloseTo(601 / 30.02, 9);
    expect([coolings[0], coolings[601], powers[0], powers[601]].map((each) => each?.toFixed(9))).toEqual(
      [1000, 700, 200, 300].map((each) => each.toFixed(9)),
    );
  });

  test("give back the balances between them", () => {
    expect(coolingAt(spaced(), 290)).toBeCloseTo(900, 2);
    expect(powerAt(spaced(), 290)).toBeCloseTo(220, 2);
  });
});

describe("the compressor of a rating", () => {
  test("moves the heat of the indoor fan too", () => {
    expect(compressorOf(RATING).rating.cooling).toBe(26_900);
  });

  test.each([
    [
      3700,
      /rated power doesn't fit rated cooling .* efficiency would be 1\.\d\d, expected 0\.3 to 0\.95; check cooling/,
    ],
    [20_000, /rated power doesn't fit rated cooling .* efficiency would be 0\.2\d, expected 0\.3 to 0\.95/],
  ])("refuses a power of %d W that no compressor has", (power, message) => {
    expect(() => compressorOf({ ...RATING, power })).toThrow(message);
  });
});

describe("part load", () => {
  const low = {
    outdoorCooling: Float64Array.of(40_000),
    outdoorPower: Float64Array.of(8000),
    outdoorFan: 4000,
    poolCurve: flatCurve(50_000, 10_000),
    tankCurve: flatCurve(30_000, 12_000),
  };
  const full = machineOf(undefined, { tankCurve: flatCurve(60_000, 30_000) });
  const meet = (machine: Machine, load: number, side: HeatSide): PartLoad => {
    const into = emptyPartLoad();
    meetLoad(machine, load, 0, side, 290, into);
    return into;
  };

  test.each([
    ["outdoors", 40_000, 40_000, 0.5, 10_000, 45_000],
    ["pool", 40_000, 40_000, 0.5, 10_000, 50_000],
    ["tank", 40_000, 40_000, 2 / 3, 20_000, 60_000],
    ["outdoors", 80_000, 80_000, 1, 20_000, 90_000],
    ["outdoors", 100_000, 80_000, 1, 20_000, 90_000],
    ["tank", 100_000, 60_000, 1, 30_000, 90_000],
  ] as const)("of one speed, %s at %d W", (side, load, met, runShare, electricity, rejected) => {
    const got = meet(full, load, side);
    expect([got.met, got.runShare, got.electricity, got.rejected].map((each) => Number(each.toFixed(6)))).toEqual(
      [met, runShare, electricity, rejected].map((each) => Number(each.toFixed(6))),
    );
  });

  test("of one speed runs longer for its loss of starting and stopping", () => {
    // 0.5 of the full load over 1 − 0.2 × 0.5.
    expect(meet({ ...full, cyclingLoss: 0.2 }, 40_000, "pool").runShare).toBeCloseTo(0.5 / 0.9, 9);
  });

  test.each([
    // Half of the low stage's cooling: half of its power and fan.
    ["outdoors", 20_000, 0.5, 4000, 20_000 + 4000 - 2000],
    ["pool", 25_000, 0.5, 5000, 30_000],
    ["tank", 15_000, 0.5, 6000, 21_000],
    // Just the low stage.
    ["outdoors", 40_000, 1, 8000, 44_000],
    // Midway: half of both powers and fans.
    ["outdoors", 60_000, 1, 14_000, 60_000 + 14_000 - 7000],
    ["pool", 65_000, 1, 15_000, 80_000],
    ["tank", 45_000, 1, 21_000, 66_000],
    // At and above full capacity the machine is as without a low stage.
    ["outdoors", 80_000, 1, 20_000, 90_000],
  ] as const)("of two stages, %s at %d W", (side, load, runShare, electricity, rejected) => {
    const got = meet({ ...full, low }, load, side);
    expect(got.met).toBe(load);
    expect([got.runShare, got.electricity, got.rejected]).toEqual([runShare, electricity, rejected]);
  });

  test("of a low stage that is locked out is that of full capacity", () => {
    const locked = { ...full, low, locked: Uint8Array.of(1) };
    expect(meet(locked, 40_000, "outdoors")).toEqual(meet(full, 40_000, "outdoors"));
    expect(meet({ ...locked, locked: Uint8Array.of(0) }, 40_000, "outdoors").electricity).toBe(8000);
  });

  test("of variable speed has a COP straight over the load, through the middle speed where one is given", () => {
    const variable = { ...full, low, variable: true };
    // COP 5 at 40 kW and 4 at 80 kW; 4.5 midway.
    expect(meet(variable, 60_000, "outdoors").electricity).toBeCloseTo(60_000 / 4.5, 6);
    // A middle speed of 60 kW and 11 kW.
    expect(meet({ ...variable, middle: [0.5, 0.25] }, 60_000, "outdoors").electricity).toBeCloseTo(11_000, 6);
  });
});

describe("the machine from the input block", () => {
  const inputs = (values: Partial<YearInputs>): YearInputs =>
    ({
      ...DEFAULTS,
      poolArea: 100,
      waterDepth: 1.5,
      setPoint: 300.15,
      latitude: 25,
      altitude: 0,
      ratedCooling: 26_400,
      ratedPower: 8100,
      outdoorFan: 600,
      exchangerUA: 5000,
      ...values,
    }) as YearInputs;
  const TANK = { secondSink: "preheat tank", hotWaterDraw: 1.5, tankVolume: 1.5, tankUA: 4000 } as const;
  const set = (values: Partial<YearInputs>): Machine => {
    const machine = setUpMachine(inputs(values), WEATHER);
    if (machine === undefined) throw new Error("no machine");
    return machine;
  };

  test("has water flows that warm by 10 °F where none is given", () => {
    // 26,400 + 8100 − 600 W over 5.556 K.
    expect(set({}).poolCurve?.capacityRate).toBeCloseTo(33_900 / (10 / 1.8), 6);
    expect(set(TANK).tankCurve?.capacityRate).toBeCloseTo(33_900 / (10 / 1.8), 6);
    // 996.5 kg/m³ and 4181 J/(kg·K) at 300 K (IAPWS-95).
    const given = set({ ...TANK, waterFlow: 0.002, tankFlow: 0.001 });
    expect((given.poolCurve?.capacityRate ?? NaN) / (0.002 * 996.5 * 4181)).toBeCloseTo(1, 3);
    expect((given.tankCurve?.capacityRate ?? NaN) / (0.001 * 996.5 * 4181)).toBeCloseTo(1, 3);
  });

  test.each([
    [300, 305, 306],
    [306, 301, 307],
  ])("reaches past the warmer of set point %d K and high limit %d K", (setPoint, highLimit, reaches) => {
    const last = set({ setPoint, highLimit }).poolCurve?.water.at(-1) ?? NaN;
    expect(last).toBeGreaterThan(reaches);
    expect(last).toBeLessThan(reaches + 2);
  });

  test("reaches past the tank's limit", () => {
    const last = set({ ...TANK, tankLimit: 318 }).tankCurve?.water.at(-1) ?? NaN;
    expect(last).toBeGreaterThan(318);
    expect(last).toBeLessThan(321);
  });

  test("has curves for what it has exchangers on only", () => {
    expect(set({}).tankCurve).toBeUndefined();
    expect(set({ ...TANK, exchangerUA: undefined }).poolCurve).toBeUndefined();
    expect(setUpMachine(inputs({ ratedCooling: undefined, ratedPower: undefined }), WEATHER)).toBeUndefined();
  });

  test("has the load that is given, or its own cooling at the design temperature", () => {
    expect(set({ designLoad: 12_345 }).designLoad).toBe(12_345);
    const own = set({ designOutdoor: 308.15 }).designLoad;
    expect(own / 26_400).toBeCloseTo(1, 2);
  });

  test.each([
    [{ exchangerUA: 600 }, /at high limit, .* beyond R-410A: exchanger UA or water flow .* or high limit too high/],
    [{ exchangerUA: 1500, highLimit: 312 }, /reach ⟦temperature\|341\.6.*, above ⟦temperature\|341\.48/],
    [{ ...TANK, tankUA: 600 }, /at tank limit, .* beyond R-410A: tank UA or tank flow .* or tank limit too high/],
  ])("refuses an exchanger that is too small: %j", (values, message) => {
    expect(() => set(values)).toThrow(message);
  });

  test("has a low stage, of two stages or of variable speed", () => {
    const staged = { machineType: "two stage", lowCooling: 18_000, lowPower: 5000 } as const;
    expect(set(staged)).toMatchObject({ variable: false, middle: undefined, locked: undefined });
    expect(set(staged).low?.poolCurve?.capacityRate).toBe(set({}).poolCurve?.capacityRate);
    const variable = { ...staged, machineType: "variable speed", lowCooling: 9000, lowPower: 2000 } as const;
    expect(set(variable).variable).toBe(true);
    expect(set({ ...staged, lockout: 300 }).locked?.[hourOf(300)]).toBe(1);
  });
});
