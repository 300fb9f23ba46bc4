/** Jobs on the page's own thread. */
import { CANCELLED, nextTask } from "../../workbook/timeSlices";
import { type JobContext, type JobOptions, type JobRunner, type JobTable, type WorkerRequest } from "./jobTable";

function pageContext({ signal, slices, onProgress }: JobOptions): JobContext {
  return {
    report: (progress) => onProgress?.(progress),
    async yieldTurn() {
      await nextTask();
      if (signal?.aborted === true) throw CANCELLED;
    },
    slicing: { signal, ...(slices !== undefined && { slices }) },
  };
}

/** Runs a job on the page, which stays responsive as far as the job yields. */
export async function onPage<T extends JobTable<T>>(
  { kind, input }: WorkerRequest,
  options: JobOptions,
  run: JobRunner<T>,
): Promise<object> {
  const context = pageContext(options);
  // Even a job in one piece yields to the page once before it starts.
  await context.yieldTurn();
  return run(kind as keyof T & string, input, context);
}
