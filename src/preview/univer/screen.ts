import {
  ICommandService,
  IUniverInstanceService,
  LocaleType,
  LogLevel,
  ThemeService,
  Univer,
  UniverInstanceType,
} from "@univerjs/core";
import type { Workbook } from "@univerjs/core";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import { ScrollToRangeOperation, UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import { UniverUIPlugin } from "@univerjs/ui";
import "@univerjs/preset-sheets-core/lib/index.css";

import type { Address } from "../../workbook/port";
import type { SheetBook } from "../host/sheetBook";
import { createCallSites } from "../host/callSites";
import type { BookData } from "../file/bookData";
import { chartScreen, type ChartScreen } from "./chartPlaces";
import { nameControls } from "./controlNames";
import { foldScreen, type FoldScreen } from "./foldedRows";
import { frozenPanes } from "./frozenPanes";
import { formulaSlices } from "./formulaSlices";
import { functionInfo } from "./functions";
import { showInvalid } from "./invalidLooks";
import { guardFocus } from "./keyboardFocus";
import { functionClasses } from "./start";
import type { FunctionSet } from "./start";
import { showStates } from "./stateLooks";
import { closeRedrawChannels } from "./redrawChannels";
import { univerBook } from "./univerBook";

export interface ScreenBook extends SheetBook {
  readonly charts: ChartScreen;
  readonly folds: FoldScreen;
  setDark(dark: boolean): void;
  /** Puts the keyboard into the grid. */
  focus(): void;
  /** What a cell shows, its number format applied. */
  shown(cell: Address): string;
  /** Whether sheets may keep their frozen rows and columns on the screen; a file holds them in any case. */
  allowFrozen(rows: boolean, columns: boolean): void;
}

/** Rows shown above the one to go to. */
const ROWS_ABOVE = 2;

/** About four seconds. */
const MOST_FRAMES = 240;

const registerPlugins = (
  univer: Univer,
  container: HTMLElement,
  set: FunctionSet,
  classes: ReturnType<typeof functionClasses>,
): void => {
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, { container, ribbonType: "simple", disableAutoFocus: true });
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: classes });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsUIPlugin, { disableForceStringAlert: true });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    initialFormulaComputing: CalculationMode.FORCED,
    description: set.metadata.functions.map((entry) => functionInfo(set.namespace, entry)),
  });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
};

/** Words beside the formula bar while the engine calculates: no language of its own has them. */
const CALCULATION_WORDS = {
  "sheets-formula": {
    progress: {
      analyzing: "Reading formulas",
      calculating: "Calculating",
      "array-analysis": "Reading arrays",
      "array-calculation": "Calculating arrays",
      done: "Calculated",
    },
  },
};

/** A sheet engine that draws into an element. */
export const startOnScreen = (container: HTMLElement, set: FunctionSet, first: BookData): ScreenBook => {
  const log = createCallSites();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: { ...english, ...CALCULATION_WORDS } },
    logLevel: LogLevel.ERROR,
  });
  const slices = formulaSlices();
  closeRedrawChannels();
  // Before the engine's own listeners.
  const focus = guardFocus(univer, container);
  nameControls(container);
  registerPlugins(univer, container, set, functionClasses(set, log, slices));
  const injector = univer.__getInjector();
  const front = () =>
    injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET)
      ?.getActiveSheet();
  const scrollTo = ({ row, column }: Address): void => {
    const { ySplit } = front()?.getFreeze() ?? { ySplit: 0 };
    // The engine leaves the first row of the range half behind the frozen ones.
    const startRow = Math.max(Math.min(row, ySplit), row - ROWS_ABOVE);
    const range = { startRow, endRow: row, startColumn: column, endColumn: column };
    injector.get(ICommandService).syncExecuteCommand(ScrollToRangeOperation.id, { range });
  };
  /** The engine makes a sheet's parts one after the other: before all are there, a command for the screen throws. */
  const scrollSoon = (cell: Address, frames: number): void => {
    try {
      scrollTo(cell);
    } catch (thrown) {
      if (frames === 0) throw thrown;
      requestAnimationFrame(() => scrollSoon(cell, frames - 1));
    }
  };
  const book = univerBook(univer, log, first, { slices });
  showStates(univer);
  showInvalid(univer);
  const panes = frozenPanes(univer);
  return {
    ...book,
    charts: chartScreen(univer),
    folds: foldScreen(univer),
    data: () => panes.restored(book.data()),
    dataInSlices: async (pause) => panes.restored(await book.dataInSlices(pause)),
    select: (cell) => {
      book.select(cell);
      // The sheet that came to the front draws first.
      requestAnimationFrame(() => scrollSoon(cell, MOST_FRAMES));
    },
    setDark: (dark) => injector.get(ThemeService).setDarkMode(dark),
    focus,
    shown: ({ sheet, row, column }) => {
      const open = injector.get(IUniverInstanceService).getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
      const value = open?.getSheetBySheetName(sheet)?.getCell(row, column)?.v;
      return value === null || value === undefined ? "" : String(value);
    },
    allowFrozen: (rows, columns) => panes.allow(rows, columns),
  };
};
