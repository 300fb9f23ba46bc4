/**
 * What a calculation in slices does with a stop (engine 0.25.1). The engine stops one, to begin another, when something
 * changes; it looks for that at every 500th formula, since nothing interrupts it in between, and takes every list that
 * ends for a success. So a stop that comes between two formulas is held until the engine looks for it or the list ends.
 */
import { ICommandService } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import { FormulaExecuteStageType, IFormulaRuntimeService, Interpreter } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import { MOVES } from "./moves";

/** The engine's plan for the next calculation. */
interface Restart {
  _restartCalculation: boolean;
  readonly _executingDirtyData: object;
}

export interface HeldStops {
  /** Holds a stop that another calculation is to follow; answers what that one calculates, undefined for other stops. */
  hold(): object | undefined;
  /** The calculation has ended. */
  release(): void;
}

/** The stages in which the engine goes through its list of formulas. */
const IN_LIST: ReadonlySet<number> = new Set([
  FormulaExecuteStageType.CURRENTLY_CALCULATING,
  FormulaExecuteStageType.CURRENTLY_CALCULATING_ARRAY_FORMULA,
]);

export const isInList = (runtime: IFormulaRuntimeService): boolean => IN_LIST.has(runtime.getFormulaExecuteStage());

export function heldStops(injector: Injector): HeldStops {
  const restart = injector.get(TriggerCalculationController) as unknown as Restart;
  const runtime = injector.get(IFormulaRuntimeService);
  let isHeld = false;
  const isStopped = runtime.isStopExecution.bind(runtime);
  runtime.isStopExecution = () => isHeld || isStopped();
  // Formulas are worked out until the engine has looked.
  const interpreter = injector.get(Interpreter) as unknown as { _runtimeService: IFormulaRuntimeService };
  interpreter._runtimeService = Object.create(runtime, { isStopExecution: { value: isStopped } }) as typeof runtime;
  // A person's stop: what is left of the list is answered without being worked out.
  const succeed = runtime.markedAsSuccessfullyExecuted.bind(runtime);
  runtime.markedAsSuccessfullyExecuted = () => (isStopped() ? runtime.markedAsStopFunctionsExecuted() : succeed());
  // Results for cells that have moved would be written where they were.
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (isInList(runtime) && MOVES.test(id)) runtime.stopExecution();
  });
  return {
    hold: () => {
      if (!restart._restartCalculation) return undefined;
      isHeld = true;
      return { ...restart._executingDirtyData };
    },
    release: () => {
      if (isHeld) restart._restartCalculation = false;
      isHeld = false;
    },
  };
}
