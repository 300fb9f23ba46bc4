import { readFile, writeFile } from "node:fs/promises";
import { STARTER_SHEETS } from "../../sheets";
import { panelEngine } from "../../taskpane/engine";
import { handOver } from "../../workbook/copy/handOver";
import { sessionLog } from "../../workbook/callLog";
import type { BookData } from "./bookData";
import { formulaTexts, type FormulaTexts } from "./formulaTexts";
import { loadFunctions } from "../host/loadFunctions";
import { starterData } from "./starterBook";
import { startHeadless } from "../univer/start";
import { previewWorkbook } from "../host/previewWorkbook";
import { readXlsx, writeXlsx } from "./xlsx";

const bookOf = async (from: string, texts: FormulaTexts): Promise<BookData> => {
  const starter = STARTER_SHEETS.find(({ id }) => id === from);
  if (starter === undefined) {
    const bytes = await readFile(from);
    return readXlsx(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), texts);
  }
  const { sheet, names } = starterData(starter, starter.name, new Set());
  return { sheets: [sheet], names };
};

/**
 * Writes the hand-over copy of a workbook, worked out in the sheet engine.
 * @param functions folder of functions.js and functions.json
 * @param from a file, or a starter sheet's id
 * @param to the file to write
 * @returns a sentence on what was written
 */
export const writeHandOver = async (functions: string, from: string, to: string): Promise<string> => {
  const set = loadFunctions(functions);
  const texts = formulaTexts(set.namespace, set.metadata);
  const book = startHeadless(set, await bookOf(from, texts));
  try {
    await book.whenCalculated();
    const workbook = previewWorkbook(book, async (data) => {
      await writeFile(to, Buffer.from(await writeXlsx(data, texts)));
      return to;
    });
    const copy = await handOver(workbook, panelEngine(sessionLog()));
    if (copy === undefined) throw new Error("no cell of this workbook uses these functions");
    const where = await workbook.handOver(copy);
    return `${copy.cells} formulas became values, ${copy.ours} of them with calls: ${where}`;
  } finally {
    book.dispose();
  }
};
