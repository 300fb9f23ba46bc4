/** The panel's jobs and their worker. */
import { BUILD } from "../../functions/buildHash";
import { startJobQueue, type JobQueue } from "./jobQueue";

const newWorker = (): Worker => new Worker(`worker.js?v=${BUILD}`, { name: "warmback" });

/** @param start creates a worker */
export function startPanelJobs(start: () => Worker = newWorker): JobQueue {
  return startJobQueue({
    start,
    load: async () => (await import(/* webpackChunkName: "perform" */ "./runJob")).jobRunner(),
    crashed: "the calculation stopped",
  });
}
