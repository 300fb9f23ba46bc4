/** Numbers as people write them at the beginning of a text: "1.5", "1,5", "1 1/2", "1-1/2", "½"; and feet with inches. */

/** Says why a text can't be read. */
export type NumberRefusal = string;

interface LeadingNumber {
  readonly number: number;
  readonly rest: string;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** One spelling of minus signs, of foot and inch marks, and of fractions that are one character. */
export const plainMarks = (text: string): string =>
  text
    .replace(/^[\u2212\u2013]/, "-")
    .replace(/[\u2019\u2032]/g, "'")
    .replace(/[\u201d\u2033]|''/g, '"')
    .replace(/\u2044/g, "/")
    .replace(/(?<=\d)\s*[\u2012\u2013]\s*(?=\d)/g, "-")
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (one) => ` ${FRACTIONS[one] ?? ""}`)
    .trim();

const NUMBER = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:e[+-]?\d+)?)\s*/i;
const FRACTION = /^([+-]?)(?:(\d+)(?:\s+|\s*-))?\s*(\d+)\/(\d+)\s*/;
const THOUSANDS = /^[+-]?\d{1,3}(?:[,' ]\d{3})+(?!\d)/;

/** A number at the beginning of a text, and what follows it; a refusal where there is none. */
export const leadingNumber = (text: string): LeadingNumber | NumberRefusal => {
  if (THOUSANDS.test(text)) return "expected a number without thousands separators";
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [all, sign, whole, over, under] = fraction;
    if (Number(under) === 0) return `"${all.trim()}" is no fraction`;
    if (whole !== undefined && Number(over) >= Number(under))
      return `"${all.trim()}": a fraction behind a whole number must be below 1, as in 1-1/2`;
    const size = Number(whole ?? 0) + Number(over) / Number(under);
    return { number: sign === "-" ? -size : size, rest: text.slice(all.length) };
  }
  const plain = NUMBER.exec(text);
  if (!plain) return "expected a number";
  return { number: Number((plain[1] ?? "").replace(",", ".")), rest: text.slice(plain[0].length) };
};

const FEET = /^([+-]?)\s*(\d[\d.,]*)\s*(?:'|ft\.?|feet|foot)\s*[-,]?\s*(?=\d)/i;
const INCHES = /\s*(?:"|in\.?|inch|inches)$/i;

/**
 * Feet with inches, as inches: 3' 6", 3'-6 1/2", 3 ft 6 in. Undefined where the text isn't of that form.
 */
export const feetAndInches = (text: string): number | NumberRefusal | undefined => {
  const feet = FEET.exec(text);
  if (!feet || THOUSANDS.test(text)) return undefined;
  const [all, sign = "", whole = ""] = feet;
  const behind = text.slice(all.length);
  if (!INCHES.test(behind)) return `the inches behind the feet need their mark, as in 3' 6" or 3 ft 6 in`;
  const inches = leadingNumber(behind.replace(INCHES, ""));
  if (typeof inches === "string" || inches.rest !== "") return `can't read the inches in "${behind}"`;
  if (!/^\d+$/.test(whole)) return `feet with inches must be whole, got ${whole}`;
  if (inches.number >= 12) return `inches behind feet must be below 12, got ${inches.number}`;
  const size = Number(whole) * 12 + inches.number;
  return sign === "-" ? -size : size;
};

/** The inches of a nominal size or tube size of ours: "1-1/2 in" is 1.5. */
export function inchesOfSize(size: string): number {
  const read = leadingNumber(size);
  if (typeof read === "string" || read.rest !== "in") throw new Error(`not a size in inches: ${size}`);
  return read.number;
}
