import { describe, expect, test } from "vitest";
import { poolFunctions } from "../../core/pool";
import { lookUp } from "../../core/kernel/define/catalogue";
import { rawOfExample } from "../../core/kernel/explain/describe";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellMatrix, CellScalar } from "../../core/kernel/values/cellInput";
import { admitClimate } from "../../core/pool/year/climate";
import { weatherOf } from "../../core/pool/year/weather";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { cellsIn, numberIn } from "../golden/rows";

type Matrix = (string | number | null)[][];

const HEAD = ["air (°C)", "dew point (°C)", "wind at 10 m (m/s)", "sun (W/m²)", "cloud", "pressure (Pa)"];
const COLUMNS = [
  "air_degC",
  "dewpoint_degC",
  "wind_m_s",
  "global_horizontal_W_m2",
  "cloud_tenths",
  "pressure_Pa",
] as const;

const hourly = (city: string): Matrix => [
  HEAD,
  ...cellsIn(`weather-${city}.csv`).map((row) => COLUMNS.map((column) => numberIn(row, column))),
];

const monthly = (city: string): Matrix => [
  ["mean air (°C)", "swing (K)", "humidity", "wind (m/s)", "sun (kWh/m2/day)", "mains (°C)"],
  ...cellsIn("weather-monthly.csv")
    .filter((row) => row["city"] === city)
    .map((row) =>
      [
        "air_mean_degC",
        "daily_swing_mean_K",
        "humidity_mean_frac",
        "wind_mean_m_s",
        "sun_kWh_m2_day",
        "mains_day_mean_degC",
      ].map((column) => numberIn(row, column)),
    ),
];

const call = (id: string, ...raw: readonly unknown[]): CellMatrix => {
  const definition = lookUp(poolFunctions, id);
  if (definition === undefined) throw new Error(`no ${id}`);
  const out = evaluate(compile(definition), raw, poolFunctions);
  if (isFault(out)) throw new Error(out.message);
  return out as CellMatrix;
};

const inputs = (latitude: number, more: Readonly<Record<string, string | number>> = {}): unknown =>
  rawOfExample({ poolArea: 100, waterDepth: 1.5, setPoint: 27, latitude, shelter: 0.3, ...more });

const cell = (table: CellMatrix, row: string, column: string): CellScalar => {
  const place = (table[0] ?? []).findIndex((head) => String(head).startsWith(`${column} (`) || head === column);
  return table.find(([first]) => first === row)?.[place] ?? null;
};

const refusal = (matrix: CellMatrix, system: "US" | "SI" = "SI"): string => {
  try {
    admitClimate(matrix, system);
  } catch (fault) {
    return isFault(fault) ? `${fault.code} ${fault.message}` : String(fault);
  }
  return "admitted";
};

const miami = hourly("miami-fl");

describe("twelve rows of monthly means", () => {
  test.each([
    ["miami-fl", 25.82],
    ["chicago-il", 41.98],
  ])(
    "monthly means in %s need within 5 % of the heat a year that 8,760 hours need, both ways of counting",
    (city, latitude) => {
      const hours = call("POOL.YEAR", inputs(latitude), city === "miami-fl" ? miami : hourly(city), "SI");
      const months = call("POOL.YEAR", inputs(latitude), monthly(city), "SI");
      for (const column of ["back up without", "back up by month"]) {
        const ratio = Number(cell(months, "Year", column)) / Number(cell(hours, "Year", column));
        expect(Math.abs(ratio - 1), `${column}: ${ratio}`).toBeLessThan(0.05);
      }
    },
  );

  test("hours made from monthly means keep the given means", () => {
    const table = call("POOL.YEAR", inputs(25.82), monthly("miami-fl"), "SI");
    expect(Number(cell(table, "Jul", "air"))).toBeCloseTo(28.13, 1);
    expect(Number(cell(table, "Year", "sun"))).toBeCloseTo(140_250, -3);
  });

  test("monthly rows count in the sheet's units where the header has none", () => {
    const si = monthly("miami-fl");
    const us = [
      ["air", "swing", "humidity", "wind at 10 m", "sun", "mains"],
      ...si
        .slice(1)
        .map(([air, swing, humidity, wind, sun, mains]) => [
          Number(air) * 1.8 + 32,
          Number(swing) * 1.8,
          humidity,
          Number(wind) / 0.44704,
          (Number(sun) * 3412.14163) / 10.7639104,
          Number(mains) * 1.8 + 32,
        ]),
    ] as Matrix;
    const [a, b] = [admitClimate(si, "SI"), admitClimate(us, "US")];
    for (const key of ["air", "swing", "humidity", "windAt10m", "sun", "mains"] as const)
      a.columns[key]?.forEach((value, i) =>
        expect(Math.abs((b.columns[key]?.[i] ?? NaN) / value - 1)).toBeLessThan(1e-6),
      );
  });
});

describe("8,760 rows of hours", () => {
  test("hourly rows are read in any order of columns, month, day and hour passed over", () => {
    const turned = miami.map((line, row) => [row === 0 ? "hour" : row, ...[...line].reverse()]);
    expect(admitClimate(turned, "SI")).toEqual(admitClimate(miami, "SI"));
  });

  test("mains come from their column, from the label before it, else from the air", () => {
    const withMains = miami.map((line, row) => [...line, row === 0 ? "mains (°C)" : 12]);
    const site = { latitude: 0.45, altitude: 11, shelter: 0.3, windAtWater: undefined };
    const mainsOf = (matrix: Matrix, mains: readonly number[] | undefined): readonly number[] => [
      ...new Set(weatherOf(admitClimate(matrix, "SI"), { ...site, mains }).mains),
    ];
    expect(mainsOf(withMains, undefined)).toEqual([285.15]);
    expect(mainsOf(withMains, [290])).toEqual([290]);
    expect(mainsOf(monthly("miami-fl"), [290])).toEqual([290]);
    expect(mainsOf(monthly("miami-fl"), undefined)).toHaveLength(12);
    expect(mainsOf(miami, undefined)).toHaveLength(365);
    const junk = withMains.map((line, row) => (row === 5 ? [...line.slice(0, -1), "junk"] : line));
    expect(refusal(junk)).toMatch(/climate, row 6, mains: expected a number, got "junk"/);
  });

  test("blank rows may follow the hours, which come as zeros on some hosts", () => {
    const months = monthly("miami-fl");
    const blank = (cell: number | null): Matrix => [...months, ...Array.from({ length: 3 }, () => Array(6).fill(cell))];
    expect(admitClimate(blank(0), "SI")).toEqual(admitClimate(months, "SI"));
    expect(admitClimate(blank(null), "SI")).toEqual(admitClimate(months, "SI"));
  });

  test("clouds come from the clearness of the sun where there is no column of them", () => {
    const bare = miami.map((line) => line.filter((_, place) => place !== 4));
    const known = Number(cell(call("POOL.YEAR", inputs(25.82), miami, "SI"), "Year", "back up without"));
    const made = Number(cell(call("POOL.YEAR", inputs(25.82), bare, "SI"), "Year", "back up without"));
    expect(Math.abs(made / known - 1)).toBeLessThan(0.03);
  });

  test("8,760 rows with a header and every column fit, beyond the cells of other arguments", () => {
    expect(miami.length * HEAD.length).toBeGreaterThan(40_000);
    expect(admitClimate(miami, "SI").columns.air).toHaveLength(8760);
  });
});

describe("a climate that can't be read is refused with row and column", () => {
  const changed = (row: number, column: number, value: string | number | null): Matrix =>
    miami.map((line, at) => (at === row - 1 ? line.map((cell1, place) => (place === column ? value : cell1)) : line));

  test.each([
    ["a gap", changed(100, 0, null), /row 100, air: is blank/],
    ["a text", changed(8761, 3, "n/a"), /row 8761, sun: expected a number, got "n\/a"/],
    ["Fahrenheit in a °C column", changed(5, 0, 75), /row 5, air: must be from -60 °C to 60 °C .*got 75 °C/],
    ["a mark for missing data", changed(6, 2, 999), /row 6, wind at 10 m: must be from 0 m\/s to 60 m\/s.*999/],
    [
      "an hour too few",
      miami.slice(0, -1),
      /12 rows \(months\) or 8,760 rows \(hours\).*got 8759 \(hours are missing\)/,
    ],
    ["a leap year", [...miami, ...miami.slice(1, 25)], /got 8784 \(a leap year: leave out 29 February\)/],
    ["an unknown column", [["air", "rain", ...HEAD.slice(2)], ...miami.slice(1)], /no column "rain"/],
    ["a column twice", [["air", "air", ...HEAD.slice(2)], ...miami.slice(1)], /"air" appears twice/],
    ["no humidity", miami.map((line) => line.filter((_, place) => place !== 1)), /"humidity" or "dew point"/],
    ["no sun", miami.map((line) => line.filter((_, place) => place !== 3)), /column "sun" is missing/],
    ["a wrong unit", [["air (kg)", ...HEAD.slice(1)], ...miami.slice(1)], /header, air: unit "kg"/],
  ] as const)("a climate with %s is refused", (_, matrix, says) => {
    expect(refusal(matrix as CellMatrix)).toMatch(says);
    expect(refusal(matrix as CellMatrix)).toMatch(/^#VALUE! climate/);
  });

  test("humidity in percent is refused", () => {
    const percent = MIAMI_MONTHS.map((line, row) =>
      line.map((value, place) => (row > 0 && place === 2 ? Number(value) * 100 : value)),
    );
    expect(refusal(percent)).toMatch(
      /row 2, humidity: must be from 0.005 to 1 \(a fraction: type 60% or 0.6\), got 70.87/,
    );
  });

  test("an empty row between others is refused, but blank rows at the end are not", () => {
    const gap = [...MIAMI_MONTHS.slice(0, 5), Array<null>(6).fill(null), ...MIAMI_MONTHS.slice(6)] as CellMatrix;
    expect(refusal(gap)).toMatch(/row 6, air: is blank/);
    expect(refusal([...MIAMI_MONTHS, Array<null>(6).fill(null)] as CellMatrix)).toBe("admitted");
  });

  test("monthly rows without a latitude are refused", () => {
    const raw = rawOfExample({ poolArea: 100, setPoint: 27 });
    expect(() => call("POOL.YEAR", raw, MIAMI_MONTHS, "SI")).toThrow(/"latitude" is needed with monthly rows/);
  });
});

describe("answers of a cold place", () => {
  const chicago = hourly("chicago-il");

  test("months below freezing say frozen, and summer has numbers", () => {
    const table = call("POOL.YEAR", inputs(41.98), chicago, "SI");
    expect(cell(table, "Jan", "pool without")).toBe("frozen");
    expect(cell(table, "Jan", "pool without lowest")).toBe("frozen");
    expect(cell(table, "Year", "pool without")).toBe("frozen");
    expect(Number(cell(table, "Jul", "pool without"))).toBeGreaterThan(20);
  });

  test("heat is needed in the season only", () => {
    const table = call("POOL.YEAR", inputs(41.98, { seasonStart: 5, seasonEnd: 9 }), chicago, "SI");
    for (const month of ["Jan", "Apr", "Oct"]) expect(cell(table, month, "back up without")).toBe(0);
    expect(Number(cell(table, "May", "back up without"))).toBeGreaterThan(1000);
  });
});

describe("POOL.SPREAD and POOL.HOURS", () => {
  test("a spread's rows are the totals of the years", () => {
    const spread = call("POOL.SPREAD", inputs(25.82), MIAMI_MONTHS, "shelter", [[0.3], [0.1], ["open"]], "SI");
    expect(spread).toHaveLength(4);
    [0.3, 0.1, "open"].forEach((shelter, place) => {
      const year = call("POOL.YEAR", inputs(25.82, { shelter }), MIAMI_MONTHS, "SI").at(-1) ?? [];
      year.slice(1).forEach((value, column) => {
        const got = spread[place + 1]?.[column + 1];
        if (typeof value !== "number") return expect(got).toBe(value);
        expect(Math.abs(Number(got) - value)).toBeLessThan(1e-4 * Math.abs(value) + 1e-3);
      });
    });
  });

  test("an unknown label and too many values are refused", () => {
    const spread = (label: string, values: unknown) => () =>
      call("POOL.SPREAD", inputs(25.82), MIAMI_MONTHS, label, values, "SI");
    expect(spread("shelte", [[0.3]])).toThrow(/label: no label "shelte" in the block; the nearest is "shelter"/);
    expect(
      spread(
        "shelter",
        Array.from({ length: 21 }, () => [0.3]),
      ),
    ).toThrow(/values: expected 1 to 20 values, got 21/);
    expect(spread("shelter", [[7]])).toThrow(/values, number 1, shelter: must be at most 1/);
  });

  test("a month's typical day has 24 hours whose means are the month's", () => {
    const hours = call("POOL.HOURS", inputs(25.82), MIAMI_MONTHS, "July", "SI");
    const year = call("POOL.YEAR", inputs(25.82), MIAMI_MONTHS, "SI");
    expect(hours).toHaveLength(25);
    const pool = hours.slice(1).map((line) => Number(line[2]));
    expect(pool.reduce((sum, each) => sum + each, 0) / 24).toBeCloseTo(Number(cell(year, "Jul", "pool without")), 6);
  });

  test("month 0 gives 8,760 hours whose sums and means are the year's, and a blank month is refused", () => {
    const machine = { designLoad: 10, ratedCooling: 26, ratedPower: 8, exchangerUA: 3000, waterFlow: 10 };
    const hours = call("POOL.HOURS", inputs(25.82, machine), MIAMI_MONTHS, 0, "SI");
    const year = call("POOL.YEAR", inputs(25.82, machine), MIAMI_MONTHS, "SI");
    expect(hours).toHaveLength(8761);
    const of = (head: string): readonly number[] => {
      const place = (hours[0] ?? []).findIndex((each) => String(each).startsWith(head));
      return hours.slice(1).map((line) => Number(line[place]));
    };
    const total = (head: string): number => of(head).reduce((sum, each) => sum + each, 0);
    expect(total("pool with (") / 8760).toBeCloseTo(Number(cell(year, "Year", "pool with")), 6);
    expect(total("heat taken")).toBeCloseTo(Number(cell(year, "Year", "heat taken")), 3);
    expect(total("electricity with (")).toBeCloseTo(Number(cell(year, "Year", "electricity with")), 3);
    expect(total("electricity with (")).toBeGreaterThan(1000);
    expect(hours[1]?.at(-1)).toBe("Monday");
    expect(hours[8760]?.at(-1)).toBe("Monday");
    expect(hours[25]?.at(-1)).toBe("Tuesday");
    expect(() => call("POOL.HOURS", inputs(25.82), MIAMI_MONTHS, null, "SI")).toThrow(/month/);
  });
});
