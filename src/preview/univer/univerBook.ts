import { RedoCommand, UndoCommand } from "@univerjs/core";
import type { Univer } from "@univerjs/core";

import { isRefusal, tokens } from "../../workbook/reader/tokens";
import type { SheetBook } from "../host/sheetBook";
import type { CallSites } from "../host/callSites";
import type { BookData } from "../file/bookData";
import { addedSheets } from "./addedSheets";
import { makeRoom, markDirty, selectCell, selectedCell, frontSelection, writePieces } from "./edit";
import { oneStep, type OneStep } from "./oneStep";
import { openBook } from "./open";
import type { OpenBook } from "./open";
import { dataInSlices, dataOf, namesOf } from "./openData";
import { MOST_OPERATORS, operatorsIn } from "./engineFixes";
import type { EngineWatch } from "./engineFixes";
import { endProgress } from "./engineSpeed";
import { calculateNow } from "./calculateNow";
import { calculationDone } from "./calculationDone";
import type { CalculationDone } from "./calculationDone";
import { keptOf, validationOf } from "./cellValue";
import { isLocked, sheetNames } from "./sheetData";
import { bookEvents } from "./events";
import { longSteps } from "./longSteps";
import type { BookEvents } from "./events";
import { outdatedCells } from "./storedCheck";
import { structureGuard } from "./structure";
import { typedFormulas } from "./typedFormulas";

const unreadable = (open: OpenBook, formula: string, most: number): string | undefined => {
  const operators = operatorsIn(formula);
  if (operators > most) {
    const limit = most.toLocaleString("en-US");
    return `the formula can't be read: at most ${limit} operators, got ${operators.toLocaleString("en-US")}`;
  }
  if (typeof open.services.lexer.treeBuilder(formula) === "object") return undefined;
  const found = tokens(formula);
  return `the formula can't be read: ${isRefusal(found) ? found.why : "check brackets, commas and quotes"}`;
};

/** Undo and redo work on the workbook that has the focus; without a screen nothing gives it one. */
const inFocus = (open: OpenBook, command: string): void => {
  open.services.instances.focusUnit(open.unitId());
  open.services.commands.syncExecuteCommand(command);
};

/** The reading half of a book. */
const readingOf = (
  open: OpenBook,
): Pick<SheetBook, "sheets" | "names" | "used" | "read" | "spill" | "calls" | "validation" | "kept" | "data"> => ({
  sheets: () =>
    open
      .workbook()
      .getSheets()
      .map((sheet) => ({
        name: sheet.getName(),
        visible: sheet.isSheetHidden() !== 1,
        protected:
          isLocked(sheet.getConfig()) || Boolean(open.services.protection.getRule(open.unitId(), sheet.getSheetId())),
      })),
  names: () => [
    ...namesOf(open),
    ...open
      .workbook()
      .getSheets()
      .flatMap((sheet) => sheetNames(sheet.getConfig()).map((name) => ({ ...name, sheet: sheet.getName() }))),
  ],
  used: (name) => {
    const sheet = open.find(name);
    return sheet === undefined ? undefined : open.cells().used(sheet);
  },
  read: (area) => open.cells().read(open.sheet(area.sheet), area),
  spill: ({ sheet, row, column }) => open.cells().spill(open.sheet(sheet), row, column),
  calls: ({ sheet, row, column }) => {
    const worksheet = open.sheet(sheet);
    // A cell that has lost its formula has no calls, whatever the log still holds.
    if (open.cells().formula(worksheet, row, column) === "") return [];
    return open.log.at({ sheetId: worksheet.getSheetId(), row, column });
  },
  validation: ({ sheet, row, column }) => validationOf(open.sheet(sheet).getCellMatrix().getValue(row, column)),
  kept: ({ sheet, row, column }) => keptOf(open.sheet(sheet).getCellMatrix().getValue(row, column)),
  data: () => dataOf(open),
});

/** What writes cells. */
const writingOf = (
  open: OpenBook,
  step: OneStep,
  { begun, written }: { begun(): void; written(): void },
): Pick<SheetBook, "write" | "writeInPieces" | "whenWritten" | "onRefusal"> => ({
  write: (cells) => {
    begun();
    step.atOnce(() => {
      for (const { change } of writePieces(open, cells)) change();
    });
  },
  writeInPieces: async (cells, work) => {
    begun();
    await step.inPieces(writePieces(open, cells), work);
    written();
  },
  whenWritten: step.ended,
  onRefusal: step.onRefusal,
});

/** Results are there once all cells are written. */
const afterWriting = (calculation: CalculationDone, step: OneStep): CalculationDone => ({
  ...calculation,
  whenCalculated: async () => {
    await step.ended();
    return calculation.whenCalculated();
  },
});

interface SlicedParts {
  readonly settling: Pick<CalculationDone, "whenCalculated" | "replaced">;
  readonly step: OneStep;
  readonly watch: BookEvents;
  readonly log: CallSites;
  /** Goes up with every change and every workbook. */
  readonly changes: { count: number };
}

/** What a book does with pauses between. */
function slicedWork(
  univer: Univer,
  open: OpenBook,
  { settling, step, watch, log, changes }: SlicedParts,
): Pick<SheetBook, "show" | "outdated" | "dataInSlices"> {
  /** The count when the workbook came with its results. */
  let shown = 0;
  return {
    show: async (data, pause) => {
      // What is left to calculate of the old workbook would calculate the new one with it.
      await settling.whenCalculated();
      await open.replaceInSlices(data, pause);
      changes.count += 1;
      shown = changes.count;
      settling.replaced();
      watch.everything();
    },
    outdated: async ({ pause, onProgress }) => {
      await settling.whenCalculated();
      const isStale = (): boolean => changes.count !== shown;
      if (isStale()) return undefined;
      log.begin();
      return outdatedCells(univer.__getInjector(), open.workbook(), { pause, onProgress, isStale });
    },
    dataInSlices: async (pause) => {
      await settling.whenCalculated();
      const before = changes.count;
      // Whoever goes on typing gets the workbook as it is when it is asked for in one piece.
      const data = await dataInSlices(open, pause, () => changes.count !== before);
      if (data !== undefined) return data;
      await step.ended();
      return dataOf(open);
    },
  };
}

/** The workbook of an engine whose plugins are registered. */
export const univerBook = (univer: Univer, log: CallSites, first: BookData, engine: EngineWatch = {}): SheetBook => {
  let calculated = 0;
  const onFormula: EngineWatch["onFormula"] = (...at) => {
    calculated += 1;
    engine.onFormula?.(...at);
  };
  const open = openBook(univer, log, first, { ...engine, onFormula });
  const progress = (): number => calculated;
  const { patience } = engine;
  const step = oneStep(open);
  const calculation = calculationDone(univer.__getInjector(), () => log.begin(), {
    progress,
    patience,
    isCalculating: open.isCalculating,
  });
  const settling = afterWriting(calculation, step);
  let edits = 0;
  /** Counts workbooks as well. */
  const changes = { count: 0 };
  const touched = (): void => {
    if (!step.isRunning()) edits += 1;
    changes.count += 1;
    settling.touch();
  };
  const watch = bookEvents(open, touched, step.isRunning);
  const structure = structureGuard(open);
  const typed = typedFormulas(open);
  const writing = { begun: settling.touch, written: () => (edits += 1) };
  const steps = engine.slices === undefined ? undefined : longSteps(open, { step, ...writing });
  const calculateAll = (): void => {
    settling.touch();
    markDirty(open, []);
  };
  calculateAll();
  return {
    ...readingOf(open),
    load: (data) => {
      changes.count += 1;
      open.replace(data);
      settling.replaced();
      calculateAll();
      watch.everything();
    },
    ...slicedWork(univer, open, { settling, step, watch, log, changes }),
    id: () => open.unitId(),
    recalculateAll: calculateAll,
    ...writingOf(open, step, writing),
    onStepProgress: (call) => steps?.onProgress(call),
    makeRoom: (area) => makeRoom(open, area),
    ...addedSheets(open, {
      freely: structure.freely,
      step,
      onAdded: () => {
        edits += 1;
        calculateAll();
        watch.everything();
      },
    }),
    keepStructure: structure.keep,
    readTyped: typed.read,
    edits: () => edits,
    recalculate: (areas) => {
      if (areas.length === 0) return;
      settling.touch();
      markDirty(open, areas);
    },
    selection: () => selectedCell(open),
    selectedAreas: () => frontSelection(open),
    select: (cell) => selectCell(open, cell),
    undo: () => inFocus(open, UndoCommand.id),
    redo: () => inFocus(open, RedoCommand.id),
    whenCalculated: () =>
      engine.withoutTyping === true
        ? calculateNow(univer.__getInjector(), settling.whenCalculated)
        : settling.whenCalculated(),
    onSelection: watch.onSelection,
    onChange: watch.onChange,
    unreadable: (formula) => unreadable(open, formula, engine.mostOperators ?? MOST_OPERATORS),
    dispose: () => {
      structure.dispose();
      steps?.dispose();
      step.dispose();
      typed.dispose();
      watch.dispose();
      settling.dispose();
      endProgress(univer.__getInjector());
      univer.dispose();
    },
  };
};
