/** The worker's script, on top of the functions script: one job at a time, plain messages in and out. */
import "./loadFunctions";
import { BUILD } from "../../functions/buildHash";
import type { JobAnswer, JobRequest } from "./job";
import { runJob } from "./runJob";

const answer = (message: JobAnswer): void => self.postMessage(message);

const work = async ({ number, kind, input }: JobRequest): Promise<void> => {
  try {
    const result = await runJob(kind, input, {
      report: (progress) => answer({ number, progress }),
      // Nothing else runs on this thread; the page terminates it to cancel.
      yieldTurn: async () => undefined,
    });
    answer({ number, result });
  } catch (thrown) {
    answer({ number, failed: thrown instanceof Error ? thrown.message : String(thrown) });
  }
};

self.onmessage = ({ data }: MessageEvent<JobRequest>) => void work(data);
answer({ ready: BUILD });
