/** What of a climate is fine, unlikely or impossible. Limits as CLIMATE.CHECK names them; values by hand. */
import { describe, expect, test } from "vitest";
import type { Climate } from "../../core/pool/year/climate";
import { findingOf, type Test as WeatherTest } from "../../core/pool/year/finding";
import { findingsOf } from "../../core/pool/year/plausibility";
import { seasonTests } from "../../core/pool/year/sunTests";
import { vapourPressureAt } from "../../core/pool/year/vapourTable";
import { allYear, HOURS, PLAIN_MONTHS } from "./yearHandMade";

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
    ...PLAIN_MONTHS,
    columns: { ...PLAIN_MONTHS.columns, ...columns },
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
    expect(verdicts(PLAIN_MONTHS)).toEqual({
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

  test("of the sun's season ask for more where the sun above the air has one, from 25° on", () => {
    const months = Array.from({ length: 12 }, (_, month) => month);
    const at = (latitude: number) =>
      seasonTests(PLAIN_MONTHS, latitude, months, months).map(({ fine, possible }) => [fine, possible]);
    const [tropics, outside] = [
      [
        [0, 1],
        [-1, 1],
      ],
      [
        [0.9, 1],
        [0, 1],
      ],
    ];
    expect([24.9, -24.9, 25, -25].map(at)).toEqual([
      [tropics, tropics],
      [tropics, tropics],
      [outside, outside],
      [outside, outside],
    ]);
  });

  test("of hours find the sun's centre by the days that have sun", () => {
    const polar =
      hourly()
        .columns.sun?.slice()
        .fill(0, 0, 24 * 60) ?? allYear(0);
    const centre = (sun: Float64Array): string | undefined =>
      findingsOf(hourly({ sun }), 0, "SI").find(({ check }) => check === "centre of the sun, clock")?.found;
    expect(centre(polar)).toMatch(/^12 h$/);
  });

  test("of hours take a dew point within a tenth of a kelvin of the air for the air's rounding", () => {
    const above = (kelvins: number): string | undefined =>
      verdicts(hourly({ air: allYear(290), dewPoint: allYear(290 + kelvins) }))[
        "hours with the dew point above the air"
      ];
    expect([-0.09, 0.09, 0.11].map(above)).toEqual(["fine", "fine", "impossible"]);
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
