/**
 * Cuts a locale-free (en-US) formula into tokens. A reference is one token: sheet, cells or name, brackets and `#`
 * together. Never throws: returns a refusal for a text that isn't a formula.
 */

export type TokenKind =
  "number" | "text" | "boolean" | "error" | "reference" | "function" | "operator" | "(" | ")" | "{" | "}" | "," | ";";

export interface Token {
  readonly kind: TokenKind;
  /** As written; a function's name without its bracket. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** White space precedes it: between two references that means their intersection. */
  readonly spaced: boolean;
}

/** Why a text can't be read as a formula. */
export interface FormulaRefusal {
  readonly at: number;
  readonly why: string;
}

export const isRefusal = (answer: object): answer is FormulaRefusal => "why" in answer;

/** Excel's limit for a formula. */
export const LONGEST_FORMULA = 8_192;

const SPACE = /[ \t\r\n\u00a0]+/y;
/** The space that doesn't break. */
const NO_BREAK = 160;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const TEXT = /"(?:[^"]|"")*"/y;
const ERROR =
  /#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|GETTING_DATA|SPILL!|CONNECT!|BLOCKED!|UNKNOWN!|FIELD!|CALC!|BUSY!)/iy;
const OPERATOR = /<=|>=|<>|[<>]/y;
const BEYOND = "(?![\\w.(!\\[\\\\?]|[^\\x00-\\xa0])";
const ROWS = new RegExp(`\\$?\\d{1,7}:\\$?\\d{1,7}${BEYOND}`, "y");
const CELLS = new RegExp(`\\$?[A-Za-z]{1,3}\\$?\\d{1,7}(?::\\$?[A-Za-z]{1,3}\\$?\\d{1,7})?${BEYOND}`, "y");
const COLUMNS = new RegExp(`\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3}(?!\\$)${BEYOND}`, "y");
/** 'My sheet'! · Sheet1! · [Book.xlsx]Sheet1! · [2]! · First:Last! */
const SHEET =
  /(?:'(?:[^']|'')+'|(?:\[[^[\]'!]*\])?[\p{L}_\\][\p{L}\p{N}_.\\?]*(?::[\p{L}\p{N}_.\\?]+)?|\[[^[\]'!]*\])!/uy;
/** Most names are plain; the pattern for every script costs far more to start. */
const PLAIN_NAME = /[A-Za-z_\\][\w.\\?]*(?![\w.\\?]|[^\x00-\xa0])/y;
const NAME = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/uy;

function match(pattern: RegExp, formula: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(formula)?.[0];
}

/** The end of a bracket that opens at `at`, brackets inside counted, `'` escaping the next character. */
function bracketEnd(formula: string, at: number): number | undefined {
  let depth = 0;
  for (let here = at; here < formula.length; here++) {
    const char = formula[here];
    if (char === "'") here++;
    else if (char === "[") depth++;
    else if (char === "]" && --depth === 0) return here + 1;
  }
  return undefined;
}

/** The end of a name with its table part, or of a table part alone; undefined if none begins here. */
function nameEnd(formula: string, at: number): number | undefined {
  const end = at + (match(PLAIN_NAME, formula, at) ?? match(NAME, formula, at) ?? "").length;
  return formula[end] === "[" ? bracketEnd(formula, end) : end > at ? end : undefined;
}

/** A reference or a function's name from `at` on. */
function word(formula: string, at: number): { kind: "reference" | "function" | "boolean"; end: number } | undefined {
  const body = at + (formula.includes("!", at) ? (match(SHEET, formula, at)?.length ?? 0) : 0);
  const cells =
    match(CELLS, formula, body) ??
    (formula.includes(":", body) ? (match(ROWS, formula, body) ?? match(COLUMNS, formula, body)) : undefined) ??
    brokenCells(formula, body, at);
  const end = cells === undefined ? nameEnd(formula, body) : body + cells.length;
  if (end === undefined) return undefined;
  if (formula[end] === "(" && cells === undefined && formula[end - 1] !== "]") return { kind: "function", end };
  if (body === at && cells === undefined && /^(?:true|false)$/i.test(formula.slice(at, end)))
    return { kind: "boolean", end };
  const spills = formula[end] === "#" && match(ERROR, formula, end) === undefined;
  return { kind: "reference", end: spills ? end + 1 : end };
}

/** Sheet!#REF! stays one reference. */
const brokenCells = (formula: string, body: number, at: number): string | undefined =>
  body > at ? match(/#REF!/iy, formula, body) : undefined;

type Single = readonly [kind: TokenKind, pattern: RegExp | undefined];

/** Tokens that their first character decides, without a pattern those of one character; any other begins a word. */
const SINGLE: ReadonlyMap<string, Single> = new Map<string, Single>([
  ...(["(", ")", "{", "}", ",", ";"] as const).map((mark): [string, Single] => [mark, [mark, undefined]]),
  ...[..."-+*/^&=%@:"].map((sign): [string, Single] => [sign, ["operator", undefined]]),
  ["<", ["operator", OPERATOR]],
  [">", ["operator", OPERATOR]],
  ['"', ["text", TEXT]],
  ["#", ["error", ERROR]],
  [".", ["number", NUMBER]],
]);

function tokenAt(formula: string, at: number, spaced: boolean): Token | undefined {
  const make = (kind: TokenKind, end: number): Token => ({
    kind,
    text: formula.slice(at, end),
    start: at,
    end,
    spaced,
  });
  const first = formula[at] ?? "";
  const alone = SINGLE.get(first);
  if (alone !== undefined) {
    if (alone[1] === undefined) return make(alone[0], at + 1);
    const text = match(alone[1], formula, at);
    return text === undefined ? undefined : make(alone[0], at + text.length);
  }
  const digit = first >= "0" && first <= "9";
  const found = digit && match(ROWS, formula, at) === undefined ? undefined : word(formula, at);
  if (found !== undefined) return make(found.kind, found.end);
  const number = digit ? match(NUMBER, formula, at) : undefined;
  return number === undefined ? undefined : make("number", at + number.length);
}

/** The tokens of a formula; a leading "=" is skipped. */
export function tokens(formula: string): readonly Token[] | FormulaRefusal {
  if (formula.length > LONGEST_FORMULA) return { at: LONGEST_FORMULA, why: "longer than a formula can be" };
  const found: Token[] = [];
  let at = formula.startsWith("=") ? 1 : 0;
  while (at < formula.length) {
    const code = formula.charCodeAt(at);
    const space = code > 32 && code !== NO_BREAK ? 0 : (match(SPACE, formula, at)?.length ?? 0);
    at += space;
    if (at >= formula.length) break;
    const token = tokenAt(formula, at, space > 0);
    if (token === undefined)
      return { at, why: `${JSON.stringify(formula[at])} begins nothing that a formula can hold` };
    found.push(token);
    at = token.end;
  }
  return found;
}
