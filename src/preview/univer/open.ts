import { ICommandService, IUndoRedoService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { IWorkbookData, Univer, Workbook, Worksheet } from "@univerjs/core";
import { FormulaDataModel, IDefinedNamesService, LexerTreeBuilder } from "@univerjs/engine-formula";
import { SheetsSelectionsService, WorksheetProtectionRuleModel } from "@univerjs/sheets";

import type { CallSites } from "../host/callSites";
import type { BookData } from "../file/bookData";
import { createCellReader } from "./cells";
import type { CellReader } from "./cells";
import { fixEngine } from "./engineFixes";
import type { EngineWatch } from "./engineFixes";
import { sliceFormulas } from "./formulaSlices";
import { speedUpEngine } from "./engineSpeed";
import { engineBook, engineBookInSlices } from "./bookSnapshot";

/** The engine's services that the preview uses; they exist once a first workbook is there. */
export interface Services {
  readonly instances: IUniverInstanceService;
  readonly commands: ICommandService;
  readonly model: FormulaDataModel;
  readonly definedNames: IDefinedNamesService;
  readonly selections: SheetsSelectionsService;
  readonly undo: IUndoRedoService;
  readonly protection: WorksheetProtectionRuleModel;
  readonly lexer: LexerTreeBuilder;
}

/** The open workbook; loading replaces it. */
export interface OpenBook {
  readonly services: Services;
  readonly log: CallSites;
  unitId(): string;
  workbook(): Workbook;
  cells(): CellReader;
  find(sheet: string): Worksheet | undefined;
  /** Throws where no sheet has that name. */
  sheet(name: string): Worksheet;
  replace(data: BookData): void;
  /** The same with pauses before the new workbook takes the old one's place. */
  replaceInSlices(data: BookData, pause: () => Promise<void> | undefined): Promise<void>;
  /** One workbook is gone and the next incomplete: no event may report either. */
  replacing(): boolean;
  /** Whether a calculation is under way, be it one that is stopped. */
  isCalculating(): boolean;
}

const servicesOf = (univer: Univer): Services => {
  const injector = univer.__getInjector();
  return {
    instances: injector.get(IUniverInstanceService),
    commands: injector.get(ICommandService),
    model: injector.get(FormulaDataModel),
    definedNames: injector.get(IDefinedNamesService),
    selections: injector.get(SheetsSelectionsService),
    undo: injector.get(IUndoRedoService),
    protection: injector.get(WorksheetProtectionRuleModel),
    lexer: injector.get(LexerTreeBuilder),
  };
};

export const openBook = (univer: Univer, log: CallSites, first: BookData, watch: EngineWatch = {}): OpenBook => {
  let opened = 0;
  let replacing = false;
  const nextId = (): string => {
    opened += 1;
    return `book${opened}`;
  };
  const create = (snapshot: IWorkbookData): Workbook =>
    univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
  let workbook = create(engineBook(nextId(), first));
  const services = servicesOf(univer);
  fixEngine(univer.__getInjector(), log, watch);
  const isCalculating = speedUpEngine(univer.__getInjector(), watch.slices !== undefined);
  if (watch.slices !== undefined) sliceFormulas(univer.__getInjector(), log, watch.slices);
  const readerOf = (): CellReader => createCellReader(services.model, workbook, log);
  let cells = readerOf();
  const find = (name: string): Worksheet | undefined =>
    workbook.getSheets().find((sheet) => sheet.getName().toLowerCase() === name.toLowerCase());
  const replaceBy = (snapshot: IWorkbookData): void => {
    const { instances } = services;
    replacing = true;
    try {
      instances.disposeUnit(workbook.getUnitId());
      log.clear();
      workbook = create(snapshot);
      instances.setCurrentUnitForType(workbook.getUnitId());
      cells = readerOf();
    } finally {
      replacing = false;
    }
  };
  return {
    services,
    log,
    unitId: () => workbook.getUnitId(),
    workbook: () => workbook,
    cells: () => cells,
    find,
    sheet: (name) => {
      const sheet = find(name);
      if (sheet === undefined) throw new Error(`there is no sheet named "${name}"`);
      return sheet;
    },
    replace: (data) => replaceBy(engineBook(nextId(), data)),
    replaceInSlices: async (data, pause) => replaceBy(await engineBookInSlices(nextId(), data, pause)),
    replacing: () => replacing,
    isCalculating,
  };
};
