/**
 * A workbook in memory behind office-addin-mock: a property read before it was loaded and synced is the mock's error
 * text, a property that doesn't exist can't be loaded. It doesn't calculate, has no undo, no protection of single cells
 * and no rendering, and it takes text for a date only where digits stand around a hyphen: nothing here shows that Excel
 * does as it does.
 */
import { sheetOf } from "./fakeModel";
import type { FakeWorkbook } from "./fakeModel";
import { range, tableProxy } from "./fakeRanges";
import { sync } from "./fakeSession";
import type { Bag, Session } from "./fakeSession";
import { handlers, names, worksheets } from "./fakeSheets";

/** Puts Excel and Office where the adapter looks for them. */
export function install(book: FakeWorkbook): () => void {
  type Batch = (context: unknown) => Promise<unknown>;
  const run = async (first: object | Batch, second?: Batch): Promise<unknown> => {
    const [options, batch] = typeof first === "function" ? [{}, first as Batch] : [first, second as Batch];
    const session: Session = { book, queue: [], loads: [], nulls: [], after: [] };
    book.runs.push(options);
    const workbook = {
      worksheets: worksheets(session),
      names: names(session, () => book.names),
      tables: {
        getItemOrNullObject: (name: string) =>
          tableProxy(session, () => book.tables.find((one) => one.name.toLowerCase() === name.toLowerCase())),
      },
      getActiveCell: () =>
        range(session, () => ({
          sheet: sheetOf(book, book.active.sheet),
          area: { ...book.active, rows: 1, columns: 1 },
        })),
      onSelectionChanged: handlers(session, "onSelectionChanged"),
    };
    return batch({ workbook, sync: () => sync(session) });
  };
  const isSetSupported = (set: string, version: string): boolean =>
    set === "ExcelApi" && Number(version.split(".")[1]) <= Number(book.supported.split(".")[1]);
  const here = globalThis as unknown as Bag;
  const before = { Excel: here["Excel"], Office: here["Office"] };
  Object.assign(here, { Excel: { run }, Office: { context: { requirements: { isSetSupported } } } });
  return () => {
    Object.assign(here, before);
  };
}

export { fakeWorkbook, sheetOf } from "./fakeModel";
export type { FakeWorkbook } from "./fakeModel";
export { fire } from "./fakeSession";
