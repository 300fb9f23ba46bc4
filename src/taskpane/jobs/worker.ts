/** The panel's worker script, on top of the functions script. */
import "./loadFunctions";
import { answerJobs } from "./answerJobs";
import type { JobTypes } from "./job";
import { jobRunner } from "./runJob";

answerJobs<JobTypes>(jobRunner());
