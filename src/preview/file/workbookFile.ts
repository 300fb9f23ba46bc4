/** The file behind the page's workbook: opening keeps its bytes, saving changes the touched cells in them. */
import type { JobOptions } from "../../taskpane/jobs/jobTable";
import type { Area, Address } from "../../workbook/port";
import { timeSlices } from "../../workbook/timeSlices";
import type { SheetBook } from "../host/sheetBook";
import type { BookData } from "./bookData";
import { circlesKept, circularCells } from "./circles";
import type { FormulaTexts } from "./formulaTexts";
import { bookChanges } from "./jobs/bookChanges";
import type { FileJobs, HeldFile, ReadFile } from "./jobs/fileJob";
import { packSheets, unpackSheets } from "./jobs/packedCells";
import type { FileBook } from "./openedBook";
import { openingReport, type OpeningReport } from "./openingReport";
import { readableBook } from "./readable/pass";
import { typedReader } from "./readable/typed";
import type { SavedFile } from "./savedFile";

/** How opening and saving are cancelled, heard of and cut into slices. */
export type FileWork = Pick<JobOptions, "signal" | "onProgress" | "slices">;

export interface WorkbookFile {
  /**
   * Opens a file in place of the workbook.
   * @param onShown called when the file's results show and only their check is left
   * @throws a sentence for the user where it can't be read; the open workbook stays
   */
  open(bytes: Uint8Array, work?: FileWork, onShown?: () => void): Promise<OpeningReport>;
  /** Takes a workbook that no file holds. */
  replace(data: BookData): void;
  /** Whether something was changed since the workbook was opened or saved last. */
  isEdited(): boolean;
  /** The workbook as Save gives it, and what there is to say of it. */
  save(work?: FileWork): Promise<SavedFile>;
  /** The workbook as Save gives it. */
  savedBytes(): Promise<Uint8Array>;
  /** Calls back with a sentence where the page asks for something that an opened file doesn't take. */
  onRefusal(call: (sentence: string) => void): void;
}

type Pause = () => Promise<void> | undefined;

const pauseOf = ({ slices = {}, signal }: FileWork): Pause => timeSlices(slices, signal === undefined ? [] : [signal]);

/** What lies behind the page's workbook. */
interface Behind {
  readonly file: HeldFile;
  /** As it was opened. */
  readonly book: FileBook;
  /** Cells of circles that keep the file's result. */
  readonly circles: readonly Address[];
}

async function fileBook(
  { facts, hiding, sheets, names }: ReadFile,
  texts: FormulaTexts,
  pause: Pause,
): Promise<FileBook> {
  const known = readableBook(facts, texts.ours, new Set(hiding), (formula) => texts.fromFile(formula));
  return { facts, known, data: { sheets: await unpackSheets(sheets, pause), names } };
}

/** The cells to calculate again; undefined for all of them. */
async function checkedCells(
  { data, facts }: FileBook,
  book: SheetBook,
  work: FileWork,
): Promise<readonly Area[] | undefined> {
  // The check knows one cell a formula, and no circles.
  const isPlain = data.sheets.every(({ cells }) => cells.every(({ spill }) => spill === undefined));
  if (!isPlain || facts.calculation.iterate) return undefined;
  const onProgress = (done: number, total: number): void =>
    work.onProgress?.({
      done,
      total,
      text: `checking the results, ${Math.round((100 * done) / Math.max(1, total))} %`,
    });
  return book.outdated({ pause: pauseOf(work), onProgress });
}

async function savedBehind(
  { file, book: opened, circles }: Behind,
  book: SheetBook,
  texts: FormulaTexts,
  jobs: FileJobs,
  work: FileWork,
): Promise<SavedFile> {
  const pause = pauseOf(work);
  const changes = await bookChanges(opened.data, await book.dataInSlices(pause), pause);
  return jobs.run("save", { file, ours: texts.ours, circles, changes }, work);
}

async function savedNew(book: SheetBook, texts: FormulaTexts, jobs: FileJobs, work: FileWork): Promise<SavedFile> {
  const pause = pauseOf(work);
  const { sheets, names } = await book.dataInSlices(pause);
  return jobs.run("write", { sheets: await packSheets(sheets, pause), names, ours: texts.ours }, work);
}

/** @param jobs runs what needs only the file */
export function workbookFile(book: SheetBook, texts: FormulaTexts, jobs: FileJobs): WorkbookFile {
  let behind: Behind | undefined;
  let files = 0;
  let clean = 0;
  let refused: (sentence: string) => void = () => undefined;
  const save = async (work: FileWork = {}): Promise<SavedFile> => {
    await book.whenCalculated();
    return behind === undefined ? savedNew(book, texts, jobs, work) : savedBehind(behind, book, texts, jobs, work);
  };
  return {
    open: async (bytes, work = {}, onShown = () => undefined) => {
      const pause = pauseOf(work);
      const file: HeldFile = { number: ++files, bytes };
      const found = await fileBook(await jobs.run("open", { file, ours: texts.ours }, work), texts, pause);
      await book.show(found.data, pause);
      behind = { file, book: found, circles: [] };
      book.keepStructure((sentence) => refused(sentence));
      book.readTyped(typedReader(found.known));
      clean = book.edits();
      onShown();
      const later = { ...work, signal: undefined };
      const outdated = await checkedCells(found, book, later);
      if (outdated === undefined) book.recalculateAll();
      else book.recalculate(outdated);
      await book.whenCalculated();
      const circles = circularCells(found, book);
      const opened = { ...found, data: circlesKept(found.data, circles) };
      if (circles.length > 0) {
        behind = { file, book: opened, circles };
        book.load(opened.data);
        clean = book.edits();
        await book.whenCalculated();
      }
      return openingReport(opened, outdated?.length === 0 ? undefined : book, pauseOf(later));
    },
    replace: (data) => {
      behind = undefined;
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
