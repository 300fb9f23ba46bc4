/** Copies of small workbooks: needs of charts, traces in odd places, refusals; new workbooks. */
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import {
  addSheets,
  cellsFromRows,
  chooseSheets,
  newWorkbook,
  openPackage,
  packageBytes,
  patchCells,
  readBook,
  type CopyChoice,
} from "../../../src/workbook/package";
import { plainBook, PLAIN_STYLES, rels, zipOf, type PartTexts } from "./zipParts";

async function chosen(parts: PartTexts, choice: CopyChoice) {
  const pack = await openPackage(zipOf(parts));
  const copy = await chooseSheets(pack, await readBook(pack), choice);
  const bytes = await packageBytes(copy.pack);
  const texts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
  return { ...copy, texts, all: Object.values(texts).join("\n"), book: await readBook(await openPackage(bytes)) };
}

const rows = (cells: string): string => `<sheetData><row r="1">${cells}</row></sheetData>`;
const cell = (formula: string, value = "1"): string => `<c r="A1"><f>${formula}</f><v>${value}</v></c>`;

const DRAWING_NS =
  'xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const frame = (uri: string, inner: string): string =>
  `<xdr:twoCellAnchor><xdr:graphicFrame macro="[0]!Run"><a:graphic><a:graphicData uri="${uri}">${inner}</a:graphicData></a:graphic></xdr:graphicFrame></xdr:twoCellAnchor>`;
const series = (formula: string): string =>
  `<c:ser><c:val><c:numRef><c:f>${formula}</c:f><c:numCache><c:pt idx="0"><c:v>CACHED</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser>`;
const chartParts = (formulas: readonly string[]): PartTexts => ({
  "xl/worksheets/_rels/sheet1.xml.rels": rels([["rId1", "drawing", "../drawings/drawing1.xml"]]),
  "xl/drawings/drawing1.xml": `<xdr:wsDr ${DRAWING_NS}>${frame("http://schemas.openxmlformats.org/drawingml/2006/chart", '<c:chart xmlns:c="c" r:id="rId1"/>')}${frame("http://schemas.microsoft.com/office/drawing/2010/slicer", '<sle:slicer xmlns:sle="s" name="SLICER"/>')}</xdr:wsDr>`,
  "xl/drawings/_rels/drawing1.xml.rels": rels([["rId1", "chart", "../charts/chart1.xml"]]),
  "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart">${formulas.map(series).join("")}</c:chartSpace>`,
});

test("A chart keeps the sheet that it draws, also through a name, and loses what it remembers", async () => {
  const parts = plainBook(
    { S: `${rows("")}<drawing r:id="rId1"/>`, Data: rows('<c r="A1"><v>1</v></c>'), More: rows(""), Rest: rows("") },
    {
      parts: chartParts(["Data!$A$1:$A$3", "S!Range", "[1]Far!$A$1"]),
      book: '<definedNames><definedName name="Range">More!$A$1</definedName></definedNames>',
    },
  );
  const { report, texts, book } = await chosen(parts, { sheets: ["S"] });
  expect(report.sheets).toEqual([
    { name: "S", reasons: [] },
    { name: "Data", reasons: ["a chart on S needs it"] },
    { name: "More", reasons: ["a chart on S needs it"] },
  ]);
  expect(texts["xl/charts/chart1.xml"]).toContain("<c:f>Data!$A$1:$A$3</c:f></c:numRef>");
  expect(texts["xl/charts/chart1.xml"]).toContain("<c:f>#REF!</c:f></c:numRef>");
  expect(texts["xl/charts/chart1.xml"]).not.toContain("CACHED");
  expect(texts["xl/drawings/drawing1.xml"]).not.toContain("SLICER");
  expect(texts["xl/drawings/drawing1.xml"]).toContain('macro=""');
  expect(book.names.map(({ name }) => name)).toEqual(["Range"]);
});

test("Remarks in parts, styles of dropped tables and selections of pivot tables leave no trace", async () => {
  const styles = PLAIN_STYLES.replace(
    "</styleSheet>",
    "<dxfs count='2'><dxf><numFmt numFmtId='200' formatCode='0\" TRACE\"'/></dxf><dxf/></dxfs><tableStyles count='1' defaultTableStyle='TRACE'><tableStyle name='TRACE' count='1'><tableStyleElement type='wholeTable' dxfId='0'/></tableStyle></tableStyles><extLst><ext uri='TRACE'/></extLst></styleSheet>",
  );
  const sheet = `<!-- TRACE --><sheetViews><sheetView workbookViewId="0"><pivotSelection pane="topLeft" r:id="rId9"><pivotArea field="0"/></pivotSelection></sheetView></sheetViews><?TRACE x?>${rows('<c r="A1"><v>1</v></c>')}`;
  const { all, texts } = await chosen(plainBook({ S: sheet, Gone: rows("") }, { styles }), { sheets: ["S"] });
  expect(all).not.toContain("TRACE");
  expect(all).not.toContain("pivotSelection");
  expect(texts["xl/styles.xml"]).toContain('count="0"');
});

test("Formulas are frozen for a 3-D reference, a table, a name of a name and a link on a dropped sheet", async () => {
  const book =
    '<definedNames><definedName name="Inner">Gone!$A$1</definedName><definedName name="Outer">Inner*2</definedName><definedName name="Fine">S!$B$1</definedName></definedNames>';
  const cells =
    '<c r="A1"><f>SUM(S:Last!B1)</f><v>1</v></c><c r="B1"><f>Outer</f><v>2</v></c><c r="C1"><f>HYPERLINK("#\'Gone\'!A1",3)</f><v>3</v></c><c r="D1"><f>Fine+1</f><v>4</v></c>' +
    '<c r="E1" t="shared"><f t="shared" ref="E1:F1" si="0">Gone!A1</f><v>5</v></c><c r="F1"><f t="shared" si="0"/><v>6</v></c><c r="G1"><f>"unfinished</f><v>7</v></c>';
  const parts = plainBook({ S: rows(cells), Gone: rows(""), Last: rows("") }, { book });
  const { report, all } = await chosen(parts, { sheets: ["S", "Last"] });
  expect(report.frozen.map(({ column, reason }) => [column, reason])).toEqual([
    [0, "the sheet Gone"],
    [1, "the sheet Gone"],
    [2, "the sheet Gone"],
    [4, "the sheet Gone"],
    [5, "the sheet Gone"],
    [6, "references that can't be followed"],
  ]);
  expect(all).toContain("<f>Fine+1</f>");
  expect(all).not.toContain("Gone");
});

test("Names in a circle end, and a name that was dropped freezes what uses it", async () => {
  const book =
    '<definedNames><definedName name="A_">B_+1</definedName><definedName name="B_">A_+1</definedName><definedName name="Rate">0.12</definedName></definedNames>';
  const cells = '<c r="A1"><f>A_</f><v>0</v></c><c r="B1"><f>Rate*2</f><v>0.24</v></c>';
  const { report } = await chosen(plainBook({ S: rows(cells), T: rows("") }, { book }), {
    sheets: ["S"],
    drop: new Set(["name:!rate"]),
  });
  expect(report.frozen.map(({ formula, reason }) => [formula, reason])).toEqual([
    ["Rate*2", "a name that isn't in the copy"],
  ]);
});

test("A copy shows a sheet even where only hidden ones were chosen", async () => {
  const parts = plainBook({ S: rows(""), T: rows("") });
  const hidden = String(parts["xl/workbook.xml"]).replace('<sheet name="T"', '<sheet state="veryHidden" name="T"');
  const { book } = await chosen({ ...parts, "xl/workbook.xml": hidden }, { sheets: ["T"] });
  expect(book.sheets).toMatchObject([{ name: "T", state: "visible" }]);
});

test("A copy without a sheet, or of one that isn't there, is refused", async () => {
  const parts = plainBook({ S: rows("") });
  await expect(chosen(parts, { sheets: [] })).rejects.toThrow("Choose at least one sheet to hand over.");
  await expect(chosen(parts, { sheets: ["T"] })).rejects.toThrow('This workbook has no sheet "T".');
});

test("Work on a copy ends where its signal says so, and the package stays as it was", async () => {
  const pack = await openPackage(zipOf(plainBook({ S: rows(cell("1+1", "2")), T: rows("") })));
  const control = new AbortController();
  let turns = 0;
  const turn = async (): Promise<void> => {
    turns++;
    if (turns === 5) control.abort();
  };
  const work = { signal: control.signal, slices: { slice: 0, turn } };
  const before = await packageBytes(pack);
  await expect(chooseSheets(pack, await readBook(pack), { sheets: ["S"] }, work)).rejects.toThrow("ended");
  expect(turns).toBe(5);
  expect(await packageBytes(pack)).toEqual(before);
});

test("Frozen cells without a formula keep their texts' looks, and a heading needs no change", async () => {
  const text = '<c r="A1" t="s"><v>0</v></c>';
  const pack = await openPackage(zipOf(plainBook({ S: rows(text) }, { strings: ["rich"] })));
  const { pack: after } = await patchCells(pack, await readBook(pack), [
    { sheet: "S", row: 0, column: 0, content: { kind: "frozen" } },
  ]);
  expect(strFromU8(unzipSync(await packageBytes(after))["xl/worksheets/sheet1.xml"]!)).toContain(text);
});

test("A change outside of a sheet is refused", async () => {
  const pack = await openPackage(zipOf(plainBook({ S: rows("") })));
  const book = await readBook(pack);
  const change = { sheet: "S", row: 0, column: 16_384, content: { kind: "value" as const, value: 1 } };
  await expect(patchCells(pack, book, [change])).rejects.toThrow("Row 1, column 16385 lies outside of a sheet");
});

test("Parts are found whether their names are escaped in the zip or not", async () => {
  for (const path of ["xl/worksheets/my%20sheet.xml", "xl/worksheets/my sheet.xml"]) {
    const { "xl/worksheets/sheet1.xml": sheet, ...rest } = plainBook({ S: rows(cell("1+1", "2")) });
    const relations = String(rest["xl/_rels/workbook.xml.rels"]).replace(
      "worksheets/sheet1.xml",
      "worksheets/my%20sheet.xml",
    );
    const types = String(rest["[Content_Types].xml"]).replace("sheet1.xml", "my%20sheet.xml");
    const parts = { ...rest, [path]: sheet!, "xl/_rels/workbook.xml.rels": relations, "[Content_Types].xml": types };
    const { book, all } = await chosen(parts, { sheets: ["S"] });
    expect(book.sheets).toHaveLength(1);
    expect(all).toContain("<f>1+1</f>");
    expect(all).toContain(`PartName="/${path}"`);
  }
});

test("A new workbook refuses names that Excel refuses", async () => {
  const sheet = (name: string) => ({ name, cells: cellsFromRows([[1]]) });
  await expect(newWorkbook([sheet("a/b")])).rejects.toThrow("A sheet's name can't hold");
  await expect(newWorkbook([sheet("x".repeat(32))])).rejects.toThrow("has 1 to 31 characters");
  await expect(newWorkbook([{ ...sheet("S"), state: "hidden" }])).rejects.toThrow(
    "A workbook needs a sheet that can be seen.",
  );
  const book = await newWorkbook([sheet("S")], [{ name: "Flow", formula: "S!$A$1" }]);
  await expect(addSheets(book, [sheet("s")])).rejects.toThrow('There is a sheet "s" already.');
  await expect(addSheets(book, [], [{ name: "FLOW", formula: "1" }])).rejects.toThrow("There is a name FLOW already.");
});
