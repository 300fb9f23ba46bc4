/** Loggers' files: hours of any time, with what is odd about clock, units and sensors named. */
import { gzipSync, strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { readRecordedFile, type RecordedFile } from "../../../src/workbook/weather/readFile";

const DAY = 96;

interface LogOptions {
  readonly days?: number;
  readonly heads?: string;
  /** Stamp of a quarter of an hour, counted from the start. */
  readonly stamp?: (quarter: number) => string;
  /** Cells behind the stamp, undefined leaves the row out. */
  readonly cells?: (quarter: number) => string | undefined;
}

const START = Date.UTC(2024, 6, 14);
const iso = (quarter: number): string => new Date(START + quarter * 900_000).toISOString().slice(0, 16);
/** A pool that cools at night, °C, and its air. */
const water = (quarter: number): number => 28 + 0.4 * Math.sin((2 * Math.PI * quarter) / DAY);
const air = (quarter: number): number => 20 + 6 * Math.sin((2 * Math.PI * (quarter - 30)) / DAY);
const usual = (quarter: number): string => `${water(quarter).toFixed(2)},${air(quarter).toFixed(2)},55`;

const logOf = ({
  days = 4,
  heads = "Timestamp,Pool temp (°C),Outdoor temp (°C),RH (%)",
  stamp = iso,
  cells = usual,
}: LogOptions = {}): Uint8Array => {
  const lines = Array.from({ length: days * DAY }, (_, quarter) => {
    const rest = cells(quarter);
    return rest === undefined ? [] : [`${stamp(quarter)},${rest}`];
  });
  return strToU8(["Fernhill Hall (invented)", heads, ...lines.flat()].join("\r\n"));
};

const read = (bytes: Uint8Array): RecordedFile => readRecordedFile(bytes, false);
const faults = (options: LogOptions): string => read(logOf(options)).faults.join("\n");

describe("A logger's file", () => {
  test("becomes rows by the hour: the mean of the four readings before each", () => {
    const found = read(logOf());
    expect(found.kind).toBe("log");
    expect(found.faults).toEqual([]);
    expect(found.rows[0]).toEqual(["time", "water (°C)", "air (°C)", "humidity"]);
    const second = found.rows[1] ?? [];
    const mean = [1, 2, 3, 4].reduce((sum, quarter) => sum + Number(water(quarter).toFixed(2)), 0) / 4;
    // Excel counts 14 July 2024 as 45487.
    expect(second[0]).toBeCloseTo(45487 + 1 / 24, 5);
    expect(second[1]).toBeCloseTo(mean, 3);
    expect(second[3]).toBe(0.55);
    expect(found.rows).toHaveLength(1 + 4 * 24);
  });

  test("in °F under heads without brackets, newest first, is the same log", () => {
    const f = (value: number): string => (value * 1.8 + 32).toFixed(3);
    const last = 4 * DAY - 1;
    const found = read(
      logOf({
        heads: "Date Time,Pool_Temp_F,Outdoor Temp F,Humidity %",
        stamp: (quarter) => iso(last - quarter),
        cells: (quarter) => `${f(water(last - quarter))},${f(air(last - quarter))},55`,
      }),
    );
    expect(found.faults).toEqual(["newest first: put in the order of time"]);
    const plain = read(logOf()).rows;
    expect(found.rows).toHaveLength(plain.length);
    found.rows.slice(1).forEach((row, at) => expect(row[1]).toBeCloseTo(Number(plain[at + 1]?.[1]), 1));
  });

  test("keeps a gap blank and tells its length and place", () => {
    const cells = (quarter: number): string | undefined =>
      quarter > 100 && quarter < 125 ? undefined : usual(quarter);
    expect(faults({ cells })).toBe(
      "1 gap in the time, the longest 6.3 hours from 2024-07-15 01:00: left blank, not filled",
    );
    const blank = read(logOf({ cells })).rows.filter((row) => row[1] === "");
    expect(blank).toHaveLength(6);
  });

  test("with a 12-hour clock without AM and PM is refused", () => {
    const stamp = (quarter: number): string => {
      const [date = "", clock = ""] = iso(quarter).split("T");
      const hour = Number(clock.slice(0, 2)) % 12;
      return `${date} ${hour === 0 ? 12 : hour}${clock.slice(2)}`;
    };
    expect(() => read(logOf({ stamp }))).toThrow("12-hour clock without AM and PM");
  });

  test("with an hour that comes twice in autumn names daylight saving", () => {
    const begin = Date.UTC(2024, 10, 2);
    const stamp = (quarter: number): string =>
      new Date(begin + (quarter < 104 ? quarter : quarter - 4) * 900_000).toISOString().slice(0, 16);
    const told = faults({ stamp });
    expect(told).toContain("a clock put back after daylight saving?");
    expect(told).toContain("4 times appear twice: their mean was taken");
  });

  test("with a sensor that sticks, one that is coarse, and °F among °C is named with time and size", () => {
    const stuck = (quarter: number): string =>
      `${water(Math.min(quarter, 200)).toFixed(2)},${air(quarter).toFixed(2)},55`;
    expect(faults({ cells: stuck })).toMatch(
      /water \(°C\): the same reading for 4\d\.\d hours|the same reading for 1\.9 days/,
    );
    const coarse = (quarter: number): string => `${Math.round(water(quarter) * 2) / 2},${air(quarter).toFixed(2)},55`;
    expect(faults({ cells: coarse })).toContain("water (°C): steps of 0.50 K");
    const mixed = (quarter: number): string =>
      `${(quarter < 150 ? air(quarter) * 1.8 + 32 : air(quarter)).toFixed(2)},55`;
    expect(faults({ heads: "Timestamp,Outdoor temp,RH (%)", cells: mixed })).toContain("°F and °C mixed in one column");
  });

  test("without a unit says which one was taken, and keeps columns that it doesn't know", () => {
    const found = read(
      logOf({
        heads: "Timestamp,Pool,Outdoor temp (°C),Pump amps",
        cells: (quarter) => `82,${air(quarter).toFixed(2)},6.5`,
      }),
    );
    expect(found.faults).toContain("Pool: no unit, taken as °F");
    expect(found.rows[0]).toEqual(["time", "water (°C)", "air (°C)", "Pump amps"]);
    expect(found.rows[5]?.[3]).toBe(6.5);
  });
});

describe("A packed file", () => {
  test("is unpacked from .gz and .zip", () => {
    const plain = read(logOf()).rows;
    expect(read(gzipSync(logOf())).rows).toEqual(plain);
    expect(read(zipSync({ "readme.md": strToU8("x"), "log.csv": logOf() })).rows).toEqual(plain);
  });

  test("that is a workbook, damaged or no text is refused with a sentence", () => {
    expect(() => read(zipSync({ "[Content_Types].xml": strToU8("x") }))).toThrow("this is a workbook");
    expect(() => read(gzipSync(logOf()).slice(0, 400))).toThrow("the packed file is damaged or cut off");
    expect(() => read(new Uint8Array([1, 2, 0, 4]))).toThrow("this is no text");
    expect(() => read(strToU8("a,b\n1,2"))).toThrow("no line that names a time");
  });
});
