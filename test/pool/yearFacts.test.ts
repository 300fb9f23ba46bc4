/** What the cautions of the year read: hours beyond a limit, heats, the machine and the tank. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { extremeOf, hotFacts, hourText, overLimitFacts } from "../../core/pool/year/extremes";
import { yearFacts } from "../../core/pool/year/facts";
import type { YearInputs } from "../../core/pool/year/inputs";
import type { Machine } from "../../core/pool/year/machine";
import { emptyYear, type PoolYear, type Year } from "../../core/pool/year/results";
import { emptySums, type Figure } from "../../core/pool/year/sums";
import type { WaterCurve } from "../../core/pool/year/waterCurve";
import { allYear, flatCurve, from, HOURS, machineOf, PLAIN_MONTHS, ruledSurface } from "./yearHandMade";
import { DEFAULTS } from "./yearPools";

const HOUR = 3600;

const poolWith = (sums: Readonly<Partial<Record<Figure, number>>> = {}, temperature = 300): PoolYear => {
  const year = { ...emptyYear(HOURS, from(temperature)), temperature: allYear(temperature) };
  year.highest.fill(temperature);
  for (const [figure, value] of Object.entries(sums) as [Figure, number][]) year.sums[figure].fill(value / 12);
  return year;
};
interface Parts {
  readonly inputs?: Partial<YearInputs>;
  readonly machine?: Machine | undefined;
  readonly free?: PoolYear;
  readonly held?: PoolYear;
  readonly without?: PoolYear;
}
const yearOf = (parts: Parts = {}): Year => {
  const surface = ruledSurface(0);
  const { free = poolWith(), held = poolWith(), without = poolWith({ backUp: 100, electricity: 900 }) } = parts;
  return {
    inputs: {
      ...DEFAULTS,
      poolArea: 10,
      setPoint: 299,
      highLimit: 303,
      latitude: undefined,
      ...parts.inputs,
    } as YearInputs,
    weather: surface.weather,
    surface,
    machine: "machine" in parts ? parts.machine : machineOf(),
    season: Array<boolean>(12).fill(true),
    free: { without, with: free },
    held: { without, with: held },
    balance: { balance: new Float64Array(12), hourly: new Float64Array(12), losses: emptySums() },
  };
};

const factsOf = (parts: Parts = {}, climate = PLAIN_MONTHS) => yearFacts(yearOf(parts), climate, "SI");

describe("an extreme", () => {
  test("has its hour by day and clock", () => {
    expect([0, 23, 24, 744, 4693, 8759].map(hourText)).toEqual([
      "1 Jan, 0 h",
      "1 Jan, 23 h",
      "2 Jan, 0 h",
      "1 Feb, 0 h",
      "15 Jul, 13 h",
      "31 Dec, 23 h",
    ]);
  });

  test("counts the hours above a limit, with the first and the worst of them", () => {
    const values = [1, 5, 5.1, 9, 5, 9, 6];
    expect(extremeOf(7, 5, (hour) => values[hour])).toEqual({
      time: 4 * HOUR,
      first: "1 Jan, 2 h",
      when: "1 Jan, 3 h",
      worst: 9,
    });
    expect(extremeOf(6, 10, () => undefined)).toEqual({ time: 0, first: "1 Jan, 0 h", when: "1 Jan, 0 h", worst: 0 });
  });
});

describe("a pool above its limit", () => {
  test("is counted half a degree Fahrenheit beyond it", () => {
    const free = poolWith();
    free.temperature.fill(303.2, 0, 100).fill(304, 5000, 5010).fill(306, 5003, 5004);
    expect(overLimitFacts(yearOf({ free }))).toEqual({
      overLimitTime: 10 * HOUR,
      firstOver: hourText(5000),
      warmestHour: hourText(5003),
    });
  });
});

describe("the machine on warm water", () => {
  /** Condenses 25 K above the water; leaves it 5 K warmer. */
  const curve = (above: number, cooling = 80_000): WaterCurve => ({
    ...flatCurve(cooling, 20_000),
    water: [280, 320],
    condensing: [280 + above, 320 + above],
    capacityRate: (cooling + 20_000) / 5,
  });
  const running = (temperature: number): PoolYear => {
    const year = poolWith({}, temperature);
    year.taken.fill(50_000, 10, 20);
    return year;
  };

  test("is hot in the hours in which it runs there, at the warmer of both pools", () => {
    const machine = machineOf(undefined, { poolCurve: curve(25) });
    // 310 + 25 K is above 130 °F, 327.59 K; 315 K is above 104 °F, 313.15 K.
    expect(hotFacts(yearOf({ machine, free: running(310), held: running(300) }))).toEqual({
      ...{ hotTime: 10 * HOUR, hottest: 335, hottestHour: "1 Jan, 10 h" },
      ...{ hotWaterTime: 10 * HOUR, leavingWater: 315, leavingWaterHour: "1 Jan, 10 h" },
    });
    expect(hotFacts(yearOf({ machine, free: running(300), held: running(309) }))).toMatchObject({ hottest: 334 });
  });

  test("is not looked at where the warmest water passes no limit", () => {
    const machine = machineOf(undefined, { poolCurve: curve(25) });
    const cool = yearOf({ machine, free: running(300), held: running(300) });
    expect(hotFacts(cool)).toMatchObject({ hotTime: 0, hottest: 0, hotWaterTime: 0, leavingWater: 0 });
    const byCondensing = machineOf(undefined, { poolCurve: curve(28) });
    expect(hotFacts(yearOf({ machine: byCondensing, free: running(300) }))).toMatchObject({ hotTime: 10 * HOUR });
    const byLeaving = machineOf(undefined, { poolCurve: { ...curve(10), capacityRate: 5000 } });
    expect(hotFacts(yearOf({ machine: byLeaving, free: running(300) }))).toMatchObject({
      ...{ hotTime: 0, hotWaterTime: 10 * HOUR },
      leavingWater: 320,
    });
  });

  test("condenses cooler in its low stage, where that meets the load and isn't locked out", () => {
    const low = { ...machineOf(), poolCurve: curve(15, 45_000) };
    const hottest = (more: Partial<Machine>): number =>
      hotFacts(yearOf({ machine: machineOf(undefined, { poolCurve: curve(25), low, ...more }), free: running(310) }))
        .hottest;
    expect(hottest({})).toBe(325);
    expect(hottest({ locked: new Uint8Array(HOURS).fill(1) })).toBe(335);
    expect(hottest({ load: allYear(50_000) })).toBe(335);
  });

  test("is hot on a tank too", () => {
    const machine = machineOf(undefined, { poolCurve: undefined, tankCurve: curve(25) });
    const year = { ...poolWith(), tank: allYear(312) };
    year.toTank.fill(1, 30, 32);
    expect(hotFacts(yearOf({ machine, free: year, held: { ...poolWith(), tank: allYear(312) } }))).toMatchObject({
      ...{ hotTime: 2 * HOUR, hottest: 337, hottestHour: "2 Jan, 6 h", hotWaterTime: 0, leavingWater: 0 },
    });
  });
});

describe("facts of the year", () => {
  test("about the pool alone", () => {
    const none = factsOf({ machine: undefined, free: poolWith({ frozen: 7200 }), held: poolWith({ backUp: 30 }) });
    expect(none).toMatchObject({
      ...{ poolTemperature: 300, stillNeeded: 300, frozenTime: 7200, recovers: false, monthlyRows: true },
      ...{ notMetShare: 0, beyondCurveTime: 0, evaporationBy: DEFAULTS["evaporationMethod"], coverKind: "none" },
    });
    for (const fact of ["warms", "limit", "overLimitTime", "hotTime", "preheat", "singleSpeed"])
      expect(none).not.toHaveProperty(fact);
    expect(factsOf({ inputs: { lossMethod: "surface rule" } })).not.toHaveProperty("coverKind");
    expect(factsOf({}, { ...PLAIN_MONTHS, monthly: false, columns: {} }).monthlyRows).toBe(false);
  });

  test("about what the machine gives, sends outdoors and saves", () => {
    const free = poolWith({
      taken: 20,
      toTank: 100,
      rejected: 600,
      outdoorTime: 7200,
      extraPump: 12,
      electricity: 840,
    });
    const held = poolWith({ backUp: 40, taken: 80 });
    const facts = factsOf({ free, held });
    expect(facts).toMatchObject({
      warms: "the pool",
      recovers: true,
      timeAtLimit: 7200,
      limit: 303,
      singleSpeed: true,
    });
    // 10 m² of 20 J/m² and 100 J of 600 J; 60 of 100 and of 80.
    expect(facts.sentOutdoors).toBeCloseTo(0.5, 12);
    expect(facts.usefulOfNeed).toBeCloseTo(0.6, 12);
    expect(facts.usefulOfTaken).toBeCloseTo(0.75, 12);
    expect(facts.pumpBeyond).toBeCloseTo(12, 12);
    expect(facts.electricitySaved).toBeCloseTo(60, 9);
    expect(factsOf({ without: poolWith(), held: poolWith() })).not.toHaveProperty("usefulOfNeed");
  });

  test("about the tank, which alone or beside the pool is warmed", () => {
    const tankCurve = flatCurve(80_000, 40_000);
    const inputs = { tankLimit: 315, hotWater: 325, hotWaterSource: "none" } as const;
    const both = factsOf({ inputs, machine: machineOf(undefined, { tankCurve }) });
    expect(both).toMatchObject({ warms: "pool and tank", preheat: 315, hot: 325, hotWaterUnpriced: true });
    const warm = { ...poolWith(), tank: allYear(300) };
    warm.tank[77] = 318;
    const alone = factsOf({
      inputs: { ...inputs, hotWaterSource: "natural gas" },
      machine: machineOf(undefined, { poolCurve: undefined, tankCurve }),
      free: warm,
    });
    expect(alone).toMatchObject({ warms: "the tank", preheat: 318, hotWaterUnpriced: false, recovers: true });
    expect(alone).not.toHaveProperty("limit");
  });

  test("about loads beyond the machine and its data", () => {
    const load = allYear(0).fill(40_000, 0, 100);
    // The air is at 290 K all year.
    const facts = (covers: readonly [number, number]) =>
      factsOf({ machine: machineOf(load, { covers }), free: poolWith({ unmet: 100 * 40_000 * HOUR * 0.25 }) });
    expect(facts([280, 300])).toMatchObject({ beyondCurveTime: 0, coversFrom: 280, coversTo: 300 });
    expect(facts([280, 300]).notMetShare).toBeCloseTo(0.25, 12);
    expect([facts([291, 300]), facts([270, 289]), facts([290, 290])].map((each) => each.beyondCurveTime)).toEqual([
      100 * HOUR,
      100 * HOUR,
      0,
    ]);
    expect(factsOf({ machine: machineOf(load, { low: machineOf() }) })).toMatchObject({ singleSpeed: false });
  });
});
