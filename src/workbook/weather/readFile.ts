/** A dropped file: a year of weather, or a logger's readings over any time. No host, no network. */
import { isEpw } from "./epw";
import { fileText } from "./fileText";
import { readLog, type LogRows } from "./log";
import { readWeather, type WeatherRows } from "./weather";

export type RecordedFile = (WeatherRows & { readonly kind: "weather" }) | (LogRows & { readonly kind: "log" });

/** Hours from which on a file may have been meant as a year of weather. */
const NEARLY_A_YEAR = 7000;

const textOf = (thrown: unknown): string =>
  (thrown instanceof Error ? thrown.message : String(thrown)).replace(/[.\s]+$/, "");

/**
 * @param hourly of a year of weather 8,760 rows in place of twelve
 * @throws Error that says why the file can't be read
 */
export function readRecordedFile(bytes: Uint8Array, hourly: boolean): RecordedFile {
  const text = fileText(bytes);
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const log = (): LogRows & { readonly kind: "log" } => ({ ...readLog(lines), kind: "log" });
  if (isEpw(lines)) return { ...readWeather(text, hourly), kind: "weather" };
  let why: string;
  try {
    const weather = readWeather(text, hourly);
    // A column of the pool's water makes it a logger's file, however long it is.
    const found = logOrNothing(log);
    return found?.hasWater === true ? found : { ...weather, kind: "weather" };
  } catch (thrown) {
    why = textOf(thrown);
  }
  const found = log();
  const long = found.rows.length > NEARLY_A_YEAR && !found.hasWater;
  return long ? { ...found, faults: [`no year of weather: ${why}`, ...found.faults] } : found;
}

function logOrNothing<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}
