/** Processor time of work, and of its longest task. */
import { readFileSync } from "node:fs";
import { monitorEventLoopDelay } from "node:perf_hooks";

/** The main thread's time on a processor, ms: what others do on a busy machine is not in it. Linux only. */
function threadTime(): number {
  const [nanoseconds = ""] = readFileSync(`/proc/self/task/${process.pid}/schedstat`, "utf8").split(" ");
  return Number(nanoseconds) / 1e6;
}

const canRead = ((): boolean => {
  try {
    return threadTime() > 0;
  } catch {
    return false;
  }
})();

/** Turns of the event loop without work cost less, ms. */
const IDLE_MS = 0.1;

export interface Cost {
  /** Processor time of all threads, s. */
  readonly processor: number;
  /** The longest turn of the main thread's event loop, ms: by the processor's clock where that can be read. */
  readonly longest: number;
}

/** Looks at the processor's clock once a turn. */
function watchTurns() {
  let [longest, idle] = [0, 0];
  let last = threadTime();
  let next: NodeJS.Immediate | undefined;
  const turn = (): void => {
    const now = threadTime();
    const took = now - last;
    last = now;
    longest = Math.max(longest, took);
    if (took < IDLE_MS) idle += took;
    next = setImmediate(turn);
  };
  next = setImmediate(turn);
  return {
    end: (): { longest: number; idle: number } => {
      clearImmediate(next);
      return { longest, idle };
    },
  };
}

function watchDelay() {
  const delay = monitorEventLoopDelay({ resolution: 1 });
  delay.enable();
  return {
    end: (): { longest: number; idle: number } => {
      delay.disable();
      return { longest: delay.max / 1e6, idle: 0 };
    },
  };
}

/** Does a step and measures it. */
export async function costOf<T>(step: () => Promise<T>): Promise<Cost & { readonly result: T }> {
  await new Promise((resolve) => setTimeout(resolve, 50));
  const watch = canRead ? watchTurns() : watchDelay();
  const from = process.cpuUsage();
  const result = await step();
  const { user, system } = process.cpuUsage(from);
  await new Promise((resolve) => setTimeout(resolve, 5));
  const { longest, idle } = watch.end();
  return { result, longest, processor: (user + system) / 1e6 - idle / 1e3 };
}
