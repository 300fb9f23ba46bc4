/** The worker's script, on top of the functions script: one piece of work at a time, plain messages in and out. */
import "./loadFunctions";
import { BUILD } from "../../functions/buildHash";
import type { Answer, Ask } from "./job";
import { perform } from "./perform";

const answer = (message: Answer): void => self.postMessage(message);

const work = async ({ number, kind, needs }: Ask): Promise<void> => {
  try {
    const gives = await perform(kind, needs, {
      tell: (progress) => answer({ number, progress }),
      // Nobody waits for this thread: it is ended from outside.
      turn: async () => undefined,
    });
    answer({ number, gives });
  } catch (thrown) {
    answer({ number, failed: thrown instanceof Error ? thrown.message : String(thrown) });
  }
};

self.onmessage = ({ data }: MessageEvent<Ask>) => void work(data);
answer({ ready: BUILD });
