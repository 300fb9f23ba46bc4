/** The bytes of the page's workbook: an opened file with what changed in it, or a package of our own. */
import {
  addSheets,
  newWorkbook,
  packageBytes,
  patchCells,
  type Package,
  type PackageWork,
} from "../../workbook/package";
import { addedNames } from "./addedNames";
import type { BookData } from "./bookData";
import { fileChanges } from "./fileChanges";
import type { FormulaTexts } from "./formulaTexts";
import { newNames, fileSheetOf } from "./newSheets";
import type { OpenedBook } from "./openedBook";

export interface SavedFile {
  readonly bytes: Uint8Array;
  /** For the user, each a whole sentence. */
  readonly sentences: readonly string[];
}

const MOST_NAMED = 24;

function listed(addresses: readonly string[]): string {
  const rest = addresses.length - MOST_NAMED;
  return addresses.slice(0, MOST_NAMED).join(", ") + (rest > 0 ? ` and ${rest} more` : "");
}

function outdatedSentence(outdated: readonly string[]): string {
  const one = outdated.length === 1;
  return (
    `${outdated.length} ${one ? "cell" : "cells"} that can't be worked out here ` +
    `${one ? "keeps its" : "keep their"} old result until Excel opens the file: ${listed(outdated)}.`
  );
}

/** @param now the workbook of the page */
export async function savedFile(
  opened: OpenedBook,
  now: BookData,
  texts: FormulaTexts,
  work: PackageWork,
  pause: () => Promise<void> | undefined,
): Promise<SavedFile> {
  const { cells, added, outdated } = await fileChanges(opened, now, texts, pause);
  const patched = await patchCells(opened.pack, opened.facts, cells, { ours: "ignore" }, work);
  let pack: Package = patched.pack;
  if (added.length > 0) {
    const sheets = added.map((sheet) => fileSheetOf(sheet, texts));
    pack = await addSheets(pack, sheets, newNames({ sheets: added, names: addedNames(opened, now) }, texts), work);
  }
  const { frozenAreas, frozenCells, sentences } = patched.report;
  const frozen = frozenAreas.length + frozenCells.length;
  return {
    bytes: await packageBytes(pack, work),
    sentences: [
      ...sentences,
      ...(frozen === 0
        ? []
        : [`${frozen} ${frozen === 1 ? "array" : "arrays"} in which a cell changed became values.`]),
      ...(outdated.length === 0 ? [] : [outdatedSentence(outdated)]),
    ],
  };
}

/** A workbook that no file holds. */
export async function newFile(data: BookData, texts: FormulaTexts, work: PackageWork): Promise<Uint8Array> {
  const sheets = data.sheets.map((sheet) => fileSheetOf(sheet, texts));
  return packageBytes(await newWorkbook(sheets, newNames(data, texts), work), work);
}
