/** A worker's part: one job at a time, plain messages in and out. */
import { BUILD } from "../../functions/buildHash";
import type { JobRunner, JobTable, WorkerAnswer, WorkerRequest } from "./jobTable";

/** Nothing else runs on a worker's thread, which the page terminates to cancel: a pause is for progress alone. */
const SLICES = { slice: 50, turn: async (): Promise<void> => undefined };

/** What a worker's script has of its global object. */
export interface WorkerScope {
  onmessage: ((event: MessageEvent<WorkerRequest>) => void) | null;
  postMessage(message: WorkerAnswer, options: { readonly transfer: Transferable[] }): void;
}

export function answerJobs<T extends JobTable<T>>(run: JobRunner<T>, scope: WorkerScope = self): void {
  const answer = (message: WorkerAnswer, transfer: Transferable[] = []): void =>
    scope.postMessage(message, { transfer });
  const work = async ({ number, kind, input }: WorkerRequest): Promise<void> => {
    const given = new Set<Transferable>();
    try {
      const result = await run(kind as keyof T & string, input, {
        report: (progress) => answer({ number, progress }),
        yieldTurn: SLICES.turn,
        slicing: { slices: SLICES },
        give: ({ buffer }) => void given.add(buffer),
      });
      answer({ number, result }, [...given]);
    } catch (thrown) {
      answer({ number, failed: thrown instanceof Error ? thrown.message : String(thrown) });
    }
  };
  scope.onmessage = ({ data }) => void work(data);
  answer({ ready: BUILD });
}
