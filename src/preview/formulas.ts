import type { FunctionsMetadata } from "./metadata";
import { cellName } from "./metadata";

/** Formula texts as .xlsx files keep them, and as one types them. */

/** Changes a formula outside its quoted texts and quoted sheet names. */
const outsideQuotes = (formula: string, change: (part: string) => string): string =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, place) => (place % 2 === 0 ? change(part) : part))
    .join("");

/** Excel keeps functions newer than its file format, and the variables of LET and LAMBDA, under these prefixes. */
const FILE_PREFIXES = /_xlfn\.|_xlws\.|_xlpm\.|_xludf\./gi;

/** An add-in's function as a file keeps it, also where another add-in or a move has put a book's name before it. */
const STORED_CALL = /(?:(?:\[\d+\]|[A-Za-z0-9_.]+\.xl[a-z]{1,2})!)?_xldudf_([A-Z0-9_]+)(?=\s*\()/gi;

/** Functions that Excel wants to see under a prefix in a file: those that take no variables. */
const PREFIXED: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    [
      ..."CONCAT TEXTJOIN IFNA IFS SWITCH MAXIFS MINIFS XLOOKUP XMATCH SEQUENCE UNIQUE SORTBY RANDARRAY".split(" "),
      ..."HSTACK VSTACK TAKE DROP TOCOL TOROW CHOOSECOLS CHOOSEROWS EXPAND WRAPROWS WRAPCOLS".split(" "),
      ..."TEXTBEFORE TEXTAFTER TEXTSPLIT ARRAYTOTEXT VALUETOTEXT".split(" "),
    ].map((name) => [name, `_xlfn.${name}`]),
  ),
  FILTER: "_xlfn._xlws.FILTER",
  SORT: "_xlfn._xlws.SORT",
};

export interface FormulaTexts {
  /** As one types it, with "=". */
  fromFile(formula: string): string;
  /** As a file keeps it, without "=". */
  toFile(formula: string): string;
}

/** @param metadata of the functions whose stored names are known */
export const formulaTexts = (namespace: string, metadata: FunctionsMetadata): FormulaTexts => {
  const byStoredName = new Map(
    metadata.functions.map(({ id }) => {
      const name = cellName(namespace, id);
      return [name.replaceAll(".", "_"), name] as const;
    }),
  );
  return {
    fromFile: (formula) =>
      `=${outsideQuotes(formula.replace(/^=/, ""), (part) =>
        part
          .replace(STORED_CALL, (all, stored: string) => byStoredName.get(stored.toUpperCase()) ?? all)
          .replace(FILE_PREFIXES, ""),
      )}`,
    toFile: (formula) =>
      outsideQuotes(formula.replace(/^=/, ""), (part) =>
        part.replace(/(?<![\w.])([A-Z]+)(?=\()/gi, (all, name: string) => PREFIXED[name.toUpperCase()] ?? all),
      ),
  };
};

/** Puts references in the place of defined names: for a sheet whose names can't be the workbook's. */
export const inlineNames = (formula: string, references: ReadonlyMap<string, string>): string =>
  references.size === 0
    ? formula
    : outsideQuotes(formula, (part) =>
        part.replace(/(?<![\w.!$])[A-Za-z_\\][\w.]*(?![\w.(!])/g, (word) => references.get(word.toLowerCase()) ?? word),
      );
