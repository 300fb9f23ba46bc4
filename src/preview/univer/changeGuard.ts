/** Keeps others from changing the workbook while a step is made in pieces; what is typed is entered afterwards. */
import { CustomCommandExecutionError, RedoCommand, UndoCommand } from "@univerjs/core";
import { SetRangeValuesCommand, SetRangeValuesMutation } from "@univerjs/sheets";

import type { OpenBook } from "./open";

export const WAIT_FOR_STEP =
  "Cells are being written: until that is done or cancelled, nothing else can be changed in the workbook.";
export const ENTRY_FOLLOWS = "Cells are being written: your entry follows when that is done or cancelled.";

/** What changes a workbook, other than heights that follow from what cells show. */
const MUTATIONS =
  /^(?:sheet\.mutation\.(?!.*(?:auto-height|mark-dirty|empty))|formula\.mutation\.(?:set|remove)-(?:defined-name|super-table))/;
const STEPS: readonly string[] = [UndoCommand.id, RedoCommand.id];

interface Entry {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly range?: object;
  readonly value?: object;
}

const isEntry = (params: Entry | undefined): params is Entry =>
  params?.subUnitId !== undefined && params.range !== undefined && params.value !== undefined;

export interface ChangeGuard {
  /** From now on only changes that `asOwn` makes go through, until `end`. */
  begin(): void;
  /** Enters what was typed since the beginning. */
  end(): void;
  asOwn<T>(work: () => T): T;
  onRefusal(call: (sentence: string) => void): void;
  dispose(): void;
}

export function changeGuard(open: OpenBook): ChangeGuard {
  const { commands } = open.services;
  let isGuarding = false;
  let isOwn = false;
  let entries: Entry[] = [];
  let refused: (sentence: string) => void = () => undefined;
  const refuse = (sentence: string): never => {
    refused(sentence);
    throw new CustomCommandExecutionError(sentence);
  };
  const listener = commands.beforeCommandExecuted(({ id, params }, options) => {
    if (!isGuarding || isOwn || open.replacing()) return;
    if (id === SetRangeValuesCommand.id && isEntry(params)) {
      entries.push(params);
      refuse(ENTRY_FOLLOWS);
    }
    const isResult = id === SetRangeValuesMutation.id && options?.["applyFormulaCalculationResult"] === true;
    if (!isResult && (MUTATIONS.test(id) || STEPS.includes(id))) refuse(WAIT_FOR_STEP);
  });
  return {
    begin: () => {
      isGuarding = true;
    },
    end: () => {
      isGuarding = false;
      const typed = entries;
      entries = [];
      const unit = open.unitId();
      for (const entry of typed)
        if ((entry.unitId ?? unit) === unit) commands.syncExecuteCommand(SetRangeValuesCommand.id, entry);
    },
    asOwn: (work) => {
      isOwn = true;
      try {
        return work();
      } finally {
        isOwn = false;
      }
    },
    onRefusal: (call) => {
      refused = call;
    },
    dispose: () => listener.dispose(),
  };
}
