/** Rows of a new sheet that fold: ECMA-376 part 1, 18.3.1.61 (outlinePr), 18.3.1.73 (row), 18.3.1.81 (sheetFormatPr). */
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { newWorkbook, packageBytes, type NewSheet } from "../../../src/workbook/package";

const sheet: NewSheet = {
  name: "One",
  cells: [
    { row: 0, column: 0, value: "Inputs" },
    { row: 1, column: 0, value: "Pool" },
    { row: 2, column: 0, value: "Length" },
    { row: 5, column: 0, value: "Checks" },
  ],
  heights: { 0: 20 },
  groups: ["A2:A4", "A3:A4"],
  hiddenRows: [2, 3],
};

const textOf = async (one: NewSheet): Promise<string> =>
  strFromU8(unzipSync(await packageBytes(await newWorkbook([one])))["xl/worksheets/sheet1.xml"] ?? new Uint8Array());

test("A new sheet says how deep its rows lie in groups, which of them are hidden and where they fold", async () => {
  const text = await textOf(sheet);
  const rows = [...text.matchAll(/<row ([^>]*)>/g)].map(([, attributes]) => attributes);
  expect(rows).toEqual([
    'r="1" ht="20" customHeight="1"',
    'r="2" outlineLevel="1" collapsed="1"',
    'r="3" hidden="1" outlineLevel="2"',
    'r="4" hidden="1" outlineLevel="2"',
    'r="6"',
  ]);
  expect(text).toContain('<sheetPr><outlinePr summaryBelow="0"/></sheetPr>');
  expect(text).toContain('<sheetFormatPr defaultRowHeight="15" outlineLevelRow="2"/>');
});

test("The outline comes before the page set-up in a sheet's properties", async () => {
  const text = await textOf({ ...sheet, print: { fitToWidth: true } });
  expect(text).toContain('<sheetPr><outlinePr summaryBelow="0"/><pageSetUpPr fitToPage="1"/></sheetPr>');
});

test("A sheet without groups has no outline", async () => {
  const plain = Object.fromEntries(
    Object.entries(sheet).filter(([key]) => key !== "groups" && key !== "hiddenRows"),
  ) as unknown as typeof sheet;
  expect(await textOf(plain)).not.toMatch(/outline/);
});
