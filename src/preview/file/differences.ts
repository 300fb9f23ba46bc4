/** What the engine works out against what the file last showed. */
import type { PlainValue } from "./bookData";

type Value = PlainValue | null;
export type ShownValue = Value | readonly (readonly Value[])[];

/** Of a value's size: what two programs' arithmetic may differ by. */
export const FILE_TOLERANCE = 1e-9;

/** Excel stores errors newer than its file format as #VALUE!. */
const NEWER_ERROR = /^#(?:SPILL!|CALC!)$/;

function sameOne(stored: Value, now: Value, tolerance: number): boolean {
  if (typeof stored === "number" && typeof now === "number")
    return Math.abs(stored - now) <= tolerance * Math.max(1, Math.abs(stored), Math.abs(now));
  if (stored === "#VALUE!" && typeof now === "string" && NEWER_ERROR.test(now)) return true;
  return (stored ?? "") === (now ?? "");
}

const isTable = (value: ShownValue): value is readonly (readonly Value[])[] => Array.isArray(value);

/** A cell, or a whole table where the formula fills one. */
export function sameAsFile(stored: ShownValue, now: ShownValue, tolerance = FILE_TOLERANCE): boolean {
  // A file that no program calculated holds one cell of what fills several.
  if (!isTable(stored)) return sameOne(stored, isTable(now) ? (now[0]?.[0] ?? null) : now, tolerance);
  if (!isTable(now)) return false;
  return (
    stored.length === now.length &&
    stored.every(
      (line, row) =>
        line.length === now[row]?.length &&
        line.every((cell, column) => sameOne(cell, now[row]?.[column] ?? null, tolerance)),
    )
  );
}
