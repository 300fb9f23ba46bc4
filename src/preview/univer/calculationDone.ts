import { ICommandService } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

/** A calculation ends where nothing comes of it for so many looks, one a second; how long it takes in all is no matter. */
const PATIENCE = 30;
const LOOK_EVERY_MS = 1_000;
/** The engine's own limit, by the clock: none. */
const DAY_MS = 86_400_000;
/** The engine gathers changes for 100 ms before it begins; a calculation not begun by then won't come. */
const START_WITHIN_MS = 160;

export interface CalculationDone {
  /** Reports a change that leads to a calculation. */
  touch(): void;
  /** Reports another workbook: the engine may calculate what it left of the former one first. */
  replaced(): void;
  whenCalculated(): Promise<void>;
  dispose(): void;
}

/** How far the engine is, and how many looks without progress end the wait. */
export interface CalculationWatch {
  /** Another number whenever something was calculated. */
  progress(): number;
  readonly patience?: number | undefined;
  /** Whether a calculation is under way, be it one that is stopped: another follows it. */
  isCalculating?(): boolean;
}

/**
 * Waits, and gives up where there is no progress. It counts looks and not the clock: a page that was busy or asleep
 * between two of them has lost one look, however long that took.
 */
async function whileProgressing(
  done: Promise<void>,
  { progress, patience = PATIENCE }: CalculationWatch,
): Promise<void> {
  let last = progress();
  let idle = 0;
  let timer: ReturnType<typeof setInterval> | undefined;
  const stalled = new Promise<never>((_, reject) => {
    timer = setInterval(() => {
      const now = progress();
      idle = now === last ? idle + 1 : 0;
      last = now;
      if (idle >= patience) reject(new Error(`the sheet engine has calculated nothing for ${patience} s`));
    }, LOOK_EVERY_MS);
  });
  try {
    await Promise.race([done, stalled]);
  } finally {
    clearInterval(timer);
  }
}

/** Turns of the page, 10 ms each at least: a timer of the engine that was due before has had its turn by then. */
async function turns(count: number): Promise<void> {
  for (let at = 0; at < count; at++) await new Promise((resolve) => setTimeout(resolve, 10));
}

/** Waits for the end of a calculation that is stopped: the engine calls it complete as soon as it is asked to stop. */
async function whileUnderWay(watch: CalculationWatch): Promise<void> {
  const ended = async (): Promise<void> => {
    while (watch.isCalculating?.() === true) await turns(1);
  };
  await new Promise((resolve) => setTimeout(resolve, 0));
  if (watch.isCalculating?.() === true) await whileProgressing(ended(), watch);
}

/** Reports when the engine has calculated every change made so far. */
export const calculationDone = (injector: Injector, onStart: () => void, watch: CalculationWatch): CalculationDone => {
  const session = injector.get(FormulaCalculationSessionService);
  let touched = 0;
  let covered = 0;
  let starts = 0;
  let isReplaced = false;
  const listener = injector.get(ICommandService).beforeCommandExecuted((command) => {
    if (command.id !== SetFormulaCalculationStartMutation.id) return;
    covered = touched;
    starts += 1;
    onStart();
  });
  return {
    touch: () => {
      touched += 1;
    },
    replaced: () => {
      isReplaced = true;
    },
    whenCalculated: async () => {
      let isDone = false;
      while (!isDone) {
        const before = touched;
        const { started, completed, resultApplied } = session.state;
        const isRunning = (started && !(completed && resultApplied)) || watch.isCalculating?.() === true;
        await whileProgressing(session.waitForLatestApplied(DAY_MS, START_WITHIN_MS), watch);
        if (watch.isCalculating?.() === true) await whileUnderWay(watch);
        // A change that starts no calculation is covered by having waited for one, and not for an earlier one's end.
        if (!isRunning) covered = Math.max(covered, before);
        const known = starts;
        const check = isReplaced;
        isReplaced = false;
        if (check) await turns(START_WITHIN_MS / 10);
        isReplaced ||= check && starts > known;
        isDone = covered >= touched && !isReplaced;
      }
      // The results of further sheets are written in the same turn as the first's.
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    dispose: () => listener.dispose(),
  };
};
