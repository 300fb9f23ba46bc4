/** Rows of the year from sums of round numbers, and what is saved. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { heatCarbon } from "../../core/cost/heatCost";
import { NO_VALUE } from "../../core/kernel/define/result";
import type { YearInputs } from "../../core/pool/year/inputs";
import { totalOfYear, warmDays, yearRows, type YearRow } from "../../core/pool/year/monthlyTable";
import { emptyYear, type PoolYear, type Year } from "../../core/pool/year/results";
import { savingOf } from "../../core/pool/year/saving";
import { emptySums, type Figure } from "../../core/pool/year/sums";
import { flatCurve, from, HOURS, machineOf, ruledSurface } from "./yearHandMade";
import { DEFAULTS } from "./yearPools";

const HOUR = 3600;
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const KWH = 3.6e6;

type Sums = Readonly<Partial<Record<Figure, number>>>;

/** January has each sum as given, February twice as much, and so on; 78 times in all. */
const poolWith = (sums: Sums): PoolYear => {
  const year = emptyYear(HOURS, from(290));
  for (const [figure, value] of Object.entries(sums) as [Figure, number][])
    year.sums[figure].forEach((_, month, months) => (months[month] = value * (month + 1)));
  year.sums.warmth.forEach((_, month, months) => (months[month] = (290 + month) * (DAYS[month] ?? 0) * 24 * HOUR));
  year.lowest.forEach((_, month, lowest) => (lowest[month] = 280 + month));
  year.highest.forEach((_, month, highest) => (highest[month] = 300 + month));
  return year;
};

const LOSSES = { evaporation: 1e6, convection: 2e6, radiation: 3e6, ground: 4e6, makeUp: 5e6 } as const;
const MACHINE = {
  taken: 1e6,
  rejected: 3e7,
  toTank: 4e6,
  electricity: 7e6,
  extraPump: 1e6,
  unmet: 9e6,
  poolTime: 1000,
  outdoorTime: 2000,
  tankTime: 4000,
} as const;
const TANK = { tankWarmth: 310 * 31 * 24 * HOUR, tankLoss: 11e6, drawnHeat: 12e6 } as const;

interface Parts {
  readonly inputs?: Partial<YearInputs>;
  readonly free?: Sums;
  readonly held?: Sums;
  readonly more?: Partial<Year>;
}

const yearOf = ({ inputs = {}, free = {}, held = {}, more = {} }: Parts = {}): Year => {
  const surface = ruledSurface(0);
  return {
    inputs: { ...DEFAULTS, poolArea: 10, setPoint: 295, ...inputs } as YearInputs,
    weather: surface.weather,
    surface,
    machine: machineOf(),
    season: DAYS.map((_, month) => month < 6),
    free: { without: poolWith({ ...LOSSES, electricity: 9e6, pumpHeat: 2e6 }), with: poolWith({ ...LOSSES, ...free }) },
    held: { without: poolWith({ backUp: 8e6, electricity: 5e6 }), with: poolWith(held) },
    balance: { balance: new Float64Array(12).fill(3e6), hourly: new Float64Array(12), losses: emptySums() },
    ...more,
  };
};
const rowOf = (parts: Parts, month = 1): YearRow => {
  const row = yearRows(yearOf(parts))[month];
  if (row === undefined) throw new Error(String(month));
  return row;
};

describe("a month's row", () => {
  const february = (parts: Parts = {}): YearRow => rowOf({ free: { ...MACHINE, pumpHeat: 3e6, sun: 6e6 }, ...parts });

  test("has its name, and heats of the whole pool", () => {
    expect(yearRows(yearOf()).map(({ month }) => month)).toEqual(
      "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec Year".split(" "),
    );
    expect(february()).toMatchObject({
      ...{ evaporation: 2e7, convection: 4e7, radiation: 6e7, ground: 8e7, makeUp: 1e8 },
      ...{ lossWithout: 3e8, lossWith: 3e8, sun: 1.2e8, pumpHeat: 6e7 },
    });
  });

  test("shares out what the machine rejects", () => {
    // 60 MJ less 20 MJ of the pool and 8 MJ of the tank.
    expect(february()).toMatchObject({
      ...{ heatRejected: 6e7, heatTaken: 2e7, heatToTank: 8e6, heatOutdoors: 3.2e7 },
      ...{ electricityWithout: 1.8e7, electricityWith: 1.4e7, extraPump: 2e6, coolingNotMet: 1.8e7 },
    });
    const none = { taken: 3e6 * (1 - 1e-12), rejected: 3e7, toTank: 0 };
    expect(february({ free: none }).heatOutdoors).toBe(0);
    expect(february({ free: { taken: 2.9e6, rejected: 3e7 } }).heatOutdoors).toBeCloseTo(2e6, 3);
  });

  test("has the time that is left idle", () => {
    expect(february()).toMatchObject({ timeOnPool: 2000, timeOutdoors: 4000, timeOnTank: 8000 });
    expect(february().timeIdle).toBe(28 * 24 * HOUR - 14_000);
  });

  test("has mean, lowest and highest of the pool, or frozen", () => {
    expect(february()).toMatchObject({ air: 290, poolWith: 291, poolWithLowest: 281, poolWithHighest: 301 });
    const frozen = february({ free: { frozen: 1 } });
    expect(frozen).toMatchObject({ poolWith: "frozen", poolWithLowest: "frozen", poolWithHighest: 301 });
    expect(frozen).toMatchObject({ poolWithout: 291, poolWithoutLowest: 281 });
  });

  test("needs by the month's balance what is left of the loss after the pump, in season", () => {
    // 10 m² of 3 MJ/m² less 2 × 2 MJ/m², and of 3 less 2.
    expect(rowOf({}, 0).backUpByMonth).toBeCloseTo(1e7, 3);
    expect(rowOf({}, 1).backUpByMonth).toBe(0);
    expect(
      rowOf({ more: { balance: { ...yearOf().balance, balance: new Float64Array(12).fill(9e7) } } }, 7),
    ).toMatchObject({ backUpByMonth: 0, warmDaysWith: 0 });
  });

  test("has the tank's figures where there is one, by the mains of the month", () => {
    const inputs = { secondSink: "preheat tank", hotWaterDraw: 1, hotWater: 325 } as const;
    const machine = machineOf(undefined, { tankCurve: flatCurve(1, 1) });
    const row = rowOf({ inputs, free: { ...MACHINE, ...TANK }, held: TANK, more: { machine } }, 0);
    expect(row).toMatchObject({ tankMean: 310, tankLoss: 11e6, hotWaterRecovered: 12e6, hotWaterRecoveredHeld: 12e6 });
    expect(row.hotWaterLoad).toBeGreaterThan(1e9);
    expect(february()).toMatchObject({ tankMean: NO_VALUE, hotWaterLoad: 0 });
  });
});

describe("warm days", () => {
  const pool = poolWith({});
  pool.temperature.forEach((_, hour, hours) => {
    const day = Math.floor(hour / 24);
    // February has 3 warm days, one of them warm by its mean alone.
    hours[hour] = day === 31 || day === 40 ? 300 : day === 58 ? 295 + ((hour % 24) - 11.5) : 290;
  });

  test("are those of the month whose mean reaches the set point, as a time", () => {
    expect(warmDays(pool, 295, 1)).toBe(3 * 24 * HOUR);
    expect(warmDays(pool, 295 + 2e-6, 1)).toBe(2 * 24 * HOUR);
    expect([warmDays(pool, 295, 0), warmDays(pool, 295, 2), warmDays(pool, 290, 0)]).toEqual([0, 0, 31 * 24 * HOUR]);
  });

  test("count in the season", () => {
    const { without } = yearOf().free;
    const year = (season: boolean) =>
      yearOf({ more: { free: { without, with: pool }, season: Array(12).fill(season) } });
    expect([year(true), year(false)].map((each) => totalOfYear(each).warmDaysWith)).toEqual([3 * 24 * HOUR, 0]);
  });
});

describe("the year's row", () => {
  test("is the sum of the months, mean, lowest and highest of temperatures", () => {
    const parts = { free: { ...MACHINE, ...TANK }, more: { machine: machineOf() } };
    const total = totalOfYear(yearOf(parts));
    expect(total).toEqual(yearRows(yearOf(parts)).at(-1));
    expect(total).toMatchObject({ month: "Year", heatRejected: 78 * 3e7, air: 290, evaporation: 78e7 });
    expect(total).toMatchObject({
      poolWithLowest: 280,
      poolWithHighest: 311,
      poolWithoutLowest: 280,
      poolWithoutHighest: 311,
    });
    const mean = 290 + DAYS.reduce((sum, days, month) => sum + days * month, 0) / 365;
    expect(total.poolWith).toBeCloseTo(mean, 9);
    expect(total.poolWithout).toBeCloseTo(mean, 9);
  });

  test("is frozen where a month is, and blank where a month's money or tank is", () => {
    const year = yearOf({ free: { frozen: 1 } });
    year.free.with.sums.frozen.fill(0, 1);
    expect(totalOfYear(year)).toMatchObject({ poolWith: "frozen", poolWithLowest: "frozen", poolWithHighest: 311 });
    expect(totalOfYear(year)).toMatchObject({ tankMean: NO_VALUE, moneySaved: NO_VALUE });
    expect(
      totalOfYear(yearOf({ inputs: { electricityPrice: 1e-8, backUpSource: "none" } })).moneySaved,
    ).toBeGreaterThan(0);
  });

  test("has the tank's mean over the days", () => {
    const machine = machineOf(undefined, { tankCurve: flatCurve(1, 1) });
    const inputs = { secondSink: "preheat tank", hotWaterDraw: 1 } as const;
    const year = yearOf({ inputs, more: { machine } });
    year.free.with.sums.tankWarmth.forEach(
      (_, month, all) => (all[month] = (300 + month) * (DAYS[month] ?? 0) * 24 * HOUR),
    );
    const mean = 300 + DAYS.reduce((sum, days, month) => sum + days * month, 0) / 365;
    expect(totalOfYear(year).tankMean).toBeCloseTo(mean, 9);
  });
});

describe("what is saved", () => {
  const price = 0.1 / KWH;
  const base = {
    held: { backUp: 3e6, electricity: 2e6, extraPump: 1e6 },
    free: { electricity: 4e6, extraPump: 1e6 },
  } as const;
  const saved = (inputs: Partial<YearInputs>, more: Parts = {}) => savingOf(yearOf({ ...base, inputs, ...more }), 1);

  test("without a back-up heater is electricity of the pool left to itself, less the pump's", () => {
    // 18 MJ less 8 and 2.
    const { money, carbon } = saved({ backUpSource: "none", electricityPrice: price });
    expect(money).toBeCloseTo(8e6 * price, 12);
    expect(carbon).toBeCloseTo(heatCarbon("electric resistance", 8e6, 1), 9);
  });

  test("with one is the electricity of the held pool and the heater's heat, of all of the pool", () => {
    const inputs = {
      backUpSource: "natural gas",
      backUpPrice: 1e-8,
      backUpEfficiency: 0.5,
      electricityPrice: price,
    } as const;
    // 2 × 10 m² of 8 less 3 MJ/m²; 2 × 5 MJ less 2 × 3 MJ of electricity.
    const { money, carbon } = saved(inputs);
    expect(money).toBeCloseTo(4e6 * price + (1e8 * 1e-8) / 0.5, 9);
    expect(carbon).toBeCloseTo(heatCarbon("electric resistance", 4e6, 1) + heatCarbon("natural gas", 1e8, 0.5), 6);
    expect(saved({ ...inputs, backUpEfficiency: undefined }).money).toBeCloseTo(4e6 * price + 1 / 0.8, 9);
  });

  test("is blank where a price is missing", () => {
    expect(saved({ backUpSource: "natural gas", electricityPrice: price }).money).toBe(NO_VALUE);
    expect(saved({ backUpSource: "natural gas", backUpPrice: 1e-8 }).money).toBe(NO_VALUE);
    expect(saved({ backUpSource: "none" }).money).toBe(NO_VALUE);
    expect(saved({ backUpSource: "natural gas", electricityPrice: price }).carbon).toBeGreaterThan(0);
  });

  test("with a tank has the hot water that it heats, but not the heat of a warm room", () => {
    const machine = machineOf(undefined, { tankCurve: flatCurve(1, 1) });
    const inputs = {
      backUpSource: "none",
      electricityPrice: 0,
      hotWaterSource: "natural gas",
      hotWaterPrice: 1e-8,
    } as const;
    const withTank = (tankLoss: number) =>
      saved(inputs, { more: { machine }, free: { ...base.free, drawnHeat: 12e6, tankLoss } });
    expect(withTank(1e6).money).toBeCloseTo((24e6 * 1e-8) / 0.8, 9);
    expect(withTank(-2e6).money).toBeCloseTo((20e6 * 1e-8) / 0.8, 9);
    expect(withTank(1e6).carbon).toBeCloseTo(
      heatCarbon("electric resistance", 8e6, 1) + heatCarbon("natural gas", 24e6, 0.8),
      6,
    );
    expect(saved(inputs, { free: { ...base.free, drawnHeat: 12e6 } }).money).toBe(0);
  });

  test.each([
    [
      { backUpSource: "natural gas", backUpEfficiency: 1.2 },
      {},
      /^inputs: back up efficiency: for natural gas from .* got 1\.2$/,
    ],
    [
      { backUpSource: "none", hotWaterSource: "natural gas", hotWaterEfficiency: 1.2 },
      { more: { machine: machineOf(undefined, { tankCurve: flatCurve(1, 1) }) } },
      /^inputs: hot water efficiency: for natural gas from .* got 1\.2$/,
    ],
  ] as const)("refuses an efficiency that no heater has: %j", (inputs, more, message) => {
    expect(() => saved(inputs, more)).toThrow(message);
  });
});
