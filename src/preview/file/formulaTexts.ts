import { parseReference } from "../../workbook/reader/reference";
import { isRefusal, tokens } from "../../workbook/reader/tokens";
import type { Token } from "../../workbook/reader/tokens";
import { cellName, isMatrixParameter } from "../host/functionsMetadata";
import type { FunctionParameter, FunctionsMetadata, HostFunctionEntry } from "../host/functionsMetadata";
import type { ArgumentKind, ReadableFunction } from "./readable/functions";

/** Formula texts as .xlsx files keep them, and as one types them. */

/** Excel keeps functions newer than its file format, and the variables of LET and LAMBDA, under these prefixes. */
const FILE_PREFIXES = /_xlfn\.|_xlws\.|_xlpm\.|_xludf\./gi;

/** The range that a cell spills into, which one types as E3#. */
const ANCHOR = /_xlfn\.ANCHORARRAY\(([^()"]*)\)/gi;

/** The cell of a range in the formula's own row or column, which one types as @A1:A9. */
const SINGLE = /_xlfn\.SINGLE\(([^()",]*)\)/gi;

/** An add-in's function as a file keeps it. */
const STORED_CALL = /_xldudf_([A-Z0-9_]{1,255})(?=\s*\()/gi;

const isBookSign = (sign: string | undefined): boolean => sign !== undefined && /[A-Za-z0-9_.]/.test(sign);

/** Where a quoted name begins whose closing quote is at `last`; quotes inside it are doubled. */
const openingQuote = (text: string, last: number): number => {
  let at = last;
  do {
    at = text.lastIndexOf("'", at - 1);
    if (at > 0 && text[at - 1] === "'") at -= 1;
    else return at;
  } while (at > 0);
  return -1;
};

/**
 * Where a book's name begins that another add-in or a move has put before a stored call at `end`: `[2]!`, `Book.xla!` or
 * `'My book.xla'!`; `end` where there is none. It walks back from the call, as a pattern would try every place before it.
 */
const bookStart = (text: string, end: number, least: number): number => {
  if (text[end - 1] !== "!") return end;
  const last = end - 2;
  if (text[last] === "'" || text[last] === "]") {
    const quoted = text[last] === "'";
    const start = last < 1 ? -1 : quoted ? openingQuote(text, last) : text.lastIndexOf("[", last - 1);
    const name = text.slice(start + 1, last);
    return start >= least && (quoted ? /\.xl[a-z]{1,2}(?:\][^\][]*)?$/i : /^\d+$/).test(name) ? start : end;
  }
  let start = end - 1;
  while (start > least && isBookSign(text[start - 1])) start -= 1;
  return /.\.xl[a-z]{1,2}$/i.test(text.slice(start, end - 1).slice(-255)) ? start : end;
};

/** Functions that Excel wants to see under a prefix in a file. */
const PREFIXED: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [
      ..."CONCAT TEXTJOIN IFNA IFS SWITCH MAXIFS MINIFS XLOOKUP XMATCH SEQUENCE UNIQUE SORTBY RANDARRAY XOR".split(" "),
      ..."HSTACK VSTACK TAKE DROP TOCOL TOROW CHOOSECOLS CHOOSEROWS EXPAND WRAPROWS WRAPCOLS".split(" "),
      ..."TEXTBEFORE TEXTAFTER TEXTSPLIT ARRAYTOTEXT VALUETOTEXT".split(" "),
      ..."LET LAMBDA MAP REDUCE SCAN BYROW BYCOL MAKEARRAY ISOMITTED".split(" "),
    ].map((name) => [name, `_xlfn.${name}`]),
  ),
  FILTER: "_xlfn._xlws.FILTER",
  SORT: "_xlfn._xlws.SORT",
};

/** Changes tokens of a formula; what isn't a formula stays as it is. */
const rewrite = (formula: string, change: (token: Token, before: Token | undefined) => string): string => {
  const found = tokens(formula);
  if (isRefusal(found)) return formula;
  const starts = [0, ...found.map((token) => token.end)];
  const rest = formula.slice(starts.at(-1));
  return (
    found.map((token, at) => formula.slice(starts[at], token.start) + change(token, found[at - 1])).join("") + rest
  );
};

const isPlainName = ({ kind, text }: Token): boolean => {
  const meaning = kind === "reference" ? parseReference(text) : undefined;
  return meaning?.kind === "name" && meaning.sheet === undefined && !meaning.spill;
};

/** An open bracket: the function that it belongs to, in capitals, and the argument that is being read. */
interface Bracket {
  readonly name: string;
  argument: number;
}

/** The variables that LET (every other argument) and LAMBDA (all but the last) bring in, in lower case. */
const variablesOf = (found: readonly Token[]): ReadonlySet<string> => {
  const variables = new Set<string>();
  const open: Bracket[] = [];
  found.forEach((token, at) => {
    const before = found[at - 1];
    const bracket = open.at(-1);
    if (token.kind === "(")
      open.push({ name: before?.kind === "function" ? before.text.toUpperCase() : "", argument: 0 });
    else if (token.kind === ")") open.pop();
    else if (token.kind === "," && bracket !== undefined) bracket.argument += 1;
    const alone = (before?.kind === "(" || before?.kind === ",") && found[at + 1]?.kind === ",";
    const named = bracket?.name === "LAMBDA" || (bracket?.name === "LET" && bracket.argument % 2 === 0);
    if (alone && named && isPlainName(token)) variables.add(token.text.toLowerCase());
  });
  return variables;
};

const toFile = (formula: string): string => {
  const found = tokens(formula);
  const variables = isRefusal(found) ? new Set<string>() : variablesOf(found);
  const stored = rewrite(formula, (token, before) => {
    if (token.kind === "operator" && token.text === "@") return "";
    if (token.kind === "reference" && token.text.endsWith("#")) return `_xlfn.ANCHORARRAY(${token.text.slice(0, -1)})`;
    if (token.kind === "reference" && before?.text === "@") return `_xlfn.SINGLE(${token.text})`;
    if (token.kind === "function") return PREFIXED[token.text.toUpperCase()] ?? token.text;
    return isPlainName(token) && variables.has(token.text.toLowerCase()) ? `_xlpm.${token.text}` : token.text;
  });
  return stored.replace(/^=/, "");
};

export interface FormulaTexts {
  /** As one types it, with "=". */
  fromFile(formula: string): string;
  /** As a file keeps it, without "=". */
  toFile(formula: string): string;
  /** Our functions by their names in cells, with what their arguments take. */
  readonly ours: ReadonlyMap<string, ReadableFunction>;
}

const kindOf = (parameter: FunctionParameter): ArgumentKind => (isMatrixParameter(parameter) ? "r" : "s");

function ourArguments({ parameters }: HostFunctionEntry): ReadableFunction {
  return {
    first: parameters.filter(({ repeating }) => repeating !== true).map(kindOf),
    rest: parameters.filter(({ repeating }) => repeating === true).map(kindOf),
    spills: false,
  };
}

/** @param ours our functions by their names in cells, with what their arguments take */
export function textsWith(ours: FormulaTexts["ours"]): FormulaTexts {
  const byStoredName = new Map([...ours.keys()].map((name) => [name.replaceAll(".", "_"), name] as const));
  const typed = (part: string): string => {
    let written = "";
    let done = 0;
    for (const { 0: all, 1: stored = "", index } of part.matchAll(STORED_CALL)) {
      const name = byStoredName.get(stored.toUpperCase());
      if (name === undefined) continue;
      written += part.slice(done, bookStart(part, index, done)) + name;
      done = index + all.length;
    }
    return (written + part.slice(done)).replace(ANCHOR, "$1#").replace(SINGLE, "@$1").replace(FILE_PREFIXES, "");
  };
  return {
    fromFile: (formula) => {
      // Quoted texts stay as they are; every other part is between them.
      const parts = formula.replace(/^=/, "").split(/("(?:[^"]|"")*")/);
      return `=${parts.map((part, place) => (place % 2 === 0 ? typed(part) : part)).join("")}`;
    },
    toFile,
    ours,
  };
}

/** @param metadata of the functions whose stored names are known */
export const formulaTexts = (namespace: string, metadata: FunctionsMetadata): FormulaTexts =>
  textsWith(new Map(metadata.functions.map((entry) => [cellName(namespace, entry.id), ourArguments(entry)])));

/** Puts references in the place of names, given in lower case: for names that only one sheet knows. */
export const inlineNames = (formula: string, references: ReadonlyMap<string, string>): string =>
  references.size === 0
    ? formula
    : rewrite(formula, (token) =>
        token.kind === "reference" ? (references.get(token.text.toLowerCase()) ?? token.text) : token.text,
      );
