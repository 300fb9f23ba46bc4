/** .xlsx files in and out as whole workbooks; an opened file is saved by `workbookFile`, which keeps its other parts. */
import { newWorkbook, packageBytes, type PackageWork } from "../../workbook/package";
import type { BookData } from "./bookData";
import type { FormulaTexts } from "./formulaTexts";
import { newNames, fileSheetOf } from "./newSheets";
import { openedBook } from "./openedBook";

/** Reads a file's bytes; a file that is no workbook is refused with a plain sentence. */
export async function readXlsx(bytes: ArrayBuffer | Uint8Array, texts: FormulaTexts): Promise<BookData> {
  return (await openedBook(new Uint8Array(bytes), texts)).data;
}

/** A workbook of our own: formulas keep their text and their last result. */
export async function writeXlsx(book: BookData, texts: FormulaTexts, work: PackageWork = {}): Promise<Uint8Array> {
  const sheets = book.sheets.map((sheet) => fileSheetOf(sheet, texts));
  return packageBytes(await newWorkbook(sheets, newNames(book, texts), work), work);
}
