/** The script of the worker that reads and writes the page's files; it holds neither the core nor the sheet engine. */
import { answerJobs } from "../../../taskpane/jobs/answerJobs";
import type { FileJobTypes } from "./fileJob";
import { fileRunner } from "./fileRunner";

answerJobs<FileJobTypes>(fileRunner());
