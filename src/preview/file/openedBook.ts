/** Reads a workbook file: its package, which saving changes, and the workbook as the sheet engine takes it. */
import {
  cellContext,
  forgetUnpacked,
  openPackage,
  PACKAGE_LIMITS,
  readBook,
  readLooks,
  readStoredSheet,
  type BookFacts,
  type FileCell,
  type Package,
  type PackageWork,
  type StoredSheetFacts,
} from "../../workbook/package";
import type { BookData, NameData, SheetData } from "./bookData";
import type { FormulaTexts } from "./formulaTexts";
import { keepNestedTotals } from "./keptTotals";
import { sheetCollector } from "./openedSheet";
import { readName } from "./readable/formula";
import { longSheetsOf } from "./readable/longLines";
import { readableBook, type ReadableBook } from "./readable/pass";
import { isUnread, plainMeaning, textOf } from "./readable/places";

/** A file's workbook without its package. */
export interface FileBook {
  readonly facts: BookFacts;
  readonly data: BookData;
  readonly known: ReadableBook;
}

export interface OpenedBook extends FileBook {
  readonly pack: Package;
}

interface StoredSheet {
  readonly facts: StoredSheetFacts;
  readonly cells: readonly FileCell[];
}

/** Names of one sheet that are one range: what the panel can follow. */
function localNames(sheet: string, { book, places }: ReadableBook): readonly NameData[] {
  return book.names.flatMap(({ name, sheet: owner, formula, builtIn }) => {
    const from = { sheet, row: 0, column: 0 };
    if (owner !== sheet || builtIn !== undefined) return [];
    const meaning = plainMeaning(formula, from, places, book.tables);
    const area = meaning === undefined || isUnread(meaning) ? undefined : meaning.areas;
    if (area?.length !== 1 || area[0] === undefined) return [];
    return [{ name, refersTo: textOf(area[0], { ...from, sheet: "" }), sheet }];
  });
}

function globalNames(known: ReadableBook): readonly NameData[] {
  return known.names.global.flatMap(({ name }) => {
    const refersTo = readName(name, known);
    return refersTo === undefined ? [] : [{ name, refersTo }];
  });
}

async function storedSheets(pack: Package, book: BookFacts, work: PackageWork): Promise<Map<string, StoredSheet>> {
  const context = await cellContext(pack, book, work);
  const sheets = new Map<string, StoredSheet>();
  for (const { name, kind } of book.sheets) {
    if (kind !== "worksheet") continue;
    const cells: FileCell[] = [];
    work.onProgress?.(sheets.size, book.sheets.length);
    sheets.set(name, {
      facts: await readStoredSheet(pack, book, name, context, (cell) => cells.push(cell), work),
      cells,
    });
  }
  return sheets;
}

/** Formulas of the file are read so many at a time before others get a turn. */
const AT_ONCE = 200;

/** @throws a refusal whose message is a sentence for the user; the open workbook stays */
export async function openedBook(
  bytes: Uint8Array,
  texts: FormulaTexts,
  work: PackageWork = {},
  pause: () => Promise<void> | undefined = () => undefined,
): Promise<OpenedBook> {
  const pack = await openPackage(bytes, work, PACKAGE_LIMITS, true);
  const facts = await readBook(pack);
  const stored = await storedSheets(pack, facts, work);
  const looks = await readLooks(pack, facts);
  const hiding = [...stored].flatMap(([name, sheet]) => (sheet.facts.rows.some(({ hidden }) => hidden) ? [name] : []));
  const typed = (formula: string): string => texts.fromFile(formula);
  const long = longSheetsOf([...stored].map(([name, { cells }]) => [name, cells] as const));
  const known = readableBook(facts, texts.ours, new Set(hiding), typed, long);
  const sheets: SheetData[] = [];
  for (const { name, state } of facts.sheets) {
    const sheet = stored.get(name);
    if (sheet === undefined) continue;
    const collector = sheetCollector(name, { known, looks, typed });
    for (const [at, cell] of sheet.cells.entries()) {
      collector.add(cell);
      if (at % AT_ONCE === 0) await pause();
    }
    const names = localNames(name, known);
    const data = collector.sheet(sheet.facts, state !== "visible");
    sheets.push(names.length === 0 ? data : { ...data, names });
  }
  return {
    pack: forgetUnpacked(pack),
    facts,
    known,
    data: { sheets: keepNestedTotals(sheets), names: globalNames(known) },
  };
}
