/**
 * `npm run -s weather -- file [--hours]`: reads a weather file (EPW, TMY3 or another CSV, also as .gz) and prints one JSON
 * object with twelve rows, or 8,760 with `--hours`, in SI units as POOL.YEAR takes them.
 */
import { readFileSync } from "node:fs";
import { fileText } from "../src/workbook/weather/fileText";
import { readWeather } from "../src/workbook/weather/weather";
import { endWithReader } from "../src/preview/cli/endWithReader";

endWithReader();

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
  } = readWeather(fileText(readFileSync(path)), args.includes("--hours"));
  process.stdout.write(`${JSON.stringify({ station, latitude, longitude, altitude, source, faults, rows })}\n`);
} catch (thrown) {
  process.stderr.write(`weather: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
