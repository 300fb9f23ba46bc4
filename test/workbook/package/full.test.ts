/** A workbook with every kind of part: what a save keeps, and what a hand-over leaves behind. */
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import {
  cellContext,
  cellsFromRows,
  handOverPackage,
  listHidden,
  openPackage,
  packageBytes,
  patchCells,
  readBook,
  readStoredSheet,
  type CopyChoice,
  type FileCell,
  type HandOverPlan,
} from "../../../src/workbook/package";
import { canary, fullBook } from "./fullBook";
import { problemsOf } from "./soundness";
import { zipOf } from "./zipParts";

const open = async () => {
  const pack = await openPackage(zipOf(fullBook()));
  return { pack, book: await readBook(pack) };
};

const textsOf = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));

const plain = (): Record<string, string> =>
  Object.fromEntries(
    Object.entries(fullBook()).map(([path, part]) => [path, typeof part === "string" ? part : strFromU8(part)]),
  );

test("A save with one changed cell leaves every other part byte for byte", async () => {
  const { pack, book } = await open();
  const saved = await patchCells(pack, book, [
    { sheet: "Loop", row: 1, column: 0, content: { kind: "value", value: 45 } },
  ]);
  const after = textsOf(await packageBytes(saved.pack));
  const before = plain();
  const changed = Object.keys(before).filter((path) => after[path] !== before[path]);
  expect(changed.sort()).toEqual(
    [
      "[Content_Types].xml",
      "_rels/.rels",
      "_xmlsignatures/_rels/origin.sigs.rels",
      "_xmlsignatures/origin.sigs",
      "_xmlsignatures/sig1.xml",
      "xl/workbook.xml",
      "xl/worksheets/sheet2.xml",
    ].sort(),
  );
  expect(Object.keys(after).filter((path) => !(path in before))).toEqual([]);
  expect(after["xl/worksheets/sheet2.xml"]).toBe(
    before["xl/worksheets/sheet2.xml"]!.replace('<c r="A2" s="1"><v>40</v></c>', '<c r="A2" s="1"><v>45</v></c>'),
  );
  expect(after["xl/workbook.xml"]).toBe(
    before["xl/workbook.xml"]!.replace(
      '<calcPr calcId="191029" iterate="1" iterateCount="50"/>',
      '<calcPr calcId="191029" iterate="1" iterateCount="50" fullCalcOnLoad="1"/>',
    ),
  );
});

test("Sheets, names, tables, links and settings are read as the file has them", async () => {
  const { book } = await open();
  expect(book.sheets.map(({ name, state }) => `${name} ${state}`)).toEqual([
    "Prices visible",
    "Loop visible",
    "cfg veryHidden",
    "Pivot visible",
    "Other book hidden",
  ]);
  expect(book.names.find(({ name }) => name === "Gpm")).toEqual({
    name: "Gpm",
    formula: "Loop!$B$2/60",
    hidden: false,
    macro: false,
  });
  expect(book.names.find(({ name }) => name === "Local")?.sheet).toBe("Prices");
  expect(book.tables).toMatchObject([
    {
      name: "Price_list",
      sheet: "Prices",
      headerRows: 1,
      totalsRows: 0,
      columns: [{ name: "Item" }, { name: "Price" }],
    },
  ]);
  expect(book.calculation).toEqual({
    mode: "automatic",
    iterate: true,
    iterations: 50,
    largestChange: 0.001,
    fullPrecision: true,
    fullCalcOnLoad: false,
  });
  expect(book).toMatchObject({ macros: true, signed: true, date1904: false, strict: false, activeSheet: 1 });
  expect(book.externalLinks).toMatchObject([{ number: 1, kind: "workbook" }]);
});

async function cellsIn(bytes: Uint8Array, sheet: string) {
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
  return {
    facts,
    at: (row: number, column: number) => cells.find((cell) => cell.row === row && cell.column === column),
    cells,
  };
}

test("Cells are read with the kinds of their formulas and their stored values", async () => {
  const { at, facts } = await cellsIn(zipOf(fullBook()), "Loop");
  expect(at(0, 4)?.value).toBe("Rich text");
  expect(at(3, 2)).toMatchObject({ value: 360, formula: { kind: "shared", text: "A4*2+$B$2", group: 0 } });
  expect(at(5, 0)).toMatchObject({
    formula: { kind: "array", dynamic: true, area: { row: 5, column: 0, rows: 3, columns: 1 } },
  });
  expect(at(6, 0)).toMatchObject({ value: 100, formula: { kind: "filled", by: { row: 5, column: 0 } } });
  expect(at(9, 2)?.value).toEqual({ code: "#N/A" });
  expect(facts.rows.filter(({ hidden }) => hidden).map(({ row }) => row)).toEqual([23]);
  expect(facts.columns.filter(({ hidden }) => hidden).map(({ first }) => first)).toEqual([7]);
  expect(facts).toMatchObject({
    protected: true,
    frozenRows: 1,
    filter: "A1:D4",
    merged: [{ row: 19, column: 0, rows: 1, columns: 2 }],
  });
  expect(facts.validations).toEqual([
    { areas: "B3", type: "list", formulas: ["Prices!$A$2:$A$3"], allowBlank: true, showInputMessage: true },
  ]);
  expect(facts.formatRules.map(({ formulas }) => formulas)).toEqual([["55"], ["B2>SUM($A$2:$A$4)"]]);
});

async function handOver(choice: CopyChoice, more: Partial<HandOverPlan> = {}) {
  const { pack } = await open();
  const result = await handOverPackage(pack, { choice, changes: [], sheets: [], ...more });
  const bytes = await packageBytes(result.pack);
  return { ...result, bytes, texts: textsOf(bytes) };
}

/** Every mark that the workbook holds, and those that a text holds. */
const marks = (texts: Iterable<string>): string[] => {
  const found = new Set<string>();
  for (const text of texts)
    for (const [, key] of text.replaceAll("%20", " ").matchAll(/CANARY (\w+(?: \w+)?) of Fernhill/g)) found.add(key!);
  return [...found].sort();
};

test("What a copy drops leaves no trace in any of its parts", async () => {
  const before = marks(Object.values(plain()));
  expect(before.length).toBeGreaterThan(35);
  const { texts } = await handOver({ sheets: ["Loop"], drop: new Set(["rows:Loop:24-24"]) });
  expect(marks(Object.values(texts))).toEqual([]);
  expect(Object.values(texts).join("").includes("cfg")).toBe(false);
});

test("A copy keeps what a kept sheet shows", async () => {
  const { texts } = await handOver({ sheets: ["Loop"] });
  expect(Object.keys(texts).sort()).toEqual(
    [
      "[Content_Types].xml",
      "_rels/.rels",
      "docProps/app.xml",
      "docProps/core.xml",
      "xl/_rels/workbook.xml.rels",
      "xl/charts/chart1.xml",
      "xl/drawings/_rels/drawing1.xml.rels",
      "xl/drawings/drawing1.xml",
      "xl/media/image1.png",
      "xl/metadata.xml",
      "xl/sharedStrings.xml",
      "xl/styles.xml",
      "xl/tables/table1.xml",
      "xl/theme/theme1.xml",
      "xl/workbook.xml",
      "xl/worksheets/_rels/sheet1.xml.rels",
      "xl/worksheets/_rels/sheet2.xml.rels",
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/sheet2.xml",
    ].sort(),
  );
  const sheet = texts["xl/worksheets/sheet2.xml"]!;
  for (const kept of [
    '<tabColor rgb="FF00B0F0"/>',
    'showGridLines="0"',
    'zoomScale="85"',
    '<row r="24" hidden="1">',
    '<col min="8" max="8" width="9" hidden="1" customWidth="1"/>',
    '<sheetProtection sheet="1" objects="1" scenarios="1"/>',
    '<autoFilter ref="A1:D4"/>',
    'outlineLevel="1"',
    '<pageSetup paperSize="9" scale="82" orientation="landscape"/>',
    "<oddHeader>&amp;CFernhill Hall</oddHeader>",
    '<hyperlink ref="E1" r:id="rId6"/>',
    "sparklineGroup",
    '<c r="A6" cm="1"><f t="array" ref="A6:A8">A2:A4*2</f>',
  ])
    expect(sheet).toContain(kept);
  expect(texts["[Content_Types].xml"]).toContain("spreadsheetml.sheet.main+xml");
  expect(texts["[Content_Types].xml"]).not.toContain("macroEnabled");
});

test("A sheet that a validation needs is kept and the list says why", async () => {
  const { copy } = await handOver({ sheets: ["Loop"] });
  expect(copy.sheets).toEqual([
    { name: "Prices", reasons: ["a validation on Loop needs it"] },
    { name: "Loop", reasons: [] },
  ]);
  expect(copy.droppedSheets).toEqual(["cfg", "Pivot", "Other book"]);
});

test("Formulas into dropped sheets become their values and are listed with the reason", async () => {
  const { copy, bytes } = await handOver({ sheets: ["Loop"] });
  expect(copy.frozen.map(({ row, column, formula, reason }) => [row, column, formula, reason])).toEqual([
    [2, 3, "cfg!A1*2", "the sheet cfg"],
    [2, 4, "Secret+1", "the sheet cfg"],
    [3, 4, 'INDIRECT("A"&2)', "references that can't be followed"],
    [9, 0, "[1]Sheet1!A1", "another workbook"],
  ]);
  const { at } = await cellsIn(bytes, "Loop");
  expect([at(2, 3), at(2, 4), at(3, 4), at(9, 0)].map((cell) => [cell?.value, cell?.formula])).toEqual([
    [14, undefined],
    [8, undefined],
    [40, undefined],
    [33, undefined],
  ]);
  expect(at(1, 3)?.formula).toMatchObject({ text: "Gpm*15" });
});

test("Saved and handed-over files hold no link to nothing and no part that nothing leads to", async () => {
  expect(problemsOf(plain())).toEqual([]);
  expect(problemsOf({ ...plain(), "xl/_rels/workbook.xml.rels": "<Relationships/>" }).length).toBeGreaterThan(15);
  const { pack, book } = await open();
  const changes = [{ sheet: "Loop", row: 1, column: 2, content: { kind: "frozen" as const } }];
  const saved = await patchCells(pack, book, changes);
  expect(problemsOf(textsOf(await packageBytes(saved.pack)))).toEqual([]);
  const keep = new Set((await listHidden(pack, book, ["Loop", "Pivot"])).map(({ id }) => id));
  const sheets = [{ name: "Read me", cells: cellsFromRows([["Fernhill Hall (invented)"]]) }];
  for (const choice of [{ sheets: ["Loop"] }, { sheets: ["Pivot"] }, { sheets: ["Loop", "Pivot"], keep }])
    expect(problemsOf((await handOver(choice, { sheets })).texts)).toEqual([]);
});

test("Names and views of a copy count its own sheets", async () => {
  const { bytes, texts } = await handOver({ sheets: ["Loop"] });
  const book = await readBook(await openPackage(bytes));
  expect(book.names.map(({ name, sheet = "" }) => `${sheet}!${name}`)).toEqual([
    "Loop!_xlnm._FilterDatabase",
    "Loop!_xlnm.Print_Area",
    "Loop!_xlnm.Print_Titles",
    "!Flow",
    "!Gpm",
    "!PriceList",
  ]);
  expect(book.activeSheet).toBe(1);
  expect(texts["xl/worksheets/sheet2.xml"]).toContain('tabSelected="1"');
  expect(texts["xl/worksheets/sheet1.xml"]).not.toContain("tabSelected");
});

test("Dropped hidden rows and columns are emptied and formulas over them hold their values", async () => {
  const { pack, book } = await open();
  const items = await listHidden(pack, book, ["Loop"]);
  const row = items.find(({ kind }) => kind === "rows")!;
  const column = items.find(({ kind }) => kind === "columns")!;
  expect([row.text, column.text]).toEqual(["row 24", "column H"]);
  const { bytes } = await handOver({ sheets: ["Loop"], drop: new Set([row.id, column.id]) });
  const { at } = await cellsIn(bytes, "Loop");
  expect([at(23, 0)?.value ?? null, at(1, 7)?.value ?? null]).toEqual([null, null]);
});

test("The list of what is hidden names each kind with its default", async () => {
  const { pack, book } = await open();
  const items = await listHidden(pack, book, ["Loop"]);
  expect(
    items.map(({ kind, text, byDefault }) =>
      `${byDefault} ${kind}: ${text}`.replaceAll(/CANARY (\w+) of Fernhill/g, "…"),
    ),
  ).toEqual([
    "drop sheet: the hidden sheet cfg",
    "drop sheet: the hidden sheet Other book",
    "keep rows: row 24",
    "keep columns: column H",
    "drop scenarios: scenarios",
    "drop comments: 1 comment",
    "keep name: Flow = Loop!$B$2",
    "keep name: Gpm = Loop!$B$2/60",
    "drop name: Local = Prices!$B$2",
    'drop name: MarginName = 29+N("…") (hidden)',
    "keep name: PriceList = Prices!$B$2:$B$3",
    "drop name: Secret = cfg!$A$1",
    "drop property: Title: …",
    "drop property: Author: …",
    "drop property: Last changed by: …",
    "drop property: Created: 2024-05-06T07:08:09Z",
    "drop property: Manager: …",
    "drop property: Company: …",
    "drop property: Job: …",
    "drop macros: macros and controls",
    "drop links to other workbooks: links to other workbooks, with the values they remember",
    "drop connections: connections to data outside",
    "drop custom XML: data that programs attached",
    "drop web extensions: parts of add-ins",
    "drop printer settings: settings of printers, with their names",
    "drop other: the list of people who commented",
    "drop other: a picture of the first page",
  ]);
});

test("Comments, properties, names and pivot tables stay where somebody keeps them, without names of people", async () => {
  const { pack, book } = await open();
  const items = await listHidden(pack, book, ["Loop", "Pivot"]);
  const keep = new Set(
    items
      .filter(({ kind, text }) => kind === "comments" || kind === "pivot table" || /^(?:Title|Job|Local)/.test(text))
      .map(({ id }) => id),
  );
  const { texts, copy } = await handOver({ sheets: ["Loop", "Pivot"], keep });
  expect(marks(Object.values(texts))).toEqual(["comment", "customProperty", "hiddenRow", "pivotItem", "title"]);
  expect(copy.sheets[0]).toEqual({
    name: "Prices",
    reasons: ["the name Local needs it", "a pivot table on Pivot needs it", "a validation on Loop needs it"],
  });
  expect(texts["xl/pivotCache/pivotCacheDefinition1.xml"]).toContain('refreshOnLoad="1"');
  expect(texts["xl/workbook.xml"]).toMatch(/<pivotCache cacheId="5" r:id="rId\d+"\/>/);
});

test("New sheets stand behind the kept ones with their looks, and texts stay texts", async () => {
  const rows = cellsFromRows([
    [{ value: "Read me", style: { bold: true, size: 14 } }],
    ["=1+1 is a text", -5, true],
    [{ value: 3.89, formula: "Loop!A2/10", style: { format: "0.00", fill: "#fff4d6" } }],
  ]);
  const record = {
    name: "Read me",
    cells: rows,
    widths: { 0: 40 },
    frozenRows: 1,
    print: { area: "A1:C3", titleRows: "1:1", footer: "&P" },
  };
  const { bytes } = await handOver(
    { sheets: ["Loop"] },
    { sheets: [record], names: [{ name: "Made", formula: "'Read me'!$A$1" }] },
  );
  const { at } = await cellsIn(bytes, "Read me");
  const book = await readBook(await openPackage(bytes));
  expect(at(1, 0)?.value).toBe("=1+1 is a text");
  expect(book.styles.cells[at(1, 0)!.style]?.quotePrefix).toBe(true);
  expect(book.styles.cells[at(2, 0)!.style]?.numberFormat).toBe("0.00");
  expect(book.names.slice(-3).map(({ name, sheet = "", formula }) => `${sheet} ${name} ${formula}`)).toEqual([
    "Read me _xlnm.Print_Area 'Read me'!$A$1:$C$3",
    "Read me _xlnm.Print_Titles 'Read me'!$1:$1",
    " Made 'Read me'!$A$1",
  ]);
});

test("The marks of the workbook are where the tests expect them", () => {
  expect(plain()["xl/comments1.xml"]).toContain(canary("comment"));
});
