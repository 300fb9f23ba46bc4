/** Runs the jobs on the page's file: the same code in a worker and, if no worker is available, on the page. */
import type { JobContext, JobRunner } from "../../../taskpane/jobs/jobTable";
import { rareReports } from "../../../taskpane/jobs/rareReports";
import type { PackageWork } from "../../../workbook/package";
import { timeSlices } from "../../../workbook/timeSlices";
import { circlesKept } from "../circles";
import { textsWith } from "../formulaTexts";
import { openedBook, type OpenedBook } from "../openedBook";
import { newFile, savedFile } from "../savedFile";
import { changedBook } from "./bookChanges";
import type { FileJobTypes, HeldFile, OurFunctions } from "./fileJob";
import { packSheets, unpackSheets } from "./packedCells";

type Input<K extends keyof FileJobTypes> = FileJobTypes[K]["input"];
type Result<K extends keyof FileJobTypes> = FileJobTypes[K]["result"];
type Runners = {
  readonly [K in keyof FileJobTypes]: (input: Input<K>, context: JobContext) => Promise<Result<K>>;
};

interface Work {
  readonly work: PackageWork;
  pause(): Promise<void> | undefined;
}

function workIn({ report, slicing = {} }: JobContext, what: string): Work {
  const { signal } = slicing;
  const reportRarely = rareReports(report);
  const onProgress = (done: number, total: number): void => {
    if (total > 0) reportRarely({ done, total, text: `${what}, ${Math.round((100 * done) / total)} %` });
  };
  return {
    work: { ...slicing, onProgress },
    pause: timeSlices(slicing.slices ?? {}, signal === undefined ? [] : [signal]),
  };
}

/** Remembers the file that it read last, so that saving it begins with the changes. */
export function fileRunner(): JobRunner<FileJobTypes> {
  let last: { readonly number: number; readonly book: OpenedBook } | undefined;

  async function bookOf({ number, bytes }: HeldFile, ours: OurFunctions, { work, pause }: Work): Promise<OpenedBook> {
    if (last?.number === number) return last.book;
    last = undefined;
    const book = await openedBook(bytes, textsWith(ours), work, pause);
    last = { number, book };
    return book;
  }

  const runners: Runners = {
    async open({ file, ours }, context) {
      const reading = workIn(context, "reading the file");
      const { facts, known, data } = await bookOf(file, ours, reading);
      return {
        facts,
        hiding: [...known.hiding],
        sheets: await packSheets(data.sheets, reading.pause),
        names: data.names,
      };
    },
    async save({ file, ours, circles, changes }, context) {
      const book = await bookOf(file, ours, workIn(context, "reading the file"));
      const { work, pause } = workIn(context, "writing the file");
      const opened = { ...book, data: circlesKept(book.data, circles) };
      const now = await changedBook(opened.data, changes, pause);
      const saved = await savedFile(opened, now, textsWith(ours), work, pause);
      context.give?.(saved.bytes);
      return saved;
    },
    async write({ sheets, names, ours }, context) {
      const { work, pause } = workIn(context, "writing the file");
      const bytes = await newFile({ sheets: await unpackSheets(sheets, pause), names }, textsWith(ours), work);
      context.give?.(bytes);
      return { bytes, sentences: [] };
    },
  };
  return async (kind, input, context) => runners[kind](input, context);
}
