/** Adds sheets to the open workbook, at once or made in slices, and takes the last one away again. */
import { sequenceExecute, type IMutationInfo, type IUndoRedoItem } from "@univerjs/core";

import type { Address } from "../../workbook/port";
import type { NameData, SheetData } from "../file/bookData";
import type { AddingWork, SheetBook } from "../host/sheetBook";
import { cellRowsInSlices, type CellRows } from "./bookSnapshot";
import { addSheet, selectCell, selectedCell } from "./edit";
import type { OneStep } from "./oneStep";
import type { OpenBook } from "./open";
import { undoStacks } from "./undoStacks";

interface Added {
  readonly name: string;
  readonly sheetId: string;
  readonly step: IUndoRedoItem;
  /** The cell that was selected before. */
  readonly before: Address | undefined;
}

interface AddedSheetsParts {
  /** Does what the page may do to a workbook whose structure is kept. */
  freely(work: () => void): void;
  readonly step: OneStep;
  /** Called when a sheet is there. */
  onAdded(): void;
}

/** An undo step without what it did to a sheet: that sheet is gone. */
function withoutSheet(item: IUndoRedoItem, sheetId: string): readonly IUndoRedoItem[] {
  const isElsewhere = ({ params }: IMutationInfo): boolean =>
    (params as { subUnitId?: string } | undefined)?.subUnitId !== sheetId;
  const undoMutations = item.undoMutations.filter(isElsewhere);
  if (undoMutations.length === item.undoMutations.length) return [item];
  return undoMutations.length === 0
    ? []
    : [{ ...item, undoMutations, redoMutations: item.redoMutations.filter(isElsewhere) }];
}

export function addedSheets(
  open: OpenBook,
  { freely, step, onAdded }: AddedSheetsParts,
): Pick<SheetBook, "addSheet" | "addSheetInSlices" | "takeBack"> {
  let last: Added | undefined;
  const stacks = undoStacks(open);

  function add(sheet: SheetData, names: readonly NameData[], cells?: CellRows): string {
    const name = open.workbook().uniqueSheetName(sheet.name);
    const before = selectedCell(open);
    freely(() => step.atOnce(() => addSheet(open, { ...sheet, name }, names, cells)));
    const made = stacks._undoStacks.get(open.unitId())?.at(-1);
    last = made && { name, sheetId: open.sheet(name).getSheetId(), step: made, before };
    onAdded();
    selectCell(open, { sheet: name, row: 0, column: 0 });
    return name;
  }

  async function addInSlices(sheet: SheetData, names: readonly NameData[], { pause, isStale }: AddingWork) {
    const cells = await cellRowsInSlices(sheet.cells, pause);
    await step.ended();
    return isStale() ? undefined : add(sheet, names, cells);
  }

  /** A step that is undone already has taken the sheet with it. */
  async function takeBack(name: string): Promise<void> {
    await step.ended();
    const stack = stacks._undoStacks.get(open.unitId());
    if (last?.name !== name || stack?.includes(last.step) !== true) return;
    const { sheetId, step: own, before } = last;
    last = undefined;
    const wasInFront = selectedCell(open)?.sheet === name;
    const others = stack.filter((one) => one !== own);
    stack.splice(0, stack.length, ...others.flatMap((one) => withoutSheet(one, sheetId)));
    freely(() => void sequenceExecute(own.undoMutations, open.services.commands));
    stacks._updateStatus();
    if (wasInFront && before !== undefined && open.find(before.sheet) !== undefined) selectCell(open, before);
  }

  return { addSheet: (sheet, names) => add(sheet, names), addSheetInSlices: addInSlices, takeBack };
}
