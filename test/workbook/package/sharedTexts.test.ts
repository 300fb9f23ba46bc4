/** Texts that a new sheet shares go behind those that the workbook has, whatever form its list has. */
import { expect, test } from "vitest";
import {
  addSheets,
  openPackage,
  packageBytes,
  readBook,
  readStoredSheet,
  cellContext,
} from "../../../src/workbook/package";
import type { NewSheet } from "../../../src/workbook/package";
import { partText } from "../../../src/workbook/package/parts/package";
import { plainBook, zipOf, type PartTexts } from "./zipParts";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const STRINGS = "xl/sharedStrings.xml";

const record: NewSheet = {
  name: "Record",
  cells: [],
  lines: {
    firstRow: 0,
    count: 3,
    sharedColumns: new Set([0]),
    line: (at) => ({ values: [["a < b", " kept", "a < b"][at] ?? ""], styles: [] }),
  },
};

async function added(parts: PartTexts) {
  const pack = await openPackage(zipOf(parts));
  const after = await openPackage(await packageBytes(await addSheets(pack, [record])));
  const book = await readBook(after);
  const values: Record<string, unknown[]> = {};
  for (const { name } of book.sheets)
    await readStoredSheet(
      after,
      book,
      name,
      await cellContext(after, book),
      ({ value }) => void (values[name] ??= []).push(value),
    );
  return { list: await partText(after, STRINGS), values };
}

const book = (list: string): PartTexts => ({
  ...plainBook({ S: '<sheetData><row r="1"><c r="A1" t="s"><v>0</v></c></row></sheetData>' }),
  [STRINGS]: list,
});

const VALUES = { S: ["old"], Record: ["a < b", " kept", "a < b"] };
const NEW =
  /<(x:)?si><(x:)?t xml:space="preserve">a &lt; b<\/(x:)?t><\/(x:)?si><(x:)?si><(x:)?t xml:space="preserve"> kept</;

test("each text is there once, and the counts that no longer hold go", async () => {
  const { list, values } = await added(
    book(`<sst xmlns="${MAIN}" count="9" uniqueCount="1"><si><t>old</t></si></sst>`),
  );
  expect(values).toEqual(VALUES);
  expect(list).toMatch(NEW);
  expect(list).not.toContain("ount=");
});

test("a list with a prefix keeps it", async () => {
  const { list, values } = await added(book(`<x:sst xmlns:x="${MAIN}"><x:si><x:t>old</x:t></x:si></x:sst>`));
  expect(values).toEqual(VALUES);
  expect(list).toMatch(/<x:si><x:t xml:space="preserve">a &lt; b/);
});

/** ECMA-376 part 1, 18.4.9: items come before extensions. */
test("new texts come before a list's extensions", async () => {
  const extension = '<extLst><ext uri="{1}"/></extLst>';
  const { list, values } = await added(book(`<sst xmlns="${MAIN}"><si><t>old</t></si>${extension}</sst>`));
  expect(values).toEqual(VALUES);
  expect(list.endsWith(`</si>${extension}</sst>`)).toBe(true);
});

test("an empty list and a workbook without one get the texts", async () => {
  const empty: PartTexts = {
    ...book(`<sst xmlns="${MAIN}"/>`),
    "xl/worksheets/sheet1.xml": `<worksheet xmlns="${MAIN}"><sheetData/></worksheet>`,
  };
  expect((await added(empty)).values).toEqual({ Record: VALUES.Record });
  const none = Object.fromEntries(Object.entries(empty).filter(([path]) => path !== STRINGS));
  const relations = String(none["xl/_rels/workbook.xml.rels"]).replace(/<Relationship [^>]*sharedStrings[^>]*>/, "");
  const types = String(none["[Content_Types].xml"]).replace(/<Override [^>]*sharedStrings[^>]*>/, "");
  const without = { ...none, "xl/_rels/workbook.xml.rels": relations, "[Content_Types].xml": types };
  expect((await added(without)).values).toEqual({ Record: VALUES.Record });
});
