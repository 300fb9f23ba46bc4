/** The stored value of a cell, by its type: ECMA-376 part 1, 18.18.11. */
import type { CellValue } from "../../port";
import { cellTextOf } from "../xml/text";
import type { ScannedCell } from "./scan";

export interface ValueContext {
  readonly strings: readonly string[];
  readonly date1904: boolean;
}

const DAY = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);
/** Serial numbers of the 1904 system begin so many days later. */
const DAYS_1904 = 1462;

/** An ISO date or time of day as a serial number. */
function serialOf(text: string, date1904: boolean): CellValue {
  const time = /^T?\d{2}:/.test(text) ? `1899-12-30T${text.replace(/^T/, "")}` : text;
  const zoned = /Z$|[+-]\d{2}:\d{2}$/.test(time) || !time.includes("T") ? time : `${time}Z`;
  const days = (Date.parse(zoned) - DAY_ZERO) / DAY;
  if (!Number.isFinite(days)) return text;
  return days - (date1904 && days >= DAYS_1904 ? DAYS_1904 : 0);
}

function numberFrom(text: string): CellValue {
  const number = Number(text);
  return text.trim() === "" ? null : Number.isFinite(number) ? number : text;
}

export function storedValue(
  { attributes, value, inline }: ScannedCell,
  { strings, date1904 }: ValueContext,
): CellValue {
  const type = attributes["t"] ?? "n";
  if (type === "inlineStr") return cellTextOf(inline ?? value ?? "");
  if (value === undefined) return null;
  if (type === "s") return strings[Number(value)] ?? null;
  if (type === "str") return cellTextOf(value);
  if (type === "b") return value.trim() === "1" || value.trim() === "true";
  if (type === "e") return { code: value.trim() };
  return type === "d" ? serialOf(value.trim(), date1904) : numberFrom(value);
}
