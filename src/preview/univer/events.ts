import { SetArrayFormulaDataMutation } from "@univerjs/engine-formula";
import { SetRangeValuesMutation, SetSelectionsOperation, SetWorksheetActiveOperation } from "@univerjs/sheets";

import type { Address, Unsubscribe } from "../../workbook/port";
import { markDirty, selectedCell } from "./edit";
import { MOVES } from "./moves";
import type { OpenBook } from "./open";

/** Changes closer together than this are reported as one. */
const BURST_MS = 50;

export interface BookEvents {
  onSelection(call: (cell: Address) => void): Unsubscribe;
  onChange(call: (sheets: readonly string[]) => void): Unsubscribe;
  /** Notifies listeners that every sheet and the selection changed. */
  everything(): void;
  dispose(): void;
}

const listening = <T>(calls: Set<T>, call: T): Unsubscribe => {
  calls.add(call);
  return () => void calls.delete(call);
};

const sheetIdsOf = (ranges: Readonly<Record<string, object | null | undefined>>): readonly string[] =>
  Object.values(ranges).flatMap((sheets) => Object.keys(sheets ?? {}));

/**
 * Reports selections and changes; calls `touched` for every change that leads to a calculation.
 * @param isIncomplete changes that belong together are reported when all of them are made
 */
export const bookEvents = (open: OpenBook, touched: () => void, isIncomplete: () => boolean): BookEvents => {
  const selecting = new Set<(cell: Address) => void>();
  const changing = new Set<(sheets: readonly string[]) => void>();
  const changed = new Set<string>();
  let burst: ReturnType<typeof setTimeout> | undefined;
  const tell = (): void => {
    if (isIncomplete()) {
      burst = setTimeout(tell, BURST_MS);
      return;
    }
    burst = undefined;
    const names = [...changed].flatMap((id) => open.workbook().getSheetBySheetId(id)?.getName() ?? []);
    changed.clear();
    for (const call of changing) call(names);
  };
  const note = (sheetIds: readonly string[]): void => {
    for (const id of sheetIds) changed.add(id);
    burst ??= setTimeout(tell, BURST_MS);
  };
  const everything = (): void => {
    note(
      open
        .workbook()
        .getSheets()
        .map((sheet) => sheet.getSheetId()),
    );
  };
  const tellSelection = (): void => {
    const cell = selectedCell(open);
    if (cell !== undefined) for (const call of selecting) call(cell);
  };
  const listener = open.services.commands.onCommandExecuted((command, options) => {
    if (open.replacing()) return;
    if (command.id === SetSelectionsOperation.id || command.id === SetWorksheetActiveOperation.id) {
      tellSelection();
    } else if (command.id === SetRangeValuesMutation.id) {
      if (options?.["applyFormulaCalculationResult"] !== true) touched();
      note([(command.params as { subUnitId: string }).subUnitId]);
    } else if (command.id === SetArrayFormulaDataMutation.id) {
      note(sheetIdsOf((command.params as { arrayFormulaRange: Record<string, object> }).arrayFormulaRange));
    } else if (MOVES.test(command.id)) {
      open.log.clear();
      touched();
      markDirty(open, []);
      everything();
    }
  });
  return {
    onSelection: (call) => listening(selecting, call),
    onChange: (call) => listening(changing, call),
    everything: () => {
      everything();
      tellSelection();
    },
    dispose: () => {
      clearTimeout(burst);
      listener.dispose();
    },
  };
};
