/** What Excel makes of content that is typed into a cell, in English (United States). */
import type { CellModel, Scalar } from "./workbook";

export interface Taken {
  readonly formula: string;
  readonly value: Scalar;
  readonly format?: string;
}

/** Typed dates without a year are of this one, so that tests give the same on every day. */
const THIS_YEAR = 2026;

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/** Days since the last day of 1899, Excel's day 0, counting 1900 as a leap year as Excel does. */
function serial(year: number, month: number, day: number): number | undefined {
  const at = Date.UTC(year, month - 1, day);
  const found = new Date(at);
  if (found.getUTCMonth() !== month - 1 || found.getUTCDate() !== day) return undefined;
  const days = Math.round(at / 86_400_000) + 25_569;
  return days < 61 ? days - 1 : days;
}

const fullYear = (text: string | undefined): number => {
  const year = text === undefined ? THIS_YEAR : Number(text);
  return year < 30 ? 2000 + year : year < 100 ? 1900 + year : year;
};

const asDate = (value: number | undefined, format: string): Taken | undefined =>
  value === undefined ? undefined : { formula: "", value, format };

const asNumber = (value: number, format?: string): Taken => ({ formula: "", value, ...(format && { format }) });

type Rule = readonly [RegExp, (found: readonly (string | undefined)[]) => Taken | undefined];

const plain = (text: string): number => Number(text.replaceAll(",", ""));

const NUMBER = String.raw`(\d{1,3}(?:,\d{3})+(?:\.\d*)?|\d+\.?\d*|\.\d+)`;

/** What a typed text is taken for, the first rule that fits. */
const RULES: readonly Rule[] = [
  [/^(true|false)$/i, ([, word = ""]) => ({ formula: "", value: word.toLowerCase() === "true" })],
  [/^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+))$/i, ([, text = ""]) => asNumber(Number(text), "0.00E+00")],
  [new RegExp(`^([-+]?)${NUMBER}$`), ([, sign, text = ""]) => asNumber(plain(text) * (sign === "-" ? -1 : 1))],
  [
    new RegExp(String.raw`^([-+]?)${NUMBER}\s*%$`),
    ([, sign, text = ""]) => asNumber((plain(text) / 100) * (sign === "-" ? -1 : 1), "0%"),
  ],
  [
    new RegExp(String.raw`^([-+]?)\$\s*${NUMBER}$`),
    ([, sign, text = ""]) => asNumber(plain(text) * (sign === "-" ? -1 : 1), "$#,##0"),
  ],
  [new RegExp(String.raw`^\(${NUMBER}\)$`), ([, text = ""]) => asNumber(-plain(text))],
  [/^(\d+) (\d+)\/(\d+)$/, ([, whole, over, under]) => asNumber(Number(whole) + Number(over) / Number(under), "# ?/?")],
  [
    /^(\d{1,2})[-/](\d{1,2})(?:[-/](\d{2}|\d{4}))?$/,
    ([, month, day, year]) =>
      asDate(serial(fullYear(year), Number(month), Number(day)), year === undefined ? "d-mmm" : "m/d/yyyy"),
  ],
  [
    /^(\d{4})-(\d{1,2})-(\d{1,2})$/,
    ([, year, month, day]) => asDate(serial(Number(year), Number(month), Number(day)), "m/d/yyyy"),
  ],
  [/^([a-z]{3,9})[ .-]+(\d{1,2})$/i, ([, month = "", day]) => namedDate(month, Number(day))],
  [/^(\d{1,2})[ .-]+([a-z]{3,9})$/i, ([, day, month = ""]) => namedDate(month, Number(day))],
  [
    /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/,
    ([, hours, minutes, seconds = "0"]) =>
      asNumber((Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400, "h:mm"),
  ],
];

function namedDate(word: string, day: number): Taken | undefined {
  const month = MONTHS.indexOf(word.slice(0, 3).toLowerCase()) + 1;
  return month === 0 ? undefined : asDate(serial(THIS_YEAR, month, day), "d-mmm");
}

const ERRORS = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!|GETTING_DATA)$/;

/** Content as Excel takes it; a cell whose format is text keeps what is typed. */
export function taken(content: unknown, format?: unknown): Taken & Pick<CellModel, "error"> {
  if (typeof content !== "string") return { formula: "", value: content as Scalar };
  if (format === "@") return { formula: "", value: content };
  if (content.startsWith("'")) return { formula: "", value: content.slice(1) };
  if (content.startsWith("=") && content.length > 1) return { formula: content, value: 0 };
  if (ERRORS.test(content)) return { formula: "", value: content, error: true };
  const text = content.trim();
  for (const [pattern, rule] of RULES) {
    const found = pattern.exec(text);
    const result = found === null ? undefined : rule(found);
    if (result !== undefined) return result;
  }
  // A sign before anything else begins a formula too.
  if (/^[-+][^\s]/.test(text)) return { formula: `=${text}`, value: 0 };
  return { formula: "", value: content };
}
