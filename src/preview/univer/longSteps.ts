/**
 * Undoes and redoes large steps in pieces. The engine makes all changes of a step in one task (0.25.1): half a second for
 * 10,000 cells. As while cells are written, entries that are typed meanwhile follow, and everything else is refused.
 */
import { CustomCommandExecutionError, RedoCommand, UndoCommand } from "@univerjs/core";
import type { ICellData, IDisposable, IMutationInfo, IUndoRedoItem, Nullable } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { timeSlices } from "../../workbook/timeSlices";
import { PIECE_CELLS } from "./edit";
import { MOVES } from "./moves";
import type { OneStep, StepPiece } from "./oneStep";
import type { OpenBook } from "./open";
import { undoStacks } from "./undoStacks";

type Rows = Record<number, Record<number, Nullable<ICellData>>>;

interface Written {
  readonly cellValue?: Readonly<Rows>;
}

/** A part of a mutation's cells. */
interface Portion {
  readonly cells: Rows;
  readonly size: number;
}

function portionsOf(all: Readonly<Rows>): readonly Portion[] {
  const portions: Portion[] = [];
  let cells: Rows = {};
  let size = 0;
  const close = (): void => {
    if (size > 0) portions.push({ cells, size });
    [cells, size] = [{}, 0];
  };
  for (const [row, line] of Object.entries(all))
    for (const [column, cell] of Object.entries(line)) {
      (cells[Number(row)] ??= {})[Number(column)] = cell;
      size += 1;
      if (size === PIECE_CELLS) close();
    }
  close();
  return portions;
}

interface MutationPart {
  readonly mutation: IMutationInfo;
  readonly size: number;
}

function partsOf(mutation: IMutationInfo): readonly MutationPart[] {
  const { id, params } = mutation;
  const { cellValue } = params as Written;
  if (id !== SetRangeValuesMutation.id || cellValue === undefined) return [{ mutation, size: 0 }];
  const portions = portionsOf(cellValue);
  if (portions.length < 2) return [{ mutation, size: portions[0]?.size ?? 0 }];
  return portions.map(({ cells, size }) => ({ mutation: { id, params: { ...params, cellValue: cells } }, size }));
}

/** The pieces of a large step; undefined for a small one, and where cells move, which nobody should see half done. */
function piecesOf(mutations: readonly IMutationInfo[], { services }: OpenBook): readonly StepPiece[] | undefined {
  if (mutations.some(({ id }) => MOVES.test(id))) return undefined;
  const parts = mutations.flatMap(partsOf);
  if (parts.reduce((sum, { size }) => sum + size, 0) <= 2 * PIECE_CELLS) return undefined;
  return parts.map(({ mutation: { id, params }, size }) => ({
    size,
    change: () => {
      if (!services.commands.syncExecuteCommand(id, params)) throw new Error("The step couldn't be undone or redone.");
    },
  }));
}

export interface LongSteps extends IDisposable {
  /** Calls back with a sentence on how far a large step is undone or redone. */
  onProgress(call: (sentence: string) => void): void;
}

interface LongStepsParts {
  readonly step: OneStep;
  begun(): void;
  written(): void;
}

/** Takes undo and redo of large steps from the engine. */
export function longSteps(open: OpenBook, { step, begun, written }: LongStepsParts): LongSteps {
  const { commands, instances, undo } = open.services;
  let said: (sentence: string) => void = () => undefined;
  const steps: Readonly<Record<string, { readonly verb: string; top(): Nullable<IUndoRedoItem> }>> = {
    [UndoCommand.id]: { verb: "undone", top: () => undo.pitchTopUndoElement() },
    [RedoCommand.id]: { verb: "redone", top: () => undo.pitchTopRedoElement() },
  };
  /** Moves the step from one stack to the other, as the engine does at the end. */
  const move = (item: IUndoRedoItem, isUndo: boolean): void => {
    const stacks = undoStacks(open);
    const [from, to] = isUndo ? [stacks._undoStacks, stacks._redoStacks] : [stacks._redoStacks, stacks._undoStacks];
    const unit = open.unitId();
    from.set(
      unit,
      (from.get(unit) ?? []).filter((one) => one !== item),
    );
    to.set(unit, [...(to.get(unit) ?? []), item]);
    stacks._updateStatus();
  };
  const listener = commands.beforeCommandExecuted(({ id }) => {
    const known = steps[id];
    if (known === undefined || step.isRunning() || open.replacing()) return;
    // A cell's editor has steps of its own.
    if (instances.getFocusedUnit()?.getUnitId() !== open.unitId()) return;
    const item = known.top();
    const isUndo = id === UndoCommand.id;
    const pieces = item && piecesOf(isUndo ? item.undoMutations : item.redoMutations, open);
    if (!item || !pieces) return;
    begun();
    const onProgress = (done: number, of: number): void =>
      said(`${done.toLocaleString("en-US")} of ${of.toLocaleString("en-US")} cells ${known.verb}.`);
    const made = step.inPieces(pieces, { pause: timeSlices({}, []), onProgress }, () => move(item, isUndo));
    void made.then(written, (thrown: unknown) => said(thrown instanceof Error ? thrown.message : String(thrown)));
    throw new CustomCommandExecutionError(`cells are being ${known.verb}`);
  });
  return { onProgress: (call) => void (said = call), dispose: () => listener.dispose() };
}
