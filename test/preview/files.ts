/** Where the page's jobs on files run in tests. */
import type { FileJobs } from "../../src/preview/file/jobs/fileJob";
import { fileRunner } from "../../src/preview/file/jobs/fileRunner";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { workbookFile, type WorkbookFile } from "../../src/preview/file/workbookFile";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { fixtureSet } from "./support";

/** On the test's own thread, with nothing in between. */
export function filesHere(): FileJobs {
  const run = fileRunner();
  return {
    run: async (kind, input, { signal, slices, onProgress } = {}) =>
      run(kind, input, {
        report: (progress) => onProgress?.(progress),
        yieldTurn: async () => undefined,
        slicing: { signal, ...(slices !== undefined && { slices }) },
      }),
    place: () => "page",
  };
}

/** The file behind a book of the fixture's functions. */
export const fileOf = (book: SheetBook): WorkbookFile =>
  workbookFile(book, formulaTexts("WARMBACK", fixtureSet().metadata), filesHere());
