/** Values, inputs and long texts as a record's cells hold them. */
import type { Address, CellValue } from "../port";
import { isCellFault } from "../port";
import { cellsText, sheetText } from "../reader/reference";
import type { RecordContent, DescribedInput } from "./recordTypes";

/** More lines than these make a row too high for a page: the text continues in the row below. */
const MOST_LINES = 22;
/** Characters of a line in the column of inputs. */
const LINE_LETTERS = 34;

export const shown = (value: CellValue): RecordContent =>
  value === null ? "" : isCellFault(value) ? `${value.code} ${value.message ?? ""}`.trim() : value;

export const amount = (value: RecordContent, unit: string): string => {
  const text = typeof value === "number" ? String(Number(value.toPrecision(7))) : String(value);
  return unit === "" ? text : `${text} ${unit}`;
};

const inputText = ({ label, value, unit }: DescribedInput): string => `${label}: ${amount(value, unit)}`;

/** The given inputs, a line each, then the defaults used. An omitted input without a default has no line. */
export const inputLines = (inputs: readonly DescribedInput[]): readonly string[] => {
  const defaults = inputs.filter(({ given, value }) => !given && value !== "").map(inputText);
  return [
    ...inputs.filter(({ given }) => given).map(inputText),
    ...defaults.map((text, at) => (at === 0 ? `by default: ${text}` : `  ${text}`)),
  ];
};

/** Addresses with their sheet, whose name is quoted only once. */
export function addressTexts(): (address: Address) => string {
  const sheets = new Map<string, string>();
  return ({ sheet, row, column }) => {
    let before = sheets.get(sheet);
    if (before === undefined) sheets.set(sheet, (before = `${sheetText(sheet)}!`));
    return before + cellsText({ row, column, rows: 1, columns: 1 });
  };
}

/** Splits lines into parts that each fit one row. */
export const parts = (lines: readonly string[]): readonly string[] => {
  if (lines.length < 2) return [lines[0] ?? ""];
  const found: string[][] = [[]];
  let high = 0;
  for (const line of lines) {
    const own = Math.max(1, Math.ceil(line.length / LINE_LETTERS));
    if (high > 0 && high + own > MOST_LINES) {
      found.push([]);
      high = 0;
    }
    found.at(-1)?.push(line);
    high += own;
  }
  return found.map((part) => part.join("\n"));
};
