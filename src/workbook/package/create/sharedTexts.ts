/** Texts of new sheets that are written once for many cells, behind those that are there: ECMA-376 part 1, 18.4.8. */
import type { BookFacts } from "../book/facts";
import type { PartsEditor } from "../parts/edits";
import type { Package } from "../parts/package";
import { RELATIONS, STRICT_RELATIONS } from "../parts/relations";
import { brokenFile } from "../refusal";
import { readSharedStrings, sharedStringsPath } from "../sheet/strings";
import type { NextSlice } from "../../timeSlices";
import { withAttributes } from "../xml/node";
import { escapedCellText, spliced } from "../xml/text";
import { DECLARATION, MAIN, STRICT_MAIN, STRINGS_TYPE } from "./minimal";

export interface SharedTexts {
  /** The text's number; a new one is added. */
  of(text: string): number;
  /** Puts those that were added into their part. */
  save(): Promise<void>;
}

/** The list with more items; it doesn't say any longer how many there are. */
function longerList(path: string, source: string, items: (prefix: string) => string): string {
  const open = /<((?:[A-Za-z_][\w.-]*:)?)sst(?=[\s/>])[^>]*>/.exec(source);
  if (open === null) throw brokenFile(`${path} has no list of texts`);
  const [tag, prefix = ""] = open;
  const place = { start: open.index, openEnd: open.index + tag.length };
  const counts = withAttributes(source, place, { count: undefined, uniqueCount: undefined });
  if (tag.endsWith("/>")) {
    const text = `${counts.text.replace(/\s*\/>$/, ">")}${items(prefix)}</${prefix}sst>`;
    return spliced(source, [{ ...counts, text }]);
  }
  const end = source.lastIndexOf(`</${prefix}sst`);
  if (end < 0) throw brokenFile(`${path} is no sound XML`);
  const extensions = source.lastIndexOf(`<${prefix}extLst`);
  const at = extensions > source.lastIndexOf(`</${prefix}si`) ? extensions : end;
  return spliced(source, [counts, { from: at, to: at, text: items(prefix) }]);
}

export async function sharedTexts(
  pack: Package,
  book: Pick<BookFacts, "path" | "strict">,
  editor: PartsEditor,
  pause: NextSlice,
): Promise<SharedTexts> {
  const known = await sharedStringsPath(pack, book.path);
  const first = known === undefined ? 0 : (await readSharedStrings(pack, book.path, pause)).length;
  const added = new Map<string, number>();
  const items = (prefix: string): string =>
    Array.from(
      added.keys(),
      (text) => `<${prefix}si><${prefix}t xml:space="preserve">${escapedCellText(text)}</${prefix}t></${prefix}si>`,
    ).join("");
  return {
    of(text) {
      const place = added.get(text) ?? first + added.size;
      added.set(text, place);
      return place;
    },
    async save() {
      if (added.size === 0) return;
      if (known !== undefined) {
        editor.set(known, longerList(known, await editor.text(known), items));
        return;
      }
      const path = `${book.path.slice(0, book.path.lastIndexOf("/") + 1)}sharedStrings.xml`;
      const main = book.strict ? STRICT_MAIN : MAIN;
      editor.set(path, `${DECLARATION}<sst xmlns="${main}">${items("")}</sst>`);
      editor.setType(path, STRINGS_TYPE);
      await editor.addRelation(book.path, `${book.strict ? STRICT_RELATIONS : RELATIONS}/sharedStrings`, path);
    },
  };
}
