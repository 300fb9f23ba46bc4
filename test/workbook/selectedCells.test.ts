/** Which of the selected cells a check is of. */
import { afterEach, expect, test } from "vitest";
import { selectedCells } from "../../src/workbook/check/selectedCells";
import { excelWorkbook } from "../../src/workbook/excel/excelWorkbook";
import type { Workbook } from "../../src/workbook/port";
import { addressText } from "../../src/workbook/reader/reference";
import { excelHost, install, sheetNamed, WEB } from "../excelHost";
import { boxOf, keyOf } from "../excelHost/model/workbook";
import { onPreview, type OnPreview } from "./previewEngine";

let end: () => void = () => undefined;
afterEach(() => end());

async function textOf(book: Workbook): Promise<string> {
  const found = await selectedCells(book);
  return "why" in found ? found.why : found.cells.map(addressText).join(" ");
}

/** Labels and units in A and C, numbers and formulas in B. */
const CELLS: readonly (readonly [string | number, string, string])[] = [
  ["Head lost", "=1+1", "ft"],
  ["Velocity", "", "ft/s"],
];

function excelWith(...selected: readonly string[]): Workbook {
  const excel = excelHost(WEB, ["Loop"]);
  end = install(excel);
  const { cells } = sheetNamed(excel.host.book, "Loop");
  for (const [row, [label, formula, unit]] of CELLS.entries()) {
    cells.set(keyOf(row, 0), { formula: "", value: label });
    cells.set(keyOf(row, 1), { formula, value: row + 2 });
    cells.set(keyOf(row, 2), { formula: "", value: unit });
  }
  excel.host.book.selected = selected.map((text) => boxOf(text)!);
  return excelWorkbook();
}

test("of several ranges in Excel those cells are marked that hold numbers or formulas", async () => {
  expect(await textOf(excelWith("A1:C1", "B2:C9"))).toBe("Loop!B1 Loop!B2");
});

test("one selected cell is marked whatever it holds", async () => {
  expect(await textOf(excelWith("A1"))).toBe("Loop!A1");
});

test("labels alone are refused with a sentence", async () => {
  expect(await textOf(excelWith("A1:A2"))).toBe("No selected cell holds a number or a formula.");
});

test("of a range in the page's sheet those cells are marked that hold numbers or formulas", async () => {
  const on: OnPreview = await onPreview("Pool loop");
  end = () => on.sheets.dispose();
  await on.put("Pool loop", { A7: "Head lost", B7: "=1+1", C7: "ft", B8: 3 });
  const selected = { sheet: "Pool loop", row: 6, column: 0, rows: 2, columns: 3 };
  const book: Workbook = { ...on.book, selectedAreas: async () => [selected] };
  expect(await textOf(book)).toBe("'Pool loop'!B7 'Pool loop'!B8");
  await on.book.select({ sheet: "Pool loop", row: 7, column: 1 });
  expect(await textOf(on.book)).toBe("'Pool loop'!B8");
});

test("more than 200 cells are refused with a sentence", async () => {
  const on: OnPreview = await onPreview("Pool loop");
  end = () => on.sheets.dispose();
  on.sheets.write(Array.from({ length: 201 }, (_, row) => ({ sheet: "Pool loop", row, column: 0, content: row })));
  const selected = { sheet: "Pool loop", row: 0, column: 0, rows: 500, columns: 1 };
  const book: Workbook = { ...on.book, selectedAreas: async () => [selected] };
  expect(await textOf(book)).toBe("201 selected cells hold numbers or formulas: select at most 200.");
});
