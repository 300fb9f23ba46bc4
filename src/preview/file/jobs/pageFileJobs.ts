/** The page's jobs on files and their worker. */
import { BUILD } from "../../../functions/buildHash";
import { startJobQueue } from "../../../taskpane/jobs/jobQueue";
import type { FileJobs, FileJobTypes } from "./fileJob";

const newWorker = (): Worker => new Worker(`files.js?v=${BUILD}`, { name: "warmback files" });

/** @param start creates a worker */
export function startFileJobs(start: () => Worker = newWorker): FileJobs {
  return startJobQueue<FileJobTypes>({
    start,
    load: async () => (await import(/* webpackChunkName: "files" */ "./fileRunner")).fileRunner(),
    crashed: "The browser stopped the work on the file: the workbook is as it was. Try again.",
  });
}
