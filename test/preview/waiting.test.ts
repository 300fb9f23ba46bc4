/** How long the page waits for the sheet engine, and what an opened file doesn't take. */
import { ICommandService, LocaleType, LogLevel, Univer, type Injector } from "@univerjs/core";
import { SetFormulaCalculationStartMutation, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { afterEach, describe, expect, test, vi } from "vitest";
import { emptySheet, type BookData } from "../../src/preview/file/bookData";
import { createCallSites } from "../../src/preview/host/callSites";
import { calculationDone } from "../../src/preview/univer/calculationDone";
import { univerBook } from "../../src/preview/univer/univerBook";

afterEach(() => void vi.useRealTimers());

/** An engine that never ends. */
const endless = {
  get: () => ({
    state: {},
    beforeCommandExecuted: () => ({ dispose: () => undefined }),
    waitForLatestApplied: () => new Promise<void>(() => undefined),
  }),
} as unknown as Injector;

describe("A calculation", () => {
  test("is waited for while it makes progress, and given up 30 looks after its last", async () => {
    vi.useFakeTimers();
    let progress = 0;
    const moving = setInterval(() => (progress += 1), 20_000);
    const ended = vi.fn();
    calculationDone(endless, () => undefined, { progress: () => progress })
      .whenCalculated()
      .catch(ended);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(ended).not.toHaveBeenCalled();
    clearInterval(moving);
    await vi.advanceTimersByTimeAsync(25_000);
    expect(ended).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(ended).toHaveBeenCalledWith(new Error("the sheet engine has calculated nothing for 30 s"));
  });
});

test("After another workbook was loaded, a calculation that begins late is waited for", async () => {
  let begin: (command: { id: string }) => void = () => undefined;
  const waits: (() => void)[] = [];
  const late = {
    get: () => ({
      state: {},
      beforeCommandExecuted: (call: typeof begin) => {
        begin = call;
        return { dispose: () => undefined };
      },
      waitForLatestApplied: () => new Promise<void>((resolve) => waits.push(resolve)),
    }),
  } as unknown as Injector;
  const done = calculationDone(late, () => undefined, { progress: () => 0 });
  const ended = vi.fn();
  done.touch();
  done.replaced();
  void done.whenCalculated().then(ended);
  // What was left of the former workbook is calculated first.
  begin({ id: SetFormulaCalculationStartMutation.id });
  waits[0]?.();
  setTimeout(() => begin({ id: SetFormulaCalculationStartMutation.id }), 40);
  await new Promise((resolve) => setTimeout(resolve, 400));
  expect(waits).toHaveLength(2);
  expect(ended).not.toHaveBeenCalled();
  waits[1]?.();
  await vi.waitFor(() => expect(ended).toHaveBeenCalled(), { timeout: 5_000 });
});

const DATA: BookData = {
  sheets: [
    { ...emptySheet("S"), cells: [{ row: 0, column: 0, value: 7 }] },
    { ...emptySheet("T"), cells: [{ row: 0, column: 0, value: 8 }] },
  ],
  names: [],
};

function started() {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { enUS: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  const book = univerBook(univer, createCallSites(), DATA, { withoutPictures: true });
  const commands = univer.__getInjector().get(ICommandService);
  return { book, run: (id: string, params: object) => commands.syncExecuteCommand(id, { unitId: "book1", ...params }) };
}

const ROW = { range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 25 }, direction: 2 };

describe("An opened file", () => {
  test.each<[title: string, id: string, params: object, sentence: RegExp]>([
    ["a row inserted", "sheet.command.insert-row", { subUnitId: "book1-0", ...ROW }, /^Rows, columns and cells/],
    [
      "a row deleted",
      "sheet.command.remove-row-by-range",
      { subUnitId: "book1-0", ...ROW },
      /^Rows, columns and cells/,
    ],
    ["a row taken away", "sheet.mutation.remove-rows", { subUnitId: "book1-0", ...ROW }, /^Rows, columns and cells/],
    ["a sheet inserted", "sheet.command.insert-sheet", { index: 1 }, /^Sheets can't be inserted/],
    ["a sheet deleted", "sheet.command.remove-sheet", { subUnitId: "book1-1" }, /^Sheets can't be inserted/],
    ["a sheet renamed", "sheet.command.set-worksheet-name", { subUnitId: "book1-1", name: "X" }, /^Sheets can't be/],
  ])("refuses %s with a sentence", async (_title, id, params, sentence) => {
    const { book, run } = started();
    const said: string[] = [];
    book.keepStructure((one) => said.push(one));
    expect(run(id, params)).toBe(false);
    expect(said).toEqual([expect.stringMatching(sentence)]);
    expect(said[0]).toMatch(/only values, formulas and number formats can be changed here\.$/);
    expect(book.sheets().map(({ name }) => name)).toEqual(["S", "T"]);
    expect(book.read({ sheet: "S", row: 0, column: 0, rows: 1, columns: 1 }).values).toEqual([[7]]);
    book.dispose();
  });

  test("takes a starter sheet, whose rows may move, and its undoing", async () => {
    const { book, run } = started();
    const said: string[] = [];
    book.keepStructure((one) => said.push(one));
    const name = book.addSheet({ ...emptySheet("New"), cells: [{ row: 0, column: 0, value: 1 }] }, [
      { name: "one", refersTo: "New!$A$1" },
    ]);
    expect(name).toBe("New");
    const id = "sheet.mutation.insert-row";
    expect(book.sheets()).toHaveLength(3);
    book.undo();
    expect(book.sheets()).toHaveLength(2);
    book.redo();
    expect(book.sheets()).toHaveLength(3);
    expect(said).toEqual([]);
    expect(run(id, { subUnitId: "book1-0", range: ROW.range })).toBe(false);
    expect(said).toHaveLength(1);
    book.dispose();
  });

  test("takes values, and so does a workbook of the page's own anything", async () => {
    const { book, run } = started();
    expect(run("sheet.command.insert-sheet", { index: 1 })).toBe(true);
    book.keepStructure(() => undefined);
    book.write([{ sheet: "S", row: 0, column: 0, content: 9 }]);
    await book.whenCalculated();
    expect(book.read({ sheet: "S", row: 0, column: 0, rows: 1, columns: 1 }).values).toEqual([[9]]);
    book.dispose();
  });
});
