import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { addSheets, cellsFromRows, newWorkbook, packageBytes, type NewSheet } from "../../../src/workbook/package";

const sheet = (name: string, fill: string): NewSheet => ({
  name,
  cells: cellsFromRows([["OK"], ["FAILS"]]),
  conditions: [
    { areas: "A1 A2", formula: 'A1="OK"', color: "#0b4a1f", fill: "#d3ecd9" },
    { areas: "A1 A2", formula: 'A1="FAILS"', color: "#ffffff", fill },
  ],
});

const partsOf = async (pack: Parameters<typeof packageBytes>[0]): Promise<(path: string) => string> => {
  const parts = unzipSync(await packageBytes(pack));
  return (path) => strFromU8(parts[path] ?? new Uint8Array());
};

test("A new sheet shows its conditions, each with a difference of its own in the styles", async () => {
  const part = await partsOf(await newWorkbook([sheet("One", "#a3001d")]));
  expect(part("xl/worksheets/sheet1.xml")).toContain(
    '<conditionalFormatting sqref="A1 A2"><cfRule type="expression" dxfId="1" priority="2" stopIfTrue="1"><formula>A1=&quot;FAILS&quot;</formula>',
  );
  expect(part("xl/styles.xml")).toMatch(/<\/cellStyles><dxfs count="2"><dxf><font><color rgb="FF0B4A1F"\/><\/font>/);
});

test("A sheet added later keeps the differences that are there", async () => {
  const first = await newWorkbook([sheet("One", "#a3001d")]);
  const part = await partsOf(await addSheets(first, [sheet("Two", "#123456")]));
  expect(part("xl/styles.xml")).toContain('<dxfs count="4">');
  expect(part("xl/worksheets/sheet2.xml")).toContain('dxfId="3"');
  expect(part("xl/worksheets/sheet1.xml")).toContain('dxfId="1"');
});
