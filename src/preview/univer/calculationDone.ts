import { ICommandService } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

/** Longest wait for one calculation, unless the caller watches it otherwise. */
const PATIENCE_MS = 30_000;
/** The engine gathers changes for 100 ms before it begins; a calculation not begun by then won't come. */
const START_WITHIN_MS = 160;

export interface CalculationDone {
  /** Reports a change that leads to a calculation. */
  touch(): void;
  whenCalculated(): Promise<void>;
  dispose(): void;
}

/** Reports when the engine has calculated every change made so far. */
export const calculationDone = (
  injector: Injector,
  onStart: () => void,
  patienceMs: number = PATIENCE_MS,
): CalculationDone => {
  const session = injector.get(FormulaCalculationSessionService);
  let touched = 0;
  let covered = 0;
  const listener = injector.get(ICommandService).beforeCommandExecuted((command) => {
    if (command.id !== SetFormulaCalculationStartMutation.id) return;
    covered = touched;
    onStart();
  });
  return {
    touch: () => {
      touched += 1;
    },
    whenCalculated: async () => {
      do {
        const before = touched;
        await session.waitForLatestApplied(patienceMs, START_WITHIN_MS);
        // A change that starts no calculation is covered by having waited for one.
        covered = Math.max(covered, before);
      } while (covered < touched);
      // The results of further sheets are written in the same turn as the first's.
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    dispose: () => listener.dispose(),
  };
};
