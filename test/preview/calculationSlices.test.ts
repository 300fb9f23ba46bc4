/** A calculation of a large workbook lets other tasks come between its steps, and whatever they change counts. */
import { ICommandService, IUniverInstanceService, LocaleType, LogLevel, Univer } from "@univerjs/core";
import type { Workbook } from "@univerjs/core";
import { CalculateController, FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { SetRangeValuesMutation, SetStyleCommand, UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { emptySheet, type BookData } from "../../src/preview/file/bookData";
import { createCallSites } from "../../src/preview/host/callSites";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { listInParts, type FormulaPart } from "../../src/preview/univer/formulaParts";
import { PORTION_CELLS } from "../../src/preview/univer/resultPortions";
import { univerBook } from "../../src/preview/univer/univerBook";

/** Each column adds 1 to the one before, from the first row's input on. */
const dataOf = (rows: number): BookData => ({
  sheets: [
    {
      ...emptySheet("S"),
      room: { rows: rows + 5, columns: 20 },
      cells: Array.from({ length: rows }, (_, row) => [
        row === 0 ? { row, column: 0, value: 1 } : { row, column: 0, value: null, formula: "=A$1" },
        { row, column: 1, value: null, formula: `=A${String(row + 1)}+1` },
        { row, column: 2, value: null, formula: `=B${String(row + 1)}+1` },
      ]).flat(),
    },
  ],
  names: [],
});

let univer: Univer;
let book: SheetBook;
let onFormula: () => void;

const start = async (rows: number): Promise<void> => {
  univer = new Univer({ locale: LocaleType.EN_US, locales: { enUS: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  onFormula = () => undefined;
  const watch = { withoutPictures: true, withoutTyping: true, onFormula: () => onFormula() };
  book = univerBook(univer, createCallSites(), dataOf(rows), watch);
  await book.whenCalculated();
};
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  book.dispose();
});

const one = (row: number, column: number) => ({ sheet: "S", row, column, rows: 1, columns: 1 });
const valueAt = (row: number, column: number): unknown => book.read(one(row, column)).values[0]?.[0];
const input = (content: number): void => book.write([{ ...one(0, 0), content }]);

const sheetOf = () =>
  univer.__getInjector().get(IUniverInstanceService).getUnit<Workbook>("book1")!.getActiveSheet(true)!;

/** Every slice is used up at once, until the answer is called. */
function hurry(): () => void {
  let now = performance.now();
  const clock = vi.spyOn(performance, "now").mockImplementation(() => (now += 1_000));
  return () => clock.mockRestore();
}

/** Counts the tasks that others get. */
function countTurns(): () => number {
  let turns = 0;
  vi.stubGlobal(
    "MessageChannel",
    class extends MessageChannel {
      constructor() {
        super();
        turns++;
      }
    },
  );
  return () => turns;
}

test("finding what to calculate pauses at each formula in each of its steps", async () => {
  const rows = 40;
  await start(rows);
  const turns = countTurns();
  let first: number | undefined;
  onFormula = () => (first ??= turns());
  hurry();
  input(5);
  await book.whenCalculated();
  expect(valueAt(rows - 1, 2)).toBe(7);
  // Reading, choosing, clearing, ordering and looking for circles.
  expect(first).toBeGreaterThan(5 * (3 * rows - 1));
});

test("formulas are listed in parts of a sheet, those that share their text together", async () => {
  await start(650);
  const injector = univer.__getInjector();
  const whole = injector.get(FormulaDataModel);
  const cells = sheetOf().getCellMatrix();
  const controller = injector.get(CalculateController) as unknown as { _formulaDataModel: FormulaDataModel };
  const parts = listInParts(injector);
  const listed = (): readonly FormulaPart["formulas"][] => {
    const found = [...parts(controller._formulaDataModel.getFormulaData() as never)];
    expect(new Set(found.map(({ unit, sheet }) => `${unit} ${sheet}`))).toEqual(new Set(["book1 book1-0"]));
    return found.map(({ formulas }) => formulas);
  };
  const same = (found: readonly FormulaPart["formulas"][]): void => {
    const rows = Object.entries(Object.assign({}, ...found)).filter(
      ([, line]) => Object.keys(line as object).length > 0,
    );
    expect(Object.fromEntries(rows)).toEqual(whole.getFormulaData()["book1"]?.["book1-0"]);
  };
  expect(listed().map((rows) => Object.keys(rows).length)).toEqual([200, 200, 200, 50]);
  same(listed());
  cells.setValue(410, 5, { f: "=A411*2", si: "shared" });
  cells.setValue(640, 5, { si: "shared" });
  expect(listed().map((rows) => Object.keys(rows).length)).toEqual([200, 200, 10, 240]);
  same(listed());
});

describe("Results of many cells", () => {
  const ROWS = Math.ceil(PORTION_CELLS * 0.9);
  const LAST = ROWS - 1;
  let portions: { readonly cells: number; readonly turn: number }[];

  /** @param between called after each portion with its number */
  const watchPortions = (between: (portion: number) => void = () => undefined): void => {
    const turns = countTurns();
    portions = [];
    let end = (): void => undefined;
    univer
      .__getInjector()
      .get(ICommandService)
      .onCommandExecuted(({ id, params }, options) => {
        if (id !== SetRangeValuesMutation.id || options?.["applyFormulaCalculationResult"] !== true) return;
        if (portions.length === 0) end = hurry();
        const lines = Object.values((params as { cellValue: Record<number, object> }).cellValue);
        portions.push({ cells: lines.reduce((sum, line) => sum + Object.keys(line).length, 0), turn: turns() });
        between(portions.length);
        if (portions.length > 2) end();
      });
  };
  beforeEach(() => start(ROWS));

  test("are written in portions, each in a task of its own", async () => {
    watchPortions();
    input(5);
    await book.whenCalculated();
    // Whole rows, the first of which holds an input.
    expect(portions.map(({ cells }) => cells)).toEqual([2_000, 2_001, 3 * ROWS - 4_002]);
    expect(new Set(portions.map(({ turn }) => turn)).size).toBe(3);
    expect([valueAt(0, 2), valueAt(LAST, 0), valueAt(LAST, 2)]).toEqual([7, 5, 7]);
  });

  test("don't replace what is typed over a formula meanwhile, and follow it", async () => {
    watchPortions((portion) => {
      if (portion === 1) book.write([{ ...one(LAST, 1), content: 500 }]);
    });
    input(5);
    await book.whenCalculated();
    expect([valueAt(0, 2), valueAt(LAST, 0), valueAt(LAST, 1), valueAt(LAST, 2)]).toEqual([7, 5, 500, 501]);
    expect(book.read(one(LAST, 1)).formulas).toEqual([[""]]);
  });

  test("are there although a cell got another look meanwhile", async () => {
    const [unitId, subUnitId] = [book.id(), sheetOf().getSheetId()];
    const range = { startRow: LAST, endRow: LAST, startColumn: 2, endColumn: 2 };
    const bold = { unitId, subUnitId, range, style: { type: "bl", value: 1 } };
    const isDone: boolean[] = [];
    watchPortions((portion) => {
      const commands = univer.__getInjector().get(ICommandService);
      if (portion === 1) isDone.push(commands.syncExecuteCommand(SetStyleCommand.id, bold));
    });
    input(5);
    await book.whenCalculated();
    expect([isDone, valueAt(LAST, 2)]).toEqual([[true], 7]);
  });

  test("are worked out again where cells move meanwhile", async () => {
    book.addSheet(emptySheet("Other"), []);
    await book.whenCalculated();
    watchPortions((portion) => {
      if (portion === 1) book.undo();
    });
    const before = book.sheets().length;
    book.recalculateAll();
    await book.whenCalculated();
    expect([before, book.sheets().length]).toEqual([2, 1]);
    expect([valueAt(0, 2), valueAt(LAST, 2)]).toEqual([3, 3]);
  });

  test("of a workbook that another one replaced meanwhile are left out", async () => {
    watchPortions((portion) => {
      if (portion === 1) book.load(dataOf(3));
    });
    input(5);
    await book.whenCalculated();
    expect([valueAt(0, 2), valueAt(2, 2), valueAt(LAST, 2)]).toEqual([3, 3, null]);
  });
});
