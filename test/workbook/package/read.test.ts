/** Sheets of unusual but allowed forms, and formulas as they are stored. */
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  cellContext,
  openPackage,
  readBook,
  readStoredSheet,
  usesOf,
  callsUs,
  type FileCell,
} from "../../../src/workbook/package";
import { shiftOf } from "../../../src/workbook/package/formula/shift";
import { scanXml, xmlScan } from "../../../src/workbook/package/xml/scan";
import { plainBook, zipOf, type PartTexts } from "./zipParts";

async function read(parts: PartTexts, sheet = "S") {
  const pack = await openPackage(zipOf(parts));
  const book = await readBook(pack);
  const cells: FileCell[] = [];
  const facts = await readStoredSheet(
    pack,
    book,
    sheet,
    await cellContext(pack, book),
    (cell) => void cells.push(cell),
  );
  return { cells, facts, book };
}

const values = (cells: readonly FileCell[]) => cells.map(({ row, column, value }) => [row, column, value]);

test("Rows and cells without addresses follow one another", async () => {
  const { cells } = await read(
    plainBook({
      S: '<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row><row><c><v>5</v></c></row></sheetData>',
    }),
  );
  expect(values(cells)).toEqual([
    [0, 0, 1],
    [0, 1, 2],
    [4, 2, 3],
    [4, 3, 4],
    [5, 0, 5],
  ]);
});

test("Every type of stored value is read", async () => {
  const row =
    '<c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><r><t>in</t></r><r><t xml:space="preserve"> line</t></r><rPh sb="0" eb="1"><t>x</t></rPh></is></c>' +
    '<c r="C1" t="str"><f>"a"</f><v>a_x000a_b</v></c><c r="D1" t="b"><v>0</v></c><c r="E1" t="e"><v>#DIV/0!</v></c><c r="F1"><v>1.5E-3</v></c>' +
    '<c r="G1" t="d"><v>1900-03-01</v></c><c r="H1" t="d"><v>2024-01-01T12:00:00Z</v></c><c r="I1" s="1"/>';
  const { cells } = await read(
    plainBook({ S: `<sheetData><row r="1">${row}</row></sheetData>` }, { strings: ["shared"] }),
  );
  // Serial numbers of the 1900 system: 1 March 1900 is 61, 1 January 2024 is 45292 (ECMA-376 part 1, 18.17.4).
  expect(cells.map(({ value }) => value)).toEqual([
    "shared",
    "in line",
    "a\nb",
    false,
    { code: "#DIV/0!" },
    0.0015,
    61,
    45292.5,
    null,
  ]);
});

test("Dates of the 1904 system, manual calculation and precision as displayed are named", async () => {
  const parts = plainBook(
    { S: '<sheetData><row r="1"><c r="A1" t="d"><v>2024-01-01</v></c></row></sheetData>' },
    { book: '<calcPr calcMode="manual" fullPrecision="0" iterate="true"/>' },
  );
  const text = String(parts["xl/workbook.xml"]).replace("<sheets>", '<workbookPr date1904="1"/><sheets>');
  const { book, cells } = await read({ ...parts, "xl/workbook.xml": text });
  expect(book.date1904).toBe(true);
  expect(book.calculation).toMatchObject({ mode: "manual", fullPrecision: false, iterate: true });
  expect(cells[0]?.value).toBe(45292 - 1462);
});

test("A cell of a shared group that comes before the group's first cell is read last", async () => {
  const rows =
    '<row r="1"><c r="A1"><f t="shared" si="3"/><v>1</v></c></row><row r="2"><c r="A2"><f t="shared" ref="A1:A3" si="3">B2+$C$1</f><v>2</v></c></row>';
  const { cells } = await read(plainBook({ S: `<sheetData>${rows}</sheetData>` }));
  expect(cells.map(({ row, formula }) => [row, formula])).toEqual([
    [1, { kind: "shared", text: "B2+$C$1", group: 3 }],
    [0, { kind: "shared", text: "B1+$C$1", group: 3 }],
  ]);
});

test("A strict workbook is read as any other", async () => {
  const strict = (text: string): string =>
    text
      .replaceAll(
        "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
        "http://purl.oclc.org/ooxml/spreadsheetml/main",
      )
      .replaceAll(
        "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
        "http://purl.oclc.org/ooxml/officeDocument/relationships",
      );
  const parts = plainBook({ S: '<sheetData><row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row></sheetData>' });
  const { book, cells } = await read(
    Object.fromEntries(Object.entries(parts).map(([path, part]) => [path, strict(String(part))])),
  );
  expect(book.strict).toBe(true);
  expect(cells[0]).toMatchObject({ value: 2, formula: { kind: "normal", text: "1+1" } });
});

test("A part in UTF-16 is read as one in UTF-8", async () => {
  const parts = plainBook({ S: "<sheetData/>" });
  const text = `\ufeff<?xml version="1.0" encoding="UTF-16"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>\u00b0F</t></is></c></row></sheetData></worksheet>`;
  const utf16 = new Uint8Array(Uint16Array.from(text, (letter) => letter.charCodeAt(0)).buffer);
  const { cells } = await read({ ...parts, "xl/worksheets/sheet1.xml": utf16 });
  expect(cells[0]?.value).toBe("\u00b0F");
});

test("References of a shared formula move with the cell, but for those that are fixed", () => {
  const moved = (formula: string, rows: number, columns: number): string | undefined =>
    shiftOf(formula)?.(rows, columns);
  expect(moved("A1+$A1+A$1+$A$1", 2, 3)).toBe("D3+$A3+D$1+$A$1");
  expect(moved("SUM(A1:B2,C:C,$D:E,3:3,4:$5)", 1, 1)).toBe("SUM(B2:C3,D:D,$D:F,4:4,5:$5)");
  expect(moved("'My sheet'!A1&\"A1\"&LOG10(A1)&Flow2", 1, 0)).toBe("'My sheet'!A2&\"A1\"&LOG10(A2)&Flow2");
  expect(moved("[1]S!A1+S:T!B2+Loop[gpm]", 1, 0)).toBe("[1]S!A2+S:T!B3+Loop[gpm]");
  expect(moved("A1", -1, 0)).toBe("#REF!");
  expect(moved("XFD1", 0, 1)).toBe("#REF!");
  expect(moved('"unfinished', 1, 1)).toBeUndefined();
});

test("What a formula leans on is told apart: sheets, names, tables, other workbooks, us", () => {
  const uses = usesOf(
    "SUM('My ''own'' sheet'!A1,S:U!B2,Flow,Local!Rate,Loop[[#This Row],[gpm]])+_xldudf_WARMBACK_PIPE_VELOCITY(1)",
  );
  expect(uses.sheets).toEqual(["My 'own' sheet", "S", "U", "Local"]);
  expect(uses.spans).toEqual([["S", "U"]]);
  expect(uses.names.filter(({ name }) => /^(?:Flow|Rate)$/.test(name))).toEqual([
    { name: "Flow" },
    { sheet: "Local", name: "Rate" },
  ]);
  expect(uses.tables).toEqual(["Loop"]);
  expect(uses).toMatchObject({ external: false, ours: true, indirect: false, unreadable: false });
  for (const formula of ["[1]S!A1", "'[2]My sheet'!A1", "'C:\\Jobs\\[a.xlsx]S'!A1", "[3]!Rate"])
    expect(usesOf(formula).external, formula).toBe(true);
  expect(usesOf('INDIRECT("A1")').indirect).toBe(true);
});

test("Our calls are found in every stored form and not in quotes", () => {
  for (const formula of [
    "WARMBACK.PIPE.VELOCITY(1)",
    "1+_xldudf_WARMBACK_PIPE_VELOCITY(1)",
    "[2]!_xldudf_WARMBACK_X(1)",
    "IF(A1,warmback.x(2),3)",
  ])
    expect(callsUs(formula), formula).toBe(true);
  for (const formula of ['"WARMBACK.X(1)"', "Warmbacker(1)", "SUM(A1)"]) expect(callsUs(formula), formula).toBe(false);
});

test("Places of tags are the same however the text is cut into pieces", () => {
  const text =
    '<?xml version="1.0"?>\r\n<a x="1>2" y=\'&lt;\'>\ud83c\udfca<b/>\r\n<!-- <c> --><c ><![CDATA[<d>]]>&amp;</c><b\n z="\u00b0" /></a>';
  const places = (cut: (source: string) => readonly string[]): string[] => {
    const found: string[] = [];
    const scan = xmlScan("a.xml", {
      open: (name, _, { start, end }) => void found.push(`${name} ${text.slice(start, end)}`),
      close: (name, { start, end }) => void found.push(`/${name} ${text.slice(start, end)}`),
      text: () => undefined,
    });
    for (const piece of cut(text)) scan.write(piece);
    scan.close();
    return found;
  };
  const whole = places((source) => [source]);
  expect(whole).toEqual([
    "a <a x=\"1>2\" y='&lt;'>",
    "b <b/>",
    "/b ",
    "c <c >",
    "/c </c>",
    'b <b\n z="\u00b0" />',
    "/b ",
    "/a </a>",
  ]);
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 80 }), (lengths) => {
      const pieces: string[] = [];
      let at = 0;
      for (let turn = 0; at < text.length; turn++) {
        const length = lengths[turn % lengths.length]!;
        pieces.push(text.slice(at, at + length));
        at += length;
      }
      expect(places(() => pieces)).toEqual(whole);
    }),
    { numRuns: 60 },
  );
});

test("A small part is a tree whose nodes know their places", () => {
  const text = "<x:a xmlns:x='u'><x:b>one</x:b><y:b xmlns:y='v'/></x:a>";
  const root = scanXml("a.xml", text);
  expect(root.children.map(({ name, start, end }) => [name, text.slice(start, end)])).toEqual([
    ["b", "<x:b>one</x:b>"],
    ["y:b", "<y:b xmlns:y='v'/>"],
  ]);
});
