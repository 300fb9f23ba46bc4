/** Follows a formula's names and tables to the sheets that it leans on. */
import type { BookFacts, NameEntry } from "../book/facts";
import { usesOf, type FormulaUses } from "./uses";

export interface Leaning {
  /** Sheets in the workbook's own spelling. */
  readonly sheets: ReadonlySet<string>;
  /** Names that it uses, itself or through others, by key. */
  readonly names: ReadonlySet<string>;
  /** Leans on another workbook, or on a sheet that isn't there. */
  readonly external: boolean;
  /** Can't be followed to its end: INDIRECT, or no readable formula. */
  readonly unclear: boolean;
  readonly uses: FormulaUses;
}

export interface Resolver {
  of(formula: string, sheet: string | undefined): Leaning;
  /** Of a name by its key. */
  ofName(key: string): Leaning | undefined;
  /** False where the formula surely uses no name of the workbook, without cutting it into tokens. */
  mayName(formula: string): boolean;
}

export const nameKey = ({ name, sheet }: Pick<NameEntry, "name" | "sheet">): string =>
  `${sheet?.toLowerCase() ?? ""}!${name.toLowerCase()}`;

interface Draft {
  sheets: Set<string>;
  names: Set<string>;
  external: boolean;
  unclear: boolean;
}

const emptyDraft = (): Draft => ({ sheets: new Set(), names: new Set(), external: false, unclear: false });

function merge(into: Draft, from: Draft): void {
  for (const sheet of from.sheets) into.sheets.add(sheet);
  for (const name of from.names) into.names.add(name);
  into.external ||= from.external;
  into.unclear ||= from.unclear;
}

interface Known {
  readonly book: BookFacts;
  readonly sheets: ReadonlyMap<string, number>;
  readonly names: ReadonlyMap<string, NameEntry>;
  readonly tables: ReadonlyMap<string, string>;
}

function addSpan(first: string, last: string, { book, sheets }: Known, draft: Draft): void {
  const a = sheets.get(first.toLowerCase());
  const b = sheets.get(last.toLowerCase());
  if (a === undefined || b === undefined) draft.external = true;
  else for (let at = Math.min(a, b); at <= Math.max(a, b); at++) draft.sheets.add(book.sheets[at]?.name ?? "");
}

function addSheet(name: string, { book, sheets }: Known, draft: Draft): void {
  const at = sheets.get(name.toLowerCase());
  if (at === undefined) draft.external = true;
  else draft.sheets.add(book.sheets[at]?.name ?? "");
}

/** A name of the sheet comes before one of the workbook. */
function addName(name: string, sheet: string | undefined, { names, tables }: Known, draft: Draft): void {
  const local = nameKey({ name, ...(sheet !== undefined && { sheet }) });
  const key = names.has(local) ? local : nameKey({ name });
  const table = tables.get(name.toLowerCase());
  if (names.has(key)) draft.names.add(key);
  else if (table !== undefined) draft.sheets.add(table);
}

/** What the formula itself says; its names aren't followed. */
function directly(formula: string, uses: FormulaUses, sheet: string | undefined, known: Known): Draft {
  const draft = emptyDraft();
  draft.external = uses.external || (uses.unreadable && /\[\d+\]/.test(formula));
  draft.unclear = uses.unreadable || uses.indirect;
  for (const [first, last] of uses.spans) addSpan(first, last, known, draft);
  const inSpan = uses.spans.flat();
  for (const one of uses.sheets) if (!inSpan.includes(one)) addSheet(one, known, draft);
  for (const one of uses.tables) if (one !== "") addName(one, undefined, known, draft);
  for (const one of uses.names) addName(one.name, one.sheet ?? sheet, known, draft);
  return draft;
}

export function resolver(book: BookFacts): Resolver {
  const known: Known = {
    book,
    sheets: new Map(book.sheets.map(({ name }, at) => [name.toLowerCase(), at] as const)),
    names: new Map(book.names.map((entry) => [nameKey(entry), entry] as const)),
    tables: new Map(book.tables.map(({ name, sheet }) => [name.toLowerCase(), sheet] as const)),
  };
  const ofNames = new Map<string, Draft>();
  const direct = (key: string): Draft => {
    const before = ofNames.get(key);
    if (before !== undefined) return before;
    const entry = known.names.get(key);
    const found =
      entry === undefined ? emptyDraft() : directly(entry.formula, usesOf(entry.formula), entry.sheet, known);
    ofNames.set(key, found);
    return found;
  };
  const of = (formula: string, sheet: string | undefined): Leaning => {
    const uses = usesOf(formula);
    const draft = directly(formula, uses, sheet, known);
    // The set grows while it is walked through: names of names join it once.
    for (const name of draft.names) merge(draft, direct(name));
    return { ...draft, uses };
  };
  const spelled = [...new Set(book.names.map(({ name }) => name.toLowerCase()))];
  return {
    of,
    mayName(formula) {
      if (spelled.length === 0) return false;
      // Small letters of other scripts depend on their neighbours.
      if (/[^\x00-\x7f]/.test(formula)) return true;
      const text = formula.toLowerCase();
      return spelled.some((name) => text.includes(name));
    },
    ofName: (key) => {
      const entry = known.names.get(key);
      return entry && of(entry.formula, entry.sheet);
    },
  };
}
