/** Formulas of a file that the sheet engine could take, but for the length of their lines. */
import type { Address } from "../../../workbook/port";
import { parseReference } from "../../../workbook/reader/reference";
import { isRefusal } from "../../../workbook/reader/tokens";
import { parse } from "../../../workbook/reader/tree";
import { needsLongLines, type LineReader } from "./longLines";
import type { ReadableBook } from "./pass";
import { isUnread, plainMeaning } from "./places";

/** Whether a formula, written as the engine takes it, needs each cell of a very long line. */
export function wantsLongLines(formula: string, at: Address, { book, places, names, long }: ReadableBook): boolean {
  if (long.rows.size === 0 && long.columns.size === 0) return false;
  const read: LineReader = (text) => {
    const plain = plainMeaning(text, at, places, book.tables);
    if (plain !== undefined) return isUnread(plain) ? undefined : plain.areas;
    const name = parseReference(text);
    const meaning = name?.kind === "name" ? names.meaning(name.name, name.sheet ?? at.sheet) : undefined;
    if (meaning?.kind === "cells") return meaning.areas;
    return meaning?.kind === "formula" ? meaning.tree : undefined;
  };
  const tree = parse(formula);
  return !isRefusal(tree) && needsLongLines(tree, long, read);
}
