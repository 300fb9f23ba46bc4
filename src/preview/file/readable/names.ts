/** What the names of a workbook mean to the formulas that use them. */
import type { BookFacts, NameEntry } from "../../../workbook/package";
import type { Area } from "../../../workbook/port";
import { isRefusal } from "../../../workbook/reader/tokens";
import { parse, type Tree } from "../../../workbook/reader/tree";
import { EXTERNAL, isFixed, isUnread, plainMeaning, type SheetPlaces } from "./places";

export type NameMeaning =
  | { readonly kind: "cells"; readonly areas: readonly Area[]; readonly local: boolean }
  /** A constant, a calculation or a LAMBDA; the text begins with "=". */
  | { readonly kind: "formula"; readonly text: string; readonly tree: Tree; readonly local: boolean }
  | { readonly kind: "unread"; readonly why: string; readonly text: string };

export interface BookNames {
  /** What a name means in a formula on a sheet; undefined where there is none. */
  meaning(name: string, sheet: string): NameMeaning | undefined;
  readonly global: readonly NameEntry[];
}

/** The areas of a name that is cells and nothing else: one reference, or several with commas between. */
function areasIn(tree: Tree, entry: NameEntry, book: BookFacts, places: SheetPlaces): readonly Area[] | undefined {
  if (tree.kind === "group") return areasIn(tree.of, entry, book, places);
  if (tree.kind === "binary" && tree.operator === ",") {
    const parts = [tree.left, tree.right].map((one) => areasIn(one, entry, book, places));
    return parts.includes(undefined) ? undefined : parts.flatMap((one) => one ?? []);
  }
  if (tree.kind !== "reference") return undefined;
  const from = { sheet: entry.sheet ?? book.sheets[0]?.name ?? "", row: 0, column: 0 };
  const meaning = plainMeaning(tree.text, from, places, book.tables);
  return meaning === undefined || isUnread(meaning) ? undefined : meaning.areas;
}

function meaningOf(
  entry: NameEntry,
  book: BookFacts,
  places: SheetPlaces,
  typed: (formula: string) => string,
): NameMeaning {
  const local = entry.sheet !== undefined;
  const text = typed(entry.formula);
  const unread = (why: string): NameMeaning => ({ kind: "unread", why, text });
  if (entry.macro) return unread("macros");
  if (/\[\d+\]/.test(entry.formula)) return unread(EXTERNAL);
  if (entry.formula.includes("#REF!")) return unread("names whose cells are gone");
  // Commas between references are a union only inside brackets.
  const tree = parse(`=(${text.slice(1)})`);
  if (isRefusal(tree)) return unread("names that can't be read");
  if (!isFixed(text)) return unread("names that mean other cells in every cell");
  const areas = areasIn(tree, entry, book, places);
  if (areas !== undefined) return { kind: "cells", areas, local };
  return { kind: "formula", text, tree, local };
}

export function bookNames(book: BookFacts, places: SheetPlaces, typed: (formula: string) => string): BookNames {
  const key = (name: string, sheet = ""): string => `${sheet.toLowerCase()}!${name.toLowerCase()}`;
  const entries = new Map(book.names.map((entry) => [key(entry.builtIn ?? entry.name, entry.sheet), entry] as const));
  const known = new Map<NameEntry, NameMeaning>();
  return {
    global: book.names.filter(({ sheet, builtIn, macro }) => sheet === undefined && builtIn === undefined && !macro),
    meaning(name, sheet) {
      const entry = entries.get(key(name, sheet)) ?? entries.get(key(name));
      if (entry === undefined) return undefined;
      const before = known.get(entry);
      if (before !== undefined) return before;
      const meaning = meaningOf(entry, book, places, typed);
      known.set(entry, meaning);
      return meaning;
    },
  };
}
