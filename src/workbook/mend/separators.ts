/** Formulas typed for a country that separates arguments by semicolons and writes decimals with a comma. */
import { isRefusal, tokens, type FormulaRefusal, type Token } from "../reader/tokens";
import { calledName } from "./properName";

/** Functions in English that a formula may call around ours. Another name may be a function's in another language. */
const ENGLISH = new Set(
  (
    "ABS AND AVERAGE AVERAGEIF BYROW CEILING CHOOSE COLUMN COLUMNS CONCAT COUNT COUNTA COUNTIF DROP EXP FILTER FLOOR HLOOKUP " +
    "IF IFERROR IFNA IFS INDEX INDIRECT INT ISBLANK ISERROR ISNUMBER ISTEXT LAMBDA LARGE LET LN LOG LOG10 LOOKUP MATCH MAX " +
    "MEDIAN MIN MOD N NA NOT OFFSET OR PI POWER PRODUCT ROUND ROUNDDOWN ROUNDUP ROW ROWS SEQUENCE SINGLE SMALL SORT SQRT SUM " +
    "SUMIF SUMIFS SUMPRODUCT SWITCH TAKE TEXT TEXTJOIN TRANSPOSE TRUNC VALUE VLOOKUP XLOOKUP XMATCH"
  ).split(" "),
);

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The text with its parts replaced; the parts come in order and don't overlap. */
export function replaceParts(text: string, edits: readonly Edit[]): string {
  let done = "";
  let from = 0;
  for (const { start, end, text: part } of edits) {
    done += text.slice(from, start) + part;
    from = end;
  }
  return done + text.slice(from);
}

const refuse = (why: string, { start }: Token): FormulaRefusal => ({ at: start, why });

/** Tokens outside braces, where a semicolon separates rows. */
function outsideBraces(found: readonly Token[]): readonly Token[] | FormulaRefusal {
  const outside: Token[] = [];
  let depth = 0;
  for (const token of found) {
    if (token.kind === "}") depth--;
    if (depth === 0 && token.kind !== "}") outside.push(token);
    else if (depth > 0 && (token.kind === "," || (token.kind === "number" && token.text.includes("."))))
      return refuse("in the list in braces a comma may be a decimal or a separator", token);
    if (token.kind === "{") depth++;
  }
  return outside;
}

const isWhole = (token: Token | undefined): boolean => token?.kind === "number" && /^\d+$/.test(token.text);

const isFraction = (token: Token | undefined): boolean =>
  token?.kind === "number" && /^\d+(?:e[-+]?\d+)?$/i.test(token.text);

/** The commas as decimals; a refusal where one can't be one. */
function decimals(outside: readonly Token[]): readonly Edit[] | FormulaRefusal {
  const edits: Edit[] = [];
  let used: Token | undefined;
  for (const [at, token] of outside.entries()) {
    if (token.kind !== ",") continue;
    const [before, after] = [outside[at - 1], outside[at + 1]];
    const touching = before?.end === token.start && after?.start === token.end;
    if (!touching || !isWhole(before) || !isFraction(after) || before === used)
      return refuse("both commas and semicolons separate its arguments", token);
    used = after;
    edits.push({ start: token.start, end: token.end, text: "." });
  }
  const dotted = outside.find(({ kind, text }) => kind === "number" && text.includes("."));
  if (edits.length > 0 && dotted !== undefined)
    return refuse(`${dotted.text} has a decimal point, others a comma`, dotted);
  return edits;
}

function foreignName(outside: readonly Token[], known: ReadonlySet<string>): Token | undefined {
  return outside.find(({ kind, text }) => {
    const called = kind === "function" ? calledName(text, known) : undefined;
    return called?.whose === "other" && !ENGLISH.has(called.bare.replace(/^_xl[a-z]+\./i, "").toUpperCase());
  });
}

/** The formula with commas between arguments and points in numbers; the same text where no semicolon separates any. */
export function withCommas(formula: string, known: ReadonlySet<string>): string | FormulaRefusal {
  const found = tokens(formula);
  if (isRefusal(found)) return { ...found, why: `it can't be read: ${found.why}` };
  const outside = outsideBraces(found.some(({ kind }) => kind === ";") ? found : []);
  if (isRefusal(outside)) return plainBraces(formula, found, outside);
  const separators = outside.filter(({ kind }) => kind === ";");
  if (separators.length === 0) return formula;
  const points = decimals(outside);
  if (isRefusal(points)) return points;
  const foreign = foreignName(outside, known);
  if (foreign !== undefined)
    return refuse(`${foreign.text} is no function in English: type the formula again`, foreign);
  const commas = separators.map(({ start, end }) => ({ start, end, text: "," }));
  return replaceParts(
    formula,
    [...commas, ...points].sort((a, b) => a.start - b.start),
  );
}

/** Semicolons inside braces only are rows, as they should be. */
function plainBraces(formula: string, found: readonly Token[], refusal: FormulaRefusal): string | FormulaRefusal {
  let depth = 0;
  const separates = found.some(({ kind }) => {
    depth += kind === "{" ? 1 : kind === "}" ? -1 : 0;
    return kind === ";" && depth === 0;
  });
  return separates ? refusal : formula;
}
