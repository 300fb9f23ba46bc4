/**
 * `npm run -s weather -- file [--hours]`: reads a weather file (EPW, TMY3 or another CSV, also as .gz) and prints one JSON
 * object with twelve rows, or 8,760 with `--hours`, in SI units as POOL.YEAR takes them.
 */
import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { readWeather } from "../src/workbook/weather/weather";

const textOf = (path: string): string => {
  const raw = readFileSync(path);
  const bytes = raw[0] === 0x1f && raw[1] === 0x8b ? gunzipSync(raw) : raw;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("latin1").decode(bytes);
  }
};

try {
  const args = process.argv.slice(2);
  const [path, ...more] = args.filter((arg) => arg !== "--hours");
  if (path === undefined || more.length > 0) throw new Error("give one file, and --hours for 8,760 rows");
  const {
    station,
    latitude = null,
    longitude = null,
    altitude = null,
    source,
    faults,
    rows,
  } = readWeather(textOf(path), args.includes("--hours"));
  process.stdout.write(`${JSON.stringify({ station, latitude, longitude, altitude, source, faults, rows })}\n`);
} catch (thrown) {
  process.stderr.write(`weather: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
