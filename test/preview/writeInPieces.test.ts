/** A large write is made in pieces and is one undo step; meanwhile nobody else changes the workbook. */
import {
  ICommandService,
  IUndoRedoService,
  IUniverInstanceService,
  LocaleType,
  LogLevel,
  Univer,
} from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { emptySheet, type BookData } from "../../src/preview/file/bookData";
import { createCallSites } from "../../src/preview/host/callSites";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { ENTRY_FOLLOWS, WAIT_FOR_STEP } from "../../src/preview/univer/changeGuard";
import { univerBook } from "../../src/preview/univer/univerBook";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { cellLines, expectCells } from "./cellLines";

const ROWS = 1200;

const DATA: BookData = {
  sheets: ["S", "T"].map((name) => ({
    ...emptySheet(name),
    room: { rows: ROWS, columns: 30 },
    cells: Array.from({ length: ROWS }, (_, row) => [
      { row, column: 0, value: row },
      { row, column: 1, value: `text ${String(row)}`, format: "@" },
      { row, column: 2, value: null, formula: `=A${String(row + 1)}*2` },
    ]).flat(),
  })),
  names: [],
};

/** The texts become formulas, and the numbers other numbers. */
const CELLS = DATA.sheets.flatMap(({ name: sheet }) =>
  Array.from({ length: ROWS }, (_, row) => [
    { sheet, row, column: 0, content: row + 5 },
    { sheet, row, column: 1, content: `=A${String(row + 1)}+1` },
  ]).flat(),
);

let book: SheetBook;
let univer: Univer;

beforeEach(async () => {
  univer = new Univer({ locale: LocaleType.EN_US, locales: { enUS: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  book = univerBook(univer, createCallSites(), DATA, { withoutPictures: true, withoutTyping: true });
  await book.whenCalculated();
});
afterEach(() => book.dispose());

const run = (id: string, params: object = {}): boolean =>
  univer
    .__getInjector()
    .get(ICommandService)
    .syncExecuteCommand(id, { unitId: "book1", ...params });

/** How many steps can be undone and done again. */
const steps = () => {
  const injector = univer.__getInjector();
  injector.get(IUniverInstanceService).focusUnit("book1");
  let held = { undos: 0, redos: 0 };
  const status = injector.get(IUndoRedoService).undoRedoStatus$;
  status.subscribe((now) => (held = now)).unsubscribe();
  return held;
};

const one = (row: number, column: number, sheet = "S") => ({ sheet, row, column, rows: 1, columns: 1 });
const valueAt = (...at: Parameters<typeof one>) => book.read(one(...at)).values[0]?.[0];
const typed = (row: number, column: number, v: number) =>
  run("sheet.command.set-range-values", {
    subUnitId: "book1-0",
    range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
    value: { v },
  });

/** Writes all cells; at a pause, `between` gets its number. */
const write = (between: (pause: number) => void = () => undefined) => {
  let pauses = 0;
  const pause = async (): Promise<void> => {
    await new Promise((resolve) => setTimeout(resolve, 0));
    between(++pauses);
  };
  return book.writeInPieces(CELLS, { pause });
};

const cancelAt = (at: number) => (pause: number) => {
  if (pause === at) throw CANCELLED;
};

describe("A write in pieces", () => {
  test("lets other tasks come between, reports its progress and is one undo step", async () => {
    const before = cellLines(book);
    book.write([{ ...one(0, 9), content: 1 }]);
    await book.whenCalculated();
    const withOne = cellLines(book);
    const turns = vi.fn();
    const done: number[] = [];
    const turn = setInterval(turns, 0);
    const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 2));
    await book.writeInPieces(CELLS, { pause, onProgress: (cells, of) => done.push(cells / of) });
    clearInterval(turn);
    await book.whenCalculated();
    expect(turns.mock.calls.length).toBeGreaterThanOrEqual(8);
    expect(done.length).toBeGreaterThanOrEqual(8);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(done.at(-1)).toBe(1);
    expect([valueAt(3, 0), valueAt(3, 1), valueAt(3, 2), valueAt(1199, 1, "T")]).toEqual([8, 9, 16, 1205]);
    const written = cellLines(book);
    expect(steps()).toEqual({ undos: 2, redos: 0 });
    book.undo();
    await book.whenCalculated();
    expectCells(book, withOne);
    book.redo();
    await book.whenCalculated();
    expectCells(book, written);
    book.undo();
    book.undo();
    await book.whenCalculated();
    expectCells(book, before);
  });

  test.each([1, 2, 4, 8])("cancelled at pause %i leaves cells, steps and edits as they were", async (at) => {
    book.write([{ ...one(0, 9), content: 1 }]);
    book.write([{ ...one(0, 9), content: 2 }]);
    book.undo();
    await book.whenCalculated();
    const [before, edits] = [cellLines(book), book.edits()];
    await expect(write(cancelAt(at))).rejects.toBe(CANCELLED);
    expectCells(book, before);
    await book.whenCalculated();
    expectCells(book, before);
    expect(book.edits()).toBe(edits);
    expect(steps()).toEqual({ undos: 1, redos: 1 });
    book.redo();
    expect(valueAt(0, 9)).toBe(2);
  });

  test("that fails in the middle leaves the workbook as it was", async () => {
    const before = cellLines(book);
    const cells = [...CELLS, { sheet: "Gone", row: 0, column: 0, content: 1 }];
    await expect(book.writeInPieces(cells, { pause: () => undefined })).rejects.toThrow("no sheet named");
    await book.whenCalculated();
    expectCells(book, before);
    expect(steps()).toEqual({ undos: 0, redos: 0 });
  });

  test("reports no change before all are made", async () => {
    const changed = vi.fn();
    book.onChange(changed);
    let early = 0;
    await book.writeInPieces(CELLS, {
      pause: async () => {
        await new Promise((resolve) => setTimeout(resolve, 30));
        early = changed.mock.calls.length;
      },
    });
    expect(early).toBe(0);
    await vi.waitFor(() => expect(changed).toHaveBeenCalled());
    expect(changed.mock.calls[0]?.[0]).toEqual(["S", "T"]);
  });

  test("is waited for by whoever waits for results, and by the next write", async () => {
    const first = write();
    const next = book.writeInPieces([{ ...one(3, 0), content: 77 }], { pause: () => undefined });
    const last = book.writeInPieces([{ ...one(3, 0), content: 78 }], { pause: () => undefined });
    await book.whenCalculated();
    expect(valueAt(1199, 1, "T")).toBe(1205);
    await Promise.all([first, next, last]);
    expect(valueAt(3, 0)).toBe(78);
    expect(steps().undos).toBe(3);
  });
});

describe("While cells are written in pieces", () => {
  let said: string[];
  beforeEach(() => {
    said = [];
    book.onRefusal((sentence) => said.push(sentence));
  });

  test("an entry that is typed follows as an undo step of its own", async () => {
    await write((pause) => {
      // One cell is written already, the other is to be written yet.
      if (pause === 3) expect([typed(2, 0, 111), typed(700, 0, 222)]).toEqual([false, false]);
    });
    expect(said).toEqual([ENTRY_FOLLOWS, ENTRY_FOLLOWS]);
    expect([valueAt(2, 0), valueAt(700, 0)]).toEqual([111, 222]);
    expect(steps().undos).toBe(3);
    book.undo();
    book.undo();
    expect([valueAt(2, 0), valueAt(700, 0)]).toEqual([7, 705]);
    book.undo();
    expect([valueAt(2, 0), valueAt(700, 0)]).toEqual([2, 700]);
  });

  test("an entry that is typed is kept when the write is cancelled", async () => {
    const writing = write((pause) => {
      if (pause === 3) typed(2, 0, 111);
      cancelAt(4)(pause);
    });
    await expect(writing).rejects.toBe(CANCELLED);
    expect([valueAt(2, 0), valueAt(3, 0)]).toEqual([111, 3]);
    expect(steps().undos).toBe(1);
    book.undo();
    expect(valueAt(2, 0)).toBe(2);
  });

  test.each<[string, string, object]>([
    ["undoing", "univer.command.undo", {}],
    ["a row deleted", "sheet.mutation.remove-rows", { subUnitId: "book1-0", range: { startRow: 0, endRow: 0 } }],
    [
      "cells cleared",
      "sheet.command.clear-selection-content",
      { subUnitId: "book1-0", ranges: [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }] },
    ],
    ["a sheet renamed", "sheet.command.set-worksheet-name", { subUnitId: "book1-1", name: "X" }],
    ["a name added", "sheet.command.insert-defined-name", { id: "n", name: "n", formulaOrRefString: "S!$A$1" }],
  ])("%s is refused with a sentence", async (_title, id, params) => {
    book.write([{ ...one(0, 9), content: 1 }]);
    await write((pause) => {
      if (pause === 3) run(id, params);
    });
    expect(said).toEqual([WAIT_FOR_STEP]);
    expect([valueAt(0, 0), valueAt(0, 9), valueAt(1199, 0, "T")]).toEqual([5, 1, 1204]);
    expect(steps().undos).toBe(2);
  });

  test("a write in one task is refused", async () => {
    let thrown: unknown;
    await write((pause) => {
      if (pause !== 3) return;
      try {
        book.write([{ ...one(0, 9), content: 1 }]);
      } catch (error) {
        thrown = error;
      }
    });
    expect(thrown).toEqual(new Error(WAIT_FOR_STEP));
  });

  test("another workbook that takes the place isn't written into", async () => {
    const other: BookData = { sheets: [{ ...emptySheet("S"), cells: [{ row: 0, column: 0, value: 9 }] }], names: [] };
    const writing = write((pause) => {
      if (pause === 3) book.load(other);
    });
    await expect(writing).rejects.toBe(CANCELLED);
    await book.whenCalculated();
    expect(book.data().sheets.map(({ cells }) => cells)).toEqual([other.sheets[0]?.cells]);
  });
});

test("Through the port, a large write is cancelled by its signal", async () => {
  const before = cellLines(book);
  const ending = new AbortController();
  const writing = previewWorkbook(book).write(CELLS, {
    signal: ending.signal,
    onProgress: (done) => done > 1000 && ending.abort(),
  });
  await expect(writing).rejects.toBe(CANCELLED);
  expectCells(book, before);
});
