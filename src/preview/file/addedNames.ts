import type { BookData, NameData } from "./bookData";
import type { FileBook } from "./openedBook";

/** The names that came with sheets which the page added. */
export function addedNames({ data }: FileBook, now: BookData): readonly NameData[] {
  const known = new Set(data.names.map(({ name }) => name.toLowerCase()));
  return now.names.filter(({ name }) => !known.has(name.toLowerCase()));
}
