import { Worker } from "node:worker_threads";

import { NO_PLACE } from "./messages";
import type { Reply, Request, WorkerSettings } from "./messages";

/** The sheet engine in a worker thread, which is ended and started anew where a formula overruns or ends it. */

export interface ThreadLimits {
  /** Processor time of one formula. */
  readonly formulaMs: number;
  /** Real time of one formula, where the machine is busy with something else. */
  readonly waitMs: number;
  /** Memory of the engine. */
  readonly memoryMb: number;
}

export const THREAD_LIMITS: ThreadLimits = { formulaMs: 10_000, waitMs: 60_000, memoryMb: 4_096 };

const STACK_MB = 64;
const LOOK_EVERY_MS = 50;
/** Loading many formulas at once, or reading a file, may take longer than one formula. */
const UNPLACED_FACTOR = 6;

/** Why a request has no answer: the engine ended. The place is that of the formula at work, if it was at one. */
export interface Ended {
  readonly kind: "ended";
  readonly why: "time" | "memory" | "crash";
  readonly message: string;
  readonly place: number | undefined;
}

export const isEnded = (answer: { readonly kind: string }): answer is Ended => answer.kind === "ended";

export interface EngineThread {
  ask(request: Request): Promise<Reply | Ended>;
  /** How often the engine was started. */
  starts(): number;
  end(): Promise<void>;
}

const processorMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

const seconds = (ms: number): string => `${String(ms / 1000)} s`;

/** Calls back when the place in shared memory hasn't changed within the limits. */
const watchProgress = (
  progress: Int32Array,
  limits: ThreadLimits,
  overrun: (message: string) => void,
): (() => void) => {
  let changes = Atomics.load(progress, 0);
  let [processor, real] = [processorMs(), performance.now()];
  const timer = setInterval(() => {
    const now = Atomics.load(progress, 0);
    const factor = Atomics.load(progress, 1) === NO_PLACE ? UNPLACED_FACTOR : 1;
    if (now !== changes) [changes, processor, real] = [now, processorMs(), performance.now()];
    else if (processorMs() - processor > limits.formulaMs * factor)
      overrun(`not worked out within ${seconds(limits.formulaMs)} of processor time, the limit of one formula`);
    else if (performance.now() - real > limits.waitMs * factor)
      overrun(`not worked out within ${seconds(limits.waitMs)}, the limit of one formula`);
  }, LOOK_EVERY_MS);
  return () => clearInterval(timer);
};

interface Running {
  readonly worker: Worker;
  readonly progress: Int32Array;
}

const startWorker = async (path: string, { memoryMb }: ThreadLimits): Promise<Running> => {
  const shared = new SharedArrayBuffer(2 * Int32Array.BYTES_PER_ELEMENT);
  const progress = new Int32Array(shared);
  progress[1] = NO_PLACE;
  const worker = new Worker(path, {
    workerData: { progress: shared } satisfies WorkerSettings,
    resourceLimits: { stackSizeMb: STACK_MB, maxOldGenerationSizeMb: memoryMb },
  });
  await new Promise<void>((resolve, reject) => {
    worker.once("message", () => resolve());
    worker.once("error", reject);
  });
  // Each request listens for itself; between them nothing is lost, as the engine then has nothing to do.
  worker.on("error", () => undefined);
  return { worker, progress };
};

/** One request to a running worker; it has ended where the answer says so. */
const request = ({ worker, progress }: Running, sent: Request, limits: ThreadLimits): Promise<Reply | Ended> =>
  new Promise((resolve) => {
    const finish = (answer: Reply | Ended): void => {
      unwatch();
      worker.off("message", finish);
      worker.off("error", failed);
      worker.off("exit", exited);
      resolve(answer);
    };
    const ended = (why: Ended["why"], message: string): void => {
      const at = Atomics.load(progress, 1);
      finish({ kind: "ended", why, message, place: at === NO_PLACE ? undefined : at });
    };
    const unwatch = watchProgress(progress, limits, (message) => {
      ended("time", message);
      void worker.terminate();
    });
    const failed = (error: Error & { code?: string }): void => {
      if (error.code === "ERR_WORKER_OUT_OF_MEMORY")
        ended("memory", `needs more than ${String(limits.memoryMb)} MB of memory, the limit of the sheet engine`);
      else ended("crash", `the sheet engine ended: ${error.message}`);
    };
    const exited = (): void => ended("crash", "the sheet engine ended");
    worker.on("message", finish);
    worker.on("error", failed);
    worker.on("exit", exited);
    worker.postMessage(sent);
  });

/** @param path of the worker's script */
export const engineThread = (path: string, limits: ThreadLimits = THREAD_LIMITS): EngineThread => {
  let running: Promise<Running> | undefined;
  let starts = 0;
  const started = (): Promise<Running> => {
    if (running === undefined) starts += 1;
    return (running ??= startWorker(path, limits));
  };
  return {
    ask: async (sent) => {
      const answer = await request(await started(), sent, limits);
      if (answer.kind === "ended") running = undefined;
      return answer;
    },
    starts: () => starts,
    end: async () => {
      const last = await running;
      running = undefined;
      await last?.worker.terminate();
    },
  };
};
