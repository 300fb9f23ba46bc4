/** The file behind the page's workbook: opening keeps its package, saving changes the touched cells in it. */
import {
  addSheets,
  newWorkbook,
  packageBytes,
  patchCells,
  type Package,
  type PackageWork,
} from "../../workbook/package";
import type { Area } from "../../workbook/port";
import { timeSlices } from "../../workbook/timeSlices";
import type { SheetBook } from "../host/sheetBook";
import { addedNames } from "./addedNames";
import type { BookData } from "./bookData";
import { fileChanges } from "./fileChanges";
import type { FormulaTexts } from "./formulaTexts";
import { newNames, fileSheetOf } from "./newSheets";
import { openedBook, type OpenedBook } from "./openedBook";
import { withoutCircles } from "./circles";
import { openingReport, type OpeningReport } from "./openingReport";
import { typedReader } from "./readable/typed";

export interface SavedFile {
  readonly bytes: Uint8Array;
  /** For the user, each a whole sentence. */
  readonly sentences: readonly string[];
}

export interface WorkbookFile {
  /**
   * Opens a file in place of the workbook.
   * @param onShown called when the file's results show and only their check is left
   * @throws a sentence for the user where it can't be read; the open workbook stays
   */
  open(bytes: Uint8Array, work?: PackageWork, onShown?: () => void): Promise<OpeningReport>;
  /** Takes a workbook that no file holds. */
  replace(data: BookData): void;
  /** Whether something was changed since the workbook was opened or saved last. */
  isEdited(): boolean;
  /** The workbook as Save gives it, and what there is to say of it. */
  save(work?: PackageWork): Promise<SavedFile>;
  /** The workbook as Save gives it. */
  savedBytes(): Promise<Uint8Array>;
  /** Calls back with a sentence where the page asks for something that an opened file doesn't take. */
  onRefusal(call: (sentence: string) => void): void;
}

const pauseOf = ({ slices = {}, signal }: PackageWork): (() => Promise<void> | undefined) =>
  timeSlices(slices, signal === undefined ? [] : [signal]);

const MOST_NAMED = 24;

function listed(addresses: readonly string[]): string {
  const rest = addresses.length - MOST_NAMED;
  return addresses.slice(0, MOST_NAMED).join(", ") + (rest > 0 ? ` and ${rest} more` : "");
}

/** The cells to calculate again; undefined for all of them. */
async function checkedCells(
  { data, facts }: OpenedBook,
  book: SheetBook,
  work: PackageWork,
): Promise<readonly Area[] | undefined> {
  // The check knows one cell a formula, and no circles.
  const isPlain = data.sheets.every(({ cells }) => cells.every(({ spill }) => spill === undefined));
  if (!isPlain || facts.calculation.iterate) return undefined;
  return book.outdated({ pause: pauseOf(work), onProgress: work.onProgress?.bind(work) });
}

async function savedFile(
  opened: OpenedBook,
  book: SheetBook,
  texts: FormulaTexts,
  work: PackageWork,
): Promise<SavedFile> {
  const now = await book.dataInSlices(pauseOf(work));
  const { cells, added, outdated } = await fileChanges(opened, now, texts, pauseOf(work));
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
      ...(outdated.length === 0
        ? []
        : [
            `${outdated.length} ${outdated.length === 1 ? "cell" : "cells"} that can't be worked out here ` +
              `${outdated.length === 1 ? "keeps its" : "keep their"} old result until Excel opens the file: ${listed(outdated)}.`,
          ]),
    ],
  };
}

export function workbookFile(book: SheetBook, texts: FormulaTexts): WorkbookFile {
  let opened: OpenedBook | undefined;
  let clean = 0;
  let refused: (sentence: string) => void = () => undefined;
  const save = async (work: PackageWork = {}): Promise<SavedFile> => {
    await book.whenCalculated();
    if (opened !== undefined) return savedFile(opened, book, texts, work);
    const data = await book.dataInSlices(pauseOf(work));
    const sheets = data.sheets.map((sheet) => fileSheetOf(sheet, texts));
    const pack = await newWorkbook(sheets, newNames(data, texts), work);
    return { bytes: await packageBytes(pack, work), sentences: [] };
  };
  return {
    open: async (bytes, work = {}, onShown = () => undefined) => {
      const pause = pauseOf(work);
      const found = await openedBook(bytes, texts, work, pause);
      await book.show(found.data, pause);
      opened = found;
      book.keepStructure((sentence) => refused(sentence));
      book.readTyped(typedReader(found.known));
      clean = book.edits();
      onShown();
      const later = { ...work, signal: undefined };
      const outdated = await checkedCells(found, book, later);
      if (outdated === undefined) book.recalculateAll();
      else book.recalculate(outdated);
      await book.whenCalculated();
      const { data, changed } = withoutCircles(found, book);
      if (changed) {
        opened = { ...found, data };
        book.load(data);
        clean = book.edits();
        await book.whenCalculated();
      }
      return openingReport(opened, outdated?.length === 0 ? undefined : book, pauseOf(later));
    },
    replace: (data) => {
      opened = undefined;
      book.keepStructure(undefined);
      book.readTyped(undefined);
      book.load(data);
      clean = book.edits();
    },
    save: async (work) => {
      const edits = book.edits();
      const made = await save(work);
      clean = edits;
      return made;
    },
    isEdited: () => book.edits() !== clean,
    savedBytes: async () => (await save()).bytes,
    onRefusal: (call) => {
      refused = call;
    },
  };
}
