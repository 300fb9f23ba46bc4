/** The panel's engine and the preview's sheet engine over the built functions, for tests of commands on a workbook. */
import { inject } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { startHeadless } from "../../src/preview/univer/start";
import { panelEngine } from "../../src/taskpane/engine";
import { sessionLog } from "../../src/workbook/callLog";
import type { Block, CellWrite, Workbook } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";

export const ENGINE = panelEngine(sessionLog());

export interface OnPreview {
  readonly sheets: SheetBook;
  readonly book: Workbook;
  put(sheet: string, cells: Readonly<Record<string, string | number>>): Promise<void>;
  block(sheet: string, area: string): Block;
}

export async function onPreview(...names: readonly string[]): Promise<OnPreview> {
  const sheets = startHeadless(loadFunctions(inject("build")), { sheets: names.map(emptySheet), names: [] });
  await sheets.whenCalculated();
  const place = (text: string): Omit<Block["area"], "sheet"> => {
    const area = parseCells(text);
    if (area === undefined) throw new Error(`${text} is no address`);
    return area;
  };
  const book = previewWorkbook(sheets);
  return {
    sheets,
    book,
    put: (sheet, cells) =>
      book.write(
        Object.entries(cells).map(([at, content]): CellWrite => {
          const { row, column } = place(at);
          return { sheet, row, column, content };
        }),
      ),
    block: (sheet, area) => sheets.read({ sheet, ...place(area) }),
  };
}
