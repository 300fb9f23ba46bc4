/** Adds a starter sheet to the workbook: made in slices, added as one undo step. Cancelled, it leaves no sheet. */
import type { StarterSheet } from "../../sheets/sheet";
import type { InsertOptions } from "../../workbook/port";
import { freeName } from "../../workbook/starterCells";
import { CANCELLED, LONG_SLICE, timeSlices, type SliceOptions } from "../../workbook/timeSlices";
import { starterDataInSlices } from "../file/starterBook";
import type { SheetBook } from "./sheetBook";

const sheetNames = (book: SheetBook): readonly string[] => book.sheets().map(({ name }) => name);

const namesOfBook = (book: SheetBook): ReadonlySet<string> =>
  new Set(book.names().flatMap(({ name, sheet }) => (sheet === undefined ? [name.toLowerCase()] : [])));

/** Settles when the work has, or when it is cancelled. */
async function untilCancelled(work: Promise<void>, signal: AbortSignal | undefined): Promise<void> {
  if (signal === undefined) return work;
  let stop: () => void = () => undefined;
  const cancelled = new Promise<void>((resolve) => (stop = resolve));
  signal.addEventListener("abort", stop);
  try {
    await Promise.race([work, cancelled]);
  } finally {
    signal.removeEventListener("abort", stop);
  }
}

/** What is left when all cells are there. */
export const CALCULATING = "calculating";

/** @returns the name that the sheet got */
export async function insertSheet(
  book: SheetBook,
  starter: StarterSheet,
  { signal, onProgress, onStage }: InsertOptions = {},
  slices: SliceOptions = { slice: LONG_SLICE },
): Promise<string> {
  const pause = timeSlices(slices, signal === undefined ? [] : [signal]);
  const work = { pause, onProgress };
  const workbook = book.id();
  for (;;) {
    await pause();
    const title = freeName(starter.name, sheetNames(book));
    const { sheet, names } = await starterDataInSlices(starter, title, namesOfBook(book), work);
    /** Someone has given a name away meanwhile: the sheet's formulas would mean another cell. */
    const isStale = (): boolean => {
      if (book.id() !== workbook) throw new Error("another workbook was opened meanwhile");
      const taken = namesOfBook(book);
      return (
        freeName(title, sheetNames(book)) !== title || names.some(({ name: each }) => taken.has(each.toLowerCase()))
      );
    };
    const added = await book.addSheetInSlices(sheet, names, { pause, isStale });
    if (added === undefined) continue;
    onStage?.(CALCULATING);
    await untilCancelled(book.whenCalculated(), signal);
    if (signal?.aborted !== true) return added;
    await book.takeBack(added);
    throw CANCELLED;
  }
}
