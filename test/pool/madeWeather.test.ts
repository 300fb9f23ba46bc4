/**
 * The year from twelve rows beside the year from the same station's 8,760 hours, at six places (NREL TMY3, public data). The
 * twelve rows are the means of those hours. docs/calibration.md prints the table; this test holds it to what is computed.
 */
import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { rawOfExample } from "../../core/kernel/explain/describe";
import type { CellMatrix } from "../../core/kernel/values/cellInput";
import { isFault } from "../../core/kernel/values/fault";
import { readWeather } from "../../src/workbook/weather/weather";

const PLACES = [
  ["Miami", "weather-miami-fl.csv", 25.82],
  ["Houston", "weather-houston-tx.csv.gz", 29.99],
  ["Phoenix", "weather-phoenix-az.csv.gz", 33.43],
  ["Atlanta", "weather-atlanta-ga.epw.gz", 33.63],
  ["Denver", "weather-denver-co.epw.gz", 39.83],
  ["Chicago", "weather-chicago-il.csv", 41.98],
] as const;

const textOf = (file: string): string => {
  const bytes = readFileSync(new URL(`../golden/${file}`, import.meta.url));
  const text = (file.endsWith(".gz") ? gunzipSync(bytes) : bytes).toString("utf8");
  return text.replace(/^(#.*\n)+/, "");
};

/** The year's row by column, SI; a frozen pool is at 0 °C. */
const year = (latitude: number, rows: CellMatrix): ReadonlyMap<string, number> => {
  const definition = lookUp(CATALOGUE, "POOL.YEAR");
  if (!definition) throw new Error("not listed");
  const inputs = rawOfExample({ poolArea: 100, waterDepth: 1.5, setPoint: 27, latitude, shelter: 0.3 });
  const table = evaluate(compile(definition), [inputs, rows, "SI"], CATALOGUE);
  if (isFault(table)) throw new Error(table.message);
  const [head = [], ...months] = table as CellMatrix;
  const last = months.at(-1) ?? [];
  return new Map(
    head.map((name, place) => [String(name).replace(/ \(.*/, ""), last[place] === "frozen" ? 0 : Number(last[place])]),
  );
};

const COLUMNS = ["back up without", "warm days without", "pool without lowest", "pool without highest"] as const;

interface Row {
  readonly place: string;
  readonly hours: readonly number[];
  readonly months: readonly number[];
}

const rowOf = ([place, file, latitude]: (typeof PLACES)[number]): Row => {
  const text = textOf(file);
  const [hours, months] = [true, false].map((hourly) => {
    const found = year(latitude, readWeather(text, hourly).rows);
    return COLUMNS.map((column) => found.get(column) ?? Number.NaN);
  });
  return { place, hours: hours ?? [], months: months ?? [] };
};

const ROWS: readonly Row[] = PLACES.map(rowOf);

const printed = ({ place, hours: h, months: m }: Row): string => {
  const [need = 0, warm = 0, low = 0, high = 0] = h;
  const [needMade = 0, warmMade = 0, lowMade = 0, highMade = 0] = m;
  const celsius = (value: number): string => (value === 0 ? "frozen" : value.toFixed(1));
  const mwh = (kwh: number): string => (kwh / 1000).toFixed(1);
  const cells = [
    place,
    mwh(need),
    mwh(needMade),
    `${(100 * (needMade / need - 1)).toFixed(1)} %`,
    warm.toFixed(0),
    warmMade.toFixed(0),
    celsius(low),
    celsius(lowMade),
    celsius(high),
    celsius(highMade),
  ];
  return cells.join(" | ");
};

describe("weather made from twelve rows", () => {
  test.each(ROWS)("needs within 6 % of the heat that the real hours of $place need", ({ hours, months }) => {
    expect(Math.abs((months[0] ?? 0) / (hours[0] ?? 1) - 1)).toBeLessThan(0.06);
  });

  test.each(ROWS)("has as many warm days as the real hours of $place, within twelve", ({ hours, months }) => {
    expect(Math.abs((months[1] ?? 0) - (hours[1] ?? 0))).toBeLessThanOrEqual(12);
  });

  test.each(ROWS)("lets the pool of $place get as cold and as warm as the real hours, within 2.5 K", (row) => {
    for (const at of [2, 3]) expect(Math.abs((row.months[at] ?? 0) - (row.hours[at] ?? 0))).toBeLessThan(2.5);
  });

  test("is compared in the calibration report with the figures computed", () => {
    const report = readFileSync(new URL("../../docs/calibration.md", import.meta.url), "utf8");
    const lines = report.split("\n").map((line) => line.replace(/^\| | \|$/g, "").replace(/ *\| */g, " | "));
    for (const row of ROWS) expect(lines).toContain(printed(row));
  });
});
