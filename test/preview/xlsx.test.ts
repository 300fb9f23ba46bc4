/** Workbooks through .xlsx files and through the engine, and back. */
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import type { BookData, SheetData } from "../../src/preview/file/bookData";
import { emptySheet } from "../../src/preview/file/bookData";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { starterData } from "../../src/preview/file/starterBook";
import { readXlsx, writeXlsx } from "../../src/preview/file/xlsx";
import { isStateCondition, stateConditions } from "../../src/sheets/states";
import { openPackage, readBook } from "../../src/workbook/package";
import { SMALL } from "../workbook/contractSheets";
import { fixtureSet, newBook } from "./support";

const { metadata } = fixtureSet();
const texts = formulaTexts("WARMBACK", metadata);

const calculation: SheetData = {
  ...emptySheet("Pool loop"),
  cells: [
    { row: 0, column: 0, value: "Fernhill Hall (invented)", look: { bold: true, size: 14, color: "#1f3a5f" } },
    {
      row: 1,
      column: 1,
      value: 40,
      format: "0.00",
      look: { fill: "#fff4d6", align: "right", edges: { bottom: { style: "thin", color: "#b59b4c" } } },
      validation: {
        type: "decimal",
        operator: "between",
        formulae: [1, 200],
        prompt: "1 to 200 gpm",
        showInputMessage: true,
      },
    },
    { row: 2, column: 1, value: "2 in", validation: { type: "list", formulae: ['"1 1/2 in,2 in"'], allowBlank: true } },
    { row: 3, column: 1, value: true },
    { row: 4, column: 1, value: "007", look: { wrap: true, verticalAlign: "top" } },
    { row: 5, column: 1, value: null, formula: "=WARMBACK.TEST.DOUBLE(flow)" },
    { row: 6, column: 1, value: null, formula: "=WARMBACK.TEST.TABLE(3)" },
    { row: 6, column: 4, value: null, formula: '=WARMBACK.TEST.FAIL("outside")' },
    { row: 7, column: 4, value: null, formula: "=LET(x,B2,x+1)" },
  ],
  widths: { 0: 24, 1: 12 },
  heights: { 0: 30 },
  frozenRows: 1,
  merged: [{ row: 0, column: 0, rows: 1, columns: 2 }],
  print: { area: "A1:F20", landscape: true, fitToWidth: true, titleRows: "1:1", footer: "Page &P" },
};

const original: BookData = {
  sheets: [calculation, { ...emptySheet("Hidden"), hidden: true, cells: [{ row: 0, column: 0, value: 1 }] }],
  names: [{ name: "flow", refersTo: "'Pool loop'!$B$2" }],
};

const byPlace = (sheet: SheetData | undefined) =>
  [...(sheet?.cells ?? [])]
    .filter((cell) => cell.value !== null || cell.formula !== undefined)
    .sort((a, b) => a.row - b.row || a.column - b.column);

test("A workbook comes back from the engine and from a file as it went in", async () => {
  const book = newBook();
  book.load(original);
  await book.whenCalculated();
  const kept = book.data();
  expect(kept.sheets[0]?.print).toEqual(calculation.print);
  const again = await readXlsx(await writeXlsx(kept, texts), texts);
  for (const data of [kept, again]) {
    const [sheet, hidden] = data.sheets;
    expect(sheet).toMatchObject({
      name: "Pool loop",
      widths: { 0: 24, 1: 12 },
      heights: { 0: 30 },
      frozenRows: 1,
      merged: calculation.merged,
    });
    expect(hidden).toMatchObject({ name: "Hidden", hidden: true });
    expect(data.names).toEqual(original.names);
    expect(byPlace(sheet).filter(({ formula }) => formula === undefined)).toMatchObject(
      calculation.cells.filter(({ formula }) => formula === undefined),
    );
    expect(byPlace(sheet).flatMap(({ formula }) => formula ?? [])).toEqual(
      calculation.cells.flatMap(({ formula }) => formula ?? []),
    );
  }
  const results = byPlace(again.sheets[0]).filter(({ formula }) => formula !== undefined);
  expect(results.map(({ value }) => value)).toEqual([80, "row 1", "#N/A", 41]);
  book.load(again);
  await book.whenCalculated();
  const table = book.read({ sheet: "Pool loop", row: 6, column: 1, rows: 3, columns: 2 });
  expect(table.values).toEqual([
    ["row 1", 0],
    ["row 2", 1 / 3],
    ["row 3", 2 / 3],
  ]);
  book.dispose();
});

test("A starter sheet keeps names, looks, rules and print set-up through a file", async () => {
  const { sheet, names } = starterData(SMALL, SMALL.name, new Set());
  const bytes = await writeXlsx({ sheets: [sheet], names }, texts);
  const again = await readXlsx(bytes, texts);
  expect(again.names).toEqual([
    { name: "small_flow", refersTo: "'Small sheet'!$B$2" },
    { name: "small_block", refersTo: "'Small sheet'!$A$2:$C$4" },
  ]);
  expect(byPlace(again.sheets[0])).toMatchObject(byPlace(sheet));
  const book = await readBook(await openPackage(bytes));
  expect(
    book.names.flatMap(({ builtIn, formula }) => (builtIn === undefined ? [] : [`${builtIn} ${formula}`])),
  ).toEqual([`Print_Area 'Small sheet'!$A$1:$F$20`, `Print_Titles 'Small sheet'!$1:$2`]);
  const text = strFromU8(unzipSync(bytes)["xl/worksheets/sheet1.xml"]!);
  expect(text).toContain('<pageSetup fitToHeight="0" orientation="portrait"/>');
  expect(text).toContain("<oddFooter>Page &amp;P of &amp;N</oddFooter>");
});

test("Cells that say a check's state look like it after the file is opened again", async () => {
  const state = { row: 1, column: 2, value: "LOOK", formula: '=IF(A2>1,"LOOK","OK")', state: true as const };
  const other = { row: 2, column: 2, value: "LOOK" };
  const sheet = { ...emptySheet("Checks"), cells: [{ row: 1, column: 0, value: 2 }, state, other] };
  const again = await readXlsx(await writeXlsx({ sheets: [sheet], names: [] }, texts), texts);
  expect(again.sheets[0]?.cells.map((cell) => [cell.row, cell.column, cell.state])).toEqual([
    [1, 0, undefined],
    [1, 2, true],
    [2, 2, undefined],
  ]);
});

test("A condition on a state's words is known however a program writes it, and others aren't", () => {
  for (const { formula } of stateConditions("C2")) expect(isStateCondition(formula)).toBe(true);
  expect(isStateCondition('OR($C$2 = "look",C2="GO WITH CONDITIONS",C2="LOOK")')).toBe(true);
  expect(isStateCondition('OR(C2="LOOK",C2="look")')).toBe(false);
  expect(isStateCondition('C2="LOOK"')).toBe(false);
  expect(isStateCondition('OR(C2="LOOK",C2="look",LEN(C2)=3)')).toBe(false);
});

test("A file that is no workbook is refused with a plain sentence", async () => {
  const bytes = new TextEncoder().encode("not a workbook");
  await expect(readXlsx(bytes.buffer, texts)).rejects.toThrow("This file is no .xlsx workbook.");
});
