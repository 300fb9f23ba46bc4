// Packs the stations' months of test/golden/weather-months-22.csv into core/climate/data/stations.ts.
// Run: npx tsx core/climate/fit/pack.ts; then prettier on the file.
import { readFileSync, writeFileSync } from "node:fs";
import { COLUMNS, DIGITS } from "../data/packing";

const file = (path: string): URL => new URL(path, import.meta.url);

const [header = "", ...lines] = readFileSync(file("../../../test/golden/weather-months-22.csv"), "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"));
const names = header.split(",");
const rows = lines.map((line) => line.split(","));
const cell = (row: readonly string[], name: string): string => row[names.indexOf(name)] ?? "";

const station = (row: readonly string[]): string =>
  [
    cell(row, "station").replace(/\s+/g, " ").trim(),
    ...["state", "wmo", "latitude_deg", "longitude_deg", "altitude_m"].map((name) => cell(row, name)),
  ].join("|");

const packed = (row: readonly string[]): string =>
  COLUMNS.map(({ from, least, step, power }) => {
    const n = Math.round((Number(cell(row, from)) - least) ** (1 / power) / step);
    if (!(n >= 0 && n < DIGITS.length ** 2)) throw new Error(`${from}: ${cell(row, from)} is beyond two digits`);
    return DIGITS.charAt(Math.floor(n / DIGITS.length)) + DIGITS.charAt(n % DIGITS.length);
  }).join("");

writeFileSync(
  file("../data/stations.ts"),
  [
    "/**",
    " * Typical months of 22 stations: NREL, TMY3 (2008, US public data, typical months out of 1973 to 2005), packed by",
    " * core/climate/fit/pack.ts. Sun of Fairbanks: its hours are 0.9 h early in the file, which the months don't show.",
    " */",
    "",
    "/** Name, state, WMO number, latitude, longitude, altitude (m), as the files' headers say. */",
    "export const STATIONS =",
    `  ${JSON.stringify([...new Set(rows.map(station))].join(";"))};`,
    "",
    "/** Twelve months a station, columns as in packing.ts, two digits each. */",
    "export const MONTHLY_MEANS =",
    `  ${JSON.stringify(rows.map(packed).join(""))};`,
    "",
  ].join("\n"),
);
