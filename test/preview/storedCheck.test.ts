/** Opened workbooks show the file's results; each formula is worked out once, alone, to check them. */
import { expect, test } from "vitest";
import { emptySheet } from "../../src/preview/file/bookData";
import { mayCircle, type OrderedFormula } from "../../src/preview/univer/formulaOrder";
import { startHeadless } from "../../src/preview/univer/start";
import { isCellFault } from "../../src/workbook/port";
import { parseCells } from "../../src/workbook/reader/reference";
import { plainBook, zipOf } from "../workbook/package/zipParts";
import { fileOf } from "./files";
import { fixtureSet } from "./support";

const rowOf = (cells: Readonly<Record<string, readonly [formula: string, value: string | number]>>): string =>
  `<sheetData><row r="1">${Object.entries(cells)
    .map(([address, [formula, value]]) =>
      formula === ""
        ? `<c r="${address}"><v>${value}</v></c>`
        : `<c r="${address}"><f>${formula}</f><v>${value}</v></c>`,
    )
    .join("")}</row></sheetData>`;

async function opened(cells: Parameters<typeof rowOf>[0]) {
  let runs = 0;
  const set = fixtureSet();
  const watch = { onFormula: () => void (runs += 1) };
  const book = startHeadless(set, { sheets: [emptySheet("First")], names: [] }, watch);
  await book.whenCalculated();
  runs = 0;
  const report = await fileOf(book).open(zipOf(plainBook({ S: rowOf(cells) })));
  const valueAt = (address: string): unknown => {
    const value = book.read({ sheet: "S", ...parseCells(address)! }).values[0]?.[0] ?? null;
    return isCellFault(value) ? value.code : value;
  };
  return { book, report, valueAt, runs: () => runs };
}

const addressesOf = (cells: readonly { readonly address: string }[]): readonly string[] =>
  cells.map(({ address }) => address);

test("a workbook with right results is worked out once a formula", async () => {
  const { book, report, runs } = await opened({
    A1: ["", 2],
    B1: ["A1*3", 6],
    C1: ["B1+A1", 8],
    D1: ["SUM(A1:C1)", 16],
  });
  expect(report.differing).toEqual([]);
  expect(runs()).toBe(3);
  book.dispose();
});

test("a cell that follows from a changed one is calculated though the workbook never was", async () => {
  const { book, valueAt } = await opened({ A1: ["", 2], B1: ["A1*3", 6], C1: ["B1+A1", 8] });
  book.write([{ sheet: "S", row: 0, column: 0, content: 5 }]);
  await book.whenCalculated();
  expect([valueAt("B1"), valueAt("C1")]).toEqual([15, 20]);
  book.dispose();
});

test("a wrong result and those that follow from it are calculated and listed", async () => {
  const { book, report, valueAt } = await opened({ A1: ["", 2], B1: ["A1*3", 7], C1: ["B1+1", 8], D1: ["A1+1", 3] });
  expect(addressesOf(report.differing)).toEqual(["S!B1", "S!C1"]);
  expect([valueAt("B1"), valueAt("C1"), valueAt("D1")]).toEqual([6, 7, 3]);
  book.dispose();
});

test("formulas of a circle differ though each gives its stored result", async () => {
  const { book, report, valueAt } = await opened({ A1: ["B1", 0], B1: ["A1", 0], C1: ["1+1", 2] });
  expect(addressesOf(report.differing)).toEqual(["S!A1", "S!B1"]);
  expect([valueAt("A1"), valueAt("C1")]).toEqual(["#CYCLE!", 2]);
  book.dispose();
});

const cell = (row: number, column: number, ...inputs: readonly string[]): OrderedFormula => ({
  sheetId: "s",
  row,
  column,
  inputs: inputs.map((text) => {
    const { row: startRow, column: startColumn, rows, columns } = parseCells(text)!;
    return {
      sheetId: "s",
      range: { startRow, startColumn, endRow: startRow + rows - 1, endColumn: startColumn + columns - 1 },
    };
  }),
});

const hasCircle = (...cells: readonly OrderedFormula[]): Promise<boolean> => mayCircle(cells, ["s"], () => undefined);

test("references to later formulas are no circle", async () => {
  expect(await hasCircle(cell(0, 0, "A2"), cell(1, 0, "B1:B9"), cell(4, 1, "C1"))).toBe(false);
});

test("a circle over ranges is found, also where the ranges are whole columns", async () => {
  expect(await hasCircle(cell(0, 0, "B1:B9"), cell(4, 1, "C2"), cell(1, 2, "A1"))).toBe(true);
  expect(await hasCircle(cell(0, 0, "B:B"), cell(4, 1, "A:A"))).toBe(true);
  expect(await hasCircle(cell(3, 3, "D1:D9"))).toBe(true);
});
