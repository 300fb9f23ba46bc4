import { ICommandService } from "@univerjs/core";
import type { Injector } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";

/** What the engine gathers for 100 ms before it calculates (0.25.1). */
interface Gathering {
  _waitingCommandQueue: readonly unknown[];
  _setTimeoutKey: ReturnType<typeof setTimeout>;
  _executingDirtyData: object;
  readonly _executionInProgressParams: unknown;
  _generateDirty(commands: readonly unknown[]): object;
  _mergeDirty(one: object, other: object): object;
}

const begin = (injector: Injector): void => {
  const gathering = injector.get(TriggerCalculationController) as unknown as Gathering;
  const commands = gathering._waitingCommandQueue;
  if (commands.length === 0 || gathering._executionInProgressParams !== null) return;
  clearTimeout(gathering._setTimeoutKey);
  gathering._waitingCommandQueue = [];
  gathering._executingDirtyData = gathering._mergeDirty(
    gathering._executingDirtyData,
    gathering._generateDirty(commands),
  );
  const { id } = SetFormulaCalculationStartMutation;
  void injector.get(ICommandService).executeCommand(id, { ...gathering._executingDirtyData }, { onlyLocal: true });
};

/**
 * Calculates what has changed at once, and waits for it. The engine waits 100 ms for further changes of a person who
 * types; a program has made its changes when it asks for their results. A calculation that goes on already is left to the
 * engine, which ends it first.
 */
export const calculateNow = async (injector: Injector, whenCalculated: () => Promise<void>): Promise<void> => {
  // What the engine adds to a change of a formula comes in the same turn.
  await new Promise((resolve) => setTimeout(resolve, 0));
  // Waited for first: a calculation may end in the turn that it begins in.
  const done = whenCalculated();
  begin(injector);
  return done;
};
