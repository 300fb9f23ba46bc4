/** Changes named cells of small workbooks made by code. */
import { expect, test } from "vitest";
import { strFromU8, unzipSync } from "fflate";
import {
  cellContext,
  openPackage,
  packageBytes,
  patchCells,
  readBook,
  readStoredSheet,
} from "../../../src/workbook/package";
import type { CellChange, FileCell, PatchOptions } from "../../../src/workbook/package";
import { contentTypes, plainBook, zipOf, type PartTexts } from "./zipParts";

async function patched(parts: PartTexts, changes: readonly CellChange[], options: PatchOptions = {}) {
  const pack = await openPackage(zipOf(parts));
  const result = await patchCells(pack, await readBook(pack), changes, options);
  const bytes = await packageBytes(result.pack);
  const texts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
  return { ...result, bytes, texts, sheet: texts["xl/worksheets/sheet1.xml"]! };
}

async function cellsOf(bytes: Uint8Array, sheet = "S") {
  const pack = await openPackage(bytes);
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

const at = (address: string, content: CellChange["content"], format?: string): CellChange => {
  const [, letters = "", digits = ""] = /^([A-Z])(\d+)$/.exec(address)!;
  return {
    sheet: "S",
    row: Number(digits) - 1,
    column: letters.charCodeAt(0) - 65,
    ...(content && { content }),
    ...(format !== undefined && { format }),
  };
};
const value = (v: string | number | boolean | null) => ({ kind: "value" as const, value: v });

const data = (rows: string): string => `<dimension ref="A1:B3"/><sheetData>${rows}</sheetData>`;

test("A changed value leaves every other byte of its sheet alone", async () => {
  const rows = '<row r="1" spans="1:2"><c r="A1" s="1"><v>1.50</v></c><c  r="B1"><v>2e0</v></c></row>';
  const { sheet, texts } = await patched(plainBook({ S: data(rows) }), [at("B1", value(7))]);
  expect(sheet).toContain('<row r="1" spans="1:2"><c r="A1" s="1"><v>1.50</v></c><c r="B1"><v>7</v></c></row>');
  expect(texts["xl/workbook.xml"]).toContain('<calcPr fullCalcOnLoad="1"/>');
  expect(texts["xl/styles.xml"]).toBe(plainBook({ S: "" })["xl/styles.xml"]);
});

test("New cells go into their row and new rows between the others", async () => {
  const rows = '<row r="2" spans="2:2"><c r="B2"><v>2</v></c></row><row r="5"/>';
  const changes = [
    at("A1", value(1)),
    at("A2", value(true)),
    at("C2", value("x & y")),
    at("D5", value(5)),
    at("A9", value(9)),
  ];
  const { sheet, bytes } = await patched(plainBook({ S: data(rows) }), changes);
  expect(sheet).toContain(
    '<dimension ref="A1:D9"/><sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="2" spans="1:3"><c r="A2" t="b"><v>1</v></c>' +
      '<c r="B2"><v>2</v></c><c r="C2" t="inlineStr"><is><t xml:space="preserve">x &amp; y</t></is></c></row>' +
      '<row r="5"><c r="D5"><v>5</v></c></row><row r="9"><c r="A9"><v>9</v></c></row></sheetData>',
  );
  const { cells } = await cellsOf(bytes);
  expect(cells.map(({ row, column, value: v }) => [row, column, v])).toEqual([
    [0, 0, 1],
    [1, 0, true],
    [1, 1, 2],
    [1, 2, "x & y"],
    [4, 3, 5],
    [8, 0, 9],
  ]);
});

test("A sheet without rows takes its first cells", async () => {
  const { sheet } = await patched(plainBook({ S: "<sheetData/>" }), [
    at("A1", value(1)),
    at("B1", value(2)),
    at("A3", value(3)),
  ]);
  expect(sheet).toContain(
    '<sheetData><row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row></sheetData>',
  );
});

const CHAIN = {
  "xl/calcChain.xml": '<calcChain xmlns="x"><c r="A1" i="1"/></calcChain>',
};

/** A workbook with a calculation chain that relations and content types know. */
function withChain(sheets: Readonly<Record<string, string>>, more: Parameters<typeof plainBook>[1] = {}) {
  const parts = plainBook(sheets, { ...more, parts: { ...CHAIN, ...more.parts } });
  const types = String(parts["[Content_Types].xml"]).replace(
    "</Types>",
    '<Override PartName="/xl/calcChain.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"/></Types>',
  );
  const relations = String(parts["xl/_rels/workbook.xml.rels"]).replace(
    "</Relationships>",
    '<Relationship Id="rIdC" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="calcChain.xml"/></Relationships>',
  );
  return { ...parts, "[Content_Types].xml": types, "xl/_rels/workbook.xml.rels": relations };
}

test("A changed formula takes the calculation chain with it, a changed value doesn't", async () => {
  const parts = withChain({ S: data('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1"><v>3</v></c></row>') });
  const kept = await patched(parts, [at("B1", value(4))]);
  expect(kept.texts["xl/calcChain.xml"]).toBe(CHAIN["xl/calcChain.xml"]);
  expect(kept.texts["[Content_Types].xml"]).toBe(parts["[Content_Types].xml"]);
  const gone = await patched(parts, [at("A1", { kind: "frozen" })]);
  expect(gone.sheet).toContain('<c r="A1"><v>2</v></c>');
  expect(gone.texts["xl/calcChain.xml"]).toBeUndefined();
  expect(gone.texts["[Content_Types].xml"]).not.toContain("calcChain");
  expect(gone.texts["xl/_rels/workbook.xml.rels"]).not.toContain("calcChain");
});

const SHARED =
  '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*$A$1+Other!A1&amp;"A1"</f><v>1</v></c></row>' +
  '<row r="2"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" si="0"/><v>2</v></c></row>' +
  '<row r="3"><c r="A3"><v>3</v></c><c r="B3"><f t="shared" ca="1" si="0"/><v>3</v></c></row>';

test("A group of shared formulas is written out before its first cell changes", async () => {
  const { sheet, report } = await patched(plainBook({ S: data(SHARED) }), [at("B1", value(9))]);
  expect(report.expandedGroups).toBe(1);
  expect(sheet).toContain('<c r="B1"><v>9</v></c>');
  expect(sheet).toContain('<c r="B2"><f>A2*$A$1+Other!A2&amp;&quot;A1&quot;</f><v>2</v></c>');
  expect(sheet).toContain('<c r="B3"><f ca="1">A3*$A$1+Other!A3&amp;&quot;A1&quot;</f><v>3</v></c>');
});

test("Another cell of a shared group changes alone", async () => {
  const { sheet, report } = await patched(plainBook({ S: data(SHARED) }), [
    at("B2", { kind: "formula", formula: "A2+1", value: 3 }),
  ]);
  expect(report.expandedGroups).toBe(0);
  expect(sheet).toContain('<f t="shared" ref="B1:B3" si="0">');
  expect(sheet).toContain('<c r="B2"><f>A2+1</f><v>3</v></c>');
});

test("A result changes the value and leaves a shared formula where it is", async () => {
  const { sheet, texts } = await patched(withChain({ S: data(SHARED) }), [at("B3", { kind: "result", value: "done" })]);
  expect(sheet).toContain('<c r="B3" t="str"><f t="shared" ca="1" si="0"/><v>done</v></c>');
  expect(texts["xl/calcChain.xml"]).toBeDefined();
});

const ARRAY =
  '<row r="1"><c r="A1" cm="1" vm="2"><f t="array" ref="A1:B2">SEQUENCE(2,2)</f><v>1</v></c><c r="B1"><v>2</v></c></row>' +
  '<row r="2"><c r="A2" t="str"><v>=x</v></c><c r="B2" s="1"><v>4</v></c></row><row r="3"><c r="A3"><f>A1</f><v>1</v></c></row>';

test("An array is frozen whole when one of its cells changes", async () => {
  const { sheet, report, texts } = await patched(plainBook({ S: data(ARRAY) }), [at("B2", value(9))]);
  expect(report.frozenAreas).toEqual([{ sheet: "S", row: 0, column: 0, rows: 2, columns: 2 }]);
  expect(sheet).toContain('<c r="A1"><v>1</v></c><c r="B1"><v>2</v></c>');
  expect(sheet).toContain(
    '<c r="A2" s="2" t="inlineStr"><is><t xml:space="preserve">=x</t></is></c><c r="B2" s="1"><v>9</v></c>',
  );
  expect(sheet).toContain("<f>A1</f>");
  expect(texts["xl/styles.xml"]).toContain('xfId="0" quotePrefix="1"/></cellXfs>');
});

test("A new formula in an array's first cell empties what the old one filled", async () => {
  const spill = [[1, 2, 3]];
  const { sheet } = await patched(plainBook({ S: data(ARRAY) }), [
    at("A1", { kind: "formula", formula: "_xlfn.SEQUENCE(1,3)", value: 1, spill }),
  ]);
  expect(sheet).toContain(
    '<c r="A1"><f t="array" ref="A1:C1">_xlfn.SEQUENCE(1,3)</f><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>3</v></c></row>' +
      '<row r="2"><c r="B2" s="1"/></row>',
  );
});

test("A what-if table is frozen whole", async () => {
  const rows =
    '<row r="2"><c r="B2"><f t="dataTable" ref="B2:B3" dt2D="0" dtr="0" r1="A1"/><v>5</v></c></row><row r="3"><c r="B3"><v>6</v></c></row>';
  const { sheet, report } = await patched(plainBook({ S: data(rows) }), [at("B3", value(1))]);
  expect(sheet).toContain('<c r="B2"><v>5</v></c></row><row r="3"><c r="B3"><v>1</v></c>');
  expect(report.frozenAreas).toHaveLength(1);
});

test("A number format is a new style behind the others and keeps the cell's looks", async () => {
  const rows = '<row r="1"><c r="A1" s="1"><f>1/3</f><v>0.33</v></c><c r="B1" s="1"><v>1</v></c></row>';
  const { sheet, texts, bytes } = await patched(plainBook({ S: data(rows) }), [
    at("A1", undefined, '0.0 "gpm"'),
    at("B1", undefined, '0.0 "gpm"'),
    at("C1", value(5), "0%"),
  ]);
  expect(sheet).toContain(
    '<c r="A1" s="3"><f>1/3</f><v>0.33</v></c><c r="B1" s="3"><v>1</v></c><c r="C1" s="2"><v>5</v></c>',
  );
  expect(texts["xl/styles.xml"]).toContain(
    '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.0 &quot;gpm&quot;"/></numFmts>',
  );
  expect(texts["xl/styles.xml"]).toContain('<cellXfs count="4">');
  const { book } = await cellsOf(bytes);
  expect(book.styles.cells.map(({ numberFormat }) => numberFormat)).toEqual(["General", "0.00", "0%", '0.0 "gpm"']);
});

test("Texts of every kind come back as they went in", async () => {
  const texts = [
    "=1+1",
    "+x",
    "-",
    "@A1",
    " edge ",
    "two\nlines",
    "bell\u0007",
    "_x0041_",
    "<&>\"'",
    "\ud83c\udfca",
    "carriage\rreturn",
    "\ud800",
  ];
  const rows = '<row r="1"><c r="A1" t="s"><v>0</v></c></row>';
  const { bytes } = await patched(
    plainBook({ S: data(rows) }, { strings: ["old"] }),
    texts.map((text, row) => ({ sheet: "s", row, column: 0, content: value(text) })),
  );
  const { cells, book } = await cellsOf(bytes);
  expect(cells.map((cell) => cell.value)).toEqual(texts);
  expect(cells.map(({ style }) => book.styles.cells[style]!.quotePrefix)).toEqual(texts.map((_, at) => at < 4));
});

const table = (columns: string): PartTexts => ({
  "xl/tables/table1.xml": `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Loop" displayName="Loop" ref="A1:B4" totalsRowCount="1"><autoFilter ref="A1:B3"/><tableColumns count="2">${columns}</tableColumns></table>`,
  "xl/worksheets/_rels/sheet1.xml.rels":
    '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/table" Target="../tables/table1.xml"/></Relationships>',
});
const TABLE_ROWS =
  '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c></row><row r="2"><c r="A2"><v>1</v></c><c r="B2"><f>Loop[[#This Row],[gpm]]*2</f><v>2</v></c></row>' +
  '<row r="4"><c r="A4" t="s"><v>2</v></c><c r="B4"><f>SUBTOTAL(109,B2:B3)</f><v>2</v></c></row>';
const COLUMNS =
  '<tableColumn id="1" name="gpm" totalsRowLabel="Total"/><tableColumn id="2" name="Twice" totalsRowFunction="sum"><calculatedColumnFormula>_xldudf_WARMBACK_PIPE_VELOCITY(1)</calculatedColumnFormula></tableColumn>';
const tableBook = () =>
  plainBook(
    { S: `<sheetData>${TABLE_ROWS}</sheetData>` },
    { strings: ["gpm", "Twice", "Total"], parts: table(COLUMNS) },
  );

test("A table's heading changes in the table as well, as a text", async () => {
  const { texts, sheet } = await patched(tableBook(), [at("B1", value(2031))]);
  expect(texts["xl/tables/table1.xml"]).toContain('<tableColumn id="2" name="2031" totalsRowFunction="sum">');
  expect(sheet).toContain('<c r="B1" t="inlineStr"><is><t xml:space="preserve">2031</t></is></c>');
});

test("A heading that formulas use, that another column has or that is empty is refused", async () => {
  await expect(patched(tableBook(), [at("A1", value("flow"))])).rejects.toThrow(
    'The heading "gpm" of the table Loop is used in formulas',
  );
  await expect(patched(tableBook(), [at("B1", value("GPM"))])).rejects.toThrow(
    "Two headings of the table Loop would be the same.",
  );
  await expect(patched(tableBook(), [at("B1", value(null))])).rejects.toThrow("A heading of the table Loop");
});

test("A frozen total is no longer a total of the table", async () => {
  const { texts } = await patched(tableBook(), [at("B4", { kind: "frozen" }), at("A4", value("Sum"))]);
  expect(texts["xl/tables/table1.xml"]).toContain('<tableColumn id="1" name="gpm" totalsRowLabel="Sum"/>');
  expect(texts["xl/tables/table1.xml"]).toContain('<tableColumn id="2" name="Twice">');
});

const RULES =
  '<conditionalFormatting sqref="A1:A3"><cfRule type="expression" dxfId="0" priority="1"><formula>WARMBACK.PIPE.VELOCITY(A1,"2 in")&gt;5</formula></cfRule><cfRule type="expression" priority="2"><formula>A1&gt;1</formula></cfRule></conditionalFormatting>' +
  '<conditionalFormatting sqref="B1"><cfRule type="cellIs" operator="greaterThan" priority="3"><formula>_xldudf_WARMBACK_PIPE_VELOCITY(A1)</formula></cfRule></conditionalFormatting>' +
  '<dataValidations count="2"><dataValidation type="custom" sqref="C1"><formula1>WARMBACK.PIPE.VELOCITY(C1)&lt;5</formula1></dataValidation><dataValidation type="list" sqref="D1"><formula1>"WARMBACK.X(1),b"</formula1></dataValidation></dataValidations>';
const NAMES =
  '<definedNames><definedName name="Fast">_xldudf_WARMBACK_PIPE_VELOCITY(S!$A$1)</definedName><definedName name="Slow">[2]!_xldudf_WARMBACK_X(1)</definedName><definedName name="Plain">S!$A$1</definedName></definedNames>';

test("Our calls in names, rules and tables are listed and stay where nobody asks", async () => {
  const parts = {
    ...tableBook(),
    ...plainBook({ S: `<sheetData>${TABLE_ROWS}</sheetData>${RULES}` }, { book: NAMES, parts: table(COLUMNS) }),
  };
  const { report, texts } = await patched(parts, [at("A2", value(5))]);
  expect(report.outside.map(({ kind, where }) => `${kind} ${where}`)).toEqual([
    "name Fast",
    "name Slow",
    "calculated column Loop[Twice]",
    "conditional format A1:A3",
    "conditional format B1",
    "validation C1",
  ]);
  expect(texts["xl/workbook.xml"]).toContain(NAMES);
  expect(texts["xl/tables/table1.xml"]).toBe(parts["xl/tables/table1.xml"]);
});

test("Our calls in names, rules and tables are frozen or cleared on request", async () => {
  const parts = {
    ...tableBook(),
    ...plainBook({ S: `<sheetData>${TABLE_ROWS}</sheetData>${RULES}` }, { book: NAMES, parts: table(COLUMNS) }),
  };
  const { sheet, texts } = await patched(parts, [], { ours: "freeze", nameValues: new Map([["fast", 3.89]]) });
  expect(texts["xl/workbook.xml"]).toContain(
    '<definedName name="Fast">3.89</definedName><definedName name="Slow">#N/A</definedName>',
  );
  expect(texts["xl/tables/table1.xml"]).not.toContain("calculatedColumnFormula");
  expect(sheet).toContain(
    '<conditionalFormatting sqref="A1:A3"><cfRule type="expression" priority="2"><formula>A1&gt;1</formula></cfRule></conditionalFormatting>' +
      '<dataValidations count="1"><dataValidation type="list" sqref="D1">',
  );
});

test("A signature goes with a sentence when a cell changes", async () => {
  const parts = plainBook({ S: data('<row r="1"><c r="A1"><v>1</v></c></row>') });
  const signed = {
    ...parts,
    "_rels/.rels": String(parts["_rels/.rels"]).replace(
      "</Relationships>",
      '<Relationship Id="rIdD" Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/></Relationships>',
    ),
    "_xmlsignatures/origin.sigs": "",
    "_xmlsignatures/sig1.xml": "<Signature/>",
    "[Content_Types].xml": contentTypes(
      {
        rels: "application/vnd.openxmlformats-package.relationships+xml",
        xml: "application/xml",
        sigs: "application/vnd.openxmlformats-package.digital-signature-origin",
      },
      {
        "xl/workbook.xml": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
        "_xmlsignatures/sig1.xml": "application/vnd.openxmlformats-package.digital-signature-xmlsignature+xml",
      },
    ),
  };
  const { texts, report } = await patched(signed, [at("A1", value(2))]);
  expect(Object.keys(texts).filter((path) => path.startsWith("_xml"))).toEqual([]);
  expect(texts["_rels/.rels"]).not.toContain("signature");
  expect(texts["[Content_Types].xml"]).not.toContain("sig1.xml");
  expect(report.sentences).toEqual(["The digital signature was removed: it covers the file as it was, not this one."]);
});

test("A change that a cell can't take is refused and names the limit", async () => {
  const parts = plainBook({ S: data("") });
  await expect(patched(parts, [at("A1", value(Number.NaN))])).rejects.toThrow("A cell can't hold NaN.");
  await expect(patched(parts, [at("A1", value("x".repeat(32_768)))])).rejects.toThrow("longer than the 32767");
  await expect(patched(parts, [{ sheet: "T", row: 0, column: 0, content: value(1) }])).rejects.toThrow(
    'This workbook has no sheet "T".',
  );
});

test("A workbook written with a prefix for its vocabulary is patched with that prefix", async () => {
  const parts = plainBook({ S: "" });
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  const sheet = `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
  const book = String(parts["xl/workbook.xml"])
    .replace(/<(\/?)(workbook|sheets|sheet)\b/g, "<$1x:$2")
    .replace("xmlns=", "xmlns:x=");
  const result = await patched({ ...parts, "xl/worksheets/sheet1.xml": sheet, "xl/workbook.xml": book }, [
    at("B1", value("b")),
  ]);
  expect(result.sheet).toContain(
    '<x:c r="B1" t="inlineStr"><x:is><x:t xml:space="preserve">b</x:t></x:is></x:c></x:row>',
  );
  expect(result.texts["xl/workbook.xml"]).toContain('<x:calcPr fullCalcOnLoad="1"/></x:workbook>');
});
