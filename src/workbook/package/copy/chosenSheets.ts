/** The sheets that a choice comes to, before anything is copied. */
import type { BookFacts } from "../book/facts";
import { nameKey, resolver, type Resolver } from "../formula/resolve";
import type { Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import type { PackageWork } from "../work";
import type { CopyChoice, CopyReport } from "./choice";
import { nameId, pivotId, sheetId } from "./ids";
import { keptSheets, type FrameOf, type SheetChoice } from "./keptSheets";
import { framesOf, type SheetFrames } from "./sheetFrame";
import { pivotSource } from "./sheetNeeds";

const chosenSheets = (book: BookFacts, { sheets, keep, drop }: CopyChoice): readonly string[] => {
  const added = book.sheets.filter(({ name }) => keep?.has(sheetId(name)) === true && !sheets.includes(name));
  return [...sheets, ...added.map(({ name }) => name)].filter((name) => drop?.has(sheetId(name)) !== true);
};

/** Pivot tables that somebody chose to keep and that sum up cells of this workbook. */
export async function keptPivots(pack: Package, book: BookFacts, { keep }: CopyChoice): Promise<ReadonlySet<string>> {
  const found = new Set<string>();
  for (const { path } of book.sheets)
    for (const { kind, target } of await relationsOf(pack, path))
      if (
        kind === "pivotTable" &&
        keep?.has(pivotId(target)) === true &&
        (await pivotSource(pack, target)) !== undefined
      )
        found.add(target);
  return found;
}

/** @param pivots paths of the pivot tables that are kept */
export function keptByChoice(
  pack: Package,
  book: BookFacts,
  choice: CopyChoice,
  resolve: Resolver,
  pivots: ReadonlySet<string>,
  frameOf: FrameOf,
): Promise<SheetChoice> {
  const namesChosen = new Set(book.names.filter((entry) => choice.keep?.has(nameId(entry)) === true).map(nameKey));
  return keptSheets(pack, book, chosenSheets(book, choice), resolve, pivots, namesChosen, frameOf);
}

/**
 * Which sheets a copy would have and why, for the choice itself.
 * @param frames of sheets that were read before
 * @throws a refusal where no sheet, or one that can't be copied, is chosen
 */
export async function sheetsOfCopy(
  pack: Package,
  book: BookFacts,
  choice: CopyChoice,
  work: PackageWork = {},
  frames: SheetFrames = new Map(),
): Promise<Pick<CopyReport, "sheets" | "droppedSheets">> {
  const pivots = await keptPivots(pack, book, choice);
  const { reasons, dropped } = await keptByChoice(
    pack,
    book,
    choice,
    resolver(book),
    pivots,
    framesOf(pack, work, frames),
  );
  return { sheets: reasons, droppedSheets: dropped };
}
