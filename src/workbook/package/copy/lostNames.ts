/** Names that a copy can't keep. */
import type { BookFacts, NameEntry } from "../book/facts";
import { nameKey, type Resolver } from "../formula/resolve";
import type { CopyChoice } from "./choice";
import { nameId } from "./ids";

/** Names that lean on what isn't in the copy, that are macros, or that somebody dropped. */
export function lostNames(
  book: BookFacts,
  resolve: Resolver,
  dropped: ReadonlySet<string>,
  choice: CopyChoice,
): ReadonlySet<string> {
  const isLost = (entry: NameEntry): boolean => {
    const { sheets, external, unclear } = resolve.ofName(nameKey(entry)) ?? {
      sheets: [],
      external: true,
      unclear: true,
    };
    if (entry.macro || choice.drop?.has(nameId(entry)) === true || external || (unclear && dropped.size > 0))
      return true;
    const own = entry.sheet === undefined ? [] : [entry.sheet];
    return [...sheets, ...own].some((name) => dropped.has(name.toLowerCase()));
  };
  return new Set(book.names.filter(isLost).map(nameKey));
}
