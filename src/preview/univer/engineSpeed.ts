/** Shorter ways for what large workbooks do a hundred thousand times (engine 0.25.1). Results are the same. */
import { ICommandService } from "@univerjs/core";
import type { Injector, IUnitRange } from "@univerjs/core";
import {
  ArrayValueObject,
  ICalculateFormulaService,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import type { BaseValueObject } from "@univerjs/engine-formula";
import { TriggerCalculationController, UpdateFormulaController } from "@univerjs/sheets-formula";
import { sliceCalculationList } from "./calculationList";
import { keepDependencyTrees } from "./dependencyTrees";
import { heldStops, type HeldStops } from "./heldStops";
import { readOneCellAlone } from "./oneCellArrays";
import { resultPortions, type Results } from "./resultPortions";
import { readWrittenSheetOnly } from "./writtenFormulas";

const done = new WeakSet<object>();

interface Operators {
  _rowCount: number;
  getUnitId(): string;
  getSheetId(): string;
  getCurrentRow(): number;
  getCurrentColumn(): number;
  _batchOperatorValue(value: BaseValueObject, column: number, result: unknown, type: number, ...rest: unknown[]): void;
  __batchOperatorRowValue(
    value: BaseValueObject,
    column: number,
    result: unknown,
    type: number,
    ...rest: unknown[]
  ): void;
}

/** To compare one cell, the engine goes through all values that its column was seen to hold. */
function compareOneCell(): void {
  const prototype = ArrayValueObject.prototype as unknown as Operators;
  if (done.has(prototype)) return;
  done.add(prototype);
  const operate = prototype._batchOperatorValue;
  prototype._batchOperatorValue = function operateOn(this: Operators, value, column, result, type, ...rest) {
    if (this._rowCount !== 1) return operate.call(this, value, column, result, type, ...rest);
    const place = [this.getUnitId(), this.getSheetId(), this.getCurrentRow(), this.getCurrentColumn()];
    return this.__batchOperatorRowValue(value, column, result, type, 0, ...place, ...rest);
  };
}

interface DirtyRanges {
  _mergeDirtyRanges(all: IUnitRange[], more: readonly IUnitRange[]): void;
}

const rangeKey = ({ unitId, sheetId, range: { startRow, startColumn, endRow, endColumn } }: IUnitRange): string =>
  `${unitId} ${sheetId} ${startRow}:${startColumn}:${endRow}:${endColumn}`;

/** The engine compares each changed range with each other one. */
function joinRanges(controller: DirtyRanges): void {
  const known = new WeakMap<object, Set<string>>();
  controller._mergeDirtyRanges = (all, more) => {
    const keys = known.get(all) ?? new Set(all.map(rangeKey));
    known.set(all, keys);
    for (const range of more) {
      const key = rangeKey(range);
      if (keys.has(key)) continue;
      keys.add(key);
      all.push(range);
    }
  };
}

/** A new workbook is calculated when someone asks for it, and not because it is there. */
function calculateWhenAsked(injector: Injector): void {
  const trigger = injector.get(TriggerCalculationController) as unknown as { _initialExecuteFormula(): void };
  trigger._initialExecuteFormula = () => undefined;
  const updates = injector.get(UpdateFormulaController) as unknown as { _handleWorkbookAdded(): void };
  updates._handleWorkbookAdded = () => undefined;
}

interface Calculation {
  readonly _executeLock: { acquire(key: string, work: () => Promise<void>): Promise<void> };
}

/**
 * Begins a calculation when the one before has ended. The engine begins the next at once where the one before still lists
 * its formulas, which no other task interrupted before it was cut into slices.
 */
function oneAfterTheOther(injector: Injector, stops: HeldStops | undefined): () => boolean {
  const { _executeLock: lock } = injector.get(ICalculateFormulaService) as unknown as Calculation;
  const acquire = lock.acquire.bind(lock);
  const commands = injector.get(ICommandService);
  const execute = commands.executeCommand.bind(commands);
  const apply = (found: Results) => execute(SetFormulaCalculationResultMutation.id, found, { onlyLocal: true });
  const results = resultPortions(injector, apply);
  let running = 0;
  /** The last one holds what those before it hold. */
  let waiting: object | undefined;
  const end = (): void => {
    running -= 1;
    if (running > 0) return;
    stops?.release();
    if (waiting === undefined) return;
    const params = waiting;
    waiting = undefined;
    void execute(SetTriggerFormulaCalculationStartMutation.id, params, { onlyLocal: true });
  };
  lock.acquire = (key, work) => {
    running += 1;
    const run = acquire(key, async () => {
      results.begin();
      await work();
      await results.write();
    });
    run.then(end, end);
    return run;
  };
  const nextOf = (id: string, params: object | undefined): object | undefined => {
    if (id === SetFormulaCalculationStopMutation.id && running > 0) return stops?.hold();
    return id === SetFormulaCalculationStartMutation.id ? params : undefined;
  };
  commands.executeCommand = async (...given) => {
    const [id, params] = given;
    if (id === SetFormulaCalculationResultMutation.id && results.takes(params as Results)) return true as never;
    const next = nextOf(id, params);
    if (running === 0 || next === undefined) return execute(...given);
    waiting = next;
    return true as never;
  };
  return () => running > 0;
}

/** Leaves out what the engine says of its progress a second after the beginning: it may be gone by then. */
export function endProgress(injector: Injector): void {
  const trigger = injector.get(TriggerCalculationController) as unknown as { _startProgress(): void };
  trigger._startProgress = () => undefined;
}

/**
 * @param injector of an engine that has a workbook
 * @param isSliced other tasks get a turn between two formulas
 * @returns whether a calculation is under way, be it one that is stopped
 */
export function speedUpEngine(injector: Injector, isSliced: boolean): () => boolean {
  compareOneCell();
  readWrittenSheetOnly();
  readOneCellAlone();
  keepDependencyTrees(injector);
  sliceCalculationList(injector);
  joinRanges(injector.get(TriggerCalculationController) as unknown as DirtyRanges);
  calculateWhenAsked(injector);
  return oneAfterTheOther(injector, isSliced ? heldStops(injector) : undefined);
}
