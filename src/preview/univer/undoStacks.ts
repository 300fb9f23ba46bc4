/** The engine's undo and redo steps of the open workbook, which its service keeps for itself (0.25.1). */
import type { IUndoRedoItem } from "@univerjs/core";
import type { OpenBook } from "./open";

interface UndoStacks {
  readonly _undoStacks: Map<string, IUndoRedoItem[]>;
  readonly _redoStacks: Map<string, IUndoRedoItem[]>;
  /** Has the buttons follow the stacks. */
  _updateStatus(): void;
}

export const undoStacks = ({ services }: OpenBook): UndoStacks => services.undo as unknown as UndoStacks;
