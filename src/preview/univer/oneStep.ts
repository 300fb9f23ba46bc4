/**
 * Changes that are one undo step however long they take. A long one is made in pieces, with other tasks of the page
 * between them. Meanwhile nobody else changes the workbook: entries that are typed follow when the step ends, and
 * everything else is refused with a sentence. A step that is cancelled or fails leaves the workbook as it was.
 */
import { sequenceExecute } from "@univerjs/core";
import type { IMutationInfo, IUndoRedoItem } from "@univerjs/core";
import { SetSelectionsOperation } from "@univerjs/sheets";

import { CANCELLED, timeSlices } from "../../workbook/timeSlices";
import type { SlicedWork } from "../host/sheetBook";
import { changeGuard, WAIT_FOR_STEP } from "./changeGuard";
import type { OpenBook } from "./open";
import { undoStacks } from "./undoStacks";

/** A part of a step that is done in one task. */
export interface StepPiece {
  /** How many cells it writes. */
  readonly size: number;
  change(): void;
}

export interface OneStep {
  /**
   * Makes a change in one task.
   * @throws WAIT_FOR_STEP while a step is made in pieces
   */
  atOnce(change: () => void): void;
  /**
   * Makes the pieces one after the other; waits for the step before.
   * @param made called when all are made, before what was typed meanwhile is entered
   * @throws what a pause or a piece throws, once the pieces that were made are taken back
   */
  inPieces(pieces: readonly StepPiece[], work?: SlicedWork, made?: () => void): Promise<void>;
  /** A step is being made in pieces. */
  isRunning(): boolean;
  /** Resolves when no step is being made. */
  ended(): Promise<void>;
  /** Calls back with a sentence for whoever changes the workbook during a step. */
  onRefusal(call: (sentence: string) => void): void;
  dispose(): void;
}

/** Each piece selects what it wrote: the last selection of a sheet is enough. */
function withLastSelections(mutations: readonly IMutationInfo[]): IMutationInfo[] {
  const isSelection = ({ id }: IMutationInfo): boolean => id === SetSelectionsOperation.id;
  const sheetOf = ({ params }: IMutationInfo): string => (params as { subUnitId: string }).subUnitId;
  const last = new Map(mutations.filter(isSelection).map((one) => [sheetOf(one), one] as const));
  return mutations.filter((one) => !isSelection(one) || last.get(sheetOf(one)) === one);
}

const joined = (unitID: string, items: readonly IUndoRedoItem[]): IUndoRedoItem => ({
  unitID,
  undoMutations: withLastSelections([...items].reverse().flatMap(({ undoMutations }) => undoMutations)),
  redoMutations: withLastSelections(items.flatMap(({ redoMutations }) => redoMutations)),
});

/** Makes a change and adds to `items` what it would leave on the stack of undo steps. */
function captured(open: OpenBook, change: () => void, items: IUndoRedoItem[]): void {
  const { undo } = open.services;
  const stacks = undoStacks(open);
  const unit = open.unitId();
  const [undos, redos] = [stacks._undoStacks.get(unit) ?? [], stacks._redoStacks.get(unit) ?? []];
  const taken: IUndoRedoItem[] = [];
  stacks._undoStacks.set(unit, taken);
  stacks._redoStacks.set(unit, []);
  const batch = undo.__tempBatchingUndoRedo(unit);
  try {
    change();
  } finally {
    batch.dispose();
    stacks._undoStacks.set(unit, undos);
    stacks._redoStacks.set(unit, redos);
    stacks._updateStatus();
    items.push(...taken);
  }
}

export function oneStep(open: OpenBook): OneStep {
  const { commands, undo } = open.services;
  const guard = changeGuard(open);
  let running: Promise<void> | undefined;
  const push = (unit: string, items: readonly IUndoRedoItem[]): void => {
    if (items.length > 0) undo.pushUndoRedo(joined(unit, items));
  };
  const takeBack = async (items: readonly IUndoRedoItem[], isThere: () => boolean): Promise<void> => {
    const pause = timeSlices({}, []);
    for (const { undoMutations } of [...items].reverse()) {
      if (!isThere()) return;
      guard.asOwn(() => sequenceExecute(undoMutations, commands));
      await pause();
    }
  };
  const make = async (pieces: readonly StepPiece[], { pause, onProgress }: SlicedWork): Promise<void> => {
    const unit = open.unitId();
    const isThere = (): boolean => open.unitId() === unit;
    const of = pieces.reduce((sum, { size }) => sum + size, 0);
    const items: IUndoRedoItem[] = [];
    let done = 0;
    try {
      for (const { size, change } of pieces) {
        await pause();
        // Another workbook took the place of the one that the pieces are for.
        if (!isThere()) throw CANCELLED;
        guard.asOwn(() => captured(open, change, items));
        onProgress?.((done += size), of);
      }
    } catch (thrown) {
      await takeBack(items, isThere);
      throw thrown;
    }
    push(unit, items);
  };
  const ended = async (): Promise<void> => {
    while (running !== undefined) await running;
  };
  return {
    atOnce: (change) => {
      if (running !== undefined) throw new Error(WAIT_FOR_STEP);
      const items: IUndoRedoItem[] = [];
      try {
        captured(open, change, items);
      } catch (thrown) {
        for (const { undoMutations } of items.reverse()) sequenceExecute(undoMutations, commands);
        throw thrown;
      }
      push(open.unitId(), items);
    },
    inPieces: async (pieces, work = { pause: () => undefined }, whenMade = () => undefined) => {
      while (running !== undefined) await running;
      guard.begin();
      const made = make(pieces, work).then(whenMade);
      const end = (): void => {
        running = undefined;
        guard.end();
      };
      running = made.then(end, end);
      await running;
      return made;
    },
    isRunning: () => running !== undefined,
    ended,
    onRefusal: guard.onRefusal,
    dispose: guard.dispose,
  };
}
