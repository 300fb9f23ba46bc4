import { RedoCommand, UndoCommand } from "@univerjs/core";
import type { Univer } from "@univerjs/core";

import { isRefusal, tokens } from "../../workbook/reader/tokens";
import type { SheetBook } from "../host/sheetBook";
import type { CallSites } from "../host/callSites";
import { isCellFault } from "../../workbook/port";
import type { BookData, CellData, NameData } from "../file/bookData";
import { addSheet, makeRoom, markDirty, selectCell, selectedAreas, selectedCell, writeBookCells } from "./edit";
import { openBook } from "./open";
import type { OpenBook } from "./open";
import { MOST_OPERATORS, operatorsIn } from "./engineFixes";
import type { EngineWatch } from "./engineFixes";
import { endProgress } from "./engineSpeed";
import { calculationDone } from "./calculationDone";
import { isLocked, keptOf, sheetData, sheetNames, validationOf } from "./snapshot";
import { bookEvents } from "./events";
import { outdatedCells } from "./storedCheck";
import { structureGuard } from "./structure";
import { typedFormulas } from "./typedFormulas";

const namesOf = (open: OpenBook): readonly NameData[] =>
  Object.values(open.services.definedNames.getDefinedNameMap(open.unitId()) ?? {}).map(
    ({ name, formulaOrRefString }) => ({ name, refersTo: formulaOrRefString }),
  );

const dataOf = (open: OpenBook): BookData => {
  const snapshot = open.workbook().save();
  const formulaAt = (sheetId: string, row: number, column: number): string =>
    open.services.model.getFormulaStringByCell(row, column, sheetId, open.unitId()) ?? "";
  const spillAt = (sheetId: string, row: number, column: number): CellData["spill"] => {
    const sheet = open.workbook().getSheetBySheetId(sheetId);
    const area = sheet === null || sheet === undefined ? undefined : open.cells().spill(sheet, row, column);
    if (area === undefined || sheet === null || sheet === undefined) return undefined;
    const values = open
      .cells()
      .read(sheet, area)
      .values.map((line) => line.map((value) => (isCellFault(value) ? value.code : value)));
    // Without room the engine keeps the area that the result would take, which others fill.
    return values[0]?.[0] === "#SPILL!" ? undefined : values;
  };
  const reading = { styles: snapshot.styles, formulaAt, spillAt };
  return {
    sheets: snapshot.sheetOrder.map((id) => sheetData(reading, snapshot.sheets[id] ?? {})),
    names: namesOf(open),
  };
};

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
  const settling = calculationDone(univer.__getInjector(), () => log.begin(), { progress, patience });
  let edits = 0;
  /** Counts workbooks as well. */
  let changes = 0;
  /** The count when the workbook came with its results. */
  let shown = 0;
  const touched = (): void => {
    edits += 1;
    changes += 1;
    settling.touch();
  };
  const watch = bookEvents(open, touched);
  const structure = structureGuard(open);
  const typed = typedFormulas(open);
  const calculateAll = (): void => {
    settling.touch();
    markDirty(open, []);
  };
  calculateAll();
  return {
    ...readingOf(open),
    load: (data) => {
      changes += 1;
      open.replace(data);
      settling.replaced();
      calculateAll();
      watch.everything();
    },
    show: async (data, pause) => {
      // What is left to calculate of the old workbook would calculate the new one with it.
      await settling.whenCalculated();
      await open.replaceInSlices(data, pause);
      changes += 1;
      shown = changes;
      settling.replaced();
      watch.everything();
    },
    outdated: async ({ pause, onProgress }) => {
      await settling.whenCalculated();
      const isStale = (): boolean => changes !== shown;
      if (isStale()) return undefined;
      log.begin();
      return outdatedCells(univer.__getInjector(), open.workbook(), { pause, onProgress, isStale });
    },
    recalculateAll: calculateAll,
    write: (cells) => {
      settling.touch();
      writeBookCells(open, cells);
    },
    makeRoom: (area) => makeRoom(open, area),
    addSheet: (sheet, names) => {
      const name = open.workbook().uniqueSheetName(sheet.name);
      edits += 1;
      structure.freely(() => addSheet(open, { ...sheet, name }, names));
      calculateAll();
      watch.everything();
      selectCell(open, { sheet: name, row: 0, column: 0 });
      return name;
    },
    keepStructure: structure.keep,
    readTyped: typed.read,
    edits: () => edits,
    recalculate: (areas) => {
      if (areas.length === 0) return;
      settling.touch();
      markDirty(open, areas);
    },
    selection: () => selectedCell(open),
    selectedAreas: () => selectedAreas(open),
    select: (cell) => selectCell(open, cell),
    undo: () => inFocus(open, UndoCommand.id),
    redo: () => inFocus(open, RedoCommand.id),
    whenCalculated: settling.whenCalculated,
    onSelection: watch.onSelection,
    onChange: watch.onChange,
    unreadable: (formula) => unreadable(open, formula, engine.mostOperators ?? MOST_OPERATORS),
    dispose: () => {
      structure.dispose();
      typed.dispose();
      watch.dispose();
      settling.dispose();
      endProgress(univer.__getInjector());
      univer.dispose();
    },
  };
};
