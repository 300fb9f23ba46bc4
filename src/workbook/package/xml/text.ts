/** Text of XML parts: bytes to text, escapes, and replacing pieces of a text by their places. */
import { brokenFile } from "../refusal";

/** A decoder for the encoding that the first bytes show; parts are UTF-8 or UTF-16: ECMA-376 part 2, 8.1.4. */
export function decoderFor(first: Uint8Array): TextDecoder {
  const options = { ignoreBOM: true, fatal: true };
  const [a, b] = first;
  if (a === 0xff && b === 0xfe) return new TextDecoder("utf-16le", options);
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c)) return new TextDecoder("utf-16be", options);
  if (a === 0x3c && b === 0) return new TextDecoder("utf-16le", options);
  return new TextDecoder("utf-8", options);
}

export function decoded(path: string, bytes: Uint8Array): string {
  try {
    return decoderFor(bytes).decode(bytes);
  } catch {
    throw brokenFile(`${path} holds characters in no known encoding`);
  }
}

/** UTF-8; a declaration that says otherwise is changed with it. */
export function encoded(text: string): Uint8Array {
  const head = text.startsWith("\ufeff<?xml") || text.startsWith("<?xml");
  const utf8 = head ? text.replace(/^(\ufeff?<\?xml[^>]*encoding=["'])utf-16[a-z]*/i, "$1UTF-8") : text;
  return new TextEncoder().encode(utf8);
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

const SPECIAL = /[&<>"]/;

/** For element content and for attributes in double quotes. Line ends of attributes stay line ends. */
export function escapedXml(text: string): string {
  return SPECIAL.test(text) ? text.replace(/[&<>"]/g, (char) => ESCAPES[char] ?? char) : text;
}

export function escapedAttribute(text: string): string {
  return escapedXml(text).replace(/[\t\n\r]/g, (char) => `&#${String(char.charCodeAt(0))};`);
}

/**
 * The content of a cell's text. Characters that XML can't hold are written as _x0007_, and a text that looks so gets its
 * underscore written: ECMA-376 part 1, 22.9.2.19.
 */
export function escapedCellText(text: string): string {
  if (USUAL.test(text)) return escapedXml(text);
  const marked = text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(UNWRITABLE, (char) => `_x${char.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);
  return escapedXml(marked);
}

/** No character that needs a mark. */
const USUAL = /^[\n\t -\^`-\u{d7ff}]*$/u;

/** What XML 1.0 leaves out, half surrogates, and CR, which a reader would turn into a line end. */
const UNWRITABLE = new RegExp(
  "[\\u0000-\\u0008\\u000b\\u000c\\r\\u000e-\\u001f\\ufffe\\uffff]|[\\ud800-\\udbff](?![\\udc00-\\udfff])|(?<![\\ud800-\\udbff])[\\udc00-\\udfff]",
  "g",
);

export function cellTextOf(stored: string): string {
  if (!stored.includes("_x")) return stored;
  return stored.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Insertions before a replacement that begins at the same place; then the larger piece first. */
const byPlace = (a: Splice, b: Splice): number =>
  a.from - b.from || Number(a.to > a.from) - Number(b.to > b.from) || b.to - a.to;

/** Replaces pieces of a text. Those at one place go in as they are listed; one inside another goes with it. */
export function spliced(source: string, splices: readonly Splice[]): string {
  if (splices.length === 0) return source;
  const sorted = [...splices].sort(byPlace);
  const pieces: string[] = [];
  let at = 0;
  for (const { from, to, text } of sorted) {
    if (from < at) {
      if (to <= at) continue;
      throw new Error("two changes of one part overlap");
    }
    pieces.push(source.slice(at, from), text);
    at = to;
  }
  pieces.push(source.slice(at));
  return pieces.join("");
}
