/** What the cautions of the year read: hours beyond a limit, heats, weather that no place has. Expected values by hand. */
import { describe, expect, test } from "vitest";
import type { Climate } from "../../core/pool/year/climate";
import { extremeOf, hotFacts, hourText, overLimitFacts } from "../../core/pool/year/extremes";
import { yearFacts } from "../../core/pool/year/facts";
import { findingOf, type Test as WeatherTest } from "../../core/pool/year/finding";
import type { YearInputs } from "../../core/pool/year/inputs";
import type { Machine } from "../../core/pool/year/machine";
import { findingsOf } from "../../core/pool/year/plausibility";
import { emptyYear, type PoolYear, type Year } from "../../core/pool/year/results";
import { emptySums, type Figure } from "../../core/pool/year/sums";
import { vapourPressureAt } from "../../core/pool/year/vapourTable";
import type { WaterCurve } from "../../core/pool/year/waterCurve";
import { allYear, flatCurve, from, HOURS, machineOf, ruledSurface } from "./yearHandMade";
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

const MONTHS: Climate = {
  monthly: true,
  columns: {
    air: new Float64Array(12).fill(290),
    swing: new Float64Array(12).fill(9),
    humidity: new Float64Array(12).fill(0.6),
    windAt10m: new Float64Array(12).fill(3),
    sun: new Float64Array(12).fill(1.5e7),
  },
};
const factsOf = (parts: Parts = {}, climate = MONTHS) => yearFacts(yearOf(parts), climate, "SI");

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
    expect(factsOf({}, { ...MONTHS, monthly: false, columns: {} }).monthlyRows).toBe(false);
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

describe("a finding", () => {
  const made = (...values: readonly number[]): WeatherTest => ({
    check: "wind",
    kind: "wind speed",
    values,
    fine: [1, 5],
    possible: [0, 10],
    meaning: "another unit",
  });
  const twelve = (value: number, other: number): readonly number[] =>
    Array.from({ length: 12 }, (_, month) => (month === 3 || month === 7 ? other : value));

  test.each([
    [made(1, 5), { verdict: "fine", where: "year", found: "1 m/s to 5 m/s", expected: "1 m/s to 5 m/s", meaning: "" }],
    [made(5.1), { verdict: "unlikely", where: "year", found: "5.1 m/s", meaning: "another unit" }],
    [made(...twelve(2, 10)), { verdict: "unlikely", where: "Apr, Aug", found: "2 m/s to 10 m/s" }],
    [made(...twelve(6, 10.1)), { verdict: "impossible", where: "Apr, Aug", found: "6 m/s to 10.1 m/s" }],
    [made(-0.1), { verdict: "impossible", meaning: "another unit" }],
    [made(Number.NaN, 3), { verdict: "fine", found: "3 m/s" }],
    [made(Number.POSITIVE_INFINITY), { verdict: "impossible", found: "sun in the polar night" }],
  ])("is fine, unlikely or impossible by its worst value: %#", (test_, expected) => {
    expect(findingOf(test_, "SI")).toMatchObject(expected);
  });
});

const fill = (value: number): Float64Array => new Float64Array(12).fill(value);
/** Sun in one hour of each day. */
const atHour = (clock: number): Float64Array => allYear(0).map((_, hour) => (hour % 24 === clock ? 500 : 0));
/** So many hours with the dew point above any air here. */
const dewAbove = (hours: number): Float64Array => allYear(280).fill(300, 0, hours);

describe("the tests of a climate", () => {
  const verdicts = (climate: Climate, latitude = 0): Readonly<Record<string, string>> =>
    Object.fromEntries(findingsOf(climate, latitude, "SI").map(({ check, verdict }) => [check, verdict]));
  const monthsWith = (columns: Climate["columns"]): Climate => ({
    ...MONTHS,
    columns: { ...MONTHS.columns, ...columns },
  });
  const hourly = (columns: Climate["columns"] = {}): Climate => ({
    monthly: false,
    columns: {
      air: Float64Array.from({ length: HOURS }, (_, hour) => 290 + 4 * Math.cos(((hour % 24) - 14) * (Math.PI / 12))),
      humidity: allYear(0.6),
      windAt10m: allYear(3).fill(9, 40, 41),
      sun: Float64Array.from({ length: HOURS }, (_, hour) =>
        Math.max(0, 600 * Math.sin(((hour % 24) - 5.5) * (Math.PI / 12))),
      ),
      ...columns,
    },
  });

  test("of months are those of sun, air, swing, humidity and wind", () => {
    expect(verdicts(MONTHS)).toEqual({
      ...{ "clearness of the sun": "fine", air: "fine", "daily swing of the air": "fine", humidity: "fine" },
      ...{ "wind at 10 m, months": "fine", "wind at 10 m, year": "fine" },
    });
    expect(verdicts(monthsWith({ windAt10m: new Float64Array(12).fill(9) }))).toMatchObject({
      ...{ "wind at 10 m, months": "unlikely", "wind at 10 m, year": "unlikely" },
    });
    expect(verdicts(monthsWith({ swing: new Float64Array(12).fill(0.5) }))).toMatchObject({
      "daily swing of the air": "impossible",
    });
  });

  test("of months set humidity beside vapour pressure", () => {
    const beside = (share: number): string | undefined =>
      verdicts(monthsWith({ vapourPressure: new Float64Array(12).fill((0.6 / share) * vapourPressureAt(290)) }))[
        "humidity beside vapour pressure"
      ];
    expect([1, 1.24, 1.26, 1.59, 1.61, 0.71, 0.69, 0.51, 0.49].map(beside)).toEqual(
      "fine fine unlikely unlikely impossible fine unlikely unlikely impossible".split(" "),
    );
  });

  test("of hours are those of clock, strongest wind and swing too", () => {
    const found = findingsOf(hourly(), 0, "SI");
    const of = (check: string): string => found.find((each) => each.check === check)?.found ?? "";
    expect(of("strongest wind")).toBe("9 m/s");
    expect(of("daily swing of the air")).toBe("8 K");
    expect(of("air")).toMatch(/^12\.85 °C to 20\.85 °C$/);
    // The sun's middle is at 11.5 h, the middle of the hour half an hour later.
    expect(of("centre of the sun, clock")).toMatch(/^12 h$/);
  });

  test("of hours set dew point beside air and humidity", () => {
    const swapped = hourly({ dewPoint: allYear(298) });
    expect(verdicts(swapped)["hours with the dew point above the air"]).toBe("impossible");
    const dew = allYear(280);
    const right = hourly({
      air: allYear(290),
      dewPoint: dew,
      humidity: allYear(vapourPressureAt(280) / vapourPressureAt(290)),
    });
    expect(verdicts(right)).toMatchObject({
      ...{ "hours with the dew point above the air": "fine", "humidity beside dew point, root mean square": "fine" },
    });
    const off = hourly({
      air: allYear(290),
      dewPoint: dew,
      humidity: allYear(vapourPressureAt(280) / vapourPressureAt(290) + 0.05),
    });
    expect(verdicts(off)["humidity beside dew point, root mean square"]).toBe("unlikely");
    const few = dew.map((T, hour) => (hour < 9 ? 291 : T));
    expect(verdicts(hourly({ air: allYear(290), dewPoint: few }))["hours with the dew point above the air"]).toBe(
      "unlikely",
    );
  });

  test.each([
    ["air", { air: fill(232) }, { air: fill(212) }, "-40 °C to 45 °C", /another unit/],
    [
      "daily swing of the air",
      { swing: fill(3.9) },
      { swing: fill(25.1) },
      "4 K to 18 K",
      /mean daily highest less lowest/,
    ],
    ["humidity", { humidity: fill(0.96) }, { humidity: fill(0.019) }, "0.15 to 0.95", /another quantity/],
    [
      "wind at 10 m, months",
      { windAt10m: fill(7.1) },
      { windAt10m: fill(20.1) },
      "0.6 m/s to 7 m/s",
      /mph read as m\/s/,
    ],
    ["wind at 10 m, year", { windAt10m: fill(8.1) }, { windAt10m: fill(0.04) }, "1 m/s to 8 m/s", /sheltered mast/],
    [
      "humidity beside vapour pressure",
      { vapourPressure: fill(1700) },
      { vapourPressure: fill(3000) },
      "0.7 to 1.25",
      /another q/,
    ],
    [
      "clearness of the sun",
      { sun: fill(2.7e7) },
      { sun: fill(3.4e7) },
      "0.28 to 0.73",
      /unit and the latitude|perhaps/,
    ],
  ] as const)("of months judge %s by what stations show and no place has", (check, odd, wrong, expected, meaning) => {
    const of = (columns: Climate["columns"]) =>
      findingsOf(monthsWith(columns), 0, "SI").find((each) => each.check === check);
    expect(of(odd)).toMatchObject({ verdict: "unlikely", expected });
    expect(of(odd)?.meaning).toMatch(meaning);
    expect(of(wrong)?.verdict).toBe("impossible");
  });

  test.each([
    ["strongest wind", { windAt10m: allYear(31) }, { windAt10m: allYear(46) }, "5 m/s to 30 m/s", /another unit/],
    ["strongest wind", { windAt10m: allYear(4) }, { windAt10m: allYear(0.4) }, "5 m/s to 30 m/s", /another unit/],
    ["centre of the sun, clock", { sun: atHour(10) }, { sun: atHour(8) }, "11 h to 13.2 h", /stamps at the start/],
    ["centre of the sun, clock", { sun: atHour(13) }, { sun: atHour(15) }, "11 h to 13.2 h", /daylight-saving/],
    [
      "hours with the dew point above the air",
      { dewPoint: dewAbove(9) },
      { dewPoint: dewAbove(89) },
      "0 to 8",
      /wet bulb/,
    ],
  ] as const)("of hours judge %s by what stations show and no place has", (check, odd, wrong, expected, meaning) => {
    const of = (columns: Climate["columns"]) =>
      findingsOf(hourly(columns), 0, "SI").find((each) => each.check === check);
    expect(of(odd)).toMatchObject({ verdict: "unlikely", expected });
    expect(of(odd)?.meaning).toMatch(meaning);
    expect(of(wrong)?.verdict).toBe("impossible");
  });

  test("judge the seasons outside the tropics: in order, out of order, of the other hemisphere", () => {
    const wave = (mean: number, size: number, shift: number): Float64Array =>
      Float64Array.from({ length: 12 }, (_, month) => mean - size * Math.cos(((month - shift) * Math.PI) / 6));
    const north = monthsWith({ air: wave(288, 10, 0.5), sun: wave(1.5e7, 9e6, -0.3) });
    expect(verdicts(north, 40)).toMatchObject({ "season of the sun": "fine", "season of the air": "fine" });
    expect(verdicts(north, -40)).toMatchObject({
      "season of the sun": "impossible",
      "season of the air": "impossible",
    });
    const flat = monthsWith({ air: new Float64Array(12).fill(288), sun: wave(1.5e7, 9e6, -0.3) });
    expect(verdicts(flat, 40)["season of the air"]).toBe("unlikely");
    expect(verdicts(north, 20)).toMatchObject({ "season of the sun": "fine" });
    expect(verdicts(north, 11.9)).not.toHaveProperty("season of the sun");
    expect(findingsOf(north, -40, "SI").find(({ check }) => check === "season of the sun")?.meaning).toMatch(
      /^months out of order, or the wrong hemisphere: it fits latitude 40 \(south is negative\)$/,
    );
  });
});
