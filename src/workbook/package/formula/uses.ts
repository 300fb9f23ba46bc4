/** What a formula in its stored form leans on: sheets, names, tables, other workbooks, functions of ours. */
import { isRefusal, tokens, type Token } from "../../reader/tokens";
import { parseCells } from "../../reader/reference";
import type { Area } from "../../port";

export interface FormulaUses {
  /** Sheets by name as the formula spells them; a 3-D reference gives its first and its last. */
  readonly sheets: readonly string[];
  readonly spans: readonly (readonly [first: string, last: string])[];
  /** Names, and functions that may be names of LAMBDAs; `sheet` where it is named. */
  readonly names: readonly { readonly name: string; readonly sheet?: string }[];
  readonly tables: readonly string[];
  /** Cells, with the sheet where it is named. */
  readonly areas: readonly { readonly sheet?: string; readonly area: Omit<Area, "sheet"> }[];
  readonly external: boolean;
  /** Builds references out of text, so its inputs can't be known. */
  readonly indirect: boolean;
  readonly ours: boolean;
  /** No formula that can be cut into tokens. */
  readonly unreadable: boolean;
}

interface Found {
  sheets: Set<string>;
  spans: [string, string][];
  names: { name: string; sheet?: string }[];
  tables: Set<string>;
  areas: { sheet?: string; area: Omit<Area, "sheet"> }[];
  external: boolean;
  indirect: boolean;
  ours: boolean;
}

const OURS = /(?:^|[!._])warmback[._]/i;
const INDIRECT = /^(?:_xlfn\.)?indirect$/i;

/** A call of ours in any stored form; texts in quotes don't count. */
export function callsUs(formula: string): boolean {
  if (!/warmback/i.test(formula)) return false;
  const found = tokens(formula);
  if (isRefusal(found)) return OURS.test(formula.replace(/"(?:[^"]|"")*"/g, ""));
  return found.some(({ kind, text }) => kind !== "text" && OURS.test(text));
}

/** The sheet part of a reference and the rest. */
export function splitSheet(text: string): { readonly sheet: string | undefined; readonly rest: string } {
  if (text.startsWith("'")) {
    const end = /^'((?:[^']|'')*)'!/.exec(text);
    if (end !== null) return { sheet: end[1]?.replaceAll("''", "'") ?? "", rest: text.slice(end[0].length) };
  }
  const bracket = text.indexOf("[");
  const mark = text.indexOf("!");
  // A table's column may hold an exclamation mark: Loop[Flow!].
  if (mark < 0 || (bracket > 0 && bracket < mark && !/^\[/.test(text) && text.indexOf("]") > mark))
    return { sheet: undefined, rest: text };
  return { sheet: text.slice(0, mark), rest: text.slice(mark + 1) };
}

function addReference({ text }: Token, found: Found): void {
  const { sheet, rest } = splitSheet(text);
  if (sheet !== undefined && /[[\]\\/]/.test(sheet)) {
    found.external = true;
    return;
  }
  const colon = sheet?.indexOf(":") ?? -1;
  if (sheet !== undefined && colon > 0) {
    found.spans.push([sheet.slice(0, colon), sheet.slice(colon + 1)]);
    found.sheets.add(sheet.slice(0, colon)).add(sheet.slice(colon + 1));
    return;
  }
  if (sheet !== undefined) found.sheets.add(sheet);
  const own = sheet === undefined ? {} : { sheet };
  const area = parseCells(rest.replace(/#$/, ""));
  if (area !== undefined) found.areas.push({ ...own, area });
  else if (rest.startsWith("[") && sheet === undefined && /^\[\d+\]/.test(rest)) found.external = true;
  else if (rest.includes("[")) found.tables.add(rest.slice(0, rest.indexOf("[")));
  else if (!rest.startsWith("#")) found.names.push({ ...own, name: rest.replace(/#$/, "") });
}

export function usesOf(formula: string): FormulaUses {
  const list = tokens(formula);
  const found: Found = {
    sheets: new Set(),
    spans: [],
    names: [],
    tables: new Set(),
    areas: [],
    external: false,
    indirect: false,
    ours: false,
  };
  const unreadable = isRefusal(list);
  for (const token of unreadable ? [] : list) {
    if (token.kind === "reference") addReference(token, found);
    else if (token.kind === "function") {
      if (INDIRECT.test(token.text)) found.indirect = true;
      if (OURS.test(token.text)) found.ours = true;
      // A macro of another book, or a LAMBDA that has a name.
      const { sheet, rest } = splitSheet(token.text);
      if (sheet === undefined) found.names.push({ name: rest });
      else found.external = true;
    }
  }
  if (unreadable && callsUs(formula)) found.ours = true;
  return { ...found, sheets: [...found.sheets], tables: [...found.tables], unreadable };
}
