/** A value as a formula's constant. */
import { isCellFault, type CellValue } from "../../port";

export function constantText(value: CellValue): string {
  if (value === null) return '""';
  if (isCellFault(value))
    return /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/.test(value.code) ? value.code : "#N/A";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return Number.isFinite(value) ? String(value) : "#N/A";
  return `"${value.replaceAll('"', '""')}"`;
}
