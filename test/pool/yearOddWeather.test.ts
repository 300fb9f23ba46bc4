/** Weather that no place has is refused, and what is unlikely is said. Expected values by hand. */
import { describe, expect, test } from "vitest";
import { extraterrestrialOfMonth } from "../../core/air/extraterrestrial";
import type { Climate } from "../../core/pool/year/climate";
import { dailySun, oddSunFacts, refuseImpossibleSun } from "../../core/pool/year/sunCheck";
import { oddWeatherFacts, refuseImpossibleWeather } from "../../core/pool/year/weatherCheck";

const MONTHS = Array.from({ length: 12 }, (_, month) => month);
const fill = (value: number): Float64Array => new Float64Array(12).fill(value);
/** Half of the sun above the air at a latitude. */
const sunAt = (latitude: number, share = 0.5): Float64Array =>
  Float64Array.from(MONTHS, (month) => share * extraterrestrialOfMonth(latitude, month));
const wave = (mean: number, size: number): Float64Array =>
  Float64Array.from(MONTHS, (month) => mean - size * Math.cos(((month - 0.5) * Math.PI) / 6));

const climateOf = (columns: Climate["columns"] = {}): Climate => ({
  monthly: true,
  columns: {
    ...{ air: wave(288, 10), swing: fill(9), humidity: fill(0.6), windAt10m: fill(3), sun: sunAt(40) },
    ...columns,
  },
});
const hourlyOf = (columns: Climate["columns"]): Climate => ({ monthly: false, columns });
const messageOf = (work: () => void): string => {
  try {
    work();
    return "";
  } catch (thrown) {
    return (thrown as Error).message;
  }
};

describe("the sun of a climate", () => {
  const sunRefusal = (climate: Climate, latitude: number | undefined): string =>
    messageOf(() => refuseImpossibleSun(climate, latitude));

  test("is that of a day, also from hours", () => {
    expect(dailySun(climateOf({ sun: fill(2e7) }))).toEqual(Array<number>(12).fill(2e7));
    expect(dailySun(hourlyOf({ sun: new Float64Array(8760).fill(100) }))[5]).toBeCloseTo(8.64e6, 3);
    expect(dailySun(hourlyOf({}))).toEqual([]);
  });

  test("is refused above that above the air, with the month and what would explain it", () => {
    expect(sunRefusal(climateOf(), 40)).toBe("");
    expect(sunRefusal(climateOf({ sun: sunAt(40, 1.2) }), undefined)).toBe("");
    expect(sunRefusal(climateOf({ sun: sunAt(40, 1.2) }), 40)).toMatch(
      /^climate, Jan, sun: must be at most the sun above the air at latitude 40, ⟦daily sun\|\d.*⟧, got ⟦daily sun\|\d.*⟧, 1\.20 times as much: perhaps MJ\/\(m²·day\) in a column of kWh/,
    );
  });

  test.each([
    ["kWh/(m²·day) in a column of MJ/(m²·day)", 3.6e6 / 1e6],
    ["MJ/(m²·day) in a column of kWh/(m²·day)", 1e6 / 3.6e6],
    ["kWh/(m²·day) in a column of BTU/(ft²·day)", 3.6e6 / 11_356.5],
    ["MJ/(m²·day) in a column of BTU/(ft²·day)", 1e6 / 11_356.5],
  ])("of months may be %s", (says, times) => {
    const read = climateOf({ sun: sunAt(40).map((sun) => sun / times) });
    const found = times > 1 ? oddSunFacts(read, 40).oddSunReason : sunRefusal(read, 40);
    expect(found).toContain(`perhaps ${says}`);
  });

  test.each([
    ["kW/m² in a column of W/m²", 1000],
    ["W/m² in a column of BTU/(h·ft²)", 1 / 3.15459],
    ["BTU/(h·ft²) in a column of W/m²", 3.15459],
  ])("of hours may be %s", (says, times) => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const means = sunAt(40).map((sun) => sun / 86_400 / times);
    const sun = Float64Array.from(days.flatMap((count, month) => Array<number>(24 * count).fill(means[month] ?? NaN)));
    const read = hourlyOf({ sun });
    expect(times > 1 ? oddSunFacts(read, 40).oddSunReason : sunRefusal(read, 40)).toContain(`perhaps ${says}`);
  });

  test("that is unlikely is said with its months", () => {
    expect(oddSunFacts(climateOf(), 40)).toEqual({});
    expect(oddSunFacts(climateOf({ sun: sunAt(40, 0.1) }), undefined)).toEqual({});
    const sun = sunAt(40);
    sun[3] = 0.85 * extraterrestrialOfMonth(40, 3);
    sun[8] = 0.19 * extraterrestrialOfMonth(40, 8);
    const odd = oddSunFacts(climateOf({ sun }), 40);
    expect(odd).toMatchObject({ oddSunMonths: "Apr, Sep", oddSunReason: "check its unit and the latitude" });
    expect(odd.oddSun).toBeCloseTo(0.85, 9);
    expect(oddSunFacts(climateOf({ sun: sunAt(-45) }), 45).oddSunReason).toBe(
      "it fits latitude -45 (south is negative)",
    );
  });
});

describe("the weather of a climate", () => {
  const refusal = (columns: Climate["columns"], latitude?: number): string =>
    messageOf(() => refuseImpossibleWeather(climateOf(columns), latitude, "SI"));

  test.each<[string, Climate["columns"], number | undefined, RegExp]>([
    [
      "wind of a month",
      { windAt10m: fill(21) },
      40,
      /^climate, Jan, .*wind at 10 m, months: must be as some place has it, 0\.6 m\/s to 7 m\/s, got 21 m\/s: another unit/,
    ],
    [
      "humidity",
      { humidity: fill(0.01) },
      undefined,
      /humidity: must be as some place has it, 0\.15 to 0\.95, got 0\.01: /,
    ],
    [
      "moisture",
      { vapourPressure: fill(6000) },
      undefined,
      /humidity beside vapour pressure: must be as some place has it/,
    ],
    [
      "the season beyond the rains",
      { sun: sunAt(-40) },
      40,
      /^climate, year, season of the sun: .*: months out of order, or the wrong hemisphere/,
    ],
  ])("is refused by its %s", (_, columns, latitude, message) => {
    expect(refusal(columns, latitude)).toMatch(message);
  });

  test.each<[string, Climate["columns"], number | undefined]>([
    ["likely weather", {}, 40],
    ["calm air", { windAt10m: fill(0) }, 40],
    ["days without a swing", { swing: fill(0) }, 40],
    ["the season within the rains", { sun: sunAt(-34) }, 34.9],
    ["a season without latitude", { sun: sunAt(-40) }, undefined],
  ])("is let pass with %s", (_, columns, latitude) => {
    expect(refusal(columns, latitude)).toBe("");
  });

  test("without a column of humidity or sun is judged by the others", () => {
    const { humidity, sun, ...rest } = climateOf().columns;
    expect([humidity?.length, sun?.length]).toEqual([12, 12]);
    expect(messageOf(() => refuseImpossibleWeather({ monthly: true, columns: rest }, 40, "SI"))).toBe("");
  });

  test("that is unlikely is said by check, months and meaning; sun has a caution of its own", () => {
    const odd = (columns: Climate["columns"], latitude?: number) =>
      oddWeatherFacts(climateOf(columns), latitude, "SI").oddWeather ?? "";
    expect(odd({}, 40)).toBe("");
    expect(odd({ sun: sunAt(40, 0.76) }, 40)).toBe("");
    expect(odd({ windAt10m: fill(7.5), humidity: fill(0.96) }, 40)).toMatch(
      /^humidity 0\.96 \(Jan, .*Dec\): another quantity.*; wind at 10 m, months 7\.5 m\/s \(Jan, .*\): another unit/,
    );
    expect(odd({ air: fill(288) }, 40)).toMatch(/^season of the air 0 \(year\): air and sun of different places/);
    expect(odd({ air: fill(288) })).toBe("");
  });
});
