/** What is impossible, unlikely or fine in twelve rows or 8,760 of weather, by limits that 22 US stations show. */
import { DAYS, FIRST_DAY, HOURS_OF_DAY, HOURS_OF_YEAR } from "../../numeric/calendar";
import { mean } from "../../numeric/series";
import type { System } from "../../kernel/values/quantity";
import type { Climate } from "./climate";
import { dailySun } from "./sunCheck";
import { vapourPressureAt } from "./vapourTable";
import { monthlyMeans } from "./weather";
import { findingOf, type WeatherFinding, type Test } from "./finding";
import { TROPIC, centreOfSun, clearnessTest, seasonTests } from "./sunTests";

const foldOver = (
  values: ArrayLike<number>,
  of: (a: number, b: number) => number,
  from: number,
  to: number,
): number => {
  let found = values[from] ?? 0;
  for (let i = from; i < to; i++) found = of(found, values[i] ?? 0);
  return found;
};

/** Mean daily highest less lowest of the months, K. */
const swings = (air: Float64Array): readonly number[] =>
  DAYS.map((days, month) =>
    mean(
      Array.from({ length: days }, (_, day) => {
        const first = HOURS_OF_DAY * ((FIRST_DAY[month] ?? 0) + day);
        const last = first + HOURS_OF_DAY;
        return foldOver(air, Math.max, first, last) - foldOver(air, Math.min, first, last);
      }),
    ),
  );

/** Humidity beside dew point or vapour pressure, where both are there. */
export function moistureTests({ monthly, columns }: Climate, air: readonly number[]): readonly Test[] {
  const { humidity, dewPoint, vapourPressure } = columns;
  if (monthly)
    return humidity && vapourPressure
      ? [
          {
            check: "humidity beside vapour pressure",
            kind: "number",
            values: air.map((T, i) => ((humidity[i] ?? 0) * vapourPressureAt(T)) / (vapourPressure[i] ?? 1)),
            fine: [0.7, 1.25],
            possible: [0.5, 1.6],
            meaning: "one of the two is another quantity or unit",
          },
        ]
      : [];
  const { air: hours } = columns;
  if (!dewPoint || !hours) return [];
  const above = dewPoint.reduce((count, each, i) => count + (each > (hours[i] ?? 0) + 0.1 ? 1 : 0), 0);
  const off = humidity?.map((each, i) => each - vapourPressureAt(dewPoint[i] ?? 0) / vapourPressureAt(hours[i] ?? 0));
  return [
    {
      check: "hours with the dew point above the air",
      kind: "count",
      values: [above],
      fine: [0, 8],
      possible: [0, 88],
      meaning: "columns swapped, or a wet bulb for a dew point",
    },
    ...(off
      ? [
          {
            check: "humidity beside dew point, root mean square",
            kind: "number" as const,
            values: [Math.sqrt(mean(off.map((each) => each * each)))],
            fine: [0, 0.03] as const,
            possible: [0, 0.1] as const,
            meaning: "one of the two columns is another quantity",
          },
        ]
      : []),
  ];
}

export const [WIND, HUMIDITY] = ["wind at 10 m, months", "humidity"];
const SLIP = "another unit, or a mark for missing data";

function hourlyTests({ columns }: Climate): readonly Test[] {
  const { sun = new Float64Array(0), windAt10m = new Float64Array(0) } = columns;
  return [
    {
      check: "centre of the sun, clock",
      kind: "time",
      values: [3600 * centreOfSun(sun)],
      fine: [3600 * 11, 3600 * 13.2],
      possible: [3600 * 9.5, 3600 * 15],
      meaning: "stamps at the start of the hour, a daylight-saving clock, or universal time",
    },
    {
      check: "strongest wind",
      kind: "wind speed",
      values: [foldOver(windAt10m, Math.max, 0, windAt10m.length)],
      fine: [5, 30],
      possible: [0.5, 45],
      meaning: SLIP,
    },
  ];
}

export function commonTests(climate: Climate, air: readonly number[], wind: readonly number[]): readonly Test[] {
  const { monthly, columns } = climate;
  const by = (values: Float64Array | undefined): readonly number[] =>
    values === undefined ? [Number.NaN] : monthly ? Array.from(values) : monthlyMeans(values);
  return [
    {
      check: "air",
      kind: "temperature",
      values: monthly ? air : [Math.min, Math.max].map((of) => foldOver(columns.air ?? [], of, 0, HOURS_OF_YEAR)),
      fine: [233.15, 318.15],
      possible: [213.15, 333.15],
      meaning: SLIP,
    },
    {
      check: "daily swing of the air",
      kind: "temperature difference",
      values: columns.swing ? Array.from(columns.swing) : swings(columns.air ?? new Float64Array(0)),
      fine: [4, 18],
      possible: [1, 25],
      meaning: "not the mean daily highest less lowest, or another unit",
    },
    {
      check: HUMIDITY,
      kind: "relative humidity",
      values: by(columns.humidity),
      fine: [0.15, 0.95],
      possible: [0.02, 1],
      meaning: "another quantity, or per cent of per cent",
    },
    {
      check: WIND,
      kind: "wind speed",
      values: wind,
      fine: [0.6, 7],
      possible: [0.05, 20],
      meaning: "another unit (mph read as m/s has a mean of 6 to 12), or wind at roof height",
    },
    {
      check: "wind at 10 m, year",
      kind: "wind speed",
      values: [mean(wind)],
      fine: [1, 8],
      possible: [0.05, 20],
      meaning: "another unit, or a sheltered mast",
    },
  ];
}

/** Every test of a climate at a latitude in degrees; texts in the call's units. */
export function findingsOf(climate: Climate, latitude: number, system: System): readonly WeatherFinding[] {
  const { monthly, columns } = climate;
  const by = (values: Float64Array = new Float64Array(12)): readonly number[] =>
    monthly ? Array.from(values) : monthlyMeans(values);
  const [air, wind, sun] = [by(columns.air), by(columns.windAt10m), dailySun(climate)];
  const seasons = Math.abs(latitude) < TROPIC ? [] : seasonTests(climate, latitude, sun, air);
  const tests = [
    clearnessTest(climate, latitude, sun),
    ...seasons,
    ...commonTests(climate, air, wind),
    ...moistureTests(climate, air),
    ...(monthly ? [] : hourlyTests(climate)),
  ];
  return tests
    .filter(({ values }) => values.some((value) => !Number.isNaN(value)))
    .map((test) => findingOf(test, system));
}
