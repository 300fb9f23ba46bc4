import type { Area, PlacedPicture, ReferenceText, Workbook } from "../../workbook/port";
import { timeSlices } from "../../workbook/timeSlices";
import { parseReference } from "../../workbook/reader/reference";
import type { SheetBook } from "./sheetBook";
import { areaOf } from "../file/address";
import { CALCULATING, insertSheet } from "./insertSheet";

/** The workbook port over the preview's sheet engine. */

const resolveOne = (book: SheetBook, { text, from }: ReferenceText): Area | undefined => {
  const meaning = parseReference(text);
  const known = (sheet: string): string | undefined =>
    book.sheets().find(({ name }) => name.toLowerCase() === sheet.toLowerCase())?.name;
  if (meaning === undefined || meaning.kind === "table") return undefined;
  const sheet = known(meaning.sheet ?? from.sheet);
  if (sheet === undefined) return undefined;
  if (meaning.kind === "cells") {
    return meaning.spill ? book.spill({ ...meaning.area, sheet }) : { sheet, ...meaning.area };
  }
  if (meaning.spill) return undefined;
  const called = book.names().filter(({ name }) => name.toLowerCase() === meaning.name.toLowerCase());
  const named = called.find((each) => each.sheet === sheet) ?? called.find((each) => each.sheet === undefined);
  const area = named === undefined ? undefined : areaOf(named.refersTo, sheet);
  const target = area === undefined ? undefined : known(area.sheet);
  return area === undefined || target === undefined ? undefined : { ...area, sheet: target };
};

const requireSheet = (book: SheetBook, sheet: string): void => {
  const there = book.sheets().some(({ name }) => name.toLowerCase() === sheet.toLowerCase());
  if (!there) throw new Error(`there is no sheet named "${sheet}"`);
};

/** The workbook as a file, and where copies of it go. */
export interface WorkbookFiles {
  /** "" where the workbook has no file yet. */
  name(): string;
  /** The workbook as Save would give it. */
  savedBytes(): Promise<Uint8Array>;
  /** Gives a file to the user; answers where it is: "the file …". */
  deliver(bytes: Uint8Array, name: string): Promise<string>;
}

/** Gives a picture to the user as a file; answers the file's name. */
export type DeliverPicture = (picture: PlacedPicture) => Promise<string>;

const nowhere = (): Promise<never> => Promise.reject(new Error("there is nowhere to put a file here"));

const NO_FILES: WorkbookFiles = { name: () => "", savedBytes: nowhere, deliver: nowhere };

/**
 * The port over a sheet book; every method answers when the engine has finished calculating.
 * @param files the workbook as a file, and where hand-over copies go
 * @param deliverPicture where pictures go: the sheet engine can't place any
 */
export const previewWorkbook = (
  book: SheetBook,
  files: WorkbookFiles = NO_FILES,
  deliverPicture?: DeliverPicture,
): Workbook => ({
  host: "preview",
  sheets: async () => book.sheets(),
  used: async (sheet) => book.used(sheet),
  read: async (areas) => {
    for (const { sheet } of areas) requireSheet(book, sheet);
    return areas.map((area) => book.read(area));
  },
  resolve: async (references) => references.map((reference) => resolveOne(book, reference)),
  selection: async () => book.selection(),
  selectedAreas: async () => book.selectedAreas(),
  select: async (cell) => {
    requireSheet(book, cell.sheet);
    book.select(cell);
  },
  write: async (cells, { signal, onProgress, onStage } = {}) => {
    const all = book.sheets();
    for (const sheet of new Set(cells.map((cell) => cell.sheet))) {
      requireSheet(book, sheet);
      const facts = all.find(({ name }) => name.toLowerCase() === sheet.toLowerCase());
      if (facts?.protected === true) throw new Error(`the sheet "${facts.name}" is protected`);
    }
    await book.writeInPieces(cells, { pause: timeSlices({}, signal ? [signal] : []), onProgress });
    onStage?.(CALCULATING);
    await book.whenCalculated();
  },
  makeRoom: async (area) => {
    requireSheet(book, area.sheet);
    await book.whenWritten();
    book.makeRoom(area);
  },
  insert: (starter, options) => insertSheet(book, starter, options),
  documentName: async () => files.name(),
  documentBytes: async () => {
    await book.whenCalculated();
    return files.savedBytes();
  },
  deliverCopy: async (bytes, name) => `The copy is ${await files.deliver(bytes, name)}.`,
  savePicture: deliverPicture && (async (picture) => `the file ${await deliverPicture(picture)}`),
  recalculate: async (areas) => {
    for (const { sheet } of areas) requireSheet(book, sheet);
    book.recalculate(areas);
    await book.whenCalculated();
  },
  onSelection: (call) => book.onSelection(call),
  onChange: (call) => book.onChange(call),
});
