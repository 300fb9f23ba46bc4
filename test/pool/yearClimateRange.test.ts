/** The climate range: header, order, units, limits and refusals. */
import { describe, expect, test } from "vitest";
import type { CellScalar } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { admitClimate, climateLines, type Climate } from "../../core/pool/year/climate";

type Line = readonly CellScalar[];

/** Air 60 °F, swing 15 °F, humidity 0.6, wind 7 mph, sun 1,500 BTU/(ft²·day). */
const MONTH: Line = [60, 15, 0.6, 7, 1500];
const months = (line: Line = MONTH): readonly Line[] => Array<Line>(12).fill(line);
const HEAD: Line = ["air", "swing", "humidity", "wind", "sun"];
/** Air, humidity, wind, sun; US. */
const hours = (line: Line = [60, 0.6, 7, 100, 5]): readonly Line[] => Array<Line>(8760).fill(line);

const admitted = (...lines: readonly Line[]): Climate => admitClimate(lines, "US");
const refusal = (...lines: readonly Line[]): string => {
  try {
    admitted(...lines);
    return "admitted";
  } catch (thrown) {
    return isFault(thrown) ? thrown.message : String(thrown);
  }
};
const first = ({ columns }: Climate, column: keyof Climate["columns"]): number => columns[column]?.[0] ?? NaN;
const kelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;

describe("rows without a header", () => {
  test("of months are air, swing, humidity, wind, sun and mains, in the call's own units", () => {
    const climate = admitted(...months([...MONTH, 70]));
    expect(climate.monthly).toBe(true);
    expect(Object.keys(climate.columns)).toEqual(["air", "swing", "humidity", "windAt10m", "sun", "mains"]);
    expect(first(climate, "air")).toBeCloseTo(kelvin(60), 9);
    expect(first(climate, "swing")).toBeCloseTo(15 / 1.8, 9);
    expect(first(climate, "humidity")).toBe(0.6);
    expect(first(climate, "windAt10m")).toBeCloseTo(7 * 0.44704, 9);
    expect(first(climate, "mains")).toBeCloseTo(kelvin(70), 9);
    expect(first(admitClimate(months([15, 8, 0.6, 3, 4.5]), "SI"), "air")).toBeCloseTo(288.15, 9);
  });

  test("of hours are air, humidity, wind, sun, cloud and pressure", () => {
    const climate = admitted(...hours());
    expect(climate.monthly).toBe(false);
    expect(Object.keys(climate.columns)).toEqual(["air", "humidity", "windAt10m", "sun", "cloud"]);
    expect(climate.columns.air).toHaveLength(8760);
  });

  test("may have blank rows below, also those that a host passes as 0", () => {
    expect(admitted(...months(), [null, "", 0], [0, 0, 0]).monthly).toBe(true);
    expect(refusal(...months(), [null, "x", 0])).toMatch(/^climate: expected 12 rows .* got 13;/);
  });

  test("of too many columns are refused", () => {
    expect(refusal(...months([...MONTH, 70, 1]))).toBe("climate: at most 6 columns without a header row, got 7");
    expect(refusal(...hours([60, 0.6, 7, 100, 5, 14.7, 1]))).toBe(
      "climate: at most 6 columns without a header row, got 7",
    );
  });
});

describe("a header", () => {
  test("names columns in any order, with units, and some that are passed over", () => {
    const climate = admitted(
      ["Month", "sun (kWh/m2/day)", "", "humidity (%)", "Air (°C)", "swing, K", "wind at 10 m (m/s)", "cloud (tenths)"],
      ...months(["Jan", 4, "note", 60, 20, 8, 3, 5]),
    );
    expect(Object.keys(climate.columns).sort()).toEqual(["air", "humidity", "sun", "swing", "windAt10m"]);
    expect(first(climate, "sun")).toBeCloseTo(4 * 3.6e6, 3);
    expect(first(climate, "humidity")).toBeCloseTo(0.6, 12);
    expect(first(climate, "air")).toBeCloseTo(293.15, 9);
    expect(first(climate, "swing")).toBeCloseTo(8, 9);
    expect(first(climate, "windAt10m")).toBe(3);
  });

  test.each(["sun (MJ/(m²·day))", "sun (MJ/m²/d)", "sun, MJ/m2-day"])(
    "names a day's sun in any unit of it: %s",
    (sun) => {
      const climate = admitted(
        ["air (°C)", "swing (K)", "humidity", "wind (m/s)", sun],
        ...months([20, 8, 0.6, 3, 14.4]),
      );
      expect(first(climate, "sun")).toBeCloseTo(14.4e6, 3);
    },
  );

  test("may name a column that itself ends in brackets", () => {
    const climate = admitted(["T", "swing", "RH (%)", "WS10m", "G(h)"], ...months([60, 15, 55, 7, 1500]));
    expect(first(climate, "humidity")).toBeCloseTo(0.55, 12);
    expect(climate.columns.sun).toHaveLength(12);
  });

  test("of hours takes cloud and dew point", () => {
    const climate = admitted(
      ["air (°C)", "dew point (°C)", "wind", "sun (W/m2)", "cloud (tenths)"],
      ...hours([20, 10, 7, 300, 5]),
    );
    expect(first(climate, "dewPoint")).toBeCloseTo(283.15, 9);
    expect([first(climate, "sun"), first(climate, "cloud")]).toEqual([300, 5]);
  });

  test("has no number in it and at least one name of a column", () => {
    const of = (...lines: readonly Line[]) => climateLines(lines).header.length;
    expect([of(HEAD, MONTH), of(["sun", "other"], MONTH), of(["sun", 1], MONTH), of(["other"], MONTH), of()]).toEqual([
      1, 1, 0, 0, 0,
    ]);
    expect(climateLines([HEAD, MONTH, MONTH, [null]]).lines).toEqual([MONTH, MONTH]);
  });

  test.each([
    [["air", "swing", "humidity", "cloudd", "sun"], 'no column "cloudd" here; the nearest is "cloud"'],
    [["air", "swing", "humidity", "swnig (K)", "sun"], 'no column "swnig (K)" here; the nearest is "swing"'],
    [
      ["air", "swing", "humidity", "xyzzyplugh", "sun"],
      'no column "xyzzyplugh" here; columns are air, high, low, swing,',
    ],
    [["air", "swing", "humidity", "q".repeat(60), "sun"], `no column "${"q".repeat(40)}" here`],
    [["air", "swing", "air", "wind", "sun"], 'the column "air" appears twice'],
    [["dew point", "swing", "Dew point", "wind", "sun"], 'the column "dew point" appears twice'],
  ])("that is wrong is refused by name: %j", (head, says) => {
    expect(refusal(head, ...months()).startsWith(`climate, header: ${says}`), refusal(head, ...months())).toBe(true);
  });

  test("with a unit of another kind is refused by column and unit", () => {
    expect(refusal(["air (psi)", "swing", "humidity", "wind", "sun"], ...months())).toMatch(
      /^climate, header, air: unit "psi": /,
    );
  });
});

describe("a value", () => {
  const withAir = (cell: CellScalar): string => refusal(...months().slice(1), [cell, ...MONTH.slice(1)]);

  test("that is blank, a word or an error is refused by row and column, counted from the top of the range", () => {
    expect(withAir(null)).toBe("climate, row 12, air: is blank");
    expect(withAir("")).toBe("climate, row 12, air: is blank");
    expect(withAir("warm")).toBe('climate, row 12, air: expected a number, got "warm"');
    expect(withAir(true)).toMatch(/^climate, row 12, air: expected a number, got /);
    expect(refusal(HEAD, ...months().slice(1), ["warm", ...MONTH.slice(1)])).toMatch(/^climate, row 13, air: /);
  });

  test("may carry its own unit, or be a text of digits in the head's unit", () => {
    expect(first(admitted(...months(["20 °C", ...MONTH.slice(1)])), "air")).toBeCloseTo(293.15, 9);
    const head = ["air (°C)", ...HEAD.slice(1)];
    expect(first(admitted(head, ...months([" 20.5 ", ...MONTH.slice(1)])), "air")).toBeCloseTo(293.65, 9);
    expect(first(admitted(head, ...months(["68 °F", ...MONTH.slice(1)])), "air")).toBeCloseTo(293.15, 9);
    expect(first(admitted(...months(["68", ...MONTH.slice(1)])), "air")).toBeCloseTo(293.15, 9);
  });

  test("at a limit is admitted, and beyond it refused with both limits and a hint", () => {
    expect(withAir(140)).toBe("admitted");
    expect(withAir(-76)).toBe("admitted");
    expect(withAir(140.1)).toMatch(
      /^climate, row 12, air: must be from -76 °F to 140 °F \(another unit, or a mark for missing data\?\), got 140\.1 °F$/,
    );
    expect(withAir(-999)).toMatch(/must be from .* got -999 °F$/);
    expect(withAir(Number.NaN)).toMatch(/must be from .* got /);
  });
});

describe("the rows", () => {
  test.each([
    [11, /^climate: expected 12 rows \(months\) or 8,760 rows \(hours\), got 11; the range has 11 rows × 5 columns$/],
    [13, /\(hours\), got 13; /],
    [8000, /, got 8000; /],
    [8001, /, got 8001 \(hours are missing\); /],
    [8759, /, got 8759 \(hours are missing\); /],
    [8761, /, got 8761; /],
    [8784, /, got 8784 \(a leap year: leave out 29 February\); /],
  ])("number 12 or 8,760, not %d", (count, message) => {
    expect(refusal(...Array<Line>(count).fill(MONTH))).toMatch(message);
  });

  test("are counted below the header", () => {
    expect(refusal(HEAD, ...months().slice(2))).toMatch(/8,760 rows \(hours\) below the header, got 10; .* 11 rows/);
  });

  test.each([
    [["air", "humidity", "wind", "sun"], 'the column "swing" is missing'],
    [["swing", "humidity", "wind", "sun"], 'the column "air" is missing'],
    [["high", "humidity", "wind", "sun"], 'the column "air" is missing'],
    [["high", "low", "wind", "sun"], 'the column "humidity" is missing'],
    [["high", "low", "humidity", "wind"], 'the column "sun" is missing'],
  ])("of months need their columns: %j", (head, says) => {
    expect(refusal(head, ...months([60, 0.6, 7, 5]))).toBe(`climate: ${says}`);
  });

  test.each([
    [["air", "wind", "sun", "cloud"], 'climate: hourly rows need a column "humidity" or "dew point"'],
    [["air", "humidity", "wind", "cloud"], 'climate: the column "sun" is missing'],
    [["high", "humidity", "wind", "sun"], 'climate, header: hourly rows take "air", not "high" and "low"'],
    [["low", "humidity", "wind", "sun"], 'climate, header: hourly rows take "air", not "high" and "low"'],
  ])("of hours need theirs: %j", (head, says) => {
    expect(refusal(head, ...hours([60, 0.6, 7, 5]))).toBe(says);
  });

  test("of months may give mean and swing by highs and lows", () => {
    const head = ["high (°C)", "low (°C)", "humidity", "wind", "sun"];
    const climate = admitted(head, ...months([25, 15, 0.6, 7, 1500]));
    expect(first(climate, "air")).toBeCloseTo(293.15, 9);
    expect(first(climate, "swing")).toBeCloseTo(10, 9);
    expect(refusal(head, ...months([25, 15, 0.6, 7, 1500]).slice(1), [14, 15, 0.6, 7, 1500])).toBe(
      "climate, row 13, high: is below low",
    );
    const own = admitted([...head, "air (°C)", "swing (K)"], ...months([25, 15, 0.6, 7, 1500, 19, 9]));
    expect([first(own, "air"), first(own, "swing")].map((each) => Number(each.toFixed(6)))).toEqual([292.15, 9]);
  });
});
