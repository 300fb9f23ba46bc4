/** What every adapter of the workbook port must do: one suite for all of them. */
import type { CellInput } from "../../core";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { sessionLog } from "../../src/workbook/callLog";
import type { Address, Area, Block, CellValue, Workbook } from "../../src/workbook/port";
import { readCells } from "../../src/workbook/reader/read";
import type { CellToRead, Engine } from "../../src/workbook/reader/prepare";
import type { ReadArgument } from "../../src/workbook/reader/read";
import { readSheet } from "../../src/workbook/reader/sheets";
import { sameValue } from "../../src/workbook/values";
import type { Value } from "../../src/workbook/values";
import { READER, READER_CASES, READER_IDS, READER_SHEET, SMALL } from "./contractSheets";

/** A workbook with one empty sheet, freshly made. */
export interface Harness {
  readonly book: Workbook;
  close(): Promise<void>;
  /** The host works formulas out. */
  readonly calculates: boolean;
  /** Protects a sheet, where the host can. */
  protect?(sheet: string): Promise<void>;
  /** The real calculation: needed where the host calculates. */
  readonly engine?: Pick<Engine, "known" | "call">;
  /** The last call that a cell made, where the host knows. */
  calls?(address: Address): { readonly id: string; readonly args: readonly CellInput[] } | undefined;
}

const area = (sheet: string, row: number, column: number, rows = 1, columns = 1): Area => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

const PATIENCE = 20_000;

async function until(holds: () => Promise<boolean> | boolean, what: string): Promise<void> {
  const end = Date.now() + PATIENCE;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`waited in vain until ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 100));

async function one(book: Workbook, sheet: string, row: number, column: number): Promise<[string, CellValue]> {
  const [block] = await book.read([area(sheet, row, column)]);
  return [block?.formulas[0]?.[0] ?? "missing", block?.values[0]?.[0] ?? null];
}

/** A stand-in where the host doesn't calculate: the reader's arguments are checked, not the result. */
const STAND_IN: Pick<Engine, "known" | "call"> = { known: READER_IDS, call: () => ({ value: 0 }) };

function readerCells(blocks: readonly Block[]): readonly CellToRead[] {
  return READER_CASES.map(({ row }) => {
    const block = blocks.find((each) => row >= each.area.row && row < each.area.row + each.area.rows);
    const at = { row: row - (block?.area.row ?? 0), column: 4 - (block?.area.column ?? 0) };
    return {
      address: { sheet: READER_SHEET, row, column: 4 },
      formula: block?.formulas[at.row]?.[at.column] ?? "",
      value: block?.values[at.row]?.[at.column] ?? null,
    };
  });
}

const valueOf = (argument: ReadArgument): unknown => ("value" in argument ? argument.value : argument);

export function contract(name: string, make: () => Promise<Harness>): void {
  describe(`The workbook port over ${name}`, () => {
    let harness: Harness;
    let book: Workbook;

    beforeEach(async () => {
      harness = await make();
      book = harness.book;
    });
    afterEach(() => harness.close());

    const firstSheet = async (): Promise<string> => (await book.sheets())[0]?.name ?? "";
    const calculated = (sheet: string, row: number, column: number): Promise<void> =>
      harness.calculates
        ? until(async () => (await one(book, sheet, row, column))[1] !== null, "the host calculated")
        : Promise.resolve();

    test("lists the sheets with what is known of them", async () => {
      const [first, ...others] = await book.sheets();
      expect(others).toEqual([]);
      expect(first).toEqual({ name: expect.any(String) as string, visible: true, protected: false });
    });

    test("finds nothing used in an empty or missing sheet", async () => {
      expect(await book.used(await firstSheet())).toBeUndefined();
      expect(await book.used("No such sheet")).toBeUndefined();
    });

    test("inserts a starter sheet beside the others and finds its used part", async () => {
      expect(await book.insert(SMALL)).toBe("Small sheet");
      expect((await book.sheets()).map((sheet) => sheet.name)).toContain("Small sheet");
      expect(await book.used("Small sheet")).toEqual(area("Small sheet", 0, 0, 7, 3));
    });

    test("gives a second sheet of the same name a number, and its names to itself", async () => {
      await book.insert(SMALL);
      expect(await book.insert(SMALL)).toBe("Small sheet 2");
      const from = { sheet: "Small sheet 2", row: 9, column: 9 };
      const elsewhere = { sheet: await firstSheet(), row: 0, column: 0 };
      const found = await book.resolve([
        { text: "small_flow", from },
        { text: "small_flow", from: elsewhere },
      ]);
      expect(found).toEqual([area("Small sheet 2", 1, 1), area("Small sheet", 1, 1)]);
    });

    test("reads several areas at once, formulas apart from values", async () => {
      const sheet = await book.insert(SMALL);
      await calculated(sheet, 4, 1);
      const [left, result, outside] = await book.read([
        area(sheet, 1, 0, 3, 3),
        area(sheet, 4, 1),
        area(sheet, 40, 40, 1, 2),
      ]);
      expect(left?.area).toEqual(area(sheet, 1, 0, 3, 3));
      expect(left?.values).toEqual([
        ["Water flow", 40, "gpm"],
        ["Pipe size", "2 in", null],
        ["Pump runs", true, null],
      ]);
      expect(left?.formulas).toEqual([
        ["", "", ""],
        ["", "", ""],
        ["", "", ""],
      ]);
      expect(result?.formulas).toEqual([["=small_flow*2"]]);
      if (harness.calculates) expect(result?.values).toEqual([[80]]);
      expect(outside).toMatchObject({ formulas: [["", ""]], values: [[null, null]] });
      expect(await book.read([])).toEqual([]);
    });

    test("keeps a text as text, though it looks like a date", async () => {
      const sheet = await book.insert(SMALL);
      expect(await one(book, sheet, 5, 0)).toEqual(["", "1-2"]);
    });

    test("refuses to read, write or go to a missing sheet, by name", async () => {
      const gone = area("No such sheet", 0, 0);
      await expect(book.read([gone])).rejects.toThrow(/No such sheet/);
      await expect(book.write([{ ...gone, content: 1 }])).rejects.toThrow(/No such sheet/);
      await expect(book.select(gone)).rejects.toThrow(/No such sheet/);
      await expect(book.recalculate([gone])).rejects.toThrow(/No such sheet/);
    });

    test("resolves cells, names and quoted sheets together, and says which mean nothing", async () => {
      const sheet = await book.insert(SMALL);
      const from = { sheet, row: 9, column: 4 };
      const texts = [
        "B2",
        "$A$1:C2",
        "'Small sheet'!B3",
        "small_flow",
        "SMALL_BLOCK",
        "no_such_name",
        "Gone!A1",
        "#REF!",
      ];
      expect(await book.resolve(texts.map((text) => ({ text, from })))).toEqual([
        area(sheet, 1, 1),
        area(sheet, 0, 0, 2, 3),
        area(sheet, 2, 1),
        area(sheet, 1, 1),
        area(sheet, 1, 0, 3, 3),
        undefined,
        undefined,
        undefined,
      ]);
      expect(await book.resolve([])).toEqual([]);
    });

    test("writes numbers, texts, booleans and formulas, and empties cells", async () => {
      const sheet = await book.insert(SMALL);
      const cell = (row: number, column: number, content: string | number | boolean | null) => ({
        sheet,
        row,
        column,
        content,
      });
      await book.write([
        cell(9, 0, 1.5),
        cell(9, 1, "Lap pool"),
        cell(10, 0, false),
        cell(10, 1, "007"),
        cell(1, 2, null),
        cell(11, 3, "=B2*3"),
      ]);
      await calculated(sheet, 11, 3);
      const [rows] = await book.read([area(sheet, 9, 0, 2, 2)]);
      expect(rows?.values).toEqual([
        [1.5, "Lap pool"],
        [false, "007"],
      ]);
      expect(await one(book, sheet, 1, 2)).toEqual(["", null]);
      const [formula, value] = await one(book, sheet, 11, 3);
      expect(formula).toBe("=B2*3");
      if (harness.calculates) expect(value).toBe(120);
    });

    test("shows results that follow what is written", async () => {
      const sheet = await book.insert(SMALL);
      await book.write([{ sheet, row: 1, column: 1, content: 50 }]);
      await book.recalculate([area(sheet, 4, 1)]);
      expect(await one(book, sheet, 1, 1)).toEqual(["", 50]);
      if (harness.calculates) await until(async () => (await one(book, sheet, 4, 1))[1] === 100, "the result followed");
    });

    test("goes to a cell and says which is selected", async () => {
      const sheet = await book.insert(SMALL);
      await book.select({ sheet, row: 2, column: 1 });
      expect(await book.selection()).toEqual({ sheet, row: 2, column: 1 });
    });

    test("reports a new selection until it is stopped", async () => {
      const sheet = await book.insert(SMALL);
      const seen: Address[] = [];
      const stop = book.onSelection((address) => seen.push(address));
      await pause();
      await book.select({ sheet, row: 3, column: 2 });
      await until(() => seen.some(({ row, column }) => row === 3 && column === 2), "the selection was told");
      expect(seen.at(-1)).toEqual({ sheet, row: 3, column: 2 });
      stop();
      await pause();
      const before = seen.length;
      await book.select({ sheet, row: 4, column: 0 });
      await pause();
      expect(seen).toHaveLength(before);
    });

    test("reports which sheets changed until it is stopped", async () => {
      const sheet = await book.insert(SMALL);
      const seen: string[] = [];
      const stop = book.onChange((sheets) => seen.push(...sheets));
      await pause();
      await book.write([{ sheet, row: 1, column: 1, content: 60 }]);
      await until(() => seen.includes(sheet), "the change was told");
      stop();
      await pause();
      const before = seen.length;
      await book.write([{ sheet, row: 1, column: 1, content: 70 }]);
      await pause();
      expect(seen).toHaveLength(before);
    });

    test("says that a sheet is protected, and why it can't be written to", async ({ skip }) => {
      if (harness.protect === undefined) return skip("this host protects no sheet");
      const sheet = await book.insert(SMALL);
      await harness.protect(sheet);
      expect((await book.sheets()).find((each) => each.name === sheet)?.protected).toBe(true);
      await expect(book.write([{ sheet, row: 1, column: 1, content: 1 }])).rejects.toThrow(/protected/);
      expect(await one(book, sheet, 1, 1)).toEqual(["", 40]);
    });

    test("gives the reader what it needs for 150 formulas", { timeout: 60_000 }, async () => {
      expect(READER_CASES).toHaveLength(150);
      expect(await book.insert(READER)).toBe(READER_SHEET);
      await calculated(READER_SHEET, 150, 4);
      const cells = readerCells(await readSheet(book, READER_SHEET));
      expect(cells.map(({ formula }) => formula)).toEqual(READER_CASES.map(({ formula }) => formula));
      const engine: Engine = { ...(harness.engine ?? STAND_IN), log: sessionLog() };
      const readings = await readCells(book, cells, engine);
      readings.forEach(({ calls, stale }, at) => {
        const expected = READER_CASES[at];
        expect(calls.map((call) => ({ id: call.id, args: call.args.map(valueOf), whole: call.whole }))).toEqual([
          { id: expected?.id, args: expected?.args, whole: true },
        ]);
        if (harness.calculates && harness.engine !== undefined)
          expect([expected?.formula, stale]).toEqual([expected?.formula, false]);
      });
      if (harness.calls === undefined) return;
      for (const { formula, row, id, args } of READER_CASES) {
        const call = harness.calls({ sheet: READER_SHEET, row, column: 4 });
        expect([formula, call?.id]).toEqual([formula, id]);
        args.forEach((value, at) =>
          expect([formula, sameValue(value, (call?.args[at] ?? null) as Value)]).toEqual([formula, true]),
        );
      }
    });
  });
}
