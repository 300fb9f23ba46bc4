/**
 * Calculates the page's formulas in slices (engine 0.25.1): other tasks get a turn between two formulas, and within a call
 * that can end and go on. What a person changes meanwhile is calculated next.
 */
import type { Injector } from "@univerjs/core";
import { IFormulaRuntimeService, Interpreter } from "@univerjs/engine-formula";
import type { HostSlices } from "../../functions/hostArguments";
import { resumeWhenReady } from "../../workbook/pending";
import { LONG_SLICE, nextTask, type SliceOptions } from "../../workbook/timeSlices";
import type { CallSites } from "../host/callSites";
import { isInList } from "./heldStops";

export interface FormulaSlices extends HostSlices {
  /** Whether the slice is used up, inside a formula or between two. */
  isUsedUp(): boolean;
  /** Does work whose calls may end when the slice is over. */
  cutting<T>(work: () => T): T;
}

export function formulaSlices({
  slice = LONG_SLICE,
  now = () => performance.now(),
  turn = nextTask,
}: SliceOptions = {}): FormulaSlices {
  let since = -Infinity;
  let isCutting = false;
  const isUsedUp = (): boolean => now() - since >= slice;
  return {
    isUsedUp,
    isOver: () => isCutting && isUsedUp(),
    nextTurn: async () => {
      await turn();
      since = now();
    },
    cutting: (work) => {
      isCutting = true;
      try {
        return work();
      } finally {
        isCutting = false;
      }
    },
  };
}

/** What the engine's type leaves out. */
interface SheetSize {
  readonly currentRowCount: number;
  readonly currentColumnCount: number;
}

/** Restores the engine's place in its list after others had their turn. */
function restorerOfPlace(runtime: IFormulaRuntimeService & Partial<SheetSize>): () => void {
  const { currentRow, currentColumn, currentRowCount = 0, currentColumnCount = 0 } = runtime;
  const { currentSubUnitId, currentUnitId } = runtime;
  return () =>
    runtime.setCurrent(currentRow, currentColumn, currentRowCount, currentColumnCount, currentSubUnitId, currentUnitId);
}

/** @param injector of an engine that has a workbook, its interpreter mended */
export function sliceFormulas(injector: Injector, log: CallSites, slices: FormulaSlices): void {
  const interpreter = injector.get(Interpreter);
  const runtime = injector.get(IFormulaRuntimeService);
  const isAsync = interpreter.checkAsyncNode.bind(interpreter);
  const execute = interpreter.execute.bind(interpreter);
  const executeAsync = interpreter.executeAsync.bind(interpreter);
  /** The body of a LAMBDA runs inside its formula. */
  let isInside = false;
  interpreter.checkAsyncNode = (node) => (!isInside && isInList(runtime)) || isAsync(node);
  const executeSliced: typeof executeAsync = async (data) => {
    const restorePlace = restorerOfPlace(runtime);
    const site = { sheetId: runtime.currentSubUnitId, row: runtime.currentRow, column: runtime.currentColumn };
    if (slices.isUsedUp()) {
      await slices.nextTurn();
      restorePlace();
    }
    if (isAsync(data.node)) return executeAsync(data);
    const again = (): void => {
      restorePlace();
      log.forget(site);
      data.node?.resetCalculationState();
    };
    let runs = 0;
    return resumeWhenReady(() => {
      if (runs++ > 0) again();
      return slices.cutting(() => execute(data));
    });
  };
  interpreter.executeAsync = async (data) => {
    if (isInside) return executeAsync(data);
    isInside = true;
    try {
      return await executeSliced(data);
    } finally {
      isInside = false;
    }
  };
}
