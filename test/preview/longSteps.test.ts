/** On the page large steps are undone and redone in pieces; meanwhile nobody else changes the workbook. */
import { ICommandService, IUndoRedoService, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { emptySheet, type BookData } from "../../src/preview/file/bookData";
import { createCallSites } from "../../src/preview/host/callSites";
import type { SheetBook } from "../../src/preview/host/sheetBook";
import { ENTRY_FOLLOWS, WAIT_FOR_STEP } from "../../src/preview/univer/changeGuard";
import { PIECE_CELLS } from "../../src/preview/univer/edit";
import { formulaSlices } from "../../src/preview/univer/formulaSlices";
import { univerBook } from "../../src/preview/univer/univerBook";
import { cellLines, expectCells } from "./cellLines";

const ROWS = 1_500;

const DATA: BookData = {
  sheets: ["S", "T"].map((name) => ({
    ...emptySheet(name),
    room: { rows: ROWS, columns: 30 },
    cells: Array.from({ length: ROWS }, (_, row) => [
      { row, column: 0, value: row },
      { row, column: 1, value: `text ${String(row)}`, format: "@" },
    ]).flat(),
  })),
  names: [],
};

/** The texts become formulas, and the numbers other numbers. */
const CELLS = ["S", "T"].flatMap((sheet) =>
  Array.from({ length: ROWS }, (_, row) => [
    { sheet, row, column: 0, content: row + 5 },
    { sheet, row, column: 1, content: `=A${String(row + 1)}+1` },
  ]).flat(),
);

let book: SheetBook;
let univer: Univer;
/** In each task the cells that it changed, formulas twice as the engine does; the step begins the next one with a message to itself. */
let tasks: number[];

/** Counts the tasks that a step asks for: a clock or a timer of the test's own would depend on the machine. */
class CountedChannel extends MessageChannel {
  constructor() {
    super();
    tasks.push(0);
  }
}

beforeEach(async () => {
  tasks = [0];
  univer = new Univer({ locale: LocaleType.EN_US, locales: { enUS: {} }, logLevel: LogLevel.SILENT });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: [] });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
  book = univerBook(univer, createCallSites(), DATA, { withoutPictures: true, slices: formulaSlices() });
  await book.whenCalculated();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  book.dispose();
});

const commands = () => univer.__getInjector().get(ICommandService);

const run = (id: string, params: object = {}): boolean =>
  commands().syncExecuteCommand(id, { unitId: "book1", ...params });

interface Written {
  readonly cellValue?: Readonly<Record<number, object>>;
}

/** Counts the cells of each task from now on, and calls back at each piece; every piece uses up its slice of time. */
function watch(atPiece: (piece: number) => void = () => undefined): void {
  tasks = [0];
  let pieces = 0;
  let milliseconds = 0;
  vi.spyOn(performance, "now").mockImplementation(() => (milliseconds += 1_000));
  vi.stubGlobal("MessageChannel", CountedChannel);
  commands().onCommandExecuted(({ id, params }, options) => {
    if (id !== "sheet.mutation.set-range-values" || options?.["applyFormulaCalculationResult"] === true) return;
    const lines = Object.values((params as Written).cellValue ?? {});
    tasks[tasks.length - 1] = (tasks.at(-1) ?? 0) + lines.reduce((sum, line) => sum + Object.keys(line).length, 0);
    queueMicrotask(() => atPiece(++pieces));
  });
}

const steps = () => {
  let held = { undos: 0, redos: 0 };
  univer
    .__getInjector()
    .get(IUndoRedoService)
    .undoRedoStatus$.subscribe((now) => (held = now))
    .unsubscribe();
  return held;
};

const one = (row: number, column: number, sheet = "S") => ({ sheet, row, column, rows: 1, columns: 1 });
const valueAt = (...at: Parameters<typeof one>) => book.read(one(...at)).values[0]?.[0];

async function written(): Promise<void> {
  await book.writeInPieces(CELLS, { pause: () => undefined });
  await book.whenCalculated();
}

test("a large step is undone and redone in pieces, with its progress, as one step", async () => {
  const before = cellLines(book);
  await written();
  const after = cellLines(book);
  const said: string[] = [];
  book.onStepProgress((sentence) => said.push(sentence));
  watch();
  const edits = book.edits();
  book.undo();
  await book.whenCalculated();
  expectCells(book, before);
  expect(book.edits()).toBe(edits + 1);
  expect(Math.max(...tasks)).toBeLessThanOrEqual(2 * PIECE_CELLS);
  expect(said.at(-1)).toBe("6,000 of 6,000 cells undone.");
  expect(steps()).toEqual({ undos: 0, redos: 1 });
  tasks = [0];
  book.redo();
  await book.whenCalculated();
  expectCells(book, after);
  expect(Math.max(...tasks)).toBeLessThanOrEqual(2 * PIECE_CELLS);
  expect(said.at(-1)).toBe("6,000 of 6,000 cells redone.");
  expect(steps()).toEqual({ undos: 1, redos: 0 });
});

test("a step that one command made is undone in pieces too", async () => {
  const before = cellLines(book);
  const value = Object.fromEntries(
    Array.from({ length: ROWS }, (_, row) => [row, { 0: { v: 7 }, 1: { v: 8 }, 2: { v: 9 }, 3: { v: 10 } }]),
  );
  run("sheet.command.set-range-values", {
    ...{ subUnitId: "book1-0", value },
    range: { startRow: 0, endRow: ROWS - 1, startColumn: 0, endColumn: 3 },
  });
  watch();
  book.undo();
  await book.whenCalculated();
  expect(Math.max(...tasks)).toBe(PIECE_CELLS);
  expectCells(book, before);
  expect(steps()).toEqual({ undos: 0, redos: 1 });
});

test("what is typed while a step is undone is entered afterwards, as a step of its own", async () => {
  await written();
  const said: string[] = [];
  book.onRefusal((sentence) => said.push(sentence));
  watch((piece) => {
    if (piece !== 3) return;
    const range = { startRow: 2, endRow: 2, startColumn: 0, endColumn: 0 };
    expect(run("sheet.command.set-range-values", { subUnitId: "book1-0", range, value: { v: 111 } })).toBe(false);
    expect(run("univer.command.undo")).toBe(false);
  });
  book.undo();
  await book.whenCalculated();
  expect(said).toEqual([ENTRY_FOLLOWS, WAIT_FOR_STEP]);
  expect([valueAt(2, 0), valueAt(3, 0), valueAt(1_499, 0, "T")]).toEqual([111, 3, 1_499]);
  expect(steps()).toEqual({ undos: 1, redos: 0 });
  book.undo();
  expect(valueAt(2, 0)).toBe(2);
});

test("small steps and steps that move cells are undone at once", async () => {
  book.write([{ ...one(0, 9), content: 1 }]);
  await commands().executeCommand("sheet.command.insert-row", {
    ...{ unitId: "book1", subUnitId: "book1-0" },
    ...{ range: { startRow: 0, endRow: 0, startColumn: 0, endColumn: 29 }, direction: 0 },
  });
  expect(valueAt(1, 9)).toBe(1);
  book.undo();
  expect(valueAt(0, 9)).toBe(1);
  book.undo();
  expect(valueAt(0, 9)).toBeNull();
});

test("another workbook that takes the place of a step's keeps its cells", async () => {
  await written();
  const other: BookData = { sheets: [{ ...emptySheet("S"), cells: [{ row: 0, column: 0, value: 9 }] }], names: [] };
  const said = vi.fn();
  book.onStepProgress(said);
  watch((piece) => {
    if (piece === 3) book.load(other);
  });
  book.undo();
  await book.whenCalculated();
  expect(book.data().sheets.map(({ cells }) => cells)).toEqual([other.sheets[0]?.cells]);
});
